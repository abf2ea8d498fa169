import { wholeSyllabus } from '../lib/engine/schedule/whole-syllabus.ts';

/** What the build works out once for every device (work-ahead.ts). */
export const syllabus = await wholeSyllabus();
