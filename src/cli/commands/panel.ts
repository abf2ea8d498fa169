import { type PanelPlan, planPanel } from '../../lib/engine/panel/plan.ts';
import { planData } from '../../lib/engine/panel/report.ts';
import { panelSchema } from '../../lib/engine/panel/schema.ts';
import { gaugeText, inchesText } from '../../lib/engine/panel/write.ts';
import { writeDxf } from '../../lib/exchange/panel/dxf.ts';
import { writeSvg } from '../../lib/exchange/panel/svg.ts';
import { panelLists, writePanelCsv } from '../../lib/exchange/panel/tables.ts';
import { readJson } from '../files.ts';
import type { Options } from '../options.ts';
import type { Answer } from '../run.ts';
import { UsageError } from '../usage-error.ts';
import { columns } from './columns.ts';

const formats = ['--csv', '--svg', '--dxf'];

/** A panel worked out from its file: as text, as a table of holes, or as a drawing. */
export async function planJob(args: readonly string[], options: Options): Promise<Answer> {
	if (options.has('--schema')) {
		const data = panelSchema();
		return { data, text: JSON.stringify(data, null, '\t') };
	}
	const [path, stray] = args;
	if (path === undefined) throw new UsageError('Name a panel file: bucktail panel FILE.json.');
	if (stray !== undefined) throw new UsageError('Name one panel file only.');
	const list = panelLists.find((one) => one === (options.value('--list') ?? 'holes'));
	if (!list) throw new UsageError(`--list is one of ${panelLists.join(', ')}; choose one.`);
	const wanted = formats.filter((one) => options.has(one));
	if (wanted.length > 1) throw new UsageError(`Ask for one of ${wanted.join(' and ')} at a time.`);
	const plan = await planPanel(await readJson(path));
	const data = planData(plan);
	const [format] = wanted;
	if (format === undefined && !options.has('--list')) return { data, text: planText(plan) };
	const file =
		format === '--svg'
			? writeSvg(plan)
			: format === '--dxf'
				? writeDxf(plan)
				: writePanelCsv(plan, list);
	return {
		data: { ...data, [format?.slice(2) ?? 'csv']: file },
		// The line's end is added where it is printed.
		text: file.replace(/\r?\n$/, '')
	};
}

function planText(plan: PanelPlan): string {
	const { holes, blank, stock, weight } = planData(plan);
	const on = stock
		? `, ${stock.count} from a ${stock.sheet.length} by ${stock.sheet.width} in sheet${stock.turned ? ', laid across it' : ''}`
		: '';
	const parts = [
		`${plan.job.name}: ${holes.length} holes`,
		`Blank ${inchesText(blank.length)} by ${inchesText(blank.width)}${on}`,
		weight === null ? '' : `Panel ${weight.toFixed(2)} lb`
	];
	return [
		parts.filter(Boolean).join('\n'),
		listed(
			'Problems',
			plan.problems.map(({ says }) => says)
		),
		listed('Notes', plan.notes),
		table(
			'Rivets',
			plan.rivets.map((one) => [one.number, `${one.count} holes`, `take ${one.count + one.spares}`])
		),
		table(
			'Drills',
			plan.drills.map((one) => [
				`${inchesText(one.rivet)} rivet`,
				`pilot ${one.pilotName}`,
				`final ${one.finalName}`
			])
		),
		listed(
			'Flush heads',
			plan.flush.map(({ says }) => says)
		),
		table(
			'Holes, from the lower left corner, inches',
			holes.map((one) => [
				one.id,
				places(one.x),
				places(one.y),
				one.rivet,
				[one.row, one.crosses].filter(Boolean).join(' and ')
			])
		),
		table(
			'Limits',
			plan.checks.map((one) => [
				`${one.row}, ${one.what}`,
				gaugeText(one.value),
				`${one.least ? 'at least' : 'at most'} ${inchesText(one.limit)}`,
				`${one.margin < 0 ? '' : '+'}${places(one.margin)}`,
				one.verdict
			])
		),
		listed('Sheet holders', plan.holders.length > 0 ? [plan.holders.join(' ')] : []),
		listed('Clamps', plan.clamps),
		listed(
			'Order of work',
			plan.order.map(({ says }, i) => `${i + 1}. ${says}`)
		),
		listed('Cautions', plan.cautions)
	]
		.filter(Boolean)
		.join('\n\n');
}

/** To a ten-thousandth of an inch. */
function places(value: number): string {
	return String(Math.round(value * 1e4) / 1e4);
}

function listed(title: string, lines: readonly string[]): string {
	return lines.length === 0 ? '' : [title, ...lines.map((line) => `  ${line}`)].join('\n');
}

function table(title: string, rows: readonly (readonly string[])[]): string {
	return rows.length === 0 ? '' : listed(title, columns(rows).split('\n'));
}
