import { candidateJobs, candidateTable } from './candidates.ts';
import { lengthJobs, lengthTable } from './course-lengths.ts';
import { fewDaysTable } from './few-days.ts';
import { forecastTable } from './forecast-check.ts';
import { runJobs } from './jobs.ts';
import {
	BUDGETS,
	EXAM,
	failures,
	lookupIn,
	mainJobs,
	mainTable,
	targetTable
} from './main-table.ts';
import { missedJobs, missedTable } from './missed-days.ts';
import { replanTime } from './replan-time.ts';
import { LATER } from './simulate.ts';

// npx tsx tests/bench/learning/main.ts                      all tables, about a minute
// npx tsx tests/bench/learning/main.ts candidates [learners]  other numbers for the plan
const PROCESSES = 2;

const FOOTER = `_Simulated learners only. The hidden models and their numbers are assumptions; a simulation ranks
policies under them and never shows that people learn._`;

const INTRODUCTION = `# Policies on simulated learners

24 skills in 6 topics; exam on day T = ${EXAM}; four study days a week, drawn for each learner; 1,000 seeded
learners a cell, the same for every policy. Each policy sees right or wrong only and works exactly
the same number of problems. Figures: expected share right in points of a hundred, ± standard error.`;

async function printAll(): Promise<void> {
	const jobs = [...mainJobs, ...missedJobs, ...lengthJobs];
	const outcomes = await runJobs(jobs, PROCESSES);
	const outcomeOf = lookupIn(mainJobs, outcomes);
	const missedFrom = mainJobs.length;
	const lengthsFrom = missedFrom + missedJobs.length;
	const sections = [
		INTRODUCTION,
		...BUDGETS.flatMap((problems) => [
			`## ${problems} problems: share right at T / at T+${LATER}`,
			mainTable(outcomeOf, problems),
			`Targets, differences learner by learner:`,
			targetTable(outcomeOf, problems)
		]),
		'## Where it fails',
		failures(outcomeOf),
		'## Missed days: change at T at equal total work',
		missedTable(outcomes.slice(missedFrom, lengthsFrom), outcomeOf),
		'## Other course lengths, 192 problems: ours less round-robin, at T / at T+28',
		lengthTable(outcomes.slice(lengthsFrom)),
		'## Few days: share right at T, of all skills / of the topic that is worst off',
		fewDaysTable(),
		'## Forecast of the plan page: mean share right at T',
		forecastTable(),
		FOOTER
	];
	console.log(sections.join('\n\n'));
}

async function printCandidates(learners: number): Promise<void> {
	const jobs = candidateJobs(learners);
	const outcomes = await runJobs(jobs, PROCESSES);
	console.log(['# Candidates', candidateTable(jobs, outcomes), FOOTER].join('\n\n'));
}

const [mode, learners] = process.argv.slice(2);
const start = performance.now();
await (mode === 'candidates' ? printCandidates(Number(learners ?? 300)) : printAll());
// times differ from run to run, so they stay out of the output proper
console.error(`\nre-plan of 80 skills over 60 days: ${replanTime().toFixed(1)} ms`);
console.error(`bench: ${((performance.now() - start) / 1000).toFixed(0)} s`);
