import { parseAst } from 'vite';
import { uses } from '../lib/engine/solver/laid.ts';
import type { Method } from '../lib/engine/solver/method.ts';
import type { Piece } from '../lib/engine/solver/write.ts';
import {
	callsIn,
	edited,
	type Edit,
	type Node,
	propertiesOf,
	propertyOf,
	textOf
} from './syntax.ts';

/*
 * A method's file as a page first loads it: what draws a task. What is told of an answer is replaced
 * by calls of `solver/later.ts`. What is written in another shape than usual stays where it is, which
 * costs bytes and nothing else.
 */

/** What a file in `methods/` exports. */
export interface Written {
	readonly methods: readonly Method[];
	readonly pieces: readonly Piece[];
}

/**
 * @param code TypeScript of a file in `methods/`
 * @param later path of `solver/later.ts`
 */
export function firstPart(code: string, written: Written, later: string): string {
	const { body } = parseAst(code, { lang: 'ts' }) as unknown as { body: Node[] };
	const edits = body.flatMap(callsIn).flatMap(({ name, args }): Edit[] => {
		const [first, , third] = args;
		switch (name) {
			case 'step':
				// The formula as text, which ships compiled, and the step as a question.
				return [first, propertyOf(third, 'asks')].flatMap((at) => (at ? [{ at, text: "''" }] : []));
			case 'method': {
				const method = written.methods.find(({ id }) => id === textOf(propertyOf(first, 'id')));
				return method ? methodEdits(first, method) : [];
			}
			case 'piece': {
				const piece = written.pieces.find((one) => one.piece === textOf(first));
				return piece ? slipEdits(third, `piece/${piece.piece}`, pieceSlips(piece)) : [];
			}
			default:
				return [];
		}
	});
	const names = ['laterSlips', 'laterOutcomes', 'laterInverse'];
	return `import { ${names.join(', ')} } from ${JSON.stringify(later)};\n${edited(code, body, edits)}`;
}

function methodEdits(parts: Node | undefined, method: Method): Edit[] {
	const { id } = method;
	const own = Object.values(method.slips).filter(({ from }) => from.unit === id);
	const slips = propertiesOf(propertyOf(parts, 'steps')).flatMap(([key, value]) => {
		const places = own.flatMap(({ step }, place) => (step === key ? [place] : []));
		return slipEdits(value, id, [places[0] ?? 0, (places.at(-1) ?? -1) + 1]);
	});
	const at = method.outcomes.map((one) => one.at);
	const inverses = propertiesOf(propertyOf(parts, 'inverses')).flatMap(([want, value]) => {
		const inverse = method.inverses[want];
		const ids = inverse && 'slips' in inverse ? Object.keys(inverse.slips) : [];
		const formula = propertyOf(value, 'formula');
		return [
			...(formula ? [{ at: formula, text: "''" }] : []),
			...edit(propertyOf(value, 'slips'), 'laterInverse', [id, want, ids])
		];
	});
	return [...slips, ...edit(propertyOf(parts, 'outcomes'), 'laterOutcomes', [id, at]), ...inverses];
}

/** How many slips a piece has, and which are worked from a value that not every method has. */
function pieceSlips({ may, step }: Piece): unknown[] {
	const slips = Object.entries(step.slips);
	const using = slips.flatMap(([id, one]) => {
		const names = Object.keys(may).filter((name) => uses(one, name));
		return names.length > 0 ? [[id, names] as const] : [];
	});
	return [0, slips.length, ...(using.length > 0 ? [Object.fromEntries(using)] : [])];
}

/** @param call of `step`, with its options last */
function slipEdits(call: Node | undefined, unit: string, about: readonly unknown[]): Edit[] {
	const [step] = call ? callsIn(call) : [];
	const slips = step?.name === 'step' ? propertyOf(step.args[2], 'slips') : undefined;
	return edit(slips, 'laterSlips', [unit, ...about]);
}

function edit(at: Node | undefined, name: string, args: readonly unknown[]): Edit[] {
	const text = `${name}(${args.map((one) => JSON.stringify(one)).join(', ')})`;
	return at ? [{ at, text }] : [];
}
