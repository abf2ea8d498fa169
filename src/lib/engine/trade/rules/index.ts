/* One line a topic, by its id. */
export { bends } from './bends.ts';
export { cutting } from './cutting.ts';
export { holes } from './holes.ts';
export { layout } from './layout.ts';
export { panel } from './panel.ts';
export { repairs } from './repairs.ts';
export { rivets } from './rivets.ts';
