import { all, create, type FactoryFunctionMap, type MathJsInstance, type Unit } from 'mathjs';
import type { Draw, Family } from '../../../src/lib/engine/families/family.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { isList, type Value } from '../../../src/lib/engine/quantity/value.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import { evaluate, withSlip } from '../../../src/lib/engine/solver/evaluate.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { carriedIn } from '../../../src/lib/engine/solver/tolerance.ts';
import { TradeError } from '../../../src/lib/engine/solver/trade-function.ts';
import { functions } from '../../../src/lib/engine/trade/functions.ts';

const math = create(all as FactoryFunctionMap) as MathJsInstance;

const rounds = 7;
const tasksEach = 100;
const warmUp = 3000;

const unitOf: Readonly<Partial<Record<string, string>>> = {
	length: 'in',
	angle: 'deg',
	weight: 'lb',
	density: 'lb/in^3'
};

/** Microseconds a task. */
export interface Speed {
	/** Drawing it: the numbers, the task number, the answer, every slip, and comparing them all. */
	readonly draw: number;
	/** Of this, working the formulas: as they are, rounded as in a shop, and with every slip. */
	readonly work: number;
	/** The same formulas, as often, evaluated as text with mathjs and its units. */
	readonly text: number;
}

/**
 * Every draw counts, also the ones drawn again. Against the text, drawing pays for more than
 * formulas; working them pays for the same.
 */
export function compareWithText(family: Family): Speed {
	let drawn: Draw[] = [];
	const recorded: Family = {
		...family,
		draw: (random, level) => {
			const draw = family.draw(random, level);
			drawn.push(draw);
			return draw;
		}
	};
	const isOwn = ({ method = family.method }: Draw) => method === family.method;
	// Level 2, or the first where every draw is by the method whose text is worked beside it.
	const level = ([2, 1, 3] as const).find((one) => {
		drawn = [];
		for (let seed = 0; seed < tasksEach; seed++) drawTask(recorded, one, seed);
		return drawn.every(isOwn);
	});
	if (!level) throw new Error(`no level of ${family.id} is drawn by its own method alone`);
	for (let seed = 0; seed < warmUp; seed++) drawTask(family, level, seed);
	return {
		draw: quickest(() => {
			for (let seed = 0; seed < tasksEach; seed++) drawTask(family, level, seed);
		}),
		work: quickest(() => {
			for (const draw of drawn) workCompiled(family, draw);
		}),
		text: quickest(() => {
			for (const draw of drawn) workAsText(family, draw);
		})
	};
}

/** The least of several rounds: whatever else the machine does only adds. */
function quickest(run: () => void): number {
	run();
	const times = Array.from({ length: rounds }, () => {
		const start = performance.now();
		run();
		return ((performance.now() - start) * 1000) / tasksEach;
	});
	return Math.min(...times);
}

function workCompiled({ method }: Family, { given }: Draw): void {
	try {
		const right = evaluate(method, given);
		evaluate(method, given, { carry: carriedIn(method) });
		for (const id of Object.keys(method.slips)) workSlip(method, right, id);
	} catch (error) {
		if (!(error instanceof TradeError)) throw error;
	}
}

function workSlip(method: Method, right: Values, id: string): void {
	try {
		withSlip(method, right, id);
	} catch (error) {
		// A slip may lead nowhere.
		if (!(error instanceof TradeError)) throw error;
	}
}

/** The steps as they are, once more as for rounding, and once for every slip, as text. */
function workAsText({ method }: Family, drawn: Draw): void {
	const given = Object.fromEntries(
		Object.entries(drawn.given).map(([key, value]) => [
			key,
			withUnit(value, method.given[key]?.kind.dimension.name ?? 'number')
		])
	);
	for (const slip of [undefined, undefined, ...Object.values(method.slips)]) {
		const scope: Record<string, unknown> = { ...textFunctions, ...given };
		for (const [key, step] of Object.entries(method.steps)) {
			const formula = slip?.step === key ? slip.formula : step.formula;
			try {
				scope[key] = math.evaluate(formula, scope);
			} catch {
				// A slip may lead nowhere; so it does in the compiled method.
				break;
			}
		}
	}
}

function withUnit(value: Value, kind: string): unknown {
	if (typeof value === 'string') return value;
	const unit = unitOf[kind];
	if (typeof value === 'number') return unit === undefined ? value : math.unit(value, unit);
	return isList(value) ? math.matrix(value.map((one) => withUnit(one, kind)) as number[]) : value;
}

/**
 * The trade functions for values with units: numbers are taken out and put back in. A function
 * of single values is worked for every member of a list.
 */
const textFunctions = Object.fromEntries(
	Object.entries(functions).map(([name, fn]) => {
		const run = fn.run as (...plain: unknown[]) => Value;
		const work = (...values: unknown[]): unknown => {
			const list = values.find(
				(value, i) => math.isMatrix(value) && !(fn.takes[i] ?? '').includes('[]')
			);
			if (math.isMatrix(list)) {
				const members = list.valueOf() as unknown[];
				return math.matrix(
					members.map((one) =>
						work(...values.map((value) => (value === list ? one : value)))
					) as number[]
				);
			}
			const like = values.find((value) => math.isUnit(value) || math.isMatrix(value));
			return restored(run(...values.map(plainOf)), fn.gives, like);
		};
		return [name, work];
	})
);

function plainOf(value: unknown): unknown {
	if (math.isUnit(value)) return numberOf(value);
	if (math.isMatrix(value)) return (value.valueOf() as unknown[]).map(plainOf);
	return value;
}

function numberOf(unit: Unit): number {
	const base = Object.values(unitOf).find((name) => unit.equalBase(math.unit(1, name)));
	return base === undefined ? Number(unit.toNumber()) : unit.toNumber(base);
}

function restored(value: Value, gives: string, like: unknown): unknown {
	const kind = gives.replace('[]', '');
	if (kind in unitOf) return withUnit(value, kind);
	if (kind.length > 1 || typeof value === 'string') return value;
	const sample = math.isMatrix(like) ? (like.valueOf() as unknown[])[0] : like;
	const base = math.isUnit(sample)
		? Object.entries(unitOf).find(([, name]) => sample.equalBase(math.unit(1, name)))
		: undefined;
	return withUnit(value, base?.[0] ?? 'number');
}
