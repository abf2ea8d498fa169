import { rivetDashes } from '../stock.ts';
import { type Job, type Layer, slack } from './fact.ts';

/*
 * The gauges that the layers of a joint are made in, how thick they are to each other, and the rivets that go
 * with them. Apart from the facts, whose sentences no task needs before it can be answered.
 */

type Range = readonly [part: RegExp, least: number, most: number];

/** By the name of a layer; the first that fits. */
const ofLayers: readonly Range[] = [
	[/^shim/i, 0.016, 0.04],
	[/skin|wall panel/i, 0.016, 0.05],
	[/floor panel|access plate/i, 0.025, 0.05],
	[/^patch/i, 0.016, 0.063],
	[/doubler/i, 0.02, 0.063],
	[/rib|stringer|stiffener|backing strip/i, 0.02, 0.05],
	[/frame|floor beam|bulkhead/i, 0.02, 0.063],
	[/spar cap/i, 0.04, 0.09],
	[/web|gusset|splice|angle/i, 0.025, 0.08],
	[/bracket|backing plate/i, 0.032, 0.08]
];

function isWithin(T: number, [, least, most]: Range): boolean {
	return T >= least - slack && T <= most + slack;
}

/** Whether each layer is of a gauge that such a part is made in. */
export function areUsual(layers: readonly Layer[]): boolean {
	return layers.every(({ name, T }) => {
		const range = ofLayers.find(([part]) => part.test(name));
		return !range || isWithin(T, range);
	});
}

const roles = {
	splice: /^(patch|splice|doubler|antenna doubler|backing strip)/i,
	skin: /skin|panel|cover|plate$/i,
	structure: /stringer|stiffener|rib|frame|spar|web|angle|strip|gusset/i,
	cap: /spar cap/i,
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

/** What holds of the layers of a joint, by the id of the fact that says it. */
export const jointRules = {
	'joint.splice': spliced((over, joined) => Math.min(...over) >= Math.max(...joined) - slack),
	'joint.splice-most': spliced(
		(over, joined) => Math.max(...over) <= 1.6 * Math.max(...joined) + slack
	),
	'joint.structure': between('structure', 'skin', (ones, skins) =>
		ones.every((T) => T >= 0.6 * Math.max(...skins) - slack)
	),
	'joint.cap': between('cap', 'skin', (caps, skins) =>
		caps.every((T) => T >= Math.max(...skins) - slack)
	),
	'joint.skins': between(
		'skin',
		'skin',
		(skins) => Math.max(...skins) <= 1.6 * Math.min(...skins) + slack
	),
	'joint.shim': ({ layers = [] }) => {
		const shims = thicknesses(are(layers, 'shim'));
		const others = thicknesses(layers.filter(({ name }) => !roles.shim.test(name)));
		return shims.length > 0 && others.length > 0
			? Math.max(...shims) <= Math.min(...others) + slack
			: null;
	},
	'joint.alike': ({ layers = [] }) => {
		const parts = thicknesses(layers.filter(({ name }) => !roles.shim.test(name)));
		return parts.length > 1 ? Math.max(...parts) <= 2 * Math.min(...parts) + slack : null;
	},
	'joint.hinge': ({ layers = [], D }) => {
		const leaves = thicknesses(are(layers, 'hinge'));
		if (leaves.length === 0) return null;
		const thin = leaves.every((T) => T >= 0.032 - slack && T <= 0.063 + slack);
		return thin && (D === undefined || D <= 1 / 8 + slack);
	}
} as const satisfies Readonly<Record<string, (job: Job) => boolean | null>>;

/** Whether the layers of a joint go together. */
export function goTogether(layers: readonly Layer[]): boolean {
	return (
		areUsual(layers) &&
		Object.values(jointRules).every((holds) => holds({ story: '', layers }) !== false)
	);
}

/** Smallest and largest stocked rivet that goes with a joint, inches. */
export function rivetsFor(thickest: number): { readonly least: number; readonly most: number } {
	const sizes = rivetDashes.map((dash) => dash / 32);
	const up = sizes.findIndex((size) => size >= 3 * thickest - slack);
	return {
		least: Math.max(2.5 * thickest, 3 / 32),
		most: sizes[Math.min(up < 0 ? sizes.length - 1 : up + 1, sizes.length - 1)] ?? 0
	};
}

/**
 * Thinnest sheet that the handbook's table of rivets per inch goes down to for a rivet, by its
 * diameter in 32nds; inches.
 */
const thinnestFor: Readonly<Record<number, number>> = {
	3: 0.016,
	4: 0.016,
	5: 0.02,
	6: 0.032,
	8: 0.036
};

/** Whether no part but a shim is too thin for the rivet. */
export function isThickEnough(layers: readonly Layer[], D: number): boolean {
	const least = thinnestFor[Math.round(32 * D)] ?? 0;
	return layers.every(({ name, T }) => /^shim/i.test(name) || T >= least - slack);
}
