import { availableParallelism } from 'node:os';
import { playwright } from '@vitest/browser-playwright';
import type { TestProjectConfiguration } from 'vitest/config';
import { chromiumFlags, findChromium } from '../src/scripts/chromium.js';

const inBoth = 'tests/**/*.both.test.ts';
const inChromium = 'tests/**/*.chromium.test.ts';
const onBuiltSite = 'tests/browser/**/*.test.ts';
// These put other modules in the place of real ones: each gets its own of all modules.
const alone = 'tests/**/*.alone.test.ts';

// `npm test -- --slow` also runs the slow ones.
const slow = process.env.BUCKTAIL_SLOW ? [] : ['tests/**/*.slow.test.ts'];

// Milliseconds: a test that hangs ends at last, and a machine that is busy or slow fails none.
const patience = 300_000;

/** Test files at a time. Vitest would leave one processor idle. */
export const maxWorkers = availableParallelism();

/** The test runs: in Node, inside Chromium, and in Node driving the built site in Chromium. */
export const testProjects: TestProjectConfiguration[] = [
	{
		extends: true,
		test: {
			name: 'unit',
			environment: 'node',
			include: ['tests/**/*.test.ts'],
			exclude: [inChromium, onBuiltSite, alone, ...slow],
			// Files share the modules they load, which takes half of the time.
			isolate: false,
			unstubGlobals: true,
			testTimeout: patience
		}
	},
	{
		extends: true,
		test: {
			name: 'alone',
			environment: 'node',
			include: [alone],
			exclude: slow,
			testTimeout: patience
		}
	},
	{
		extends: true,
		test: {
			name: 'chromium',
			include: [inChromium, inBoth],
			exclude: [onBuiltSite, ...slow],
			testTimeout: patience,
			browser: {
				enabled: true,
				headless: true,
				screenshotFailures: false,
				instances: [{ browser: 'chromium' }],
				provider: playwright({
					launchOptions: { executablePath: findChromium(), args: chromiumFlags }
				})
			}
		}
	},
	{
		extends: true,
		test: {
			name: 'browser',
			environment: 'node',
			include: [onBuiltSite],
			exclude: slow,
			// Files share one Chromium, and the engine that works their answers.
			isolate: false,
			globalSetup: 'tests/browser/serve-site.ts',
			// Half of a browser test is waiting.
			maxWorkers: maxWorkers + 1,
			expect: { poll: { timeout: 90_000 } },
			testTimeout: patience,
			hookTimeout: patience
		}
	}
];
