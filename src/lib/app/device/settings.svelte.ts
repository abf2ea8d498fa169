import type { LengthUnit } from '$lib/engine/quantity/value.ts';

const key = 'bucktail.settings';

/** Choices for this device that change only what is shown. */
class Settings {
	units = $state<LengthUnit>('in');

	/** Reads what was chosen before; called once the page runs in a browser. */
	load(): void {
		if (stored()?.includes('"mm"')) this.units = 'mm';
	}

	switchUnits(units: LengthUnit): void {
		this.units = units;
		try {
			localStorage.setItem(key, JSON.stringify({ units }));
		} catch {
			// Without storage the choice lasts until the page is closed.
		}
	}
}

function stored(): string | null {
	try {
		return localStorage.getItem(key);
	} catch {
		return null;
	}
}

export const settings = new Settings();
