import type { Source, Standing } from './source.ts';
import { unbroken } from './unbroken.ts';

/* The documents by name, apart from what rests on them: a page names them only when it cites. */

export const documents = {
	airframe: 'FAA-H-8083-31B, Aviation Maintenance Technician Handbook: Airframe',
	general: 'FAA-H-8083-30B, Aviation Maintenance Technician Handbook: General',
	ac43: 'AC 43.13-1B, change 1',
	navedtra14315: 'NAVEDTRA 14315, Aviation Structural Mechanic',
	navedtra14119: 'NAVEDTRA 14119',
	tm9: 'TM 9-2320-363-34-2',
	tm10: 'TM 10-5410-229-13&P',
	al0992: 'US Army subcourse AL0992, Basic Airframe Repair',
	aluminum: 'Aluminum design manual, table of nominal densities',
	hdbk5: 'MIL-HDBK-5',
	nist: 'NIST, Federal Register notice 59-5442',
	none: ''
} as const;

export type DocumentId = keyof typeof documents;

const standingWords: Readonly<Record<Standing, string>> = {
	read: '',
	quoted: 'as quoted elsewhere',
	practice: 'common practice',
	memory: 'from memory',
	worked: 'worked out from the other rules'
};

/** The source as one line: `FAA-H-8083-31B, ch. 4, p. 4-32`. */
export function cite({ document, at, standing }: Source): string {
	const short = documents[document].split(', Aviation')[0] ?? '';
	return [short, at, standingWords[standing]].filter(Boolean).join(', ');
}

/** Several as they stand on a page: no line breaks inside a page number or before it. */
export function cited(sources: readonly Source[]): string {
	return unbroken(sources.map(cite).join('; '))
		.replace(/(\d)-(?=\d)/g, '$1-\u2060')
		.replaceAll(')(', ')\u2060(');
}
