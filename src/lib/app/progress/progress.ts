import { calibrate, type Calibration, enoughAnswers } from '$lib/engine/schedule/calibration.ts';
import type { KnownEvent } from '$lib/engine/schedule/event.ts';
import { type DayRecall, Replay, type SlipHistory } from '$lib/engine/schedule/history.ts';
import type { Learning } from '$lib/engine/schedule/learning.ts';
import { mapPractice } from '$lib/engine/schedule/practice.ts';
import type { SkillId, Syllabus } from '$lib/engine/schedule/skill.ts';
import type { Done } from '$lib/ui/progress/four-weeks.ts';
import type { SlipLine } from '$lib/ui/progress/slip-line.ts';
import { breath } from '../breath.ts';
import { freshNumber, type Planner } from '../plan/planner.ts';
import type { Below } from '../practice/run.ts';

/** What a learner's log shows about the time up to now. */
export interface Reading {
	readonly days: readonly DayRecall[];
	/** First answers on steps met before. */
	readonly scored: number;
	/** Null while there are too few of them. */
	readonly calibration: Calibration | null;
	readonly slips: readonly SlipLine[];
	/** How many steps can be practised, by topic. */
	readonly steps: ReadonlyMap<string, number>;
}

/** What a log is read with. */
export interface Reader {
	readonly planner: Planner;
	readonly today: number;
	readonly signal: AbortSignal;
	/** Hears now and then how many events have been read. */
	readonly onRead: (events: number) => void;
}

/** Recall is worked out for two years at most. */
const daysBack = 730;
/** Longest stretch of work, in milliseconds, before the page may do something else. */
const stretch = 12;

/** Reads a log, oldest first, without holding up the page; null when stopped before the end. */
export async function readLog(
	log: AsyncIterable<KnownEvent>,
	reader: Reader
): Promise<Reading | null> {
	const { planner, today } = reader;
	const topics = new Map(planner.syllabus.skills.map(({ id, topic }) => [id, topic]));
	const replay = new Replay({ topics, from: today - daysBack, today });
	let [read, since] = [0, performance.now()];
	for await (const event of log) {
		replay.add(event);
		read++;
		if (performance.now() - since < stretch) continue;
		reader.onRead(read);
		await breath();
		if (reader.signal.aborted) return null;
		since = performance.now();
	}
	if (reader.signal.aborted) return null;
	const { days, answers, slips } = replay.end();
	await breath();
	return {
		days,
		scored: answers.length,
		calibration: answers.length < enoughAnswers ? null : calibrate(answers),
		slips: linesOf(slips, planner),
		steps: stepsByTopic(planner.syllabus)
	};
}

/** The slips in words, most frequent first; steps that are no more are left out. */
function linesOf(slips: readonly SlipHistory[], planner: Planner): SlipLine[] {
	const topics = new Map(planner.syllabus.skills.map(({ id, topic }) => [id, topic]));
	const lines = new Map<string, SlipLine>();
	for (const counted of slips) {
		const { skill, slip } = counted;
		const says = planner.slipSays(skill, slip);
		const topic = topics.get(skill);
		if (says === '' || topic === undefined) continue;
		const line = { ...counted, says, label: planner.label(skill), topic };
		// Methods share steps: what reads the same is the same to whoever made it.
		const words = [topic, line.label, says].join();
		lines.set(words, together(line, lines.get(words)));
	}
	return [...lines.values()].sort((a, b) => b.times - a.times || b.lastDay - a.lastDay);
}

function together(line: SlipLine, other: SlipLine | undefined): SlipLine {
	if (!other) return line;
	const newer = line.lastDay > other.lastDay ? line : other;
	return { ...newer, times: line.times + other.times };
}

function stepsByTopic({ skills }: Syllabus): Map<string, number> {
	const steps = new Map<string, number>();
	for (const { topic } of skills) steps.set(topic, (steps.get(topic) ?? 0) + 1);
	return steps;
}

/** Number of a fresh task that asks for a step: the easiest kind that aims at it. */
export function taskFor(
	skill: SkillId,
	planner: Planner,
	givens: readonly string[],
	below: Below
): string | undefined {
	const { practices } = mapPractice(planner.syllabus);
	const kind = practices.find((practice) => practice.skill === skill)?.kind;
	return kind && freshNumber(kind.id, new Set(givens), below, planner.families);
}

/** What was done on each day of practice. */
export function doneByDay({ days }: Learning): Map<number, Done> {
	return new Map(
		Object.entries(days).map(([day, { right, helped, wrong, seconds }]) => [
			Number(day),
			{ tasks: right + helped + wrong, seconds }
		])
	);
}
