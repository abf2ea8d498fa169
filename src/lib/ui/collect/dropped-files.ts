/** All files in what was dropped, those in folders too. */
export async function droppedFiles(data: DataTransfer): Promise<File[]> {
	const entries = [...data.items].flatMap((item) => item.webkitGetAsEntry() ?? []);
	// Some browsers hand over files without entries.
	if (entries.length === 0) return [...data.files];
	const each = await Promise.all(entries.map(filesIn));
	return each.flat();
}

async function filesIn(entry: FileSystemEntry): Promise<File[]> {
	if (isFile(entry)) {
		return new Promise((resolve) => {
			entry.file(
				(file) => resolve([file]),
				() => resolve([])
			);
		});
	}
	if (!isFolder(entry)) return [];
	const files: File[] = [];
	const reader = entry.createReader();
	// A reader gives some of a folder at a time, and nothing at its end.
	for (;;) {
		const some = await new Promise<FileSystemEntry[]>((resolve) => {
			reader.readEntries(resolve, () => resolve([]));
		});
		if (some.length === 0) return files;
		for (const one of some) files.push(...(await filesIn(one)));
	}
}

function isFile(entry: FileSystemEntry): entry is FileSystemFileEntry {
	return entry.isFile;
}

function isFolder(entry: FileSystemEntry): entry is FileSystemDirectoryEntry {
	return entry.isDirectory;
}
