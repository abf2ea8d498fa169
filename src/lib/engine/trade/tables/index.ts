/* One line a table. */
export * from './allowance-chart.ts';
export * from './decimal-equivalents.ts';
export * from './densities.ts';
export * from './drill-chart.ts';
export * from './edge-distances.ts';
export * from './k-chart.ts';
export * from './least-radius.ts';
export * from './rivet-alloys.ts';
export * from './rivet-dashes.ts';
export * from './rivet-drills.ts';
export * from './rivet-heads.ts';
export * from './rivet-pitches.ts';
export * from './rivets-per-inch.ts';
