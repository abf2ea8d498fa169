import type { Filled } from './holes.ts';
import type { PanelJob } from './job.ts';
import type { Flush } from './work.ts';

/** Steps of a panel, by the ids that learners' time plans keep. */
export type WorkId =
	| 'blank'
	| 'openings'
	| 'rows'
	| 'coupon'
	| 'bend'
	| 'clamp'
	| 'back'
	| 'pilot'
	| 'final'
	| 'deburr'
	| 'countersink'
	| 'dimple'
	| 'assemble'
	| 'drive'
	| 'inspect'
	| 'tag';

export interface WorkStep {
	readonly id: WorkId;
	/** In a few words, for a list: `Pilot 58 holes`. */
	readonly name: string;
	/** As it is told at the bench, a whole sentence. */
	readonly says: string;
}

/** What is done to a panel, first to last: common practice. */
export function orderOfWork(
	job: PanelJob,
	{ holes, rows }: Filled,
	flush: readonly Flush[]
): WorkStep[] {
	const cut = sheetSteps(job, rows.length, holes.length);
	if (holes.length === 0) {
		return [...cut.filter(({ id }) => id !== 'rows' && id !== 'coupon'), tag];
	}
	const isFresh = rows.some(({ row }) => !row.member.drilled);
	return [
		...cut.filter(({ id }) => id !== 'rows' || isFresh),
		...drillSteps(job, holes.length),
		...headSteps(flush),
		...driveSteps(holes.length)
	];
}

const step = (id: WorkId, name: string, says: string): WorkStep => ({ id, name, says });
const when = (wanted: boolean, ...steps: WorkStep[]) => (wanted ? steps : []);
const many = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;

function sheetSteps({ cutouts, bends }: PanelJob, rows: number, holes: number): WorkStep[] {
	return [
		step(
			'blank',
			'Cut the blank, break its edges',
			'Cut the blank, break its edges, and mark the two reference edges: left and lower.'
		),
		...when(
			cutouts.length > 0,
			step(
				'openings',
				`Cut ${many(cutouts.length, 'opening')}`,
				'Mark and cut the openings; file their edges smooth.'
			)
		),
		step(
			'rows',
			`Lay out ${many(rows, 'row')}, mark ${many(holes, 'hole')}`,
			'Lay out every row from the reference edges, never from hole to hole.'
		),
		step(
			'coupon',
			'Drill a coupon, check its edge distances',
			'Drill a coupon of the same stack and check its edge distances before you drill the panel.'
		),
		...when(
			bends.length > 0,
			step(
				'bend',
				`Bend ${many(bends.length, 'edge')}`,
				`${isCornered(bends) ? 'Drill the relief holes, trim the corners to them, and bend' : 'Bend'} the edges on the brake, each bend line at its sight line.`
			)
		)
	];
}

/** Whether bends meet at a corner. */
function isCornered(bends: PanelJob['bends']): boolean {
	const has = (...edges: readonly string[]) => bends.some(({ edge }) => edges.includes(edge));
	return has('left', 'right') && has('bottom', 'top');
}

function drillSteps({ members, doublers }: PanelJob, holes: number): WorkStep[] {
	const drilled = members.filter((one) => one.drilled).map(({ name }) => name);
	return [
		step(
			'clamp',
			'Clamp the members',
			`Clamp the members where they belong${doublers.length > 0 ? ', doublers under them' : ''}.`
		),
		...when(
			drilled.length > 0,
			step(
				'back',
				`Mark from behind through ${drilled.join(', ')}`,
				`Mark the panel from behind through the holes of ${drilled.join(', ')}, and pilot those first.`
			)
		),
		step(
			'pilot',
			`Pilot ${many(holes, 'hole')}`,
			'Pilot every hole, beginning in the middle of a row; put in sheet holders as you go.'
		),
		step(
			'final',
			'Drill to the final size',
			'Drill to the final size through all layers, the drill square to the sheet.'
		),
		step(
			'deburr',
			'Take apart, deburr every layer',
			'Take the parts apart and deburr every hole on both sides.'
		)
	];
}

function headSteps(flush: readonly Flush[]): WorkStep[] {
	const has = (way: Flush['way']) => flush.some((one) => one.way === way);
	return [
		...when(
			has('countersink'),
			step('countersink', 'Countersink the panel', 'Countersink the panel.')
		),
		...when(has('dimple'), step('dimple', 'Dimple every layer', 'Dimple every layer.'))
	];
}

const tag = step('tag', 'Tag the part, clear the bench', 'Tag the part and clear the bench.');

function driveSteps(holes: number): WorkStep[] {
	return [
		step(
			'assemble',
			'Put together with sheet holders',
			'Put the parts together again with sheet holders.'
		),
		step(
			'drive',
			`Drive ${many(holes, 'rivet')}`,
			'Drive the rivets from the middle of each row outward, by the rivet list.'
		),
		step(
			'inspect',
			'Inspect heads and edges, fill in the sheet',
			'Measure the shop heads and look at the edges; mark what is to be replaced.'
		),
		tag
	];
}
