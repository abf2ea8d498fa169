import type { Family } from '../../../src/lib/engine/families/family.ts';
import { drawTask } from '../../../src/lib/engine/tasks/task.ts';
import type { Level } from '../../../src/lib/engine/families/level.ts';

const tasksEach = 50;

/** The method that a draw may hold shows in what is asked and right; the slips it is held to, in what is drawn. */
const notTheTask = new Set(['method', 'cautions', 'chief', 'apart']);

/**
 * Fingerprint of the first fifty tasks of a family at a level: what is told, given and asked, and
 * every right value to ten digits. Cautions stand beside a task and are mended without another one.
 */
export async function fingerprint(family: Family, level: Level): Promise<string> {
	const tasks = Array.from({ length: tasksEach }, (_, seed) => {
		const { number, drawn, right } = drawTask(family, level, seed);
		return { number, drawn, right };
	});
	const text = JSON.stringify(tasks, (key, value: unknown) =>
		notTheTask.has(key)
			? undefined
			: typeof value === 'number'
				? Number(value.toPrecision(10))
				: value
	);
	const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
	return [...new Uint8Array(hash).slice(0, 8)]
		.map((byte) => byte.toString(16).padStart(2, '0'))
		.join('');
}
