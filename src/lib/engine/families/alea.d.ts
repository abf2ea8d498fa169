declare module 'seedrandom/lib/alea.js' {
	/** A seeded generator; call it with a seed that is not empty. */
	export default function alea(seed: string): { (): number; int32(): number };
}
