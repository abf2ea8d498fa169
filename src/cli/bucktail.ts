import { type Progress, run } from './run.ts';

/** A line that is written over while work goes on, where somebody is looking. */
const progress: Progress = (what, done, of) => {
	if (!process.stderr.isTTY) return;
	process.stderr.write(`\r${what} ${done} of ${of}${done === of ? '\n' : ''}`);
};

const { code, out, err } = await run(process.argv.slice(2), progress);
if (out) process.stdout.write(`${out}\n`);
if (err) process.stderr.write(`${err}\n`);
process.exitCode = code;
