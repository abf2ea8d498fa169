import { eighty, forty, sixteen } from './diameter-rows.ts';

export const rows = [
	...forty({ layers: [0.02, 0.04, 0.032] }),
	...sixteen({ layers: [0.016, 0.016] }),
	...eighty({ layers: [0.032, 0.08] })
];
