import { capital } from '../quantity/capital.ts';
import type { LengthUnit } from '../quantity/value.ts';
import type { Checked, CheckLimit } from '../solver/checked.ts';
import type { Values } from '../solver/compiled.ts';
import { evaluate } from '../solver/evaluate.ts';
import { kindAt } from '../solver/kind-at.ts';
import { brokenLimit, type Kept, limitsOf, restsOn } from '../solver/limits.ts';
import { measuredLimits, restsOnKey } from '../solver/measured-limits.ts';
import type { Limit } from '../solver/method.ts';
import { GivenError, readGivens } from '../solver/read-givens.ts';
import { TradeError } from '../solver/trade-function.ts';
import { type Gauged, readGauged, withoutSizes } from './gauge.ts';
import { type Instrument, isGauge } from './instruments.ts';
import { only } from './only.ts';
import { type Feature, readFeatures, type Statistics, statisticsOf, valueOf } from './readings.ts';

/** What was entered of a part, as typed. */
export interface Entered {
	/** Givens and measured values by key. */
	readonly values: Readonly<Record<string, string>>;
	/** None where the readings are to be taken as exact. */
	readonly instrument: Instrument | null;
	/** What a bare length is in. */
	readonly units: LengthUnit;
}

/** One measured thing of a part. */
export interface Measured {
	readonly key: string;
	readonly features: readonly Feature[];
	/** What a gauge told of each in place of a size; empty where sizes were measured. */
	readonly gauged: readonly Gauged[];
}

/** What several values come to that one limit holds for: edge distances, spaces of a row. */
export interface Summary extends Statistics {
	readonly what: string;
	readonly kind: Told['kind'];
	/** How many. */
	readonly of: number;
}

/** A limit held against one feature. */
export interface Told extends Omit<Kept, 'limit'> {
	readonly limit: CheckLimit;
	/** Which of several features it is, from 0; null where there is only one. */
	readonly place: number | null;
	/** What a gauge told in place of the value and the margin, which are then no numbers. */
	readonly gauged: Gauged | null;
}

/** A part checked: the method worked on it, and every limit with its margin. */
export interface Checkup {
	readonly check: Checked;
	readonly instrument: Instrument | null;
	readonly units: LengthUnit;
	/** Givens and steps by item, in base units; one item where nothing is checked item by item. */
	readonly items: readonly Values[];
	readonly measured: readonly Measured[];
	readonly limits: readonly Told[];
	readonly summaries: readonly Summary[];
	/** Limits that were not looked at, because a given that they rest on was left out. */
	readonly left: readonly CheckLimit[];
	/** Of those limits: what is held against them says nothing yet on what is not measured. */
	readonly verdict: Kept['verdict'];
	/** How many there are so far and how many the part has; null once all are there. */
	readonly soFar: { readonly here: number; readonly of: number } | null;
}

/**
 * Checks a part against the limits of a method.
 *
 * @throws GivenError, TradeError with one sentence where the entries cannot be used
 */
export async function checkPart(check: Checked, entered: Entered): Promise<Checkup> {
	const { values, instrument, units } = entered;
	refuseStrays(check, values);
	const plain = await readPlain(check, values);
	const measured = await readMeasured(check, entered);
	const items = itemsOf(check, plain, measured);
	const known = new Set([...Object.keys(items[0] ?? {}), ...Object.keys(check.of.steps)]);
	const [keeps, left] = parted(check.keeps, (limit) => restsOn(limit, known));
	const possible = check.possible.filter((limit) => restsOn(limit, known));
	const limits: Told[] = [];
	const worked = items.map((given, item) => {
		const work = (other: Values) => evaluate(check, other);
		const now = sound(check, given, work(given), possible, itemWords(check, items, item));
		const place = items.length > 1 ? item : null;
		const told = toldOf(check, keeps, given, { instrument, work, place });
		limits.push(...told.map((one) => gauged(one, measured, item)));
		return isGauge(instrument) ? withoutSizes(check, now) : now;
	});
	return {
		check,
		instrument,
		units,
		items: worked,
		measured,
		limits,
		summaries: summariesOf(limits),
		left,
		verdict: worstOf(limits),
		soFar: soFarIn(check, worked, measured)
	};
}

function soFarIn(
	{ wanted }: Checked,
	[values = {}]: readonly Values[],
	[first]: readonly Measured[]
): Checkup['soFar'] {
	const of = wanted === null ? undefined : values[wanted];
	const here = first ? Math.max(first.features.length, first.gauged.length) : 0;
	return typeof of === 'number' && here < of ? { here, of } : null;
}

function refuseStrays(check: Checked, values: Entered['values']): void {
	const wanted = Object.keys(check.given);
	const stray = Object.keys(values).find((key) => !wanted.includes(key));
	if (stray === undefined) return;
	const plain = stray.replace(/\p{Cc}/gu, '').slice(0, 30);
	throw new GivenError(
		`The check of ${check.of.id} takes no ${plain}; it takes ${wanted.join(', ')}.`
	);
}

