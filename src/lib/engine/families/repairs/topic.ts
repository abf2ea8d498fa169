import { topic } from '../card.ts';

export const repairs = topic('repairs', 'Repairs', 6, [
	['RB', 5, 'rivets-each-side', 'Rivets each side of a break, by table']
]);
