import { strToU8, Unzip, UnzipInflate, zipSync } from 'fflate';

/** What may come out of a package, in bytes and files. */
const most = { files: 500, one: 5_000_000, all: 20_000_000 } as const;

/** Bytes given to be inflated at a time: the library inflates all it gets at once. */
const slice = 1024;

export type ZipReading =
	| { readonly ok: true; readonly files: ReadonlyMap<string, Uint8Array> }
	| { readonly ok: false; readonly sentence: string };

/**
 * Reads a ZIP package; never throws. What its directory says of sizes is not believed, so that a
 * small file cannot swell without end. Names are labels: no file is made of them.
 */
export function readZip(bytes: Uint8Array): ZipReading {
	const files = new Map<string, Uint8Array>();
	let all = 0;
	let open = 0;
	const unzip = new Unzip((file) => {
		if (file.name.length > 300 || /\p{Cc}/u.test(file.name)) throw new Refused(damaged);
		if (files.has(file.name)) throw new Refused(damaged);
		if (files.size >= most.files) throw new Refused(`It holds more than ${most.files} files.`);
		const parts: Uint8Array[] = [];
		let size = 0;
		open++;
		files.set(file.name, new Uint8Array());
		file.ondata = (error, data, isLast) => {
			if (error) throw error;
			size += data.length;
			all += data.length;
			if (size > most.one || all > most.all) throw new Refused(tooLarge);
			parts.push(data);
			if (!isLast) return;
			open--;
			files.set(file.name, joined(parts, size));
		};
		file.start();
	});
	unzip.register(UnzipInflate);
	try {
		for (let at = 0; at < bytes.length; at += slice) {
			unzip.push(bytes.subarray(at, at + slice), at + slice >= bytes.length);
		}
	} catch (error) {
		return { ok: false, sentence: error instanceof Refused ? error.message : damaged };
	}
	if (open > 0 || filesListed(bytes) !== files.size) return { ok: false, sentence: damaged };
	return { ok: true, files };
}

const damaged = 'The package is damaged or cut short; ask for it to be sent again.';
const tooLarge = 'What is packed in it is too large for hand-ins; unpack it and look at the files.';

class Refused extends Error {}

/** How many files the record at the end counts; null without such a record. */
function filesListed(bytes: Uint8Array): number | null {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	// 22 bytes, and a comment of up to 65,535 behind them (APPNOTE 4.3.16).
	for (let at = bytes.length - 22; at >= Math.max(0, bytes.length - 22 - 65_535); at--) {
		if (view.getUint32(at, true) === 0x06054b50) return view.getUint16(at + 10, true);
	}
	return null;
}

function joined(parts: readonly Uint8Array[], size: number): Uint8Array {
	const whole = new Uint8Array(size);
	let at = 0;
	for (const part of parts) {
		whole.set(part, at);
		at += part.length;
	}
	return whole;
}

/** A ZIP package; the same files give the same bytes. */
export function writeZip(files: ReadonlyMap<string, string>): Uint8Array {
	const entries = Object.fromEntries([...files].map(([name, text]) => [name, strToU8(text)]));
	// Text without a zone: a Date would come out otherwise in another one.
	return zipSync(entries, { mtime: '2026-01-01T00:00:00', level: 9 });
}
