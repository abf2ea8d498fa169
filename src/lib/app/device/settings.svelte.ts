import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { keep, readKept } from './kept.ts';

const key = 'bucktail.settings';

/** Choices for this device that change only what is shown. */
class Settings {
	units = $state<LengthUnit>('in');

	/** Reads what was chosen before; called once the page runs in a browser. */
	load(): void {
		if (readKept(key)?.includes('"mm"')) this.units = 'mm';
	}

	switchUnits(units: LengthUnit): void {
		this.units = units;
		keep(key, JSON.stringify({ units }));
	}
}

export const settings = new Settings();
