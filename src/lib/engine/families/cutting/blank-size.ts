import type { Drawing } from '../../figures/drawing.ts';
import { partOnBlank, partWithTrim } from '../../figures/parts/blank.ts';
import { blankSize } from '../../methods/blank-size.ts';
import type { CautionId } from '../../trade/cautions.ts';
import { family, type Say, type SeenBy } from '../family.ts';
import type { Random } from '../random.ts';
import type { Level } from '../level.ts';

interface Job {
	readonly stories: readonly string[];
	/** Trims the job is done with, inches. */
	readonly trims: readonly number[];
	/** Longest part, in eighths of an inch: what is dished by hand is a few inches long. */
	readonly longest: number;
	readonly basis: string;
	/** Whether the part is formed, so that its sizes are taken along the developed metal. */
	readonly formed: boolean;
	/** Sheets it is made of, inches; snips cut up to 0.051 in. */
	readonly sheets: readonly number[];
	/** Sheets it is made of, as they are told; what is formed is annealed. */
	readonly alloys: readonly string[];
	/** What is done with it once it has its shape. */
	readonly after?: string;
	readonly cutWith: string;
	readonly cautions: readonly CautionId[];
}

const handbook = 'FAA-H-8083-31B, ch. 4';

const sheared = {
	longest: 144,
	alloys: ['3003-O', '5052-O'],
	sheets: [0.025, 0.032, 0.04, 0.05],
	cutWith: 'squaring shear',
	cautions: ['shear', 'edges']
} as const;

const jobs: readonly Job[] = [
	{
		stories: [
			'A flanged inspection door is bumped over a form block; the flange is trimmed to the line afterwards.',
			'A replacement wheel fairing panel is hammered over a wooden block and trimmed to the old outline.',
			'A landing light fairing is bumped over a form block and trimmed last.'
		],
		trims: [1 / 2, 5 / 8, 3 / 4, 1],
		basis: `Form block work takes 1/2 to 1 in of trim (${handbook}, p. 4-79).`,
		formed: true,
		...sheared
	},
	{
		stories: [
			'A shallow fairing is bumped out on a sandbag and trimmed at the end.',
			'A blister for a control horn is bumped out on a sandbag and trimmed last.',
			'A spinner patch is dished on a sandbag and trimmed when it fits.'
		],
		trims: [1 / 2, 3 / 4, 1],
		basis: `Sandbag work takes at least 1/2 in of trim (${handbook}, p. 4-80).`,
		formed: true,
		...sheared,
		longest: 80
	},
	{
		stories: [
			'A curved rib flange is formed by hand and trimmed when it has its shape.',
			'A nose rib gets its curved flange by hand, and the flange is trimmed last.'
		],
		trims: [1 / 4],
		basis: `A curved flange takes about 1/4 in of trim (${handbook}, p. 4-77).`,
		formed: true,
		...sheared,
		alloys: ['2024-O'],
		after: ', heat treated after forming'
	},
	{
		stories: [
			'Brackets are cut out with aviation snips outside the line and filed down to it.',
			'Gusset plates are cut out with aviation snips and filed to the line.'
		],
		trims: [1 / 32],
		basis: 'Snips cut about 1/32 in outside the line (FAA-H-8083-30B, ch. 11, p. 11-8).',
		formed: false,
		longest: 112,
		alloys: ['2024-T3', '6061-T6'],
		sheets: [0.025, 0.032, 0.04],
		cutWith: 'aviation snips',
		cautions: ['snips', 'edges']
	}
];

const asked = {
	1: ['blankLength'],
	2: ['blankLength', 'blankWidth'],
	3: ['blankLength', 'blankWidth']
} as const;

const questions: Readonly<Record<Level, string>> = {
	1: 'How long do you cut the blank?',
	2: 'What size do you cut the blank to?',
	3: 'What size do you cut the blank to? Ends and edges have different trims.'
};

const formedLabels = {
	finishedLength: 'Finished length, developed along the metal',
	finishedWidth: 'Finished width, developed along the metal'
};

export const tasks = family({
	method: blankSize,
	draw(random, level) {
		const job = random.pick(level === 3 ? jobs.filter(({ trims }) => trims.length > 1) : jobs);
		const [endTrim = 0, edgeTrim = endTrim] =
			level === 3 ? unlike(random, job.trims) : [random.pick(job.trims)];
		const ends = level === 1 ? 2 : random.pick([1, 2]);
		const edges = level === 1 ? 2 : random.pick([1, 2]);
		return {
			given: {
				finishedLength: random.int(48, job.longest) / 8,
				finishedWidth: random.int(16, 47) / 8,
				trimmedEnds: ends,
				endTrim,
				trimmedEdges: edges,
				edgeTrim
			},
			story: random.pick(job.stories),
			question: questions[level],
			asked: asked[level],
			chief: {
				blankLength: ['noEndTrim', ends === 2 ? 'oneEnd' : 'bothEnds'],
				blankWidth: ['noEdgeTrim', edges === 2 ? 'oneEdge' : 'bothEdges']
			},
			...(job.formed && { labels: formedLabels }),
			told: toldAt(random, level, job),
			basis: job.basis,
			cautions: job.cautions
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

/** What stands on the drawing beside the sizes. */
function toldAt(random: Random, level: Level, { alloys, sheets, after = '', cutWith }: Job) {
	const told: [string, string][] = [
		['Sheet', `${random.pick(alloys)}, ${random.pick(sheets).toFixed(3)} in${after}`],
		['Cut with', cutWith]
	];
	if (level === 3) told.push(['Grain', 'along the length']);
	return level === 1 ? [] : told;
}

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
