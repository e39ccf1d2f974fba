import type { Check, Figure } from '../base/figures.js';
import { figureText, inReaderUnits } from '../base/reader-units.js';
import * as texts from '../base/texts/report-page.js';
import type { LengthUnit } from '../base/units.js';
import type { Diagram, DiagramShape, Report, ReportSection } from '../documents/report.js';
import { STYLE } from './html-style.js';
import { escaped } from './markup.js';

/**
 * A report as one HTML page that stands alone: no script, nothing fetched, all texts escaped. The page forbids both
 * to the browser as well.
 */
export function writeHtml(report: Report): Uint8Array {
  const numbered = new Map<Check, string>();
  for (const section of report.sections)
    for (const check of section.checks) numbered.set(check, `check-${numbered.size + 1}`);
  const html = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(report.title)}</title>`,
    `<style>${STYLE}</style>`,
    '</head>',
    '<body>',
    `<h1>${escaped(report.title)}</h1>`,
    `<dl class="facts">${report.facts.map(([name, value]) => `<dt>${escaped(name)}</dt><dd>${escaped(value)}</dd>`).join('')}</dl>`,
    ...report.summary.map((text) => `<p>${escaped(text)}</p>`),
    cautions(report.cautions),
    overview(numbered),
    ...report.sections.map((one) => section(one, numbered, report.units)),
    cautions(report.cautions),
    '</body>',
    '</html>',
    '',
  ];
  return new TextEncoder().encode(html.join('\n'));
}

const cautions = (told: readonly string[]): string =>
  `<aside class="cautions"><h2>${texts.cautions}</h2><ul>${told.map((text) => `<li>${escaped(text)}</li>`).join('')}</ul></aside>`;

const STATES = ['fails', 'attention', 'ok'] as const;

const state = (check: Check): string => `<span class="state ${check.state}">${check.state}</span>`;

/** All checks in one table, the worst first. */
function overview(numbered: ReadonlyMap<Check, string>): string {
  const checks = [...numbered.keys()];
  const tally = STATES.map((name) => `${checks.filter((c) => c.state === name).length} ${name}`).join(', ');
  const rows = STATES.flatMap((name) => checks.filter((c) => c.state === name)).map(
    (check) =>
      `<tr><td>${state(check)}</td><td><a href="#${numbered.get(check)}">${escaped(check.statement)}</a></td><td class="number">${ratioText(check)}</td></tr>`,
  );
  return `<h2>${texts.allChecks(tally)}</h2>\n<table class="all"><thead><tr><th>${texts.state}</th><th>${texts.whatIsChecked}</th><th class="number">${texts.demandOverCapacity}</th></tr></thead><tbody>\n${rows.join('\n')}\n</tbody></table>`;
}

function section(
  { title, texts: told, diagrams, checks }: ReportSection,
  numbered: ReadonlyMap<Check, string>,
  units: LengthUnit,
): string {
  if (checks.length + told.length + diagrams.length === 0) return '';
  return [
    `<section><h2>${escaped(title)}</h2>`,
    ...told.map((text) => `<p>${escaped(text)}</p>`),
    ...diagrams.map(figure),
    ...checks.map((check) => card(check, numbered.get(check) ?? '', units)),
    '</section>',
  ].join('\n');
}

function card(check: Check, anchor: string, units: LengthUnit): string {
  const rows = [
    ...(check.demand ? [row(texts.demand, check.demand, units)] : []),
    ...(check.capacity ? [row(texts.capacity, check.capacity, units)] : []),
  ];
  const ratio = ratioText(check);
  return [
    `<article class="check ${check.state}" id="${anchor}">`,
    `<h3>${state(check)} ${escaped(check.statement)}</h3>`,
    rows.length > 0 ? `<table><tbody>${rows.join('')}</tbody></table>` : '',
    `<p class="small">${escaped(texts.ratioAndSource(ratio, check.source))}</p>`,
    check.advice === '' || check.state === 'ok' ? '' : `<p class="advice">${escaped(check.advice)}</p>`,
    `<p class="id">${escaped(check.id)}</p>`,
    '</article>',
  ]
    .filter((part) => part !== '')
    .join('\n');
}

function row(role: string, figure: Figure, units: LengthUnit): string {
  const inputs = Object.entries(figure.inputs)
    .filter(([, value]) => value !== '')
    .map(([name, value]) => `${name} = ${typeof value === 'number' ? numberText(value) : value}`);
  const how = [
    figure.formula,
    ...(inputs.length > 0 ? [texts.withInputs(inputs.join('; '))] : []),
    texts.sourceOf(figure.source),
    ...(figure.limit === undefined ? [] : [texts.limitOf(figure.limit)]),
  ];
  const si = `${numberText(figure.value)}${figure.unit === '1' ? '' : ` ${figure.unit}`}`;
  // Formulas and their inputs are in SI, so that the figure stands in it as well.
  const shown =
    inReaderUnits(figure.value, figure.unit, units).unit === figure.unit
      ? si
      : figureText(figure.value, figure.unit, units, 4);
  const also = shown === si ? '' : `<br><span class="small">${escaped(si)}</span>`;
  return `<tr><td class="label"><span class="small">${role}</span><br>${escaped(figure.label)}</td><td class="number">${escaped(shown)}${also}</td><td class="how">${how.map((text) => `<span>${escaped(text)}</span>`).join('')}</td></tr>`;
}

/** Four digits, without a power of ten where people would write none. */
function numberText(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e7) return String(value);
  const size = Math.abs(value);
  if (size >= 1e7 || size < 1e-4) return value.toExponential(2);
  return String(size >= 1000 ? Math.round(value) : Number(value.toPrecision(4)));
}

/** Past a thousand times the capacity the ratio says no more than that. */
const ratioText = ({ ratio }: Check): string =>
  ratio === undefined ? '' : ratio > 1000 ? texts.overThousand : ratio.toFixed(2);

function figure({ title, caption, width, height, shapes }: Diagram): string {
  const size = [width, height].map(round).join(' ');
  return [
    '<figure>',
    `<svg width="${round(width)}" height="${round(height)}" viewBox="0 0 ${size}" role="img" aria-label="${escaped(`${title}. ${caption}`)}">`,
    ...shapes.map(shape),
    '</svg>',
    `<figcaption><b>${escaped(title)}.</b> ${escaped(caption)}</figcaption>`,
    '</figure>',
  ].join('\n');
}

function shape(one: DiagramShape): string {
  switch (one.kind) {
    case 'line': {
      const points = one.points.map((p) => p.map(round).join(',')).join(' ');
      return `<${one.closed ? 'polygon' : 'polyline'} class="${one.style}" points="${points}"/>`;
    }
    case 'dot':
      return `<circle class="${one.style}" cx="${round(one.at[0])}" cy="${round(one.at[1])}" r="4"/>`;
    case 'text':
      return `<text x="${round(one.at[0])}" y="${round(one.at[1])}" text-anchor="${one.anchor}">${escaped(one.text)}</text>`;
  }
}

const round = (value: number): number => Number(value.toFixed(1)) || 0;
