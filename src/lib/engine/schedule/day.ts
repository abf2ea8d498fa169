/*
 * Days as whole numbers since 1970-01-01, without a clock: the calendar is arithmetic
 * (proleptic Gregorian, as in ISO 8601).
 */

/** Day number of a date written YYYY-MM-DD. */
export function dayOf(iso: string): number {
	const [year = 1970, month = 1, date = 1] = iso.split('-').map(Number);
	const y = month <= 2 ? year - 1 : year;
	const era = Math.floor(y / 400);
	const yearOfEra = y - era * 400;
	const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + date - 1;
	const dayOfEra =
		yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
	return era * 146097 + dayOfEra - 719468;
}

/** The date of a day number, written YYYY-MM-DD. */
export function isoOf(day: number): string {
	const z = day + 719468;
	const era = Math.floor(z / 146097);
	const dayOfEra = z - era * 146097;
	const yearOfEra = Math.floor(
		(dayOfEra -
			Math.floor(dayOfEra / 1460) +
			Math.floor(dayOfEra / 36524) -
			Math.floor(dayOfEra / 146096)) /
			365
	);
	const dayOfYear =
		dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
	const shifted = Math.floor((5 * dayOfYear + 2) / 153);
	const date = dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1;
	const month = shifted < 10 ? shifted + 3 : shifted - 9;
	const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
	return [String(year).padStart(4, '0'), two(month), two(date)].join('-');
}

function two(number: number): string {
	return String(number).padStart(2, '0');
}
