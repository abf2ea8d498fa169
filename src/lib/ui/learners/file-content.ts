/** What a backup file holds, for the person who is about to add it. */
export interface FileContent {
	/** When it was made, in words. */
	readonly made: string;
	readonly learners: readonly {
		readonly id: string;
		readonly nickname: string;
		/** Answers, choices and names in the log. */
		readonly records: number;
	}[];
}

/** How far adding a file is, in records. */
export interface Adding {
	readonly done: number;
	readonly of: number;
}

export function recordsIn({ learners }: FileContent): number {
	return learners.reduce((sum, { records }) => sum + records, 0);
}
