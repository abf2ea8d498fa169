import type { Rival } from './rival.ts';
import { lowestRecall, retentionTarget } from './rivals/adaptive.ts';
import { blocking, cramming, roundRobin } from './rivals/fixed.ts';
import { planned } from './rivals/planned.ts';

export const ours = planned('ours', 'ours (shipped)');

export const rivals: readonly Rival[] = [
	ours,
	roundRobin,
	blocking,
	cramming,
	retentionTarget,
	lowestRecall
];
