import { expect, test } from 'vitest';
import { inBothUnits } from '../../../src/lib/engine/quantity/both-units.ts';

test.each([
	['Take the next 1/16 in up.', 'Take the next 1/16 in (1.59 mm) up.'],
	['Within 0.003 in: a hair.', 'Within 0.003 in (0.08 mm): a hair.'],
	['about 1 1/2 in', 'about 1 1/2 in (38.1 mm)'],
	['1/2 to 1 in of trim', '1/2 to 1 in (12.7 to 25.4 mm) of trim'],
	['3/16 and 1/4 in', '3/16 and 1/4 in (4.76 and 6.35 mm)'],
	['48 × 96 in sheet', '48 × 96 in (1219.2 × 2438.4 mm) sheet'],
	['2024-T3, 0.040 in', '2024-T3, 0.040 in (1.02 mm)'],
	['The diameter counts 32nds of an inch.', 'The diameter counts 32nds of an inch.'],
	['0.283 lb/in³ is steel', '0.283 lb/in³ is steel'],
	['this asks for Fig. 4-98, 1/32 in under', 'this asks for Fig. 4-98, 1/32 in (0.79 mm) under'],
	['as No. 31 in a No. 30 hole', 'as No. 31 in a No. 30 hole'],
	['3.2 mm or 1/8 inch', '3.2 mm or 1/8 inch']
])('%s', (text, both) => {
	expect(inBothUnits(text, 'mm')).toBe(both);
	expect(inBothUnits(text, 'in')).toBe(text);
});
