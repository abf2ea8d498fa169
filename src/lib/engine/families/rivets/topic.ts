import { topic } from '../card.ts';

export const rivets = topic('rivets', 'Rivets', 1, [
	['RT', 9, 'rivet-diameter', 'Diameter for two sheets alike'],
	['RD', 8, 'rivet-diameter-from-stack', 'Diameter from the stack'],
	['RL', 8, 'rivet-length', 'Length from the stack'],
	['SH', 6, 'shop-head', 'Shop head wanted'],
	['SC', 4, 'shop-head-check', 'Shop head: accept or rework'],
	['RN', 4, 'rivet-number', 'Rivet number from the rivet'],
	['RR', 4, 'rivet-number-reading', 'Rivet from its number']
]);
