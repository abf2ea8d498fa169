import { loadMethods } from '../../lib/engine/families/catalogue.ts';
import { compiledOf } from '../../lib/engine/solver/compiled.ts';
import { baseUnit } from '../../lib/engine/quantity/kind.ts';
import type { Answer } from '../run.ts';

export async function listMethods(): Promise<Answer> {
	const methods = await loadMethods();
	const data = methods.map((method) => {
		const { steps } = compiledOf(method);
		return {
			method: method.id,
			title: method.title,
			given: Object.entries(method.given).map(([key, given]) => ({
				key,
				label: given.label,
				unit: baseUnit[given.kind],
				list: given.list,
				...(given.oneOf.length > 0 ? { oneOf: given.oneOf } : {})
			})),
			steps: Object.entries(method.steps).map(([key, step]) => ({
				key,
				label: step.label,
				formula: step.formula,
				unit: baseUnit[steps[key]?.kind ?? 'number'],
				list: steps[key]?.list ?? false
			}))
		};
	});
	const text = data.map(({ method, title, given, steps }) =>
		[
			`${method}: ${title}`,
			`  given   ${given.map((one) => one.key).join(', ')}`,
			`  result  ${steps.map((one) => one.key).join(', ')}`
		].join('\n')
	);
	return { data, text: text.join('\n') };
}
