import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { work } from '../../../src/lib/engine/quantity/arithmetic-mathjs.ts';
import { type Exact, ratio } from '../../../src/lib/engine/quantity/exact.ts';
import { fields, readArithmetic } from './corpus.ts';

vi.mock('../../../src/lib/engine/quantity/arithmetic-mathjs.ts', async (original) => {
	const real =
		await original<typeof import('../../../src/lib/engine/quantity/arithmetic-mathjs.ts')>();
	return { ...real, work: vi.fn(real.work) };
});

const evaluator = vi.mocked(work);

afterEach(() => evaluator.mockClear());

/** The evaluator itself, not counted. */
const unwatched = () =>
	vi.importActual<typeof import('../../../src/lib/engine/quantity/arithmetic-mathjs.ts')>(
		'../../../src/lib/engine/quantity/arithmetic-mathjs.ts'
	);

describe('what is said of a result', () => {
	test.each([
		['length', '.032+.040+1.5*1/8', '= 0.2595 in'],
		['length', '1.5 in + 3 mm', '≈ 1.6181 in'],
		['length', '12 mm + 3 mm', '= 15 mm ≈ 0.5906 in'],
		['length', '1/3 + 1/3', '≈ 0.6667 in'],
		['fraction', '1/8+1/16', '= 3/16 in'],
		['fraction', '0.1+0.2', '= 0.3 in'],
		['rivetLength', '5/32+5/32', '= 5/16 in, a −5 length'],
		['rivetDiameter', '1/16*2', '= 1/8 in, a −4 diameter'],
		['metric', '12.7+12.7', '= 25.4 mm = 1 in'],
		['angle', '180-135', '= 45°'],
		['weight', '2 lb + 8 oz', '= 2.5 lb'],
		['count', '3*4', '= 12'],
		['factor', '2/3*2', '≈ 1.3333']
	] as const)('%s %s: %s', async (field, entry, said) => {
		expect(await readArithmetic(entry, fields[field])).toMatchObject({
			state: 'read',
			said,
			grain: 0
		});
	});

	test('a mixed number that could be a subtraction is asked about', async () => {
		expect(await readArithmetic('1-1/2 + 1/8', fields.length)).toMatchObject({
			state: 'which',
			question: 'Do you mean 1.625 in, or 0.625 in?'
		});
	});

	test('or said to be one where the subtraction cannot be meant', async () => {
		expect(await readArithmetic('1-1/2*3', fields.length)).toMatchObject({
			state: 'read',
			said: '= 4.5 in',
			note: '1-1/2 taken as one mixed number'
		});
		expect(await readArithmetic('1-1/2 in + 1/8 in', fields.length)).toMatchObject({
			said: '= 1.625 in',
			note: '1-1/2 taken as one mixed number'
		});
	});
});

describe('what to do about arithmetic that cannot be worked out', () => {
	test.each([
		['length', '1/(2-2)', 'Nothing can be divided by zero. Check the part below the line.'],
		['length', '1.5 + 3 mm', 'Give every number that is added its unit, or none of them.'],
		['length', '2 in * 3 in', 'The result is not a length. Write it like 1/8 in or 0.125.'],
		['length', '3 in / 2 in', 'The result is not a length. Write it like 1/8 in or 0.125.'],
		['length', '1-2', 'The result is below zero. Check the signs.'],
		['length', '999999*9', 'That is too large. Check the decimal point and the unit.'],
		['length', '2(3)', 'Put + − × or ÷ between the numbers.'],
		['length', '(1)(2)', 'Put + − × or ÷ between the numbers.'],
		['length', '1 in 1/2', 'Put + − × or ÷ between the numbers.'],
		['length', '2/1/8', 'Show with brackets what is divided, like 2/(1/8).'],
		['length', '(1', 'Close each bracket that is opened.'],
		['length', '1)+2', 'Open a bracket for each one that is closed.'],
		['length', '1--1', 'Put a number on both sides of each + − × and ÷.'],
		['length', '1+*2', 'Put a number on both sides of each + − × and ÷.'],
		['length', '5 in in + 1', 'Write a unit after its number, like 1.5 in.'],
		['length', '032+040', 'Write decimals with the point, like .032.'],
		[
			'length',
			'1 lb + 2 lb',
			'“lb” is a weight; a length is wanted here. Write it like 1/8 in or 0.125.'
		],
		[
			'factor',
			'10 in / 2 lb',
			'“lb” is a weight; a plain number is wanted here. Write it like 0.75 or 3/4.'
		],
		['count', '7*0.5', 'A whole number is wanted here. Write it like 12.']
	] as const)('%s %s: %s', async (field, entry, why) => {
		expect(await readArithmetic(entry, fields[field])).toEqual({ state: 'unread', why });
	});
});

