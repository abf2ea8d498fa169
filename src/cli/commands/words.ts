import { loadFamilies } from '../../lib/engine/families/catalogue.ts';
import type { Family } from '../../lib/engine/families/family.ts';
import { levels } from '../../lib/engine/families/level.ts';
import { kindAt } from '../../lib/engine/solver/kind-at.ts';
import { drawTask } from '../../lib/engine/tasks/task.ts';
import type { Method } from '../../lib/engine/solver/method.ts';
import { cautions } from '../../lib/engine/trade/cautions.ts';
import { ruleById } from '../../lib/engine/trade/rules.ts';
import type { Answer } from '../run.ts';
import { echoed, UsageError } from '../usage-error.ts';

/** Sentences of one sort, each once: `slip oneLayer: …`. */
type Sentences = Readonly<Record<string, readonly string[]>>;

/** Every sentence that a family can show, for reading aloud; of one family, or of all. */
export async function listWords(args: readonly string[]): Promise<Answer> {
	const [wanted, more] = args;
	if (more !== undefined) throw new UsageError('Give one family or topic, or none for all.');
	const all = await loadFamilies();
	const families = all.filter(
		({ code, id, topic }) =>
			wanted === undefined || [code, id, topic].includes(wanted) || code === wanted.toUpperCase()
	);
	if (families.length === 0) {
		throw new UsageError(`No family or topic is called ${echoed(wanted ?? '')}.`);
	}
	const data = families.map((family) => ({
		code: family.code,
		family: family.id,
		words: sentencesOf(family)
	}));
	const text = data.map(({ code, family, words }) =>
		[`${code} ${family}`, ...Object.entries(words).flatMap(listed)].join('\n')
	);
	return { data, text: text.join('\n\n') };
}

function listed([sort, sentences]: [string, readonly string[]]): string[] {
	return sentences.length === 0 ? [] : [`  ${sort}`, ...sentences.map((one) => `    ${one}`)];
}

/** The sentences of the draws, then those of every method that is drawn, what several say once. */
function sentencesOf(family: Family): Sentences {
	const { methods, ...drawn } = drawnWords(family);
	const ofMethods = methods.map(sentencesOfMethod);
	const sorts = Object.keys(ofMethods[0] ?? {});
	const together = (sort: string) => [...new Set(ofMethods.flatMap((one) => one[sort] ?? []))];
	return { ...drawn, ...Object.fromEntries(sorts.map((sort) => [sort, together(sort)])) };
}

function sentencesOfMethod(method: Method): Sentences {
	const steps = Object.entries(method.steps);
	const rules = [...new Set(steps.flatMap(([, { rule }]) => rule ?? []))];
	return {
		givens: Object.entries(method.given).map(([key, { label }]) => `${key}: ${label}`),
		steps: steps.map(([key, { label, formula }]) => `${key}: ${label} = ${formula}`),
		asks: steps.flatMap(([key, { asks }]) => (asks === '' ? [] : [`${key}: ${asks}`])),
		hints: [...new Set(steps.map(([key]) => kindAt(method, key).hint))],
		rules: rules.map((id) => `${id}: ${ruleById(id).says}`),
		tolerances: [...new Set(steps.flatMap(([, { tolerance }]) => tolerance?.why ?? []))],
		slips: Object.entries(method.slips).map(([id, { says, step }]) => `${step} ${id}: ${says}`),
		limits: method.limits.map(({ says }) => says),
		outcomes: method.outcomes.flatMap(({ at, cases }) =>
			Object.entries(cases).map(([id, { says }]) => `${at.join(', ')} ${id}: ${says}`)
		)
	};
}

const drawsEach = 400;

/** What stands in the draws; a sentence that comes up more rarely than once in 400 is not seen. */
function drawnWords(family: Family) {
	const sets = {
		questions: new Set<string>(),
		stories: new Set<string>(),
		basis: new Set<string>(),
		told: new Set<string>(),
		cautions: new Set<string>()
	};
	const methods = new Map([[family.method.id, family.method]]);
	for (const level of levels) {
		for (let seed = 0; seed < drawsEach; seed++) {
			const { drawn, method } = drawTask(family, level, seed);
			const { question, story, basis, told = [] } = drawn;
			methods.set(method.id, method);
			sets.questions.add(question);
			sets.stories.add(story);
			if (basis !== undefined) sets.basis.add(basis);
			for (const [label] of told) sets.told.add(label);
			for (const caution of drawn.cautions) sets.cautions.add(cautions[caution]);
		}
	}
	return {
		questions: [...sets.questions],
		stories: [...sets.stories],
		basis: [...sets.basis],
		told: [...sets.told],
		cautions: [...sets.cautions],
		methods: [...methods.values()]
	};
}
