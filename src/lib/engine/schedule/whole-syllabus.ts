import { loadFamilies } from '../families/catalogue.ts';
import type { Syllabus } from './skill.ts';
import { syllabusOf } from './syllabus.ts';

/**
 * The syllabus of all families. It draws hundreds of tasks; what ships has been worked out by the
 * build (`plugins/work-ahead.ts`).
 */
export async function wholeSyllabus(): Promise<Syllabus> {
	return syllabusOf(await loadFamilies());
}
