/** The name under which a version of the app is kept on the device, and of the lock its pages hold. */
export const keptAs = (version: string): string => `bucktail-${version}`;

/** Whether a cache of this origin is one of ours. */
export const isKept = (cache: string): boolean => cache.startsWith(keptAs(''));
