import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/*
 * Imported before everything else, and itself in words that any Node reads: in one too old, the
 * other scripts fail as they start.
 */

/**
 * What to do about this Node.
 *
 * @param {string} version as `process.versions.node` @param {string} wanted as `engines.node`
 * @returns {string | null} one sentence; null when it is new enough
 */
export function nodeAdvice(version, wanted) {
	const least = wanted.replace('>=', '');
	const [here, there] = [numberOf(version), numberOf(least)];
	if (here >= there) return null;
	return `Bucktail needs Node ${least} or later, and this is ${version}: install a newer one from nodejs.org, then start again.`;
}

/** @param {string} version such as 20.19.0 */
function numberOf(version) {
	return version.split('.').reduce((sum, part) => sum * 1000 + Number(part), 0);
}

const manifest = join(fileURLToPath(import.meta.url), '../../../package.json');
const { engines } = JSON.parse(readFileSync(manifest, 'utf8'));
const advice = nodeAdvice(process.versions.node, engines.node);
if (advice !== null) {
	console.error(advice);
	process.exit(1);
}
