import { loadMethods } from '../../lib/engine/families/catalogue.ts';
import { kindAt } from '../../lib/engine/solver/kind-at.ts';
import type { Answer } from '../run.ts';

export async function listMethods(): Promise<Answer> {
	const methods = await loadMethods();
	const data = methods.map((method) => {
		return {
			method: method.id,
			title: method.title,
			given: Object.entries(method.given).map(([key, given]) => ({
				key,
				label: given.label,
				unit: given.kind.dimension.unit,
				list: given.kind.isList,
				...(given.kind.choices.length > 0 ? { oneOf: given.kind.choices } : {})
			})),
			steps: Object.entries(method.steps).map(([key, step]) => ({
				key,
				label: step.label,
				formula: step.formula,
				unit: kindAt(method, key).dimension.unit,
				list: kindAt(method, key).isList
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
