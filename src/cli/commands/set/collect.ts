import { readFile } from 'node:fs/promises';
import { type MissedStep, missedSteps } from '../../../lib/engine/sets/missed-steps.ts';
import { taskFigures } from '../../../lib/engine/sets/task-figures.ts';
import type { Found } from '../../../lib/engine/sets/choose-hand-ins.ts';
import { type Collected, collect, type MarkedHandIn } from '../../../lib/engine/sets/collect.ts';
import { type Override, readOverrides } from '../../../lib/engine/sets/override.ts';
import { type OpenSet, openSet } from '../../../lib/engine/sets/open-set.ts';
import { writeCsv } from '../../../lib/exchange/csv.ts';
import { gather } from '../../../lib/exchange/gather.ts';
import { gradebook, slipTable } from '../../../lib/exchange/gradebook.ts';
import { writeXapi } from '../../../lib/exchange/xapi.ts';
import { setOfMost } from '../../../lib/exchange/which-set.ts';
import { filesIn, readJson, write } from '../../files.ts';
import type { Options } from '../../options.ts';
import type { Answer, Progress } from '../../run.ts';
import { echoed, UsageError } from '../../usage-error.ts';
import { columns } from '../columns.ts';
import { setIn } from './link.ts';

export async function collectSet(
	args: readonly string[],
	options: Options,
	progress: Progress
): Promise<Answer> {
	if (args.length === 0) throw new UsageError('Name the folder or the files with the hand-ins.');
	const overrides = await overridesIn(options);
	const files = await filesIn(args);
	if (files.length === 0) throw new UsageError('There is no file in that folder.');
	const sources = files.map(({ path, size }) => ({ name: path, size, read: () => readFile(path) }));
	const { found, aside } = await gather(sources, (done, of) => progress('Reading', done, of));
	const open = await setFor(found, options);
	if (!open) {
		refuseTables(options, aside);
		return { data: { set: null, handIns: [], aside: asideData(aside) }, text: asideText(aside) };
	}
	const collected = await collect(open, found, {
		overrides,
		progress: (done, of) => progress('Marking', done, of)
	});
	refuseOverrides(collected, overrides);
	const all = { ...collected, aside: [...aside, ...collected.aside] };
	const missed = missedSteps(open, all.handIns);
	await writeTables(open, all, missed, options);
	return { data: dataOf(open, all, missed), text: textOf(open, all) };
}

async function overridesIn(options: Options): Promise<readonly Override[]> {
	const path = options.value('--overrides');
	if (path === undefined) return [];
	const overrides = readOverrides(await readJson(path));
	if (overrides) return overrides;
	throw new UsageError(
		'Write overrides as [{"code": "B05", "task": 2, "marks": 1, "note": "why"}], each with a note.'
	);
}

/**
 * An override that meets no hand-in would be lost without a word.
 *
 * @throws UsageError
 */
function refuseOverrides({ handIns }: Collected, overrides: readonly Override[]): void {
	for (const { code, task, marks } of overrides) {
		const handIn = handIns.find((one) => one.code === code);
		if (!handIn) throw new UsageError(`No hand-in that can be marked has the code ${code}.`);
		const mark = handIn.tasks.find(({ place }) => place === task);
		if (!mark)
			throw new UsageError(`The set has ${handIn.tasks.length} tasks, and no task ${task}.`);
		if (marks > mark.of)
			throw new UsageError(`Task ${task} has ${mark.of} marks; ${code} cannot get ${marks}.`);
	}
}

async function setFor(found: readonly Found[], options: Options): Promise<OpenSet | null> {
	const link = options.value('--set');
	if (link !== undefined) return (await setIn([link])).open;
	const set = await setOfMost(found);
	return set && openSet(set);
}

/**
 * A script that asked for a table does not go on without one.
 *
 * @throws UsageError
 */
function refuseTables(options: Options, [first]: Collected['aside']): void {
	if (!tableOptions.some((name) => options.value(name) !== undefined)) return;
	const why = first ? `${echoed(first.file)}: ${first.why}` : 'none of them tells its set.';
	throw new UsageError(`No table is written, for no hand-in can be marked; ${why}`);
}

const tableOptions = ['--csv', '--slips', '--xapi'] as const;

async function writeTables(
	open: OpenSet,
	{ handIns }: Collected,
	missed: readonly MissedStep[],
	options: Options
): Promise<void> {
	const [csv, slips, xapi] = tableOptions.map((name) => options.value(name));
	if (csv !== undefined) await write(csv, writeCsv(gradebook(open, handIns)));
	if (slips !== undefined) {
		await write(slips, writeCsv(slipTable(missed, handIns.length)));
	}
	if (xapi === undefined) return;
	await write(xapi, writeXapi(open, handIns, { now: new Date().toISOString() }));
}

function dataOf(open: OpenSet, { handIns, aside }: Collected, missed: readonly MissedStep[]) {
	const figures = new Map(taskFigures(open, handIns).map((one) => [one.place, one]));
	return {
		set: open.hash,
		title: open.set.title,
		handIns: handIns.map(handInData),
		aside: asideData(aside),
		tasks: open.tasks.map(({ place, task }) => ({ task: task.number, ...figures.get(place) })),
		missed
	};
}

function asideData(aside: Collected['aside']) {
	return aside.map(({ file, why }) => ({ file, why }));
}

function handInData({ tasks, ...handIn }: MarkedHandIn) {
	return {
		...handIn,
		tasks: tasks.map((task) => ({ ...task, answers: undefined })),
		answers: tasks.flatMap(({ place, task, answers }) =>
			answers.map(({ key, entry, read, marks, of, verdict, slips, either, says }) => ({
				task,
				place,
				key,
				entry,
				read,
				marks,
				of,
				verdict,
				...(slips.length > 0 ? { slip: slips.join(either ? ' or ' : ' and ') } : {}),
				says
			}))
		)
	};
}

function textOf(open: OpenSet, { handIns, aside }: Collected): string {
	const header = ['Code', ...open.tasks.map(({ place }) => String(place)), `of ${open.of}`];
	const rows = handIns.map(({ code, tasks, marks }) => [
		code,
		...tasks.map((task) => `${task.marks}${task.changed ? '*' : ''}`),
		String(marks)
	]);
	const parts = [`${open.set.title}  ${open.hash}`, columns([header, ...rows]), asideText(aside)];
	return parts.filter((part) => part !== '').join('\n');
}

function asideText(aside: Collected['aside']): string {
	return aside.map(({ file, why }) => `Set aside: ${file}: ${why}`).join('\n');
}
