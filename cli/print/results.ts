import type { Check } from '../library.js';
import type { Style, Terminal } from '../terminal.js';

const STYLE: Readonly<Record<Check['state'], Style>> = { ok: 'good', attention: 'warn', fails: 'bad' };
const WORST_FIRST = ['fails', 'attention', 'ok'] as const;

/** The checks in words, the worst first; `brief` leaves out those that are ok. */
export function printChecks(terminal: Terminal, checks: readonly Check[], brief: boolean): void {
  const tally = WORST_FIRST.map((state) => `${checks.filter((check) => check.state === state).length} ${state}`);
  terminal.out();
  terminal.out(['strong', 'Checks'], `: ${tally.join(', ')}`);
  for (const state of WORST_FIRST) {
    if (brief && state === 'ok') continue;
    for (const check of checks) if (check.state === state) printCheck(terminal, check);
  }
}

/** What is held against what, as far as both are numbers. */
function figuresText({ demand, capacity }: Check): string {
  if (!demand || !capacity) return '';
  const said = ({ label, value, unit }: typeof demand) =>
    `${label} ${Number(value.toPrecision(3))}${unit === '1' ? '' : ` ${unit}`}`;
  return ` (${said(demand)}; ${said(capacity)})`;
}

function printCheck(terminal: Terminal, check: Check): void {
  terminal.out('  ', [STYLE[check.state], check.state.padEnd(10)], `${check.statement}${figuresText(check)}`);
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
