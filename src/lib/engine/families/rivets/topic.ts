import { topic } from '../card.ts';

export const rivets = topic('rivets', 'Rivets', 1, [
	['RT', 1, 'rivet-diameter', 'Diameter for two sheets alike'],
	['RD', 1, 'rivet-diameter-from-stack', 'Diameter from the stack'],
	['RL', 1, 'rivet-length', 'Length from the stack'],
	['SH', 1, 'shop-head', 'Shop head wanted'],
	['SC', 1, 'shop-head-check', 'Shop head: accept or rework'],
	['RN', 1, 'rivet-number', 'Rivet number from the rivet'],
	['RR', 1, 'rivet-number-reading', 'Rivet from its number']
]);
