import { source } from '../source.ts';
import { type Fact, type Job, type Layer, slack } from './fact.ts';

/*
 * How thick the layers of one joint are to each other, by what they are.
 */

const practice = source('none', 'gauges that go together', 'practice');

const roles = {
	splice: /^(patch|splice|doubler|antenna doubler)/i,
	skin: /skin|panel|cover|plate$/i,
	structure: /stringer|stiffener|rib|frame|spar|web|angle|strip|gusset/i,
	shim: /^shim/i,
	hinge: /^hinge/i
} as const;

function are(layers: readonly Layer[], role: keyof typeof roles): readonly Layer[] {
	return layers.filter(({ name }) => roles[role].test(name) && !isOther(name, role));
}

/** A splice plate is no skin plate, and a hinge leaf on a spar is no spar. */
function isOther(name: string, role: keyof typeof roles): boolean {
	return role !== 'splice' && roles.splice.test(name);
}

const thicknesses = (layers: readonly Layer[]) => layers.map(({ T }) => T);

/** Holds of the layers, where there are any of both sorts. */
function between(
	one: keyof typeof roles,
	other: keyof typeof roles,
	test: (ones: readonly number[], others: readonly number[]) => boolean
): (job: Job) => boolean | null {
	return ({ layers = [] }) => {
		const [ones, others] = [thicknesses(are(layers, one)), thicknesses(are(layers, other))];
		return ones.length > 0 && others.length > 0 ? test(ones, others) : null;
	};
}

/** Holds of what splices and what it joins, where there are any of both sorts. */
function spliced(test: (over: readonly number[], joined: readonly number[]) => boolean) {
	return ({ layers = [] }: Job): boolean | null => {
		const joined = thicknesses(layers.filter(({ name }) => /skin|web/i.test(name)));
		const over = thicknesses(are(layers, 'splice'));
		return over.length > 0 && joined.length > 0 ? test(over, joined) : null;
	};
}

export const jointFacts: readonly Fact[] = [
	{
		id: 'joint.splice',
		says: 'A patch, splice plate or doubler is at least as thick as the skin or web it joins.',
		source: source('ac43', 'ch. 4, par. 4-58k', 'quoted'),
		holds: spliced((over, joined) => Math.min(...over) >= Math.max(...joined) - slack)
	},
	{
		id: 'joint.splice-most',
		says: 'A patch, splice plate or doubler is at most twice as thick as the skin or web it joins.',
		source: practice,
		holds: spliced((over, joined) => Math.max(...over) <= 2 * Math.max(...joined) + slack)
	},
	{
		id: 'joint.structure',
		says: 'What a skin is riveted to is at least a third as thick as the skin.',
		source: practice,
		holds: between('structure', 'skin', (ones, skins) =>
			ones.every((T) => 3 * T >= Math.max(...skins) - slack)
		)
	},
	{
		id: 'joint.skins',
		says: 'Of two skins that lap, neither is more than twice as thick as the other.',
		source: practice,
		holds: between('skin', 'skin', (skins) => Math.max(...skins) <= 2 * Math.min(...skins) + slack)
	},
	{
		id: 'joint.shim',
		says: 'A shim is no thicker than the thickest part it stands between.',
		source: practice,
		holds: ({ layers = [] }) => {
			const shims = thicknesses(are(layers, 'shim'));
			const others = thicknesses(layers.filter(({ name }) => !roles.shim.test(name)));
			return shims.length > 0 && others.length > 0
				? Math.max(...shims) <= Math.max(...others) + slack
				: null;
		}
	},
	{
		id: 'joint.alike',
		says: 'In one joint no part but a shim is more than four times as thick as another.',
		source: practice,
		holds: ({ layers = [] }) => {
			const parts = thicknesses(layers.filter(({ name }) => !roles.shim.test(name)));
			return parts.length > 1 ? Math.max(...parts) <= 4 * Math.min(...parts) + slack : null;
		}
	},
	{
		id: 'joint.hinge',
		says: 'The leaf of a trim tab hinge is 0.032 to 0.063 in thick, and its rivets are 1/8 in or smaller.',
		source: source('none', 'usual hinge stock', 'practice'),
		holds: ({ layers = [], D }) => {
			const leaves = thicknesses(are(layers, 'hinge'));
			if (leaves.length === 0) return null;
			const thin = leaves.every((T) => T >= 0.032 - slack && T <= 0.063 + slack);
			return thin && (D === undefined || D <= 1 / 8 + slack);
		}
	}
];

/** Whether the layers of a joint go together. */
export function goTogether(layers: readonly Layer[]): boolean {
	return jointFacts.every(({ holds }) => holds({ story: '', layers }) !== false);
}
