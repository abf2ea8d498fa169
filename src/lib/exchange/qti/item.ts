import type { SetTask } from '../../engine/sets/open-set.ts';
import { totalOf } from '../../engine/sets/set.ts';
import { stepMarks } from '../../engine/sets/step-marks.ts';
import { questionText } from '../../engine/sets/rehearsal.ts';
import { givenRows } from '../../engine/tasks/given-rows.ts';
import { base, choiceOf, type Response, responseTo, variable } from './response.ts';
import { el, words, xmlDocument } from './xml.ts';

export const itemNamespace = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';

export interface Item {
	readonly id: string;
	readonly xml: string;
}

interface Asked extends Response {
	readonly marks: number;
}

/**
 * A task as an assessment item: its text and drawing, a field or choice for every value asked,
 * and marks for each that is right. Null where one of them cannot be marked by QTI.
 */
export function itemOf(own: SetTask, image: { href: string; title: string }): Item | null {
	const { task, place, question } = own;
	const asked = askedIn(own);
	if (!asked) return null;
	const id = `task-${place}`;
	const { drawn } = task;
	const rows = givenRows(task, 'in').map(([label, value]) =>
		el('tr', {}, el('th', { scope: 'row' }, words(label)), el('td', {}, words(value)))
	);
	const body = el(
		'qti-item-body',
		{},
		el('p', {}, words(drawn.story)),
		el('table', {}, el('tbody', {}, ...rows)),
		...(drawn.basis === undefined ? [] : [el('p', {}, words(drawn.basis))]),
		el('p', {}, el('img', { src: `../${image.href}`, alt: image.title })),
		el('p', {}, words(question ? questionText(question) : drawn.question)),
		...asked.map(({ interaction }) => interaction)
	);
	const xml = el(
		'qti-assessment-item',
		{
			xmlns: itemNamespace,
			identifier: id,
			title: `${place}. ${task.family.name} (${task.number})`,
			adaptive: false,
			'time-dependent': false,
			'xml:lang': 'en'
		},
		...asked.flatMap(({ declarations }) => declarations),
		outcome('SCORE', 'float', '0'),
		outcome('MAXSCORE', 'float', String(totalOf(asked.map(({ marks }) => marks)))),
		...asked.map((_, i) => outcome(feedbackId(i), 'identifier')),
		body,
		el('qti-response-processing', {}, ...asked.map(conditionOn)),
		...asked.flatMap(feedbackOn)
	);
	return { id, xml: xmlDocument(xml) };
}

/** What the item asks, each with its marks; null where QTI cannot mark one. */
function askedIn({ task, marks, question }: SetTask): Asked[] | null {
	if (question) return [{ ...choiceOf(question, 'R1'), marks: totalOf(marks) }];
	const right = { kind: 'accept', carried: false } as const;
	const verdicts = Object.fromEntries(task.drawn.asked.map((key) => [key, right]));
	const asked: Asked[] = [];
	for (const [i, { key, of }] of stepMarks(task, marks, verdicts).entries()) {
		const response = responseTo(task, key, `R${i + 1}`);
		if (!response) return null;
		asked.push({ ...response, marks: of });
	}
	return asked;
}

function feedbackId(place: number): string {
	return `FEEDBACK-${place + 1}`;
}

function outcome(id: string, type: string, value?: string): string {
	const attributes = { identifier: id, cardinality: 'single', 'base-type': type };
	const inside =
		value === undefined ? [] : [el('qti-default-value', {}, el('qti-value', {}, value))];
	return el('qti-outcome-declaration', attributes, ...inside);
}

/** Right: its marks. A slip's value: what is said of it. Anything else: that it is not right. */
function conditionOn({ right, slips, marks }: Asked, place: number): string {
	const score = el('qti-sum', {}, variable('SCORE'), base('float', marks));
	const say = (id: string) =>
		el('qti-set-outcome-value', { identifier: feedbackId(place) }, base('identifier', id));
	return el(
		'qti-response-condition',
		{},
		el('qti-response-if', {}, right, el('qti-set-outcome-value', { identifier: 'SCORE' }, score)),
		...slips.map(({ when }, i) => el('qti-response-else-if', {}, when, say(`slip-${i + 1}`))),
		el('qti-response-else', {}, say('wrong'))
	);
}

function feedbackOn({ slips }: Asked, place: number): string[] {
	const told = slips.map(({ says }, i) => [`slip-${i + 1}`, says] as const);
	const wrong = ['wrong', 'Not right: work it step by step and look at each number.'] as const;
	return [...told, wrong].map(([id, says]) =>
		el(
			'qti-modal-feedback',
			{ 'outcome-identifier': feedbackId(place), identifier: id, 'show-hide': 'show' },
			el('qti-content-body', {}, el('p', {}, words(says)))
		)
	);
}
