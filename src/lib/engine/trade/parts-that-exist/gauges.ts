import { source } from '../source.ts';
import type { Fact } from './fact.ts';
import { areUsual } from './layers.ts';
import { isUsualGauge } from './made-of.ts';

/*
 * The gauges that parts of light aircraft are made in.
 */

const practice = source('none', 'gauges of light aircraft', 'practice');

export const gaugeFacts: readonly Fact[] = [
	{
		id: 'gauge.layer',
		says: 'Each layer is of a gauge that such a part is made in.',
		source: practice,
		holds: ({ layers = [] }) => (layers.length > 0 ? areUsual(layers) : null)
	},
	{
		id: 'gauge.story',
		says: 'A sheet is of a gauge that the part in the story is made in.',
		source: practice,
		holds: ({ story, layers, T }) => (T === undefined || layers ? null : isUsualGauge(story, T))
	}
];
