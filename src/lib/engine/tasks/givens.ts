import type { Task } from './task.ts';

const longest = 300;

/**
 * The drawn numbers and the question of a task as one short text, the same at every level: equal
 * only for the same numbers and question.
 */
export function givensOf({ id, drawn }: Task): string {
	const question = JSON.stringify([drawn.asked, drawn.told ?? []]);
	const text = `${id.code} ${JSON.stringify(drawn.given)} ${question}`;
	return text.length <= longest ? text : `${text.slice(0, longest - 12)} ${checksum(text)}`;
}

/** The part of such a text that holds the numbers, without the question. */
export function numbersIn(givens: string): string {
	const end = givens.indexOf('}');
	return end < 0 ? givens : givens.slice(0, end + 1);
}

/** A 32-bit sum over a text (FNV-1a), in hexadecimal. */
export function checksum(text: string): string {
	let sum = 0x811c9dc5;
	for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
	return (sum >>> 0).toString(16);
}
