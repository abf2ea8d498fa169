import type { Method } from '../solver/method.ts';
import type { AnyFamily, TopicId } from './family.ts';
import * as list from './list.ts';

/** Every family of tasks, in the order of the list. */
export const families: readonly AnyFamily[] = Object.values(list);

const codes = new Map(families.map((family) => [family.code, family]));

export function byCode(code: string): AnyFamily | undefined {
	return codes.get(code);
}

export function familiesOf(topic: TopicId): readonly AnyFamily[] {
	return families.filter((family) => family.topic === topic);
}

/** Every method, each once, sorted by id. */
export const methods: readonly Method[] = [
	...new Map(families.map(({ method }) => [method.id, method])).values()
].sort((one, other) => (one.id < other.id ? -1 : 1));

export function methodById(id: string): Method | undefined {
	return methods.find((method) => method.id === id);
}
