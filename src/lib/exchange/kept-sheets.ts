import {
	drawsOf,
	type KeptDraw,
	type KeptDraws,
	type KeptSheet,
	nothingKept,
	readDraws
} from '../engine/sets/kept-draws.ts';
import type { SetTask } from '../engine/sets/open-set.ts';
import { packed, unpacked } from './fragment.ts';

/*
 * What the tasks of a set drew, packed for the log: twenty tasks take about 3,000 characters.
 */

const version = 2;

/** Tasks in one text: what sixty drew can be too long for one. */
const together = 20;

/** A sheet, packed; in parts where it is long. */
export async function packSheet(
	code: string | null,
	tasks: readonly SetTask[]
): Promise<KeptSheet[]> {
	const draws = drawsOf(tasks);
	const sheets: KeptSheet[] = [];
	for (let at = 0; at < draws.length; at += together) {
		const part = await packed(version, draws.slice(at, at + together));
		sheets.push({ code, draws: part });
	}
	return sheets;
}

/** Unpacks sheets of one set; what is damaged counts as not kept. */
export async function unpackSheets(sheets: readonly KeptSheet[]): Promise<KeptDraws> {
	if (sheets.length === 0) return nothingKept;
	const byPlace = new Map<string, KeptDraw>();
	const keyOf = (code: string | null, place: number) => JSON.stringify([code, place]);
	for (const { code, draws } of sheets) {
		const reading = await unpacked(version, draws);
		for (const one of reading.ok ? readDraws(reading.value) : []) {
			// What was kept first is what was handed out.
			const key = keyOf(code, one.place);
			if (!byPlace.has(key)) byPlace.set(key, one);
		}
	}
	return { at: (code, place) => byPlace.get(keyOf(code, place)) };
}
