import * as v from 'valibot';
import { longestPanel } from '$lib/engine/schedule/panel-events.ts';
import {
	longestQuestion,
	longestStepName,
	mostQuestions
} from '$lib/engine/schedule/time-plan-events.ts';
import { packed, unpacked } from '$lib/exchange/fragment.ts';

/*
 * The open questions of a time plan as a link: each with the step that waits for it, and the panel
 * file, so that whoever opens it sees the panel they are about.
 */

const version = 2;

const sheetSchema = v.object({
	/** The panel file as text. */
	panel: v.pipe(v.string(), v.maxLength(longestPanel)),
	questions: v.pipe(
		v.array(
			v.object({
				text: v.pipe(v.string(), v.minLength(1), v.maxLength(longestQuestion)),
				/** The step that waits, and when it begins; empty where none does. */
				step: v.pipe(v.string(), v.maxLength(longestStepName)),
				before: v.pipe(v.string(), v.maxLength(40))
			})
		),
		v.minLength(1),
		v.maxLength(mostQuestions)
	)
});

export type QuestionSheet = Readonly<v.InferOutput<typeof sheetSchema>>;

/** The fragment of the address that shows the questions. */
export function writeQuestions(sheet: QuestionSheet): Promise<string> {
	return packed(version, { ask: sheet });
}

/** Reads such a fragment: the questions, or one sentence; never throws. */
export async function readQuestions(fragment: string): Promise<QuestionSheet | string> {
	const reading = await unpacked(version, fragment);
	if (!reading.ok && reading.reason === 'newer') {
		return 'Update Bucktail first: a newer version made that link.';
	}
	const found = reading.ok ? v.safeParse(v.object({ ask: sheetSchema }), reading.value) : null;
	if (found?.success) return found.output.ask;
	return 'That link is damaged or cut short; ask for it to be copied and sent again.';
}
