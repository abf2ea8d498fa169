/* One line a topic. */
export { bends } from './bends/topic.ts';
export { cutting } from './cutting/topic.ts';
export { holes } from './holes/topic.ts';
export { layout } from './layout/topic.ts';
export { panel } from './panel/topic.ts';
export { repairs } from './repairs/topic.ts';
export { rivets } from './rivets/topic.ts';
