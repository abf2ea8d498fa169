import { read } from './read.ts';
import type { Expected, Reading } from './reading.ts';
import { unread } from './wanted.ts';

/**
 * What `read` gives, with arithmetic worked out exactly. What that takes, mathjs among it, is
 * loaded the first time there is some. Never rejects, whatever the text.
 */
export async function readArithmetic(text: string, expected: Expected): Promise<Reading> {
	const reading = read(text, expected);
	if (reading.state !== 'arithmetic') return reading;
	const worked = await loaded();
	return worked
		? worked.workedReading(reading.text, expected)
		: unread('Arithmetic cannot be loaded without a network yet. Write the result itself.');
}

async function loaded() {
	try {
		return await import('./worked.ts');
	} catch {
		return null;
	}
}
