import { TaskNumberError } from '../lib/engine/tasks/task-number.ts';
import { GivenError } from '../lib/engine/solver/read-givens.ts';
import { TradeError } from '../lib/engine/solver/trade-function.ts';
import { listFamilies } from './commands/families.ts';
import { markTask } from './commands/mark.ts';
import { listMethods } from './commands/methods.ts';
import { solve } from './commands/solve.ts';
import { showTask } from './commands/task.ts';
import { listWords } from './commands/words.ts';
import { echoed, UsageError } from './usage-error.ts';

/** What a command answers: data for `--json`, and the same as text for people. */
export interface Answer {
	readonly data: unknown;
	readonly text: string;
}

export interface Result {
	readonly code: number;
	readonly out: string;
	readonly err: string;
}

type Command = (args: readonly string[], flags: ReadonlySet<string>) => Promise<Answer>;

const commands: Readonly<Record<string, { run: Command; flags: readonly string[] }>> = {
	families: { run: listFamilies, flags: [] },
	methods: { run: listMethods, flags: [] },
	task: { run: showTask, flags: ['--answers'] },
	solve: { run: solve, flags: [] },
	mark: { run: markTask, flags: [] },
	words: { run: listWords, flags: [] }
};

export const usage = `bucktail: practice tasks for aircraft sheet metal, from the command line

  bucktail families                     every kind of task, with its code
  bucktail methods                      every method, with its givens and results
  bucktail task NUMBER [--answers]      a task; with --answers, its working too
  bucktail solve METHOD key=value …     a method worked: layers=0.032in,0.040in D=1/8
  bucktail mark NUMBER key=entry …      answers marked, as the practice page does
  bucktail words [FAMILY]               every sentence that a family can show

  --json prints the same for scripts. Training aid only, not repair data.`;

/** Carries out one command line. Exit code 0 when it did its job, 2 for bad input. */
export async function run(argv: readonly string[]): Promise<Result> {
	const flags = new Set(argv.filter((arg) => arg.startsWith('--')));
	const [name, ...args] = argv.filter((arg) => !arg.startsWith('--'));
	if (name === undefined || name === 'help' || flags.has('--help'))
		return { code: 0, out: usage, err: '' };
	try {
		const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
		if (!command) throw new UsageError(`There is no command ${echoed(name)}; try bucktail help.`);
		const stray = [...flags].find((flag) => flag !== '--json' && !command.flags.includes(flag));
		if (stray) throw new UsageError(`${name} takes no ${echoed(stray)}; try bucktail help.`);
		const { data, text } = await command.run(args, flags);
		return { code: 0, out: flags.has('--json') ? JSON.stringify(data) : text, err: '' };
	} catch (error) {
		if (!isForPeople(error)) throw error;
		return { code: 2, out: '', err: error.message };
	}
}

function isForPeople(error: unknown): error is Error {
	return [UsageError, TaskNumberError, GivenError, TradeError].some(
		(kind) => error instanceof kind
	);
}
