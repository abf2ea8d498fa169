import { topic } from '../card.ts';

export const holes = topic('holes', 'Holes and drills', 5, [
	['HP', 5, 'drill-for-rivet', 'Pilot and final drill'],
	['HD', 5, 'drill-size', 'Number and letter drills'],
	['HR', 6, 'removal-drill', 'Drilling a rivet out']
]);
