import { type HandIn, isSameHandIn } from './hand-in.ts';
import { hashOf } from './hash.ts';

/** A hand-in and the file or text it came in. */
export interface Found {
	readonly file: string;
	readonly handIn: HandIn;
}

/** What was not marked, and why. */
export interface Aside {
	readonly file: string;
	readonly why: string;
	/** What it begins with, where it could not be read. */
	readonly inside?: string;
	/** The set that it belongs to, as the fragment of its link, where that is another. */
	readonly elsewhere?: string;
	/** Whether it may be read or marked once something else was done. */
	readonly again?: boolean;
	/** Whether nothing is to be done about it: what it says is marked, or a later version of it. */
	readonly isSettled?: boolean;
	/** What an instructor chooses who would have this one marked. */
	readonly instead?: Choice;
}

/** Whose hand-in under a code is marked, where several stand under it. */
export interface Choice {
	readonly code: string;
	/** Ten digits, see `ownerOf`. */
	readonly owner: string;
}

/** The hand-in of a code that is marked, and the files that hold it. */
export interface Chosen {
	readonly handIn: HandIn;
	readonly files: readonly string[];
}

interface Sorted {
	readonly chosen: readonly Chosen[];
	readonly aside: readonly Aside[];
}

/** Ten digits for where a hand-in came from; where it does not tell, for what stands in it. */
export function ownerOf(handIn: HandIn): string {
	return handIn.device ?? hashOf(JSON.stringify(handIn), 10);
}

/** For every code the hand-in to mark, and what is set aside for it; a later choice holds. */
export function chooseEach(found: readonly Found[], choices: readonly Choice[] = []): Sorted {
	const codes = [...new Set(found.map(({ handIn }) => handIn.code))];
	const each = codes.map((code) => {
		const own = found.filter(({ handIn }) => handIn.code === code);
		return byChoice(own, choices.filter((one) => one.code === code).at(-1));
	});
	return {
		chosen: each.flatMap(({ chosen }) => chosen),
		aside: each.flatMap(({ aside }) => aside)
	};
}

function byChoice(found: readonly Found[], choice: Choice | undefined): Sorted {
	const isChosen = ({ handIn }: Found) => ownerOf(handIn) === choice?.owner;
	const own = found.filter(isChosen);
	if (own.length === 0) return chooseOne(found);
	const { chosen, aside } = chooseOne(own);
	const others = found.filter((one) => !isChosen(one));
	const passed = others.map(({ file, handIn }) => ({
		file,
		why: `You had the other hand-in of ${handIn.code} marked.`,
		instead: insteadOf(handIn)
	}));
	return { chosen, aside: [...aside, ...passed] };
}

function chooseOne(found: readonly Found[]): Sorted {
	const unlike = joined(found);
	const devices = new Set(unlike.flatMap(({ handIn }) => handIn.device ?? []));
	const code = found[0]?.handIn.code ?? '';
	if (devices.size > 1) {
		const why = `${code} stands on hand-ins from ${devices.size} devices: find out which is theirs, since only one can be marked.`;
		return { chosen: [], aside: unlike.flatMap((one) => setAside(one, why)) };
	}
	const newest = Math.max(...unlike.map(({ handIn }) => handIn.version));
	const top = unlike.filter(({ handIn }) => handIn.version === newest);
	const aside = unlike
		.filter(({ handIn }) => handIn.version < newest)
		.flatMap(({ handIn, files }) =>
			files.map((file) => ({
				file,
				why: `${handIn.code} handed in again: version ${newest} is marked in place of version ${handIn.version}.`,
				isSettled: true
			}))
		);
	const [first] = top;
	if (top.length === 1 && first) return { chosen: [first], aside };
	const why = `${code} stands on ${top.length} different hand-ins of version ${newest}: find out which is theirs, since only one can be marked.`;
	return { chosen: [], aside: [...aside, ...top.flatMap((one) => setAside(one, why))] };
}

/** Hand-ins that say the same, with the files of all. */
function joined(found: readonly Found[]): Chosen[] {
	const unlike: { handIn: HandIn; files: string[] }[] = [];
	for (const { file, handIn } of found) {
		const same = unlike.find((one) => isSameHandIn(one.handIn, handIn));
		if (same) same.files.push(file);
		else unlike.push({ handIn, files: [file] });
	}
	return unlike;
}

function setAside({ handIn, files }: Chosen, why: string): Aside[] {
	return files.map((file) => ({ file, why, instead: insteadOf(handIn) }));
}

function insteadOf(handIn: HandIn): Choice {
	return { code: handIn.code, owner: ownerOf(handIn) };
}
