import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { rmSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { type BrowserContext, chromium } from 'playwright-core';
import { chromiumFlags, findChromium } from '../../src/scripts/chromium.js';

/** A Chromium that can be killed as a whole, on a profile that stays. */
export interface Killable {
	readonly context: BrowserContext;
	/** Kills every process of it at once, and waits until they are gone. */
	kill(): Promise<void>;
}

/** Starts Chromium on a profile folder, as the leader of a process group of its own. */
export async function startKillable(profile: string): Promise<Killable> {
	// The name of the folder's last life would be read for this one's.
	rmSync(`${profile}/DevToolsActivePort`, { force: true });
	const flags = ['--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`];
	const child = spawn(findChromium() ?? '', [...chromiumFlags, ...flags, 'about:blank'], {
		detached: true,
		stdio: ['ignore', 'ignore', 'pipe']
	});
	const ended = once(child, 'exit');
	const kill = async () => {
		if (child.exitCode === null && child.signalCode === null)
			process.kill(-pidOf(child), 'SIGKILL');
		await ended;
	};
	try {
		const browser = await chromium.connectOverCDP(await addressOf(child));
		const [context] = browser.contexts();
		if (!context) throw new Error('no context');
		return { context, kill };
	} catch (error) {
		await kill();
		throw error;
	}
}

function pidOf({ pid }: ChildProcess): number {
	if (pid === undefined) throw new Error('Chromium did not start');
	return pid;
}

/** Where it can be driven, as it says when it has started. */
async function addressOf({ stderr }: ChildProcess): Promise<string> {
	if (!stderr) throw new Error('no output');
	for await (const line of createInterface(stderr)) {
		const [, address] = /DevTools listening on (ws:\S+)/.exec(line) ?? [];
		if (address !== undefined) {
			stderr.resume();
			return address;
		}
	}
	throw new Error('Chromium ended before it could be driven');
}
