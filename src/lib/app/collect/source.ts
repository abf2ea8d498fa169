import type { Pasted } from './set-work.ts';

/** A file from the device has a function of that name. */
export function isPasted(source: File | Pasted): source is Pasted {
	return 'text' in source && typeof source.text === 'string';
}

/** What a source is called: a file of a folder with the way to it. */
export function nameOf(source: File | Pasted): string {
	return isPasted(source) ? source.name : source.webkitRelativePath || source.name;
}
