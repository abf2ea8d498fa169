import type { Exact } from './exact.ts';
import { readNumber } from './read-number.ts';
import type { Field, Reading } from './reading.ts';
import { unread } from './wanted.ts';

/**
 * What `readNumber` gives, with arithmetic worked out exactly. What that takes, mathjs among it,
 * is loaded the first time there is some. Never rejects, whatever the text.
 */
export async function readArithmetic(text: string, field: Field): Promise<Reading<Exact>> {
	const reading = readNumber(text, field);
	if (reading.state !== 'arithmetic') return reading;
	const worked = await loaded();
	return worked
		? worked.workedReading(reading.text, field)
		: unread('Arithmetic could not be loaded. Write the result itself, or reload the page.');
}

async function loaded() {
	try {
		return await import('./worked.ts');
	} catch {
		return null;
	}
}
