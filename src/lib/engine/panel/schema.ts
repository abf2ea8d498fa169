import {
	type Field,
	type Fields,
	lists,
	panelFields,
	panelVersion,
	planFields,
	rivetFields
} from './fields.ts';

/** The JSON Schema of a panel file, published as `panel-1.schema.json`. */
export function panelSchema() {
	const parts = Object.entries(lists).map(([key, { fields, one, most }]) => [
		key,
		{ type: 'array', title: `Each ${one}`, maxItems: most, items: objectSchema(fields) }
	]);
	return {
		$schema: 'https://json-schema.org/draft/2020-12/schema',
		$id: `panel-${panelVersion}.schema.json`,
		title: 'Panel to be riveted',
		description:
			'Lengths are text with a unit, "3/4in" or "19mm", or numbers of inches. Places count from the lower left corner along length and width. Training aid only, not repair data.',
		type: 'object',
		properties: {
			version: { const: panelVersion },
			panel: objectSchema(panelFields),
			...Object.fromEntries(parts),
			rivet: objectSchema(rivetFields),
			...propertiesOf(planFields)
		},
		required: ['panel', ...neededIn(planFields)],
		additionalProperties: false
	};
}

function objectSchema(fields: Fields) {
	return {
		type: 'object',
		properties: propertiesOf(fields),
		required: neededIn(fields),
		additionalProperties: false
	};
}

function propertiesOf(fields: Fields) {
	return Object.fromEntries(
		Object.entries(fields).map(([key, field]) => [
			key,
			{
				description: field.says,
				...(field.usual === undefined ? {} : { default: field.usual }),
				...typeOf(field)
			}
		])
	);
}

function neededIn(fields: Fields): string[] {
	return Object.keys(fields).filter((key) => fields[key]?.needed);
}

const size = { type: ['string', 'number'] } as const;

function typeOf({ reads, choices }: Field) {
	switch (reads) {
		case 'text':
			return { type: 'string', maxLength: 60 };
		case 'choice':
			return { type: 'string', enum: choices };
		case 'lengths':
			return { type: 'array', items: size };
		default:
			return size;
	}
}
