/** A set, code or hand-in that cannot be used as it stands; the message is one sentence. */
export class SetError extends Error {}
