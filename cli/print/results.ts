import { type Check, figureText, type LengthUnit, type Verdict } from '../library.js';
import type { Style, Terminal } from '../terminal.js';

const STYLE: Readonly<Record<Check['state'], Style>> = { ok: 'good', attention: 'warn', fails: 'bad' };
const WORST_FIRST = ['fails', 'attention', 'ok'] as const;

/** The checks in words, the worst first, in the units of the description. */
export function printChecks(
  terminal: Terminal,
  { checks, units }: Pick<Verdict, 'checks' | 'units'>,
  shown: readonly Check['state'][] = WORST_FIRST,
): void {
  const tally = WORST_FIRST.map((state) => `${checks.filter((check) => check.state === state).length} ${state}`);
  terminal.out();
  terminal.out(['strong', 'Checks'], `: ${tally.join(', ')}`);
  for (const state of WORST_FIRST) {
    if (!shown.includes(state)) continue;
    for (const check of checks) if (check.state === state) printCheck(terminal, check, units);
  }
}

/** What is held against what, as far as both are numbers. */
function figuresText({ demand, capacity }: Check, units: LengthUnit): string {
  if (!demand || !capacity) return '';
  const said = ({ label, value, unit }: typeof demand) => `${label} ${figureText(value, unit, units)}`;
  return ` (${said(demand)}; ${said(capacity)})`;
}

function printCheck(terminal: Terminal, check: Check, units: LengthUnit): void {
  terminal.out('  ', [STYLE[check.state], check.state.padEnd(10)], `${check.statement}${figuresText(check, units)}`);
  if (check.state !== 'ok' && check.advice !== '') terminal.out(' '.repeat(12), check.advice);
}

export function printSummary(terminal: Terminal, summary: readonly string[]): void {
  for (const line of summary) terminal.out(line);
}

/** Cautions come last, where the hand is. */
export function printCautions(terminal: Terminal, cautions: readonly string[]): void {
  terminal.out();
  terminal.out(['strong', 'Cautions']);
  for (const caution of cautions) terminal.out('  - ', caution);
}
