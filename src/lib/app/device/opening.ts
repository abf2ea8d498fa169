import { type Desk, openDesk, sentenceFor } from './desk.ts';
import { type Device, learnerKey } from './device.svelte.ts';
import { readKept } from './kept.ts';
import { readDesk } from './reading.ts';

/*
 * Opening the store: loaded once the first task is shown.
 */

/** Opens the store; null, and a sentence, when this browser cannot. */
export async function openFor(here: Device): Promise<Desk | null> {
	try {
		const desk = await openDesk({
			onTrouble: (sentence) => {
				here.trouble = sentence;
				// Pages go on without it while it stands still.
				here.ready = true;
			},
			onRecovered: (done, all) => {
				here.trouble = done < all ? recoveringWords(done, all) : null;
			},
			onChange: (ids) => void changedElsewhere(here, ids)
		});
		await readDesk(here, desk, readKept(learnerKey));
		here.trouble = null;
		return desk;
	} catch (error) {
		here.trouble = sentenceFor(error);
		return null;
	}
}

function recoveringWords(done: number, all: number): string {
	const share = Math.floor((10 * done) / all) * 10;
	return `This browser lost its records; they are put back from their copy: ${share} percent.`;
}

async function changedElsewhere(here: Device, ids: readonly string[]): Promise<void> {
	const desk = await here.open();
	if (!desk || ids.length === 0) return;
	const before = here.learner?.id ?? null;
	await readDesk(here, desk, before);
	if (before !== null && here.learner?.id !== before) here.removed = desk.removedSentence;
}
