import { source } from './source.ts';

/**
 * Cautions for work that can hurt someone, by the work. From FAA-H-8083-31B ch. 4 (pp. 4-7 to
 * 4-23), FAA-H-8083-30B (pp. 1-4, 11-11), Army OD1621 (lesson 2, snips) and common shop safety.
 */
export const cautions = {
	drive: 'Eye and ear protection before you drive a rivet.',
	drill: 'Goggles on and the part clamped before you drill.',
	bend: 'Keep hands clear of the leaf and the clamp of the brake.',
	shear: 'Never reach under the hold-downs or the blade of a shear.',
	snips: 'Run snips through a cut without stopping: a cut begun anew leaves slivers that cut you.',
	saw: 'Goggles on, and check the saw blade for cracks first.',
	edges: 'Fresh-cut edges are sharp: wear gloves to carry sheet, and break the edges.'
} as const;

export const cautionSource = source(
	'airframe',
	'ch. 4, pp. 4-7 to 4-23; FAA-H-8083-30B, pp. 1-4, 11-11'
);

export type CautionId = keyof typeof cautions;

/** Stands under every task. */
export const trainingAid =
	'Practice numbers only, not repair data. On an aircraft the manufacturer’s approved data and local rules decide, and a certificated mechanic signs.';
