import type { Drawing } from '../../figures/drawing.ts';
import { partOnBlank, partWithTrim } from '../../figures/parts/blank.ts';
import { blankSize } from '../../methods/blank-size.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

interface Job {
	readonly story: string;
	/** Trims the job is done with, inches. */
	readonly trims: readonly number[];
	readonly basis: string;
}

const handbook = 'FAA-H-8083-31B, ch. 4';

const jobs: readonly Job[] = [
	{
		story:
			'A flanged inspection door is bumped over a form block; the flange is trimmed to the line afterwards.',
		trims: [1 / 2, 5 / 8, 3 / 4, 1],
		basis: `Form block work takes 1/2 to 1 in of trim (${handbook}, p. 4-79).`
	},
	{
		story: 'A shallow fairing is bumped out on a sandbag, and its border is cut away at the end.',
		trims: [1 / 2, 3 / 4, 1],
		basis: `Sandbag work takes at least 1/2 in of trim (${handbook}, p. 4-80).`
	},
	{
		story: 'A curved rib flange is formed by hand and trimmed when it has its shape.',
		trims: [1 / 4],
		basis: `A curved flange takes about 1/4 in of trim (${handbook}, p. 4-77).`
	},
	{
		story: 'Brackets are cut out with aviation snips outside the line and filed down to it.',
		trims: [1 / 32],
		basis: 'Snips cut about 1/32 in outside the line (FAA-H-8083-30B, ch. 11, p. 11-8).'
	},
	{
		story:
			'A replacement wheel fairing panel is hammered over a wooden block and trimmed to the old outline.',
		trims: [1 / 2, 3 / 4, 1],
		basis: `Form block work takes 1/2 to 1 in of trim (${handbook}, p. 4-79).`
	}
];

const asked = {
	1: ['blankLength'],
	2: ['blankLength', 'blankWidth'],
	3: ['blankLength', 'blankWidth']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How long is the blank cut?',
	2: 'What size is the blank cut to?',
	3: 'What size is the blank cut to, with unlike trims?'
};

export const tasks = family({
	method: blankSize,
	draw(random, level) {
		const job = random.pick(level === 3 ? jobs.filter(({ trims }) => trims.length > 1) : jobs);
		const [endTrim = 0, edgeTrim = endTrim] =
			level === 3 ? unlike(random, job.trims) : [random.pick(job.trims)];
		return {
			given: {
				finishedLength: random.int(48, 240) / 8,
				finishedWidth: random.int(16, 47) / 8,
				trimmedEnds: level === 1 ? 2 : random.pick([1, 2]),
				endTrim,
				trimmedEdges: level === 1 ? 2 : random.pick([1, 2]),
				edgeTrim
			},
			story: job.story,
			question: questions[level],
			asked: asked[level],
			basis: job.basis,
			cautions: ['shear', 'edges']
		};
	},
	figure: (given, say) =>
		partWithTrim(
			{ ends: given.trimmedEnds, edges: given.trimmedEdges },
			{
				length: say('finishedLength', given.finishedLength),
				width: say('finishedWidth', given.finishedWidth),
				endTrim: say('endTrim', given.endTrim),
				edgeTrim: say('edgeTrim', given.edgeTrim)
			}
		),
	metal: cutTo
});

/** Two different trims, in either order. */
function unlike(random: Random, trims: readonly number[]): number[] {
	const [one = 0, other = 0] = random.some(trims, 2);
	return random.pick([
		[one, other],
		[other, one]
	]);
}

/** What a blank cut to a size one way leaves to trim. */
function cutTo(seen: SeenBy<typeof blankSize>, say: Say): Drawing {
	const along = seen.key === 'blankLength';
	const { trimmedEnds, trimmedEdges } = seen.given;
	const drawing = partOnBlank(
		{
			way: along ? 'along' : 'across',
			sides: along ? trimmedEnds : trimmedEdges,
			part: seen.at('part'),
			rough: ['small', 'none', 'rough'].includes(seen.case)
		},
		say(seen.key, seen.at('entered'))
	);
	return { ...drawing, title: seen.says };
}
