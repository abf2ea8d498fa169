/*
 * The alloys that go with a part. Apart from the facts in sheets.ts, whose sentences no task needs before it can be
 * answered.
 */

/** Skins but those of a wing, parts that carry little, and angles, which no brake bends of 7075 so sharply. */
const everyday = /cowl|cover|door|hinge|floor p|inspection|access|[^g] skin|two angles/i;

/** Whether what a task tells of a part lets it be of a sheet alloy: 7075 and 2014 are for heavy structure. */
export function isSuited(part: string, alloy: string): boolean {
	return !/2014|7075/.test(alloy) || !everyday.test(part);
}
