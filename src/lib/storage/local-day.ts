/** The day where the person is, as YYYY-MM-DD. */
export function localDay(time: Date): string {
	const [year, month, day] = [time.getFullYear(), time.getMonth() + 1, time.getDate()];
	return `${digits(year, 4)}-${digits(month, 2)}-${digits(day, 2)}`;
}

function digits(number: number, count: number): string {
	return String(number).padStart(count, '0');
}
