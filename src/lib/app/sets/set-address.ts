import { resolve } from '$app/paths';

/** The address of a page with what stands behind the `#`, as it is sent to somebody. */
export function sentAddress(route: '/sets/', fragment: string): string {
	return `${location.origin}${resolve(route)}#${fragment}`;
}

/** Whether only this computer can open the pages under the address they have here. */
export function isOnlyHere(): boolean {
	return /^(localhost|127\.|\[::1\])/.test(location.hostname);
}
