import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { keep, readKept } from './kept.ts';

const key = 'bucktail.settings';

/** Choices for this device that change only what is shown. */
class Settings {
	units = $state<LengthUnit>('in');
	/**
	 * Whether a key by itself does something wherever the focus is. Somebody who speaks to the
	 * computer turns that off (WCAG 2.1.4); the keys of a table or a list work only inside it.
	 */
	singleKeys = $state(true);

	/** Reads what was chosen before; called once the page runs in a browser. */
	load(): void {
		const kept = readKept(key);
		if (kept?.includes('"mm"')) this.units = 'mm';
		if (kept?.includes('"singleKeys":false')) this.singleKeys = false;
	}

	switchUnits(units: LengthUnit): void {
		this.units = units;
		this.#keep();
	}

	turnSingleKeys(on: boolean): void {
		this.singleKeys = on;
		this.#keep();
	}

	#keep(): void {
		const { units, singleKeys } = this;
		keep(key, JSON.stringify({ units, singleKeys }));
	}
}

export const settings = new Settings();
