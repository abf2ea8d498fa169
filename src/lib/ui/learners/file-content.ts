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
