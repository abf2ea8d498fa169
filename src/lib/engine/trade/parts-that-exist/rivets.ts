import { source } from '../source.ts';
import { type Fact, type Job, slack } from './fact.ts';
import { isThickEnough, rivetsFor } from './layers.ts';

function thickestIn({ layers, T }: Job): number | undefined {
	return layers && layers.length > 0 ? Math.max(...layers.map((one) => one.T)) : T;
}

const light =
	/skin|door|flap|fairing|patch|cowl|wing tip|tail cone|hinge|floor panel|cover|seal|baffle|nose rib/i;

const structure = /skin|spar|stringer|rib\b|ribs\b|frame|bulkhead|web|longeron|stiffener/i;

export const rivetFacts: readonly Fact[] = [
	{
		id: 'rivet.size',
		says: 'A rivet is at least 2.5T of the thickest sheet and 3/32 in, and at most one stocked size over the next size above 3T.',
		source: source(
			'airframe',
			'ch. 4, p. 4-32; the size above is accepted by AC 43.13-1B, par. 4-58g(2)(a)'
		),
		holds: (job) => {
			const [T, { D }] = [thickestIn(job), job];
			if (T === undefined || D === undefined) return null;
			const { least, most } = rivetsFor(T);
			return D >= least - slack && D <= most + slack;
		}
	},
	{
		id: 'rivet.thin-sheet',
		says: 'No part but a shim is thinner than the table of rivets per inch goes down to for the rivet.',
		source: source('airframe', 'ch. 4, p. 4-88, Fig. 4-169, first row of each column'),
		holds: ({ layers, T, D }) => {
			const parts = layers ?? (T === undefined ? [] : [{ name: '', T }]);
			return D === undefined || parts.length === 0 ? null : isThickEnough(parts, D);
		}
	},
	{
		id: 'rivet.quarter',
		says: 'A 1/4 in rivet goes where the thickest sheet is over 0.063 in.',
		source: source('none', 'rivets of light aircraft', 'practice'),
		holds: (job) => {
			const T = thickestIn(job);
			return T === undefined || job.D === undefined || job.D < 1 / 4 - slack ? null : T > 0.065;
		}
	},
	{
		id: 'rivet.heavy',
		says: 'A rivet of 3/16 in and over, or of 2017 or 2024, is not called out for a skin, a door, a cover, a hinge or the like, but by 3T.',
		source: source('none', 'rivets of light aircraft', 'practice'),
		holds: ({ D, letters, layers, T, story }) =>
			D === undefined ||
			layers ||
			(T !== undefined && D < 3 * T + 1 / 32) ||
			(D < 3 / 16 - slack && !/^DD?$/.test(letters ?? ''))
				? null
				: !light.test(story)
	},
	{
		id: 'rivet.length',
		says: 'A rivet called out for a joint of sheets is 2D to 4D long: 1.5D makes its head.',
		source: source('none', 'rivets of sheet metal', 'practice'),
		holds: ({ D, length }) =>
			D === undefined || length === undefined
				? null
				: length >= 2 * D - slack && length <= 4 * D + slack
	},
	{
		id: 'rivet.1100',
		says: 'An 1100 rivet (A) is not used in structure.',
		source: source('navedtra14315', 'ch. 3'),
		holds: ({ letters, story, layers = [] }) =>
			letters === 'A'
				? !structure.test(story) && !layers.some(({ name }) => structure.test(name))
				: null
	},
	{
		id: 'rivet.firewall',
		says: 'A firewall panel is of steel: no aluminium rivet is called out for one.',
		source: source('none', 'firewalls', 'practice'),
		holds: ({ letters, story }) =>
			letters === undefined ? null : !/firewall (panel|sheet|web)/i.test(story)
	},
	{
		id: 'rivet.small-2024',
		says: 'Rivets of 2017 (D) and 2024 (DD) are not used at 1/8 in and under.',
		source: source('navedtra14315', 'ch. 3: usually 3/16 in and larger'),
		holds: ({ letters, D }) =>
			D === undefined || (letters !== 'D' && letters !== 'DD') ? null : D > 1 / 8 + slack
	}
];