/** The givens that are not measured. */
function readPlain(check: Checked, values: Entered['values']): Promise<Values> {
	const isHere = (key: string) => !check.optional.includes(key) || Object.hasOwn(values, key);
	const keys = Object.keys(check.given).filter(
		(key) => !check.measured.includes(key) && isHere(key)
	);
	const given = only(keys, check.given);
	const texts = only(keys, values);
	return readGivens({ ...check, id: check.of.id, given }, texts);
}

async function readMeasured(
	check: Checked,
	{ values, instrument, units }: Entered
): Promise<Measured[]> {
	const found: Measured[] = [];
	for (const key of check.measured) {
		const [text, given] = [values[key], check.given[key]];
		if (!given) continue;
		if (text === undefined || text.trim() === '') {
			if (check.optional.includes(key)) continue;
			throw new GivenError(`${check.of.id} also needs ${key} (${given.label.toLowerCase()}).`);
		}
		if (isGauge(instrument)) {
			const gauged = readGauged(check, key, text);
			const features = gauged.map(() => ({ readings: [], value: NaN, spread: 0 }));
			found.push({ key, features, gauged });
		} else {
			found.push({ key, features: await readFeatures(key, given, text, units), gauged: [] });
		}
	}
	if (found.length > 0) return found;
	throw new GivenError(`Give what was measured: ${check.measured.join(' or ')}.`);
}

/** The givens of every item: what is no list by itself is checked one by one. */
function itemsOf(check: Checked, plain: Values, measured: readonly Measured[]): Values[] {
	const [lists, singles] = parted(measured, ({ key }) => kindAt(check, key).isList);
	const whole = Object.fromEntries(
		lists.map(({ key, features }) => [key, valueOf(kindAt(check, key), features)])
	);
	const counts = singles.map(({ features }) => features.length);
	const count = Math.max(1, ...counts);
	if (counts.some((one) => one !== count)) {
		const told = singles.map(({ key, features }) => `${features.length} of ${key}`);
		throw new GivenError(
			`There are ${told.join(' and ')}; give as many of each, one for every ${check.each}.`
		);
	}
	return Array.from({ length: count }, (_, i) => ({
		...plain,
		...whole,
		...Object.fromEntries(singles.map(({ key, features }) => [key, features[i]?.value ?? NaN]))
	}));
}

function itemWords({ each }: Checked, items: readonly Values[], item: number): string {
	return items.length > 1 ? `${capital(each)} ${item + 1}: ` : '';
}

/** The worked values, if no limit of the method and nothing impossible stands against them. */
function sound(
	check: Checked,
	given: Values,
	values: Values,
	possible: readonly Limit[],
	item: string
): Values {
	const broken = brokenLimit(check.of, values);
	if (broken !== null) throw new TradeError(broken);
	const slip = limitsOf({ ...check, limits: possible }, values).find(
		({ verdict }) => verdict === 'fails'
	);
	if (slip) throw new GivenError(`${item}${slip.limit.says}`);
	return values;
}

interface Work {
	readonly instrument: Instrument | null;
	readonly work: (given: Values) => Values;
	/** Which item it is, where there are several. */
	readonly place: number | null;
}

function toldOf(
	check: Checked,
	limits: readonly CheckLimit[],
	given: Values,
	{ instrument, work, place }: Work
): Told[] {
	const lengths = check.measured.filter(
		(key) => given[key] !== undefined && kindAt(check, key).dimension.name === 'length'
	);
	const resolution = Object.fromEntries(lengths.map((key) => [key, instrument?.division ?? 0]));
	const kept = measuredLimits({ ...check, limits }, given, resolution, work);
	return kept.flatMap((one) => {
		const limit = limits.find(({ from }) => from === one.limit.from);
		return limit ? [{ ...one, limit, place: one.place ?? place, gauged: null }] : [];
	});
}

/** The limit as a gauge told it, where one did. */
function gauged(told: Told, measured: readonly Measured[], item: number): Told {
	const word = measured
		.filter(({ key }) => restsOnKey(told.limit, key))
		.map((one) => one.gauged[item])
		.find((one) => one !== undefined);
	if (word === undefined) return told;
	const broken = word === (told.limit.least ? 'under' : 'over');
	return { ...told, gauged: word, verdict: broken ? 'fails' : 'holds' };
}

/** What limits of one name come to where they hold several values to one bound. */
function summariesOf(limits: readonly Told[]): Summary[] {
	const names = [...new Set(limits.map(({ limit }) => limit.what))];
	return names.flatMap((what) => {
		const [first] = limits.filter(({ limit }) => limit.what === what);
		const own = limits.filter(({ limit }) => limit === first?.limit);
		const sizes = own.map(({ value }) => value);
		const alike = own.every(({ bound }) => Math.abs(bound - (first?.bound ?? NaN)) < 1e-9);
		if (!first || !alike || sizes.length < 2 || !sizes.every(Number.isFinite)) return [];
		return [{ what, kind: first.kind, of: sizes.length, ...statisticsOf(sizes) }];
	});
}

function worstOf(limits: readonly Told[]): Kept['verdict'] {
	const has = (verdict: Kept['verdict']) => limits.some((one) => one.verdict === verdict);
	return has('fails') ? 'fails' : has('undecided') ? 'undecided' : 'holds';
}

function parted<T>(all: readonly T[], test: (one: T) => boolean): [T[], T[]] {
	return [all.filter(test), all.filter((one) => !test(one))];
}
