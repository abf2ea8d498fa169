import { topic } from '../card.ts';

export const rivets = topic('rivets', 'Rivets', 1, [
	['RT', 3, 'rivet-diameter', 'Diameter for two sheets alike'],
	['RD', 3, 'rivet-diameter-from-stack', 'Diameter from the stack'],
	['RL', 3, 'rivet-length', 'Length from the stack'],
	['SH', 3, 'shop-head', 'Shop head wanted'],
	['SC', 2, 'shop-head-check', 'Shop head: accept or rework'],
	['RN', 3, 'rivet-number', 'Rivet number from the rivet'],
	['RR', 3, 'rivet-number-reading', 'Rivet from its number']
]);
