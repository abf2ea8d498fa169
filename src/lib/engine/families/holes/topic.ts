import { topic } from '../card.ts';

export const holes = topic('holes', 'Holes and drills', 5, [
	['HP', 3, 'drill-for-rivet', 'Pilot and final drill'],
	['HD', 2, 'drill-size', 'Number and letter drills'],
	['HR', 3, 'removal-drill', 'Drilling a rivet out']
]);
