import { topic } from '../card.ts';

export const rivets = topic('rivets', 'Rivets', 1, [
	['RT', 2, 'rivet-diameter', 'Diameter for two sheets alike'],
	['RD', 2, 'rivet-diameter-from-stack', 'Diameter from the stack'],
	['RL', 2, 'rivet-length', 'Length from the stack'],
	['SH', 2, 'shop-head', 'Shop head wanted'],
	['SC', 2, 'shop-head-check', 'Shop head: accept or rework'],
	['RN', 2, 'rivet-number', 'Rivet number from the rivet'],
	['RR', 2, 'rivet-number-reading', 'Rivet from its number']
]);
