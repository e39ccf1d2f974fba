import type { Terminal } from '../terminal.js';
import * as texts from '../texts/houses.js';

const WIDTH = 40;
/** Eighths of a sign's width, so that near values can be told apart. */
const EIGHTHS = ['', '▏', '▎', '▍', '▌', '▋', '▊', '▉'];

export interface Bar {
  readonly label: string;
  /** `null` draws no bar. */
  readonly value: number | null;
}

/** Values as bars from zero, one a line, each with its number. */
export function printChart(terminal: Terminal, title: string, bars: readonly Bar[], decimals: number): void {
  const values = bars.flatMap(({ value }) => (value === null ? [] : [value]));
  const most = Math.max(...values, 0);
  terminal.out();
  terminal.out(['strong', title]);
  if (most <= 0) {
    terminal.out(texts.noVariantHasThis);
    return;
  }
  const width = Math.max(...bars.map(({ label }) => label.length));
  for (const { label, value } of bars) {
    const eighths = value === null ? 0 : Math.max(0, Math.round((value / most) * WIDTH * 8));
    const bar = '█'.repeat(Math.floor(eighths / 8)) + EIGHTHS[eighths % 8];
    terminal.out(`  ${label.padEnd(width)}  `, ['good', bar], value === null ? 'none' : ` ${value.toFixed(decimals)}`);
  }
}
