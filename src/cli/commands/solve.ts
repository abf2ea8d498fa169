import { loadMethods } from '../../lib/engine/families/catalogue.ts';
import { evaluate } from '../../lib/engine/solver/evaluate.ts';
import { brokenLimit } from '../../lib/engine/solver/limits.ts';
import { readGivens } from '../../lib/engine/solver/read-givens.ts';
import { TradeError } from '../../lib/engine/solver/trade-function.ts';
import type { Answer } from '../run.ts';
import { echoed, UsageError } from '../usage-error.ts';
import { columns } from './columns.ts';
import { pairs } from './pairs.ts';
import { plainGivens, stepAnswers, stepRows } from './steps.ts';

export async function solve(args: readonly string[]): Promise<Answer> {
	const [id, ...rest] = args;
	if (id === undefined) throw new UsageError('Name a method; bucktail methods lists them.');
	const method = (await loadMethods()).find((one) => one.id === id);
	if (!method) {
		throw new UsageError(`There is no method ${echoed(id)}; bucktail methods lists them.`);
	}
	const given = await readGivens(method, pairs(rest));
	const values = evaluate(method, given);
	const broken = brokenLimit(method, values);
	if (broken !== null) throw new TradeError(broken);
	const steps = stepAnswers(method, values);
	return {
		data: {
			method: method.id,
			given: plainGivens(method, given),
			steps: steps.map(({ key, value, text }) => ({ key, value, text }))
		},
		text: columns(stepRows(method, steps))
	};
}
