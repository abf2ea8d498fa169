/** Hands the person a file that was made on the page. */
export function download(name: string, type: string, content: BlobPart): void {
	const address = URL.createObjectURL(new Blob([content], { type }));
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// Some browsers read the address only after the click has been dealt with.
	setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
