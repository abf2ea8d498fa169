import { source } from '../trade/source.ts';

/** What a part is measured with. */
export interface Instrument {
	readonly id: string;
	readonly name: string;
	/** Its finest division, in inches. */
	readonly division: number;
	/** The same as it is said: `1/64 in`. */
	readonly reads: string;
	readonly unit: 'in' | 'mm';
}

const millimetre = 1 / 25.4;

/** Finest divisions: steel rule and micrometer as printed, the others as such tools are made. */
export const instruments: readonly Instrument[] = [
	{ id: 'scale', name: 'Steel scale', division: 1 / 64, reads: '1/64 in', unit: 'in' },
	{ id: 'caliper', name: 'Dial caliper', division: 0.001, reads: '0.001 in', unit: 'in' },
	{ id: 'micrometer', name: 'Micrometer', division: 0.0001, reads: '0.0001 in', unit: 'in' },
	{
		id: 'scale-mm',
		name: 'Metric scale',
		division: 0.5 * millimetre,
		reads: '0.5 mm',
		unit: 'mm'
	},
	{
		id: 'caliper-mm',
		name: 'Metric caliper',
		division: 0.02 * millimetre,
		reads: '0.02 mm',
		unit: 'mm'
	},
	{
		id: 'micrometer-mm',
		name: 'Metric micrometer',
		division: 0.01 * millimetre,
		reads: '0.01 mm',
		unit: 'mm'
	},
	{ id: 'gauge', name: 'Go/no-go gauge', division: 0, reads: 'go, under or over', unit: 'in' }
];

/** Whether it tells no size, only on which side of a limit it is. */
export function isGauge(instrument: Instrument | null): boolean {
	return instrument?.id === 'gauge';
}

export const instrumentSources = [
	source('general', 'ch. 11, pp. 11-19 to 11-23'),
	source('none', 'divisions of calipers and metric tools', 'practice')
];

export function instrumentById(id: string): Instrument | undefined {
	return instruments.find((one) => one.id === id);
}

/** A finer one of the same unit; null for the finest. */
export function finerThan({ unit, division }: Instrument): Instrument | null {
	const finer = instruments.filter(
		(one) => one.unit === unit && one.division < division && !isGauge(one)
	);
	return finer[0] ?? null;
}
