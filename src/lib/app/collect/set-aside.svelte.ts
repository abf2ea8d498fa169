import { SvelteMap, SvelteSet } from 'svelte/reactivity';
import type { SetAsideNoted } from '$lib/engine/schedule/collect-events.ts';
import type { Aside } from '$lib/engine/sets/choose-hand-ins.ts';
import { keepAside, shortened } from './collect-log.ts';

/**
 * What of the open set's hand-ins could not be read: kept in the log with the reason until it is
 * taken off the list.
 */
export class SetAside {
	#hash: string | null = null;
	/** By file and reason, so that the same one dropped twice stands here once. */
	readonly #read = new SvelteMap<string, Aside>();
	/** What was taken off, also of what marking sets aside each time. */
	readonly #off = new SvelteSet<string>();

	/** What could not be read, with what else was set aside. */
	withOthers(others: readonly Aside[]): Aside[] {
		return [...this.#read.values(), ...others].filter((one) => !this.#off.has(keyOf(one)));
	}

	/** Starts with what the log has of a set, and with what was dropped before any was open. */
	async begin(hash: string, noted: readonly SetAsideNoted[] = []): Promise<void> {
		const before = this.#hash === null ? [...this.#read.values()] : [];
		this.#read.clear();
		this.#off.clear();
		this.#hash = hash;
		for (const { file, why, inside, stays } of noted) {
			const one = { file, why, ...(inside !== undefined && { inside }) };
			if (stays) this.#putOn(one);
			else this.#putOff(one);
		}
		await this.add(before);
	}

	/** Resolves to false where the log could not take it. */
	async add(aside: readonly Aside[]): Promise<boolean> {
		const fresh = aside.filter((one) => !this.#read.has(keyOf(one)));
		for (const one of aside) this.#putOn(one);
		if (this.#hash === null || fresh.length === 0) return true;
		return keepAside(this.#hash, true, fresh);
	}

	/** Takes off what goes by the name of a file and is being read again. */
	async takeOffFile(name: string): Promise<boolean> {
		return this.takeOff([...this.#read.values()].filter(({ file }) => file === name));
	}

	/** Once it is off the list, the log knows: a page left at once must not bring it back. */
	async takeOff(aside: readonly Aside[]): Promise<boolean> {
		const isKept = this.#hash !== null && aside.length > 0;
		const saved = !isKept || (await keepAside(this.#hash ?? '', false, aside));
		for (const one of aside) this.#putOff(one);
		return saved;
	}

	#putOn(one: Aside): void {
		this.#read.set(keyOf(one), one);
		this.#off.delete(keyOf(one));
	}

	#putOff(one: Aside): void {
		this.#read.delete(keyOf(one));
		this.#off.add(keyOf(one));
	}

	/** Files that were given again are told of again. */
	backOn(files: readonly string[]): void {
		for (const key of [...this.#off]) {
			if (files.some((file) => key.startsWith(`${file}\n`))) this.#off.delete(key);
		}
	}
}

/** As it stands in the log, so that what was shortened there is the same one. */
function keyOf(one: Aside): string {
	const { file, why } = shortened(one);
	return `${file}\n${why}`;
}
