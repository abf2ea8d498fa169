import { loadFamily } from '../families/catalogue.ts';
import { type Card, cards } from '../families/topics.ts';
import type { Family } from '../families/family.ts';
import type { CautionId } from '../trade/cautions.ts';
import type { Checked } from '../solver/checked.ts';
import { GivenError } from '../solver/read-givens.ts';

/** What can be checked, before its file is loaded. */
export interface CheckCard {
	/** Id of the method. */
	readonly id: string;
	/** What was done, as the shop says it. */
	readonly name: string;
	/** What is measured. */
	readonly measures: string;
	readonly cautions: readonly CautionId[];
}

/** In the order the work is done. */
export const checkCards: readonly CheckCard[] = [
	{
		id: 'blank-size',
		name: 'Blank',
		measures: 'length and width as cut',
		cautions: ['shear', 'edges']
	},
	{ id: 'bar-pieces', name: 'Cut list', measures: 'each piece as cut', cautions: ['saw', 'edges'] },
	{ id: 'least-bend-radius', name: 'Bend radius', measures: 'inside radius', cautions: ['bend'] },
	{
		id: 'developed-width',
		name: 'Bent part',
		measures: 'blank and legs as bent',
		cautions: ['bend', 'edges']
	},
	{
		id: 'rivet-diameter',
		name: 'Rivet diameter, two sheets alike',
		measures: 'the rivet you took',
		cautions: ['drive']
	},
	{
		id: 'rivet-diameter-from-stack',
		name: 'Rivet diameter, by the stack',
		measures: 'the rivet you took',
		cautions: ['drive']
	},
	{ id: 'rivet-length', name: 'Rivet length', measures: 'the rivet you took', cautions: ['drive'] },
	{
		id: 'edge-distance',
		name: 'Edge distance',
		measures: 'each hole to the edge',
		cautions: ['drill']
	},
	{
		id: 'rivet-row',
		name: 'Hole row',
		measures: 'hole positions from one end',
		cautions: ['drill']
	},
	{ id: 'drill-for-rivet', name: 'Hole sizes', measures: 'each hole across', cautions: ['drill'] },
	{
		id: 'shop-head-check',
		name: 'Shop heads',
		measures: 'width and height of each head',
		cautions: ['drive']
	}
];

export function checkCard(id: string): CheckCard | undefined {
	return checkCards.find((card) => card.id === id);
}

const files = import.meta.glob<{ check: Checked }>('../methods/checks/*.ts');

/** The check of a method, and the family that is practice for it. */
export interface LoadedCheck {
	readonly card: CheckCard;
	readonly check: Checked;
	readonly family: Family;
}

/** @throws GivenError when the method has no check */
export async function loadCheck(id: string): Promise<LoadedCheck> {
	const card = checkCard(id);
	const load = files[`../methods/checks/${id}.ts`];
	if (!card || !load) {
		const known = checkCards.map((one) => one.id).join(', ');
		throw new GivenError(`Nothing is measured for ${clipped(id)}; check one of ${known}.`);
	}
	const [{ check }, family] = await Promise.all([load(), loadFamily(familyCard(id))]);
	return { card, check, family };
}

/** The card of the family that practises a method: the two go by one id. */
function familyCard(id: string): Card {
	const card = cards.find((one) => one.id === id);
	if (!card) throw new Error(`no family is called ${id}`);
	return card;
}

function clipped(text: string): string {
	return text.replace(/\p{Cc}/gu, '').slice(0, 30);
}
