import { type HandIn, isSameHandIn } from './hand-in.ts';

/** A hand-in and the file or text it came in. */
export interface Found {
	readonly file: string;
	readonly handIn: HandIn;
}

/** What was not marked, and why. */
export interface Aside {
	readonly file: string;
	readonly why: string;
}

/** The hand-in of a code that is marked, and the files that hold it. */
export interface Chosen {
	readonly handIn: HandIn;
	readonly files: readonly string[];
}

/** For every code the hand-in to mark, and what is set aside for it. */
export function chooseEach(found: readonly Found[]): { chosen: Chosen[]; aside: Aside[] } {
	const codes = [...new Set(found.map(({ handIn }) => handIn.code))];
	const each = codes.map((code) => chooseOne(found.filter(({ handIn }) => handIn.code === code)));
	return {
		chosen: each.flatMap(({ chosen }) => chosen),
		aside: each.flatMap(({ aside }) => aside)
	};
}

function chooseOne(found: readonly Found[]): { chosen: Chosen[]; aside: Aside[] } {
	const unlike: { handIn: HandIn; files: string[] }[] = [];
	for (const { file, handIn } of found) {
		const same = unlike.find((one) => isSameHandIn(one.handIn, handIn));
		if (same) same.files.push(file);
		else unlike.push({ handIn, files: [file] });
	}
	const devices = new Set(unlike.flatMap(({ handIn }) => handIn.device ?? []));
	const code = found[0]?.handIn.code ?? '';
	if (devices.size > 1) {
		const why = `${code} stands on hand-ins from ${devices.size} devices: find out whose each is, and collect only the one that counts.`;
		const all = unlike.flatMap(({ files }) => files.map((file) => ({ file, why })));
		return { chosen: [], aside: all };
	}
	const newest = Math.max(...unlike.map(({ handIn }) => handIn.version));
	const top = unlike.filter(({ handIn }) => handIn.version === newest);
	const older = unlike.filter(({ handIn }) => handIn.version < newest);
	const aside = older.flatMap(({ handIn, files }) =>
		files.map((file) => ({
			file,
			why: `${handIn.code} handed in again: version ${newest} is marked in place of version ${handIn.version}.`
		}))
	);
	const [first] = top;
	if (top.length === 1 && first) return { chosen: [first], aside };
	const why = `${code} stands on ${top.length} different hand-ins of version ${newest}: find out whose each is, and have one handed in under another code.`;
	const twice = top.flatMap(({ files }) => files.map((file) => ({ file, why })));
	return { chosen: [], aside: [...aside, ...twice] };
}
