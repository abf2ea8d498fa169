import { capital, decapital } from '../quantity/capital.ts';
import type { Checkup, Told } from './check.ts';
import { finerThan } from './instruments.ts';
import { placeName } from './say.ts';
import { strayHoles } from './stray-holes.ts';

/** When to stop; stands under every check. */
export const stopAndAsk =
	'Stop and ask before you enlarge, trim, plug or replace anything but a practice part: approved data, the local rules and a certificated mechanic decide.';

/** What to do next, in shop terms: what fails first, then what is undecided. */
export function nextSteps(checkup: Checkup): string[] {
	const strays = strayHoles(checkup);
	const failing = checkup.limits.filter(
		(one) => one.verdict === 'fails' && !strays.some(({ told }) => told === one)
	);
	const adviceOn = ({ limit }: Told) =>
		(checkup.soFar === null ? limit.whenDone : undefined) ?? limit.next;
	const advice = [...new Set(failing.map(adviceOn))].map((next) => {
		const places = placesIn(
			checkup,
			failing.filter((one) => adviceOn(one) === next)
		);
		return places === '' ? next : `${capital(places)}: ${decapital(next)}`;
	});
	const again = measureAgain(checkup);
	const left = checkup.left.map(({ what }) => what);
	const notLooked =
		left.length > 0 && checkup.limits.length === 0
			? [`Not looked at: ${[...new Set(left)].join(', ')}.`]
			: [];
	return [...strays.map(({ next }) => next), ...advice, ...again, ...notLooked];
}

function measureAgain(checkup: Checkup): string[] {
	const near = checkup.limits.filter(({ verdict }) => verdict === 'undecided');
	if (near.length === 0) return [];
	const { instrument } = checkup;
	const finer = instrument && finerThan(instrument);
	const how = finer
		? `with a ${finer.name.toLowerCase()}`
		: 'with a finer instrument, or show them to your instructor';
	const places = placesIn(checkup, near);
	return [`Measure ${places === '' ? 'it' : places} again ${how}, three times each.`];
}

/** `hole 8`, `holes 8 and 11`; empty where there is only one. */
export function placesIn(checkup: Checkup, told: readonly Told[]): string {
	const names = [...new Set(told.map((one) => placeName(checkup, one)))].filter(Boolean);
	const byWord = new Map<string, string[]>();
	for (const name of names) {
		const [word = '', number = ''] = name.split(' ');
		byWord.set(word, [...(byWord.get(word) ?? []), number]);
	}
	return [...byWord]
		.map(([word, numbers]) => `${word}${numbers.length > 1 ? 's' : ''} ${listedPlaces(numbers)}`)
		.join(', ');
}

/** `8, 10 and 11`. */
export function listedPlaces(words: readonly string[]): string {
	const last = words.at(-1) ?? '';
	return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}
