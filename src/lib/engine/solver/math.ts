import {
	addDependencies,
	create,
	divideDependencies,
	type FactoryFunctionMap,
	type MathJsInstance,
	multiplyDependencies,
	parseDependencies,
	powDependencies,
	subtractDependencies,
	tanDependencies,
	unaryMinusDependencies,
	unitDependencies
} from 'mathjs';

export type { MathNode, Unit } from 'mathjs';

/*
 * As much of mathjs as formulas need: it reads their text and works their dimensions. It runs when
 * the app is built, never on a page.
 */

const parts = {
	parseDependencies,
	unitDependencies,
	addDependencies,
	subtractDependencies,
	multiplyDependencies,
	divideDependencies,
	powDependencies,
	unaryMinusDependencies,
	tanDependencies
} as FactoryFunctionMap;
export const math = create(parts) as MathJsInstance;
