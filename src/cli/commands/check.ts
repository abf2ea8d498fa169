import { type Checkup, checkPart, type Summary, type Told } from '../../lib/engine/check/check.ts';
import { loadCheck } from '../../lib/engine/check/catalogue.ts';
import { instrumentById, instruments } from '../../lib/engine/check/instruments.ts';
import { nextSteps, stopAndAsk } from '../../lib/engine/check/next.ts';
import { markOwn, type OwnResult } from '../../lib/engine/check/own.ts';
import { lengthText, sayTold, toldName } from '../../lib/engine/check/say.ts';
import type { Plain } from '../../lib/engine/quantity/kinds/kind.ts';
import { kindAt } from '../../lib/engine/solver/kind-at.ts';
import { trainingAid } from '../../lib/engine/trade/cautions.ts';
import { ruleById } from '../../lib/engine/trade/rules.ts';
import { cite } from '../../lib/engine/trade/documents.ts';
import type { Options } from '../options.ts';
import type { Answer } from '../run.ts';
import { echoed, UsageError } from '../usage-error.ts';
import { columns } from './columns.ts';
import { answerOf } from './mark.ts';
import { pairs } from './pairs.ts';
import { stepRows } from './steps.ts';

/** Measurements of a part against the limits of a method. */
export async function checkMeasured(args: readonly string[], options: Options): Promise<Answer> {
	const [id, ...rest] = args;
	if (id === undefined) throw new UsageError('Name a method and what was measured.');
	const { check, family } = await loadCheck(id);
	const instrument = instrumentNamed(options.value('--tool'));
	const checkup = await checkPart(check, { values: pairs(rest), instrument, units: 'in' });
	const own = await markOwn(family, checkup, pairs(options.rest('--own')), 'in');
	const steps = stepsOf(checkup);
	return {
		data: {
			method: id,
			steps: steps.map(({ key, value, text }) => ({ key, value, text })),
			limits: checkup.limits.map((told) => limitData(checkup, told)),
			own: own.results.map((one) => ({ ...answerOf(one), ...placeOf(one) })),
			measured: measuredData(checkup),
			summaries: checkup.summaries.map(summaryData),
			verdict: checkup.verdict,
			next: nextSteps(checkup)
		},
		text: textOf(checkup, own.results, stepRows(check.of, steps))
	};
}

function instrumentNamed(name: string | undefined) {
	if (name === undefined) return null;
	const found = instrumentById(name);
	if (found) return found;
	const known = instruments.map(({ id }) => id).join(', ');
	throw new UsageError(`There is no instrument ${echoed(name)}; name one of ${known}.`);
}

/** The steps, with one value where they are the same for every item and a list where not. */
function stepsOf({ check, items }: Checkup) {
	return Object.entries(check.of.steps).flatMap(([key, { label }]) => {
		const kind = kindAt(check.of, key);
		const values = items.map((one) => one[key]).filter((value) => value !== undefined);
		const texts = values.map((value) => kind.write(value));
		const plain: readonly Plain[] = values.map((value) => kind.plain(value));
		const [text, value] = [texts[0], plain[0]];
		if (text === undefined || value === undefined) return [];
		const alike = texts.every((one) => one === text);
		return [{ key, label, value: alike ? value : plain, text: alike ? text : texts.join(', ') }];
	});
}

function limitData(checkup: Checkup, told: Told) {
	const { kind, value, bound, margin, verdict, limit, gauged } = told;
	const rule = limit.rule === null ? null : ruleById(limit.rule);
	return {
		what: toldName(checkup, told),
		value: gauged ?? kind.plain(value),
		limit: kind.plain(bound),
		margin: gauged === null ? kind.plain(margin) : null,
		verdict,
		...(rule && { rule: rule.says, source: rule.sources.map(cite).join('; ') })
	};
}

function placeOf({ place }: OwnResult): { place?: number } {
	return place === null ? {} : { place: place + 1 };
}

function measuredData({ check, measured }: Checkup) {
	return measured.map(({ key, features, gauged }) => {
		const plain = (value: number) => kindAt(check, key).member.plain(value);
		if (gauged.length > 0) return { key, gauged };
		const [values, readings] = [
			features.map(({ value }) => plain(value)),
			features.map((one) => one.readings.map(plain))
		];
		return { key, values, readings };
	});
}

function summaryData({ what, kind, of, mean, least, most, spread }: Summary) {
	const plain = (value: number) => kind.plain(value);
	return {
		what,
		of,
		mean: plain(mean),
		least: plain(least),
		most: plain(most),
		spread: plain(spread)
	};
}

function textOf(checkup: Checkup, own: readonly OwnResult[], steps: string[][]): string {
	const limits = checkup.limits.map((told) => [
		told.verdict.toUpperCase(),
		sayTold(checkup, told),
		told.verdict === 'fails' ? told.limit.says : ''
	]);
	const spread = checkup.summaries.map(({ what, kind, of, mean, spread: apart }) => {
		const say = (value: number) => lengthText(kind, value, 'in');
		return `${what}: mean of ${of} ${say(mean)}, spread ${say(apart)}`;
	});
	const next = [...nextSteps(checkup), ...(checkup.verdict === 'holds' ? [] : [stopAndAsk])];
	const parts = [
		columns(steps),
		columns(limits),
		spread.join('\n'),
		columns(own.map((one) => [one.key, one.verdict.kind.toUpperCase(), one.read, one.says])),
		next.join('\n'),
		trainingAid
	];
	return parts.filter((part) => part !== '').join('\n\n');
}
