/** Longest nickname, in characters. */
export const longestNickname = 30;

export type NicknameReading =
	| { readonly ok: true; readonly nickname: string }
	| { readonly ok: false; readonly sentence: string };

/** Reads a nickname as typed; `taken` are those of the other learners on the device. */
export function readNickname(typed: string, taken: readonly string[]): NicknameReading {
	const nickname = plain(typed);
	if (nickname === '') return { ok: false, sentence: 'Type a nickname.' };
	if ([...nickname].length > longestNickname) {
		const sentence = `A nickname has at most ${longestNickname} characters; shorten it.`;
		return { ok: false, sentence };
	}
	const other = taken.find((name) => sameNickname(name, nickname));
	if (other === undefined) return { ok: true, nickname };
	return { ok: false, sentence: `There is a learner called ${other} here; choose another name.` };
}

/** A nickname that comes from a file, with a number after it when another learner has it. */
export function freeNickname(wanted: string, taken: readonly string[]): string {
	const base = plain(wanted) || 'Learner';
	for (let number = 1; ; number++) {
		const end = number === 1 ? '' : ` ${number}`;
		const start = [...base].slice(0, longestNickname - end.length).join('');
		const nickname = start.trimEnd() + end;
		if (!taken.some((name) => sameNickname(name, nickname))) return nickname;
	}
}

// Two names that look the same must read the same: marks that cannot be seen are taken out.
function plain(text: string): string {
	return text
		.replace(/\s/g, ' ')
		.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Default_Ignorable_Code_Point}]/gu, '')
		.normalize('NFC')
		.replace(/ +/g, ' ')
		.trim();
}

function sameNickname(a: string, b: string): boolean {
	return folded(a) === folded(b);
}

function folded(text: string): string {
	return text.normalize('NFKC').toLowerCase();
}
