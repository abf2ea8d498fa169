import type { Method } from '../solver/method.ts';
import type { Family, FamilyBody } from './family.ts';
import { type Card, cards } from './topics.ts';

/** A loader for every file of a family, so that a page fetches only the ones it draws from. */
const files = import.meta.glob<{ tasks: FamilyBody }>([
	'./*/*.ts',
	'!./*/topic.ts',
	'!./parts/*.ts'
]);

const byCode = new Map(cards.map((card) => [card.code, card]));
const loading = new Map<string, Promise<Family>>();

export function cardByCode(code: string): Card | undefined {
	return byCode.get(code);
}

/** The family of a card, with what it tells of answers. Its file is loaded at the first call and kept. */
export async function loadFamily(card: Card): Promise<Family> {
	const [family, { tell }] = await Promise.all([loadToDraw(card), import('./tell.ts')]);
	await tell();
	return family;
}

/** The same without what it tells of answers: that comes with `tell` (tell.ts). */
export function loadToDraw(card: Card): Promise<Family> {
	const known = loading.get(card.code);
	if (known) return known;
	const load = files[`./${card.topic}/${card.id}.ts`];
	if (!load) {
		throw new Error(
			`families/${card.topic}/topic.ts lists ${card.id}: write families/${card.topic}/${card.id}.ts, which exports tasks`
		);
	}
	const fresh = load().then(({ tasks }) => ({ ...card, ...tasks }));
	loading.set(card.code, fresh);
	// A file that could not be fetched is asked for again next time.
	fresh.catch(() => loading.delete(card.code));
	return fresh;
}

export function loadFamilies(): Promise<Family[]> {
	return Promise.all(cards.map(loadFamily));
}

/** Every method, each once, sorted by id. */
export async function loadMethods(): Promise<Method[]> {
	const families = await loadFamilies();
	const methods = families.flatMap(({ method, others = [] }) => [method, ...others]);
	const byId = new Map(methods.map((method) => [method.id, method]));
	return [...byId.values()].sort((one, other) => (one.id < other.id ? -1 : 1));
}
