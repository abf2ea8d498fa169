import { topic } from '../card.ts';

export const holes = topic('holes', 'Holes and drills', 5, [
	['HP', 1, 'drill-for-rivet', 'Pilot and final drill'],
	['HD', 1, 'drill-size', 'Number and letter drills'],
	['HR', 1, 'removal-drill', 'Drilling a rivet out']
]);
