import { skillOf } from '../schedule/syllabus.ts';
import type { SkillId } from '../schedule/skill.ts';
import type { MarkedHandIn, TaskMark } from './collect.ts';
import type { OpenSet, SetTask } from './open-set.ts';

/** A slip and the students who made it. */
export interface SlipCount {
	readonly slip: string;
	/** One sentence. */
	readonly says: string;
	readonly codes: readonly string[];
}

/** A step that was missed: wrong by a slip of its own, not by what it follows from. */
export interface MissedStep {
	readonly skill: SkillId;
	readonly label: string;
	/** Id of the rule that the step rests on, in `trade/rules.ts`; null for plain arithmetic. */
	readonly rule: string | null;
	/** Places of the tasks it was missed in. */
	readonly places: readonly number[];
	readonly codes: readonly string[];
	/** Most met first. */
	readonly slips: readonly SlipCount[];
}

interface Miss {
	readonly code: string;
	readonly place: number;
	readonly skill: SkillId;
	readonly label: string;
	readonly rule: string | null;
	readonly slip: string;
	readonly says: string;
}

/** The steps that students missed, most students first; only slips that are certain. */
export function missedSteps(open: OpenSet, handIns: readonly MarkedHandIn[]): MissedStep[] {
	const misses = handIns.flatMap(({ code, tasks }) => {
		const own = new Map(open.for(code).map((one) => [one.place, one]));
		return tasks.flatMap((mark) => missesIn(code, mark, own.get(mark.place)));
	});
	const skills = [...new Set(misses.map(({ skill }) => skill))];
	return skills
		.map((skill) => missedStep(misses.filter((one) => one.skill === skill)))
		.sort((a, b) => b.codes.length - a.codes.length || (a.skill < b.skill ? -1 : 1));
}

function missesIn(code: string, { place, answers }: TaskMark, own?: SetTask): Miss[] {
	if (!own) return [];
	const { method } = own.task;
	const certain = answers.filter(({ either }) => !either);
	return certain.flatMap(({ slips }) =>
		slips.flatMap((id) => {
			const slip = method.slips[id];
			if (!slip) return [];
			return {
				code,
				place,
				skill: skillOf(method, slip.step),
				label: method.steps[slip.step]?.label ?? slip.step,
				rule: method.steps[slip.step]?.rule ?? null,
				slip: slip.id,
				says: slip.says
			};
		})
	);
}

function missedStep(misses: readonly Miss[]): MissedStep {
	const [first] = misses;
	if (!first) throw new Error('no miss');
	const slips = [...new Set(misses.map(({ slip }) => slip))].map((slip) => {
		const own = misses.filter((one) => one.slip === slip);
		return { slip, says: own[0]?.says ?? '', codes: codesIn(own) };
	});
	return {
		skill: first.skill,
		label: first.label,
		rule: first.rule,
		places: [...new Set(misses.map(({ place }) => place))].sort((a, b) => a - b),
		codes: codesIn(misses),
		slips: slips.sort((a, b) => b.codes.length - a.codes.length || (a.slip < b.slip ? -1 : 1))
	};
}

function codesIn(misses: readonly Miss[]): string[] {
	return [...new Set(misses.map(({ code }) => code))];
}
