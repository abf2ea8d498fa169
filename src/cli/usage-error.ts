/** A command that cannot be carried out as written; the message is one sentence. */
export class UsageError extends Error {}

/** Text from a command line, safe to echo: no control characters, not too long. */
export function echoed(text: string): string {
	const plain = text.replace(/[\p{Cc}\p{Cf}]/gu, '');
	return plain.length > 40 ? `${plain.slice(0, 40)}…` : plain;
}
