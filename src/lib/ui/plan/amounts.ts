import { counted } from '../counted.ts';

/** `about 1 minute`, `about 22 minutes` */
export function aboutMinutes(minutes: number): string {
	return `about ${counted(Math.max(1, Math.round(minutes)), 'minute')}`;
}
