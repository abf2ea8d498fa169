// One line a family: export { name } from './topic/family.ts';
export { rivetLengthTasks } from './rivets/rivet-length.ts';
export { edgeDistanceTasks } from './layout/edge-distance.ts';
export { rivetRowTasks } from './layout/rivet-row.ts';
export { lapWidthTasks } from './layout/lap-width.ts';
export { blankSizeTasks } from './cutting/blank-size.ts';
export { piecesPerSheetTasks } from './cutting/pieces-per-sheet.ts';
export { barPiecesTasks } from './cutting/bar-pieces.ts';
export { sheetWeightTasks } from './cutting/sheet-weight.ts';
