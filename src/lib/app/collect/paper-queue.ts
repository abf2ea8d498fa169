import * as v from 'valibot';
import { type HandIn, handInSchema } from '$lib/engine/sets/hand-in.ts';
import { device } from '../device/device.svelte.ts';
import { keep, keptJson, readKept } from '../device/kept.ts';

/*
 * Sheets of paper that were typed in and are on their way to the log: the page may be left, or the
 * log may fail, before they have come there.
 */

const key = 'bucktail.papers-under-way';

/** What is settled of such a sheet when its last line is typed. */
export type PaperFacts = Pick<HandIn, 'hash' | 'code' | 'version' | 'answers'>;

interface UnderWay {
	/** Null where it is to make the first learner here. */
	readonly learner: string | null;
	readonly paper: PaperFacts;
}

const { hash, code, version, answers } = handInSchema.entries;
const paperSchema = v.object({ hash, code, version, answers });
const underWay = v.object({ learner: v.nullable(v.string()), paper: paperSchema });

/** The sheets of a set that the learner at work has typed in, oldest first. */
export function papersUnderWay(of: string): PaperFacts[] {
	return all()
		.filter(({ learner }) => learner === null || learner === device.learnerId)
		.map(({ paper }) => paper)
		.filter((paper) => paper.hash === of);
}

export function keepPaper(paper: PaperFacts): void {
	keepAll([...without(paper), { learner: device.learnerId, paper }]);
}

export function dropPaper(paper: PaperFacts): void {
	keepAll(without(paper));
}

function without({ hash: of, code: whose, version: which }: PaperFacts): UnderWay[] {
	return all().filter(
		({ paper }) => paper.hash !== of || paper.code !== whose || paper.version !== which
	);
}

function all(): UnderWay[] {
	const kept = keptJson(readKept(key));
	return (Array.isArray(kept) ? kept : []).flatMap((raw) => {
		const read = v.safeParse(underWay, raw);
		return read.success ? [read.output] : [];
	});
}

function keepAll(papers: readonly UnderWay[]): void {
	keep(key, papers.length === 0 ? null : JSON.stringify(papers));
}
