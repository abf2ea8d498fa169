import type { KnownEvent } from '$lib/engine/schedule/event.ts';
import {
	type CollectEvent,
	type HandInCollected,
	isCollectEvent,
	longestAside,
	longestFileName,
	longestHandIn,
	type MarkChanged,
	type SetAsideNoted
} from '$lib/engine/schedule/collect-events.ts';
import type { Aside, Choice } from '$lib/engine/sets/choose-hand-ins.ts';
import type { Override } from '$lib/engine/sets/override.ts';
import { device } from '../device/device.svelte.ts';
import { logbook } from '../device/logbook.ts';
import type { KeptHandIn } from './set-work.ts';

/** What the log of the learner at work holds of one set's hand-ins. */
export interface CollectedBefore {
	readonly handIns: readonly HandInCollected[];
	readonly overrides: readonly Override[];
	readonly choices: readonly Choice[];
	/** What could not be read, the last word on each in the order of the log. */
	readonly aside: readonly SetAsideNoted[];
}

interface Lists {
	readonly handIns: HandInCollected[];
	readonly overrides: Override[];
	readonly choices: Choice[];
	readonly aside: SetAsideNoted[];
}

/** Everything collected on this device, by the hash of its set. */
export async function collectedBefore(): Promise<Map<string, CollectedBefore>> {
	const desk = await device.open();
	const { learner } = device;
	const events = desk && learner ? await desk.eventsOf(learner.id, isCollectEvent) : [];
	const byHash = new Map<string, Lists>();
	for (const event of events) {
		if (!isOfSet(event)) continue;
		const own = byHash.get(event.hash) ?? { handIns: [], overrides: [], choices: [], aside: [] };
		byHash.set(event.hash, own);
		if (event.type === 'collected') own.handIns.push(event);
		else if (event.type === 'collected-mark') own.overrides.push(overrideIn(event));
		else if (event.type === 'collected-choice')
			own.choices.push({ code: event.code, owner: event.owner });
		else own.aside.push(event);
	}
	return byHash;
}

function isOfSet(event: KnownEvent): event is CollectEvent {
	return isCollectEvent(event.type);
}

function overrideIn({ code, task, marks, note }: MarkChanged): Override {
	return { code, task, marks, note };
}

/** Whether a hand-in is short enough for the log. */
export function canBeKept({ text }: KeptHandIn): boolean {
	return text !== null && text.length <= longestHandIn;
}

/** Hand-ins written at once. */
const together = 20;

/** Puts hand-ins into the log; false where this browser cannot keep them. */
export function keepHandIns(
	hash: string,
	by: HandInCollected['by'],
	found: readonly KeptHandIn[]
): Promise<boolean> {
	const events = found.map(({ file, text }) => ({
		type: 'collected' as const,
		hash,
		by,
		file: file.slice(0, longestFileName),
		text: text ?? ''
	}));
	return logbook.noteInParts(events, together);
}

export function keepChoice(hash: string, choice: Choice): Promise<boolean> {
	return logbook.note({ type: 'collected-choice', hash, ...choice });
}

export function keepOverride(hash: string, override: Override): Promise<boolean> {
	return logbook.note({ type: 'collected-mark', hash, ...override });
}

/** As much of what was set aside as the log takes. */
export function shortened({ file, why, inside }: Aside): Aside {
	return {
		file: file.slice(0, longestFileName),
		why: why.slice(0, longestAside.why),
		...(inside !== undefined && { inside: inside.slice(0, longestAside.inside) })
	};
}

/** Notes what was set aside, or that it is off the list. */
export function keepAside(hash: string, stays: boolean, all: readonly Aside[]): Promise<boolean> {
	const events = all.map((one) => ({
		type: 'collected-aside' as const,
		hash,
		stays,
		...shortened(one)
	}));
	return logbook.noteInParts(events, together);
}
