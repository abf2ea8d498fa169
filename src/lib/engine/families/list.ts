import { listed } from './card.ts';

/*
 * One line a family: code, revision, topic, file, name in plain words. Raise the revision when
 * an old seed would give a different task. Codes and ids stand in learners' records and are
 * never used again for something else.
 */
export const cards = [
	listed('RT', 1, 'rivets', 'rivet-diameter', 'Diameter for two sheets alike'),
	listed('RD', 1, 'rivets', 'rivet-diameter-from-stack', 'Diameter from the stack'),
	listed('RL', 1, 'rivets', 'rivet-length', 'Length from the stack'),
	listed('SH', 1, 'rivets', 'shop-head', 'Shop head wanted'),
	listed('SC', 1, 'rivets', 'shop-head-check', 'Shop head: accept or rework'),
	listed('RN', 1, 'rivets', 'rivet-number', 'Rivet number from the rivet'),
	listed('RR', 1, 'rivets', 'rivet-number-reading', 'Rivet from its number'),
	listed('ED', 1, 'layout', 'edge-distance', 'Edge distance'),
	listed('LR', 1, 'layout', 'rivet-row', 'A row of rivets'),
	listed('LF', 1, 'layout', 'lap-width', 'Width of a lap'),
	listed('CB', 1, 'cutting', 'blank-size', 'Size of a blank'),
	listed('CS', 1, 'cutting', 'pieces-per-sheet', 'Blanks from a sheet'),
	listed('CP', 1, 'cutting', 'bar-pieces', 'Pieces from a bar'),
	listed('CW', 1, 'cutting', 'sheet-weight', 'Weight of a sheet'),
	listed('BS', 1, 'bends', 'setback', 'Setback'),
	listed('BL', 1, 'bends', 'setback-from-legs', 'Setback from the angle between the legs'),
	listed('BA', 1, 'bends', 'bend-allowance', 'Bend allowance'),
	listed('BW', 1, 'bends', 'developed-width', 'Developed width'),
	listed('BG', 1, 'bends', 'sight-line', 'Sight line for the brake'),
	listed('BR', 1, 'bends', 'least-bend-radius', 'Least bend radius'),
	listed('HP', 1, 'holes', 'drill-for-rivet', 'Pilot and final drill'),
	listed('HD', 1, 'holes', 'drill-size', 'Number and letter drills'),
	listed('HR', 1, 'holes', 'removal-drill', 'Drilling a rivet out')
];
