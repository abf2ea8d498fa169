import { composeSet, plainTerms, readWish } from '../../../lib/engine/sets/compose.ts';
import { ownWithin } from '../../../lib/engine/sets/own-tolerance.ts';
import { marksOf, setHash } from '../../../lib/engine/sets/set.ts';
import { setPath, writeSet } from '../../../lib/exchange/set-link.ts';
import type { Options } from '../../options.ts';
import type { Answer } from '../../run.ts';
import { UsageError } from '../../usage-error.ts';
import { ownAddress } from './link.ts';

export async function newSet(args: readonly string[], options: Options): Promise<Answer> {
	const [title, ...wishes] = args;
	if (title === undefined || wishes.length === 0) {
		throw new UsageError('Give a title and what goes in, such as "Week 6" RL2*3 ED1*2.');
	}
	const set = await composeSet(
		{
			...plainTerms(title.trim()),
			seed: options.value('--seed') ?? title.trim(),
			order: options.has('--mixed-order') ? 'mixed' : 'fixed',
			numbers: options.has('--own-numbers') ? 'own' : 'same',
			answers: options.has('--options') ? 'options' : 'typed',
			help: !options.has('--no-help'),
			due: options.value('--due') ?? null,
			...ownWithin(options.value('--within-rule'), options.value('--within-micrometer')),
			tolerance: options.value('--tolerance') ?? '',
			note: options.value('--note') ?? ''
		},
		wishes.map(readWish)
	);
	const hash = setHash(set);
	const link = `${addressIn(options)}#${await writeSet(set)}`;
	const tasks = set.tasks.map(({ number }) => number);
	const count = tasks.length === 1 ? '1 task' : `${tasks.length} tasks`;
	return {
		data: { title: set.title, hash, link, tasks },
		text: [`${set.title}  ${hash}  ${count}, ${marksOf(set)} marks`, ...tasks, link].join('\n')
	};
}

/** The address of the page that opens sets. */
function addressIn(options: Options): string {
	const typed = options.value('--address') ?? ownAddress;
	const url = URL.canParse(typed) ? new URL(typed) : null;
	if (!url || !/^https?:$/.test(url.protocol)) {
		throw new UsageError(
			'Give --address as a web address, such as https://school.example/bucktail/.'
		);
	}
	const base = `${url.origin}${url.pathname}`.replace(/\/*$/, '/');
	return base.endsWith(`/${setPath}`) ? base : base + setPath;
}
