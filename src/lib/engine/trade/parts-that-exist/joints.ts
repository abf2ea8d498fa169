import { source, type Source } from '../source.ts';
import type { Fact } from './fact.ts';
import { jointRules } from './layers.ts';

/*
 * How thick the layers of one joint are to each other, by what they are.
 */

const practice = source('none', 'gauges that go together', 'practice');

function fact(id: keyof typeof jointRules, says: string, from: Source): Fact {
	return { id, says, source: from, holds: jointRules[id] };
}

export const jointFacts: readonly Fact[] = [
	fact(
		'joint.splice',
		'A patch, splice plate, doubler or backing strip is at least as thick as the skin or web it joins.',
		source('ac43', 'ch. 4, par. 4-58k', 'quoted')
	),
	fact(
		'joint.splice-most',
		'A patch, splice plate, doubler or backing strip is of the same gauge as the skin or web it joins, or up to two gauges thicker: at most 1.6 times as thick.',
		practice
	),
	fact(
		'joint.structure',
		'What a skin is riveted to is at least 0.6 times as thick as the skin.',
		practice
	),
	fact('joint.cap', 'A spar cap is at least as thick as the skin on it.', practice),
	fact(
		'joint.skins',
		'Of two skins that lap, neither is more than 1.6 times as thick as the other.',
		practice
	),
	fact(
		'joint.shim',
		'A shim is no thicker than the thinnest part it stands between: what stands off more is fitted again.',
		practice
	),
	fact(
		'joint.alike',
		'In one joint no part but a shim is more than twice as thick as another.',
		practice
	),
	fact(
		'joint.hinge',
		'The leaf of a trim tab hinge is 0.032 to 0.063 in thick, and its rivets are 1/8 in or smaller.',
		source('none', 'usual hinge stock', 'practice')
	)
];
