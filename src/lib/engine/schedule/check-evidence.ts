import type { Checkup } from '../check/check.ts';
import type { Owned } from '../check/own.ts';
import { evidenceOf, type SkillEvidence, worse } from './evidence.ts';
import { skillOf } from './syllabus.ts';

/**
 * What a checked part shows, skill by skill. Own results show what answers show. A limit that fails
 * charges the step behind it; one that holds or is undecided shows nothing, since a part can come
 * out right without anybody having worked it out.
 */
export function evidenceOfCheck({ check, limits }: Checkup, { marked }: Owned): SkillEvidence[] {
	const broken = limits
		.filter(({ verdict }) => verdict === 'fails')
		.map(({ limit }): SkillEvidence => ({
			skill: skillOf(check.of, limit.behind),
			result: 'wrong'
		}));
	const answered = marked.flatMap(({ task, verdicts }) =>
		evidenceOf(task, { verdicts, opened: [], byStep: false, charged: [] })
	);
	const found = new Map<string, SkillEvidence>();
	for (const one of [...answered, ...broken]) {
		const before = found.get(one.skill);
		if (!before || worse(one.result, before.result)) found.set(one.skill, one);
	}
	return [...found.values()];
}
