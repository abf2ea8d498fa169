import * as v from 'valibot';
import { type LogEvent, readEvent } from '$lib/engine/schedule/event.ts';

/** Largest backup file, in bytes. */
export const maxBackupBytes = 64 * 1024 * 1024;

/** Most learners in one file. */
export const maxLearners = 1000;

const currentVersion = 1;

export interface BackedUpLearner {
	readonly id: string;
	readonly nickname: string;
	readonly events: readonly LogEvent[];
}

export interface Backup {
	/** When it was made: date and time by ISO 8601. */
	readonly made: string;
	readonly learners: readonly BackedUpLearner[];
}

/** Why a file was refused, with one sentence for the person who chose it. */
export interface Refusal {
	readonly ok: false;
	readonly reason: 'too-large' | 'damaged' | 'foreign' | 'newer' | 'broken-event';
	readonly sentence: string;
}

export type BackupReading = { readonly ok: true; readonly backup: Backup } | Refusal;

/** The text of a backup file: JSON, with one event a line. */
export function writeBackup({ made, learners }: Backup): string {
	const head = { bucktail: 'backup', version: currentVersion, made, learners: [] };
	const list = learners.map(writeLearner).join(',\n');
	return JSON.stringify(head, null, 2).replace(/\[\]\n\}$/, () => `[\n${list}\n  ]\n}\n`);
}

function writeLearner({ id, nickname, events }: BackedUpLearner): string {
	const lines = events.map((event) => `        ${JSON.stringify(event)}`).join(',\n');
	return [
		'    {',
		`      "id": ${JSON.stringify(id)},`,
		`      "nickname": ${JSON.stringify(nickname)},`,
		`      "events": [\n${lines}\n      ]`,
		'    }'
	].join('\n');
}

/** The size of a text as a file, in bytes. */
export function sizeOf(text: string): number {
	return new Blob([text]).size;
}

/** Reads a backup file chosen by a person, without reading in one that is too large. */
export async function readBackupFile(file: Blob): Promise<BackupReading> {
	return file.size > maxBackupBytes ? refuse('too-large', tooLarge) : readBackup(await file.text());
}

const tooLarge = 'That file is larger than 64 MB; choose a Bucktail backup.';

const markSchema = v.object({
	bucktail: v.literal('backup'),
	version: v.pipe(v.number(), v.integer(), v.minValue(1))
});

const fileSchema = v.object({
	made: v.pipe(v.string(), v.isoTimestamp(), v.check(isTime)),
	learners: v.pipe(
		v.array(
			v.object({
				id: v.pipe(v.string(), v.uuid()),
				nickname: v.pipe(v.string(), v.minLength(1), v.maxLength(60)),
				events: v.array(v.unknown())
			})
		),
		v.maxLength(maxLearners),
		v.check((list) => new Set(list.map(({ id }) => id)).size === list.length)
	)
});

// The pattern of a date lets 31 February through.
function isTime(text: string): boolean {
	return !Number.isNaN(Date.parse(text));
}

/** Reads the text of a backup; never throws, whatever the text is. */
export function readBackup(text: string): BackupReading {
	if (sizeOf(text) > maxBackupBytes) return refuse('too-large', tooLarge);
	const raw = parsed(text);
	if (raw === undefined) {
		return refuse('damaged', 'That file is damaged or no backup at all; choose another copy.');
	}
	if (!v.is(markSchema, raw)) {
		return refuse('foreign', 'That file is not a Bucktail backup; choose one that Bucktail made.');
	}
	if (raw.version > currentVersion) return refuse('newer', newer);
	const file = v.safeParse(fileSchema, raw);
	if (file.success) return withEvents(file.output);
	return refuse('damaged', 'That backup is damaged; choose another copy of it.');
}

const newer = 'Update Bucktail first: a newer version made that backup.';

function withEvents({ made, learners }: v.InferOutput<typeof fileSchema>): BackupReading {
	const read: BackedUpLearner[] = [];
	for (const { id, nickname, events } of learners) {
		const good: LogEvent[] = [];
		for (const [index, raw] of events.entries()) {
			const reading = readEvent(raw);
			if (!reading.ok && reading.reason === 'newer') return refuse('newer', newer);
			if (!reading.ok || reading.event.learner !== id) return brokenEvent(index + 1, nickname);
			good.push(reading.event);
		}
		read.push({ id, nickname, events: good });
	}
	return { ok: true, backup: { made, learners: read } };
}

function brokenEvent(position: number, nickname: string): Refusal {
	const event = `event ${position} of ${nickname}`;
	return refuse('broken-event', `That backup is damaged at ${event}; choose another copy of it.`);
}

function parsed(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		return undefined;
	}
}

function refuse(reason: Refusal['reason'], sentence: string): Refusal {
	return { ok: false, reason, sentence };
}
