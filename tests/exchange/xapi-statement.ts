import * as v from 'valibot';

/*
 * What the xAPI specification 1.0.3 asks of these statements (part two, 2.4): written from its
 * text, since no schema is published with it.
 */
const iri = v.pipe(v.string(), v.url());
const languages = v.pipe(
	v.record(v.pipe(v.string(), v.regex(/^[a-z]{2}$/)), v.string()),
	v.minEntries(1)
);
const score = v.pipe(
	v.strictObject({
		scaled: v.pipe(v.number(), v.minValue(-1), v.maxValue(1)),
		raw: v.number(),
		min: v.number(),
		max: v.number()
	}),
	v.check(({ raw, min, max }) => min <= raw && raw <= max)
);
const definition = {
	type: iri,
	name: languages,
	description: v.optional(languages)
};
const pattern = (each: RegExp) =>
	v.pipe(v.array(v.pipe(v.string(), v.regex(each))), v.minLength(1));
export const statement = v.strictObject({
	id: v.pipe(v.string(), v.uuid()),
	actor: v.strictObject({ account: v.strictObject({ homePage: iri, name: v.string() }) }),
	verb: v.strictObject({ id: iri, display: languages }),
	object: v.strictObject({
		id: iri,
		definition: v.union([
			v.strictObject(definition),
			v.strictObject({ ...definition, interactionType: v.literal('other') }),
			v.strictObject({
				...definition,
				interactionType: v.literal('fill-in'),
				correctResponsesPattern: pattern(/^[^[\]]+$/)
			}),
			v.strictObject({
				...definition,
				interactionType: v.literal('numeric'),
				correctResponsesPattern: pattern(/^-?\d+(\.\d+)?\[:\]-?\d+(\.\d+)?$/)
			}),
			v.strictObject({
				...definition,
				interactionType: v.literal('choice'),
				correctResponsesPattern: pattern(/^[\w.-]+$/),
				choices: v.array(
					v.strictObject({ id: v.pipe(v.string(), v.regex(/^[\w.-]+$/)), description: languages })
				)
			})
		])
	}),
	result: v.strictObject({
		response: v.optional(v.string()),
		success: v.optional(v.boolean()),
		completion: v.optional(v.boolean()),
		score,
		duration: v.optional(v.pipe(v.string(), v.regex(/^PT\d+S$/)))
	}),
	timestamp: v.pipe(v.string(), v.isoTimestamp())
});
