/** How hard a task is: 1 one idea, 2 as it comes on the bench, 3 more steps or a harder case. */
export type Level = 1 | 2 | 3;

export const levels: readonly Level[] = [1, 2, 3];