test('an entry without arithmetic is read as always, and the evaluator is left alone', async () => {
	expect(await readArithmetic('1-1/2', fields.length)).toMatchObject({ said: '1 1/2 in' });
	expect(await readArithmetic('five', fields.length)).toMatchObject({ state: 'unread' });
	expect(evaluator).not.toHaveBeenCalled();
});

const hostile = [
	'config({number:"BigNumber"})',
	'config({number:"BigNumber"})+1',
	'createUnit("in")',
	'import({add:1})',
	'evaluate("1+1")',
	'parse("1+1")',
	'a=5',
	'in=5',
	'f(x)=x+1',
	'1:900000000',
	'1:2:900000000',
	'ones(3000,3000)',
	'zeros(9e9)',
	'[1,2;3,4]',
	'[1]',
	'{a:1}.a',
	'"a"+"b"',
	"'a'+1",
	'`a`',
	'9^9^9^9',
	'9**9',
	'9!',
	'1e999999999',
	'constructor.constructor("return 1")()',
	'__proto__',
	'(1).constructor',
	'1 .toString()',
	'sqrt(2)+1',
	'2 grip+1',
	'e+1',
	'i+1',
	'1 mod 2',
	'1 to 2',
	'5 in to mm + 1',
	'1%+1',
	'1;2+3',
	'1\n+2',
	'1?2:3',
	'1==1',
	'1<2',
	'1|2',
	'~1+2',
	"1'+2'*[1]",
	'#1+2',
	'\\u0031+1',
	'<img src=x onerror=alert(1)>+1',
	'${1+1}',
	'u0+1',
	'unit+1',
	'NaN+1',
	'Infinity-1',
	'true+1',
	'null+1',
	'undefined+1'
];

describe('hostile entries', () => {
	test.each(hostile)('%j never reaches the evaluator', async (entry) => {
		expect((await readArithmetic(entry, fields.length)).state).toBe('unread');
		expect(evaluator).not.toHaveBeenCalled();
	});

	test('a cosine is a number, and no function', async () => {
		expect((await readArithmetic('cos(1)(2)', fields.length)).state).toBe('unread');
	});

	// Pi and cosines are put in as numbers before.
	test.each([...hostile, 'pi+1', 'cos(1)(2)'])('the evaluator itself refuses %j', async (entry) => {
		const { work: real } = await unwatched();
		const refused = real(entry, new Map([['in', ratio(1n)]]));
		// `1'` transposes, `9**9` and the like do not parse, and what parses holds a foreign node.
		expect(refused).toBe('foreign');
		expect(real('.1+.2', new Map())).toEqual({ value: ratio(3n, 10n), power: 0 });
	});

	test('leave later answers as they were', async () => {
		const before = await readArithmetic('.1+.2+1/3', fields.length);
		for (const entry of hostile) await readArithmetic(entry, fields.length);
		expect(await readArithmetic('.1+.2+1/3', fields.length)).toEqual(before);
		expect(before).toMatchObject({ state: 'read', value: ratio(19n, 30n) });
	});

	test('too long or too deep an entry never reaches the evaluator', async () => {
		const long = `1${'+1'.repeat(100)}`;
		const deep = `${'('.repeat(21)}1${')'.repeat(21)}`;
		expect(long).toHaveLength(201);
		expect(await readArithmetic(long, fields.length)).toMatchObject({ state: 'unread' });
		expect(await readArithmetic(deep, fields.length)).toMatchObject({
			why: 'Use fewer brackets inside one another.'
		});
		expect(evaluator).not.toHaveBeenCalled();
		expect(await readArithmetic(deep.slice(1, -1), fields.length)).toMatchObject({
			said: '= 1 in'
		});
		expect(await readArithmetic(long.slice(2), fields.length)).toMatchObject({ said: '= 100 in' });
	});

	test.each(['2(3)', '(1)(2)', '2 in', '1 2'])(
		'nor does it take the product in %j',
		async (entry) => {
			const { work: real } = await unwatched();
			expect(real(entry, new Map([['in', ratio(1n)]]))).toBe('foreign');
		}
	);

	test('an expression too long for the evaluator is refused by it as well', async () => {
		const { work: real } = await unwatched();
		expect(real(`1${'+1'.repeat(1000)}`, new Map())).toBe('foreign');
	});
});

