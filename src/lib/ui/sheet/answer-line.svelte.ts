import { kindAt } from '$lib/engine/solver/kind-at.ts';
import { entryOf, readAnswer, workArithmetic } from '$lib/engine/marking/answer.ts';
import type { Entry } from '$lib/engine/marking/verdict.ts';
import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import type { Reading } from '$lib/engine/quantity/read.ts';
import type { Method } from '$lib/engine/solver/method.ts';

/** A reading that came later or was picked, for the text and the units it belongs to. */
interface Settled {
	readonly text: string;
	readonly units: LengthUnit;
	readonly reading: Reading;
	/** Its place among several, where it was picked. */
	readonly option?: number;
}

/** `Read as 5/16 in`, and of a sum what it comes to: `That is 0.2525 in`. */
function readBack(said: string): string {
	if (said.startsWith('≈')) return `That is about${said.slice(1)}`;
	return said.startsWith('=') ? `That is${said.slice(1)}` : `Read as ${said}`;
}

/** One answer as it is typed: the text, and how it is read. */
export class AnswerLine {
	readonly key: string;
	readonly label: string;
	readonly choices: readonly string[];
	/** What may be typed, in one short line; empty where there are words to choose from. */
	readonly hint: string;
	/** The keyboard that fits. */
	readonly keys: 'decimal' | 'text';
	/** Whether it needs more room than a number. */
	readonly isLong: boolean;
	text = $state('');
	/** A problem with the line as a whole, such as being left empty. */
	missing = $state(false);
	/** What to type besides, when only a part of the answer stands there. */
	refused = $state<string | null>(null);
	readonly #method: Method;
	readonly #units: () => LengthUnit;
	#settled = $state.raw<Settled | null>(null);

	readonly reading: Reading = $derived.by(() => {
		const units = this.#units();
		const settled = this.#settled?.text === this.text ? this.#settled : null;
		if (settled?.units === units) return settled.reading;
		const reading = readAnswer(this.#method, this.key, this.text, units);
		return reading.state === 'arithmetic' ? (settled?.reading ?? reading) : reading;
	});

	readonly entry: Entry | null = $derived(entryOf(this.reading));

	constructor(method: Method, key: string, units: () => LengthUnit) {
		this.key = key;
		this.#method = method;
		this.#units = units;
		this.label = method.steps[key]?.label ?? key;
		const { choices, hint, keys, isList, dimension } = kindAt(method, key);
		this.choices = choices;
		this.hint = choices.length > 0 ? '' : hint;
		this.keys = keys;
		this.isLong = isList || dimension.formula === null;
	}

	/** Called on every change of the text; what takes a while to read is read as soon as it can be. */
	type(text: string): void {
		this.text = text;
		this.missing = false;
		this.refused = null;
		if (this.reading.state === 'arithmetic') void this.settle();
	}

	/** Reads what takes a while, arithmetic among it; afterwards the reading is final. */
	async settle(): Promise<void> {
		const { text } = this;
		const units = this.#units();
		if (this.reading.state !== 'arithmetic') return;
		const reading = await workArithmetic(this.#method, this.key, text, units);
		if (this.text === text) this.#settled = { text, units, reading };
	}

	/** Takes one of the readings when there are two. */
	pick(option: number): void {
		if (this.reading.state !== 'which') return;
		const picked = this.reading.options[option];
		if (!picked) return;
		this.#settled = {
			text: this.text,
			units: this.#units(),
			reading: { state: 'read', ...picked },
			option
		};
	}

	/** What is said of the entry: how it is read, or what to do; empty where nothing stands. */
	get says(): string {
		const { reading } = this;
		if (this.missing) return 'Fill this in first.';
		if (this.refused !== null) return this.refused;
		switch (reading.state) {
			case 'empty':
				return '';
			case 'read':
				return `${readBack(reading.said)}.${reading.note ? ` ${reading.note}` : ''}`;
			case 'which':
				return reading.question;
			case 'arithmetic':
				return 'Working it out …';
			case 'unread':
				return reading.why;
			default:
				return reading satisfies never;
		}
	}

	/** Whether what is said asks for another entry. */
	get isProblem(): boolean {
		return this.missing || this.refused !== null || this.reading.state === 'unread';
	}

	/** Which reading was picked for what stands there; null where there was nothing to pick. */
	get picked(): number | null {
		const { text, units, option = null } = this.#settled ?? {};
		return text === this.text && units === this.#units() ? option : null;
	}
}
