import type { LengthUnit } from '$lib/engine/quantity/value.ts';
import { givensOf } from '$lib/engine/tasks/givens.ts';
import { noteVerdicts } from '$lib/engine/schedule/note-verdicts.ts';
import { type Choice, evidenceIn, verdictOn } from '$lib/engine/sets/rehearsal-marks.ts';
import { optionTexts, type Question } from '$lib/engine/sets/rehearsal.ts';
import type { AttemptFacts, SettledAttempt } from '../device/device.svelte.ts';
import { longestSeconds } from '../practice/answering.ts';
import type { Paper } from './rehearsal-paper.ts';

/**
 * The attempts of a rehearsal that was handed in, one for every question. Id and time of each
 * follow from the paper, so that the log takes them once, however often they are handed to it.
 */
export function attemptsOf(
	paper: Paper,
	questions: readonly Question[],
	units: LengthUnit
): SettledAttempt[] {
	return questions.map((question, i) => ({
		id: idOf(paper.id, i),
		at: (paper.end ?? paper.start) + i,
		facts: factsOf(question, paper.choices[i] ?? null, units, {
			runId: paper.id,
			seconds: Math.min(paper.seconds[i] ?? 0, longestSeconds)
		})
	}));
}

function factsOf(
	question: Question,
	choice: Choice,
	units: LengthUnit,
	about: Pick<AttemptFacts, 'runId' | 'seconds'>
): AttemptFacts {
	const { task, key } = question;
	const given = choice !== null;
	return {
		...about,
		source: 'rehearsal',
		task: task.number,
		level: task.id.level,
		typed: given ? { [key]: optionTexts(question, units)[choice] ?? '' } : {},
		verdicts: given ? noteVerdicts({ [key]: verdictOn(question, choice) }) : {},
		opened: [],
		byStep: false,
		worked: false,
		skills: evidenceIn(question, choice),
		givens: givensOf(task)
	};
}

/** The paper's UUID with the question's place for its last three digits. */
function idOf(paper: string, place: number): string {
	return paper.slice(0, -3) + place.toString(16).padStart(3, '0');
}
