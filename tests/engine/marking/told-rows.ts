import { expect, test } from 'vitest';
import { cardByCode, loadFamily, loadMethods } from '../../../src/lib/engine/families/catalogue.ts';
import { levels } from '../../../src/lib/engine/families/level.ts';
import type { Values } from '../../../src/lib/engine/solver/compiled.ts';
import type { Method } from '../../../src/lib/engine/solver/method.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import { toldOf } from '../wrong-answers/told.ts';
import { taskOf } from './typed-answers.ts';

/** An answer to a task with chosen givens, and what is told of it, entry by entry. */
export interface Row {
	readonly code: string;
	readonly id: string;
	readonly given: Values;
	readonly asked: readonly string[];
	readonly typed: Readonly<Record<string, string>>;
	readonly told: Readonly<Record<string, string>>;
}

const methods = new Map((await loadMethods()).map((method) => [method.id, method]));

/** A method that is joined where a task is drawn. */
async function methodDrawn(code: string, id: string): Promise<Method> {
	const card = cardByCode(code);
	const family = card && (await loadFamily(card));
	for (let seed = 0; family && seed < 300; seed++) {
		const { method } = drawTask(family, levels[seed % levels.length] ?? 1, seed);
		if (method.id === id) return method;
	}
	throw new Error(`no method: ${id}`);
}

/** A test for each of these. */
export function testTold(rows: readonly Row[]): void {
	test.each(rows)('$id, $typed: $told', async ({ code, id, given, asked, typed, told }) => {
		const method = methods.get(id) ?? (await methodDrawn(code, id));
		const all = await toldOf(await taskOf(code, method, given, asked), typed);
		const words = [...(all ?? [])].map(([key, one]) => {
			const causes = one.kind === 'offered' ? one.causes : one.kind === 'named' ? [one.cause] : [];
			return [key, causes.map(([name]) => name).join(' or ') || one.kind];
		});
		expect(Object.fromEntries(words)).toEqual(told);
	});
}
