import { qtiPackage, writeQti } from '../../../lib/exchange/qti/package.ts';
import { write } from '../../files.ts';
import type { Options } from '../../options.ts';
import type { Answer } from '../../run.ts';
import { UsageError } from '../../usage-error.ts';
import { setIn } from './link.ts';

export async function exportSet(args: readonly string[], options: Options): Promise<Answer> {
	const { open } = await setIn(args);
	const out = options.value('--qti');
	if (out === undefined) throw new UsageError('Give --qti as well: the file for the package.');
	const made = qtiPackage(open);
	await write(out, writeQti(made));
	const { items, left } = made;
	return {
		data: { hash: open.hash, file: out, items, left },
		text: [`${items} of ${open.tasks.length} tasks in ${out}`, ...left].join('\n')
	};
}
