// One line a family: export { name } from './topic/family.ts';
export { rivetLengthTasks } from './rivets/rivet-length.ts';
