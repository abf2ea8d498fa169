import { PanelError } from '../lib/engine/panel/read-panel.ts';
import { SetError } from '../lib/engine/sets/set-error.ts';
import { TaskNumberError } from '../lib/engine/tasks/task-number.ts';
import { GivenError } from '../lib/engine/solver/read-givens.ts';
import { TradeError } from '../lib/engine/solver/trade-function.ts';
import { checkMeasured } from './commands/check.ts';
import { listFamilies } from './commands/families.ts';
import { markTask } from './commands/mark.ts';
import { listMethods } from './commands/methods.ts';
import { planJob } from './commands/panel.ts';
import { collectSet } from './commands/set/collect.ts';
import { exportSet } from './commands/set/export.ts';
import { handInSet } from './commands/set/hand-in.ts';
import { newSet } from './commands/set/new.ts';
import { printSet } from './commands/set/print.ts';
import { showSet } from './commands/set/show.ts';
import { solve } from './commands/solve.ts';
import { showTask } from './commands/task.ts';
import { listWords } from './commands/words.ts';
import { type Options, readCommandLine, type Takes } from './options.ts';
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

/** Told while long work goes on: what is being done, how much of it is done, of how much. */
export type Progress = (what: string, done: number, of: number) => void;

interface Command extends Takes {
	readonly run: (args: readonly string[], options: Options, progress: Progress) => Promise<Answer>;
}

const commands: Readonly<Record<string, Command>> = {
	families: { run: listFamilies },
	methods: { run: listMethods },
	task: { run: showTask, flags: ['--answers'] },
	solve: { run: solve },
	mark: { run: markTask },
	check: { run: checkMeasured, values: ['--tool'], rests: ['--own'] },
	words: { run: listWords },
	panel: { run: planJob, flags: ['--csv', '--svg', '--dxf', '--schema'], values: ['--list'] },
	'set new': {
		run: newSet,
		flags: ['--own-numbers', '--mixed-order', '--options', '--no-help'],
		values: [
			'--seed',
			'--due',
			'--note',
			'--tolerance',
			'--within-rule',
			'--within-micrometer',
			'--address'
		]
	},
	'set show': { run: showSet, flags: ['--answers'], values: ['--code'] },
	'set print': { run: printSet, flags: ['--key'], values: ['--students', '--out'] },
	'set hand-in': {
		run: handInSet,
		flags: ['--promised'],
		values: ['--code', '--answers', '--out', '--name', '--version', '--units']
	},
	'set collect': {
		run: collectSet,
		values: ['--csv', '--slips', '--overrides', '--set', '--xapi']
	},
	'set export': { run: exportSet, values: ['--qti', '--ics'] }
};

export const usage = `bucktail: practice tasks for aircraft sheet metal, from the command line

  bucktail families                     every kind of task, with its code
  bucktail methods                      every method, with its givens and results
  bucktail task NUMBER [--answers]      a task; with --answers, its working too
  bucktail solve METHOD key=value …     a method worked: layers=0.032in,0.040in D=1/8
  bucktail mark NUMBER key=entry …      answers marked, as the practice page does
  bucktail check METHOD key=measured …  a part against its limits: measured=0.29,0.31
      [--own key=value …] [--tool scale|caliper|micrometer]
  bucktail words [FAMILY]               every sentence that a family can show
  bucktail panel FILE.json              a panel worked out: holes, rivets, drills, blank
      [--csv [--list rivets|drills|cut]] [--svg] [--dxf]
  bucktail panel --schema               the JSON Schema of a panel file

  bucktail set new TITLE RL2*3 ED1 …    a set of tasks, and the link that holds it;
                                        RL2*3=1,2,1,1 gives the marks of the steps
      [--seed TEXT] [--own-numbers] [--mixed-order] [--options] [--no-help]
      [--due DATE] [--note TEXT] [--tolerance TEXT]
      [--within-rule 1/32] [--within-micrometer 0.005] [--address URL]
  bucktail set show LINK                the tasks of a set [--code CODE] [--answers]
  bucktail set print LINK --out DIR     sheets to print [--key] [--students codes.csv]
  bucktail set hand-in LINK             answers from a file, as a hand-in
      --code CODE --answers FILE.json --out FILE
      [--name TEXT] [--version N] [--units mm] [--promised]
  bucktail set collect DIR_OR_FILES …   hand-ins marked again from their numbers
      [--csv OUT] [--slips OUT] [--xapi OUT] [--overrides FILE.json] [--set LINK]
  bucktail set export LINK              the set as a QTI 3.0 package, its due date
      [--qti OUT.zip] [--ics OUT.ics]

  --json prints the same for scripts. Training aid only, not repair data.`;

/** Carries out one command line. Exit code 0 when it did its job, 2 for bad input. */
export async function run(argv: readonly string[], progress: Progress = () => {}): Promise<Result> {
	const words = argv.filter((arg) => !arg.startsWith('--'));
	const length = words[0] === 'set' ? 2 : 1;
	const name = words.slice(0, length).join(' ');
	if (words.length === 0 || name === 'help' || argv.includes('--help'))
		return { code: 0, out: usage, err: '' };
	try {
		const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
		if (!command) throw new UsageError(`There is no command ${echoed(name)}; try bucktail help.`);
		const line = readCommandLine(argv, name, command);
		const { data, text } = await command.run(line.words.slice(length), line.options, progress);
		return { code: 0, out: line.options.has('--json') ? JSON.stringify(data) : text, err: '' };
	} catch (error) {
		if (!isForPeople(error)) throw error;
		return { code: 2, out: '', err: error.message };
	}
}

function isForPeople(error: unknown): error is Error {
	return [UsageError, TaskNumberError, GivenError, TradeError, SetError, PanelError].some(
		(kind) => error instanceof kind
	);
}
