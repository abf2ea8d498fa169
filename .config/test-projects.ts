import { playwright } from '@vitest/browser-playwright';
import type { TestProjectConfiguration } from 'vitest/config';
import { chromiumFlags, findChromium } from '../src/scripts/chromium.js';

const inBoth = 'tests/**/*.both.test.ts';
const inChromium = 'tests/**/*.chromium.test.ts';
const onBuiltSite = 'tests/browser/**/*.test.ts';

// `npm test -- --slow` also runs the slow ones.
const slow = process.env.BUCKTAIL_SLOW ? [] : ['tests/**/*.slow.test.ts'];

/** The test runs: in Node, inside Chromium, and in Node driving the built site in Chromium. */
export const testProjects: TestProjectConfiguration[] = [
	{
		extends: true,
		test: {
			name: 'unit',
			environment: 'node',
			include: ['tests/**/*.test.ts'],
			exclude: [inChromium, onBuiltSite, ...slow]
		}
	},
	{
		extends: true,
		test: {
			name: 'chromium',
			include: [inChromium, inBoth],
			exclude: [onBuiltSite, ...slow],
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
			globalSetup: 'tests/browser/serve-site.ts',
			testTimeout: 60_000,
			hookTimeout: 60_000
		}
	}
];
