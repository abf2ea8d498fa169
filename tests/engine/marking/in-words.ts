import type { Cause, Verdict } from '../../../src/lib/engine/marking/verdict.ts';

/** A cause in one short text: `slip oneMargin`, `slip down+byHoles`, `either down / more`. */
function inWords(cause: Cause): string {
	switch (cause.kind) {
		case 'slip':
			return `slip ${[...cause.slips, ...(cause.also ? [cause.also] : [])].join('+')}`;
		case 'either':
			return `either ${(cause.causes?.map(inWords) ?? cause.slips).join(' / ')}`;
		case 'other-step':
			return `step ${cause.step}`;
		case 'factor':
			return `factor ${cause.times} ${cause.of}`;
		case 'unit':
			return `unit ${cause.unit}`;
		case 'rounding':
			return `rounding ${cause.how}${cause.parts ? ` ${cause.parts}` : ''}`;
		case 'digits':
			return `digits ${cause.how}`;
		case 'order':
			return `order ${cause.how}`;
		default:
			return cause.kind;
	}
}

/** A verdict in as short a text. */
export function shown(verdict: Verdict | undefined): string {
	if (verdict?.kind === 'rework') return inWords(verdict.cause);
	if (verdict?.kind === 'accept') return verdict.carried ? 'carried' : 'right';
	return verdict?.kind ?? 'none';
}
