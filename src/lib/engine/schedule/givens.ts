import type { Task } from '../families/task.ts';

const longest = 300;

/** The drawn numbers of a task as one short text: equal only for the same numbers and question. */
export function givensOf({ id, drawn }: Task): string {
	const text = `${id.code}${id.level} ${JSON.stringify([drawn.given, drawn.asked, drawn.told ?? []])}`;
	return text.length <= longest ? text : `${text.slice(0, longest - 12)} ${checksum(text)}`;
}

/** A 32-bit sum over a text (FNV-1a), in hexadecimal. */
function checksum(text: string): string {
	let sum = 0x811c9dc5;
	for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
	return (sum >>> 0).toString(16);
}