/** Pieces that arithmetic, mixed numbers and mischief are made of. */
const pieces = fc.array(
	fc.constantFrom(
		...['0', '1', '2', '8', '16', '.5', '1.5', '032', ' ', '+', '-', '*', '/', '(', ')', '^', ':'],
		...[
			' 1/2',
			'-1/2',
			' - 1/2',
			' in',
			'"',
			"'",
			' mm',
			' deg',
			'x',
			'·',
			'×',
			'÷',
			',',
			'e',
			'='
		],
		...['[', ']', '{', '"a"', 'config', 'u0', '%', '!', ';']
	),
	{ maxLength: 14 }
);

test('only numbers, operators, brackets and our own unit names reach the evaluator', async () => {
	await fc.assert(
		fc.asyncProperty(pieces, fc.constantFrom(...Object.values(fields)), async (parts, expected) => {
			evaluator.mockClear();
			const reading = await readArithmetic(parts.join(''), expected);
			expect(reading.state).not.toBe('arithmetic');
			for (const [expression] of evaluator.mock.calls) {
				expect(expression).toMatch(/^(?:[\d.+\-*/()]|u\d+)+$/);
			}
		}),
		{ numRuns: 3000 }
	);
});

interface Term {
	readonly text: string;
	/** Null after a division by zero. */
	readonly value: Exact | null;
}

const decimal: fc.Arbitrary<Term> = fc
	.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 999 }))
	.map(([whole, thousandths]) => ({
		text: `${whole}.${String(thousandths).padStart(3, '0')}`,
		value: ratio(BigInt(whole * 1000 + thousandths), 1000n)
	}));

/** Arithmetic bracketed all over, with its value worked out beside it. */
const { term } = fc.letrec<{ term: Term; sum: Term }>((tie) => ({
	term: fc.oneof({ depthSize: 'small', withCrossShrink: true }, decimal, tie('sum')),
	sum: fc
		.tuple(tie('term'), fc.constantFrom(' + ', ' - ', '*', '/'), tie('term'))
		.map(([left, sign, right]) => ({
			text: `(${left.text}${sign}${right.text})`,
			value: left.value && right.value && combined(left.value, sign.trim(), right.value)
		}))
}));

function combined(left: Exact, sign: string, right: Exact): Exact | null {
	if (sign === '+') return left.add(right);
	if (sign === '-') return left.sub(right);
	if (sign === '*') return left.mul(right);
	return right.n === 0n ? null : left.div(right);
}

test('results are exact', async () => {
	await fc.assert(
		fc.asyncProperty(term, decimal, async ({ text, value }, more) => {
			fc.pre(text.length < 180);
			const reading = await readArithmetic(`${text}+${more.text}`, fields.factor);
			const right = value?.add(more.value as Exact);
			if (!right || right.s < 0n || right.compare(1e9) > 0) {
				expect(reading.state).toBe('unread');
			} else {
				expect(reading).toMatchObject({ state: 'read' });
				expect(reading.state === 'read' && right.equals(reading.value as Exact)).toBe(true);
			}
		}),
		{ numRuns: 500 }
	);
});
