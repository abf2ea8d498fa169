import { counted } from '../counted.ts';

/** A share, 0 to 1, as people say it. */
export function percent(share: number): number {
	return Math.round(share * 100);
}

/** `about 1 minute`, `about 22 minutes` */
export function aboutMinutes(minutes: number): string {
	return `about ${counted(Math.max(1, Math.round(minutes)), 'minute')}`;
}
