import { capital } from '../capital.ts';
import { exactly, mixedText } from '../exact.ts';
import { type Reader, readWith, workWith } from '../reader.ts';
import type { Field, Reading } from '../reading.ts';
import type { LengthUnit, Pieces, Plan } from '../value.ts';
import type { Judgement, Kind, Known } from './kind.ts';
import type { NumberKind } from './measured.ts';
import { noMistakes } from './mistakes.ts';
import { noOptions } from './option-rules.ts';
import { wordsMathml } from './answers/words.ts';
import { text } from './worded.ts';

/** What a plan is, and what makes one hold and one better than another. */
interface Parts {
	readonly id: string;
	/** `a cut list`. */
	readonly noun: string;
	/** What holds the pieces: `bar`, `sheet`. */
	readonly part: string;
	/** The kind of a piece's size. */
	readonly size: NumberKind;
	/** `3x 12 1/4 + 2x 8; 1x 30`. */
	readonly example: string;
	/** What must hold for it to be made at all: a sentence each when it does not, else null. */
	readonly rules: readonly ((plan: Plan, known: Known) => string | null)[];
	/** What a plan costs, in any measure; the least is the best. */
	readonly score: (plan: Plan, known: Known) => number;
	/** What is said of one that holds where a better one is possible. */
	readonly notBest: (score: number, best: number) => string;
}

/** Scores this near are the same. */
const slack = 1e-9;

/**
 * A layout or cut list, judged by rules and a score: every plan that holds and is as good as the
 * right one is right. Entered a part at a time: `3x 12 1/4 + 2x 8; 1x 30`.
 */
export function plan(parts: Parts): Kind<Plan, Plan> {
	const { id, noun, part, size, example, rules, score, notBest } = parts;
	const readBy =
		(typed: string, units: LengthUnit = 'in') =>
		(reader: Reader): Reading<Plan> =>
			reader.unopened(typed, example) ?? planRead(typed, units, parts, reader);
	const judged = (value: Plan, right: Plan, known: Known): Judgement => {
		const says = rules.map((rule) => rule(value, known)).find((said) => said !== null);
		if (says !== undefined && says !== null) return { is: 'breaks', says };
		const [own, best] = [score(value, known), score(right, known)];
		if (own <= best + slack) return { is: 'right' };
		return { is: 'not-best', says: notBest(own, best) };
	};
	const kind: Kind<Plan, Plan> = {
		id,
		noun,
		dimension: { ...text, name: 'plan', noun: 'a plan' },
		hint: `A ${part} at a time with semicolons between, like ${example}.`,
		keys: 'text',
		choices: [],
		isList: false,
		fine: size.fine,
		most: size.most,
		mistakes: noMistakes,
		options: noOptions,
		get member() {
			return kind;
		},
		example: () => example,
		read: (typed, units) => readWith(typed, readBy(typed, units)),
		work: (typed, units) => workWith(readBy(typed, units)),
		judge: ({ value }, right, _, known = {}) => judged(value, right, known),
		isWritten: ({ value }, other) => isSame(value, other),
		differs: (one, other) => !isSame(one, other),
		toValue: ({ value }) => value,
		isSound: ({ parts: all }) => all.flat().every((one) => Number.isFinite(one.count * one.size)),
		numbers: ({ parts: all }) => all.flat().map((one) => one.size),
		map: ({ parts: all }, change) => {
			let place = 0;
			return {
				parts: all.map((some) => some.map((one) => ({ ...one, size: change(one.size, place++) })))
			};
		},
		scaled: ({ value, grain }, factor) => ({
			value: kind.map(value, (one) => one * factor.valueOf()),
			grain: grain * factor.valueOf()
		}),
		members: (value) => [value],
		write: (value, units = 'in') => written(value, size, units),
		mathml: (value, units = 'in') => wordsMathml(written(value, size, units)),
		nearest64: () => '',
		plain: (value) =>
			value.parts.map((some) => some.map((one) => ({ count: one.count, of: size.plain(one.size) })))
	};
	return kind;
}

/** `3 × 12 1/4 + 2 × 8; 1 × 30 in` */
function written({ parts }: Plan, size: NumberKind, units: LengthUnit): string {
	const pieces = (one: Pieces) => `${one.count} × ${size.number(one.size, units)}`;
	const unit = size.write(0, units).replace(size.number(0, units), '');
	return parts.map((some) => some.map(pieces).join(' + ')).join('; ') + unit;
}

function planRead(
	typed: string,
	units: LengthUnit,
	{ size, part, example }: Parts,
	reader: Reader
): Reading<Plan> {
	const texts = reader
		.plainText(typed)
		.split(/[;\n]/)
		.map((one) => one.trim());
	const parts = (texts.at(-1) === '' ? texts.slice(0, -1) : texts).map((one) =>
		piecesRead(one, size.field(reader, units), reader)
	);
	const at = parts.findIndex((one) => typeof one === 'string');
	if (at >= 0) {
		return {
			state: 'unread',
			why: `${capital(part)} ${at + 1}: ${String(parts[at])} Write it like ${example}.`
		};
	}
	const value: Plan = { parts: parts.filter((one) => typeof one !== 'string') };
	return { state: 'read', value, said: written(value, size, units), grain: 0 };
}

/** The pieces of one part; a sentence when they cannot be read. */
function piecesRead(entry: string, field: Field, { oneReading }: Reader): Pieces[] | string {
	const found: Pieces[] = [];
	for (const item of entry.split(/ ?\+ ?/)) {
		const [, times = '1', text = item] = /^(\d+) ?[*x] ?(.+)$/.exec(item) ?? [];
		const reading = text === '' ? null : oneReading(text, field);
		if (reading?.state === 'which') return reading.question;
		if (reading?.state !== 'read') return 'Write how many of which size, with + between.';
		if (Number(times) > 0) found.push({ count: Number(times), size: reading.value.valueOf() });
	}
	return found;
}

/** Whether two plans are the same but for the order of the parts and of the pieces in them. */
function isSame(one: Plan, other: Plan): boolean {
	return normal(one) === normal(other);
}

function normal({ parts }: Plan): string {
	return parts.map(normalPart).filter(Boolean).sort().join(';');
}

function normalPart(pieces: readonly Pieces[]): string {
	const counts = new Map<string, number>();
	for (const { count, size } of pieces) {
		const name = mixedText(exactly(size));
		counts.set(name, (counts.get(name) ?? 0) + count);
	}
	return [...counts]
		.map(([size, count]) => `${count}*${size}`)
		.sort()
		.join('+');
}
