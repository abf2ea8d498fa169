/*
 * How printed sheets look: black and grey, one layout for Letter and A4. A page is as high as the
 * paper gives, less a little, since a page that is too high by a hair prints two.
 */

/** Most steps that a task of a set may have. */
const mostSteps = 30;

/** Of what both papers have inside 10 mm margins, in mm. */
export const page = { width: 190, height: 259 } as const;

/** Widest figure beside the text of a task, in mm. */
export const figureWidth = 119;

/** Least room to work in, in mm: for every step a line, and never less than a few. */
export function roomFor(steps: number): number {
	return Math.max(20, 6 * steps);
}

/** A rule for every number of steps: a page may not take styles from an attribute. */
const rooms = Array.from({ length: mostSteps }, (_, i) => {
	return `.r${i + 1} { min-height: ${roomFor(i + 1)}mm }`;
}).join('\n');

/** Drawings in black and grey. */
export const figureStyle = `.figure { display: block; max-width: 100%; height: auto; font: 12px B612, Arial, 'Liberation Sans', sans-serif }
.figure path { fill: none; stroke: none }
.figure .l-edge { stroke: #000; stroke-width: 1.4 }
.figure .l-thin { stroke: #333; stroke-width: 1 }
.figure .l-dim { stroke: #000; stroke-width: .8 }
.figure .l-centre { stroke: #000; stroke-width: .8; stroke-dasharray: 12 3 3 3 }
.figure .l-hidden { stroke: #333; stroke-width: 1.2; stroke-dasharray: 5 3 }
.figure .l-slip { stroke: #000; stroke-width: 1.8 }
.figure .f-metal-a { fill: #ececec } .figure .f-metal-b { fill: #dadada } .figure .f-metal-c { fill: #c8c8c8 }
.figure .f-rivet { fill: #b5b5b5 } .figure .f-hatch, .figure .f-waste { fill: #ddd }
.figure .f-paper { fill: #fff } .figure .f-ink, .figure .f-dye { fill: #000 }
.figure text { fill: #000 }
`;

export const style = `
@page { margin: 10mm }
* { box-sizing: border-box }
html { color-scheme: light }
body, :host { margin: 0; background: #d9d7cd; color: #000; font: 9.5pt/1.35 B612, Arial, 'Liberation Sans', sans-serif }
h1, h2, p, dl, dd, ol, table { margin: 0; padding: 0 }
.bar { background: #fdfcf7; border-bottom: 1px solid #cfcec2; padding: 12px 16px; font-size: 15px }
.bar p { max-width: 70ch }
.pg { background: #fff; width: ${page.width + 18}mm; min-height: ${page.height + 16}mm; margin: 6mm auto; padding: 8mm 9mm; display: grid; grid-template-rows: auto 1fr auto }
header { border-bottom: 1.5pt solid #000; padding-bottom: 2mm; display: grid; gap: 2mm }
header > div { display: flex; justify-content: space-between; gap: 6mm; align-items: baseline }
h1 { font-size: 13pt; line-height: 1.2 }
header span { font-size: 9pt; white-space: nowrap }
.who { display: grid; grid-template-columns: 40mm 1fr 32mm 28mm; gap: 4mm }
.who dt { font-size: 8pt }
.who dd { height: 7.5mm; border-bottom: .8pt solid #000; font-size: 11pt; font-weight: 700; white-space: nowrap; overflow: hidden }
.terms { font-size: 9pt }
.in { display: grid }
.key .in { align-content: start }
.task { display: grid; grid-template-columns: 64mm minmax(0, 1fr); gap: 5mm; padding: 2.3mm 0; border-bottom: .6pt solid #777; break-inside: avoid }
.task:last-child, .kt:last-child { border-bottom: 0 }
h2 { display: flex; gap: 2mm; font-size: 10pt; line-height: 1.2; align-items: start }
h2 span { padding-top: .7mm; flex: 1 }
h2 b { flex: none; width: 6mm; height: 6mm; border: 1pt solid #000; border-radius: 50%; text-align: center; font-size: 9pt; line-height: 5.3mm }
.say { display: flex; flex-direction: column; gap: 1.2mm }
.say dl { display: grid }
.say dl div { display: flex; justify-content: space-between; gap: 3mm; border-bottom: .4pt solid #999 }
.say dt { flex: 1 1 0 }
.say dd { font-variant-numeric: tabular-nums; text-align: right }
.nt { font-size: 8.5pt }
.ans { margin-top: auto; display: grid; gap: 1mm; padding-top: 1.5mm; font-weight: 700; font-size: 9pt; line-height: 1.15 }
.ans div { display: grid; grid-template-columns: minmax(0, 1fr) 28mm; align-items: end; gap: 2mm }
.ans .long { grid-template-columns: 1fr }
.ans i { border-bottom: 1pt solid #000; height: 5.6mm }
.choose { list-style: none; display: grid; gap: .6mm; font-weight: 400 }
.choose li { display: flex; gap: 2mm; align-items: center }
.choose b { width: 4.4mm; height: 4.4mm; border: .8pt solid #000; border-radius: 50%; text-align: center; font-size: 8pt; line-height: 3.9mm; flex: none }
.tn { font: 8pt monospace }
.dr { display: grid; grid-template-rows: auto 1fr; gap: 1.5mm; min-width: 0 }
.dr figure { margin: 0; justify-self: center; max-width: 100% }
.room { border: .6pt solid #777; font-size: 8pt; background-image: radial-gradient(#777 .5pt, transparent .8pt); background-size: .25in .25in; background-position: .125in .125in; print-color-adjust: exact; -webkit-print-color-adjust: exact }
.room span { background: #fff; padding: .3mm 1.5mm; border: solid #777; border-width: 0 .6pt .6pt 0; display: inline-block }
footer { border-top: 1.5pt solid #000; padding-top: 1.5mm; display: flex; justify-content: space-between; gap: 6mm; align-items: end; font-size: 8pt }
footer dl { display: flex; border: .6pt solid #555; border-right: 0; flex: none }
footer dl div { border-right: .6pt solid #555; padding: .6mm 2mm }
footer dt { font-size: 7.5pt }
footer dd { font: 8.5pt monospace; white-space: nowrap }
.kt { border-bottom: .6pt solid #777; padding: 2.4mm 0; break-inside: avoid }
table { margin: 1mm 0 0 8mm; width: calc(100% - 8mm); border-collapse: collapse; table-layout: fixed; font-size: 8.5pt }
th { text-align: left; font-size: 8pt; font-weight: 400; padding: 0 2mm 0 0 }
td { border-top: .4pt solid #bbb; padding: .7mm 2mm .7mm 0; vertical-align: top }
col.st { width: 21% } col.mk { width: 11mm } col.sl { width: 25% }
td:last-child, th:last-child { text-align: right; padding-right: 0 }
td:nth-child(3) { font-style: italic }
.sm { font-size: 7.5pt }
.kt mfrac > * { font-size: 8pt; padding-block: .4mm }
.kt mo:has(+ mtable) { display: none }
.kt mtable { border-left: .8pt solid #000; padding-left: 1mm }
.kt mtd { text-align: left; padding: .35mm 1.5mm .35mm 0 }
${rooms}
${figureStyle}@media screen {
	.pg { content-visibility: auto; contain-intrinsic-size: auto ${page.height + 16}mm }
}
@media print {
	body, :host { background: #fff }
	.bar { display: none }
	.pg { width: auto; min-height: calc(100vh - 1mm); margin: 0; padding: 0; break-after: page }
	.pg:last-child { break-after: auto }
}
`;
