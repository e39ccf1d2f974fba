import type { LayerStyle, LineType } from './drawing.js';

/**
 * One style for each layer. Weights are of the series of ISO 128-20 (0.13 0.18 0.25 0.35 0.5 0.7 1.0 mm), narrow to
 * wide 1:2, from memory; which edge gets which is common practice, no source.
 * The order is the order of drawing: hatches lie under lines, lines under dimensions and texts.
 */
export const LAYERS: readonly LayerStyle[] = [
  { name: 'hatch', weightMm: 0.13, line: 'continuous' },
  { name: 'joint', weightMm: 0.13, line: 'continuous' },
  { name: 'hidden', weightMm: 0.25, line: 'dashed' },
  { name: 'overhead', weightMm: 0.25, line: 'double-chain' },
  { name: 'axis', weightMm: 0.18, line: 'chain' },
  { name: 'visible', weightMm: 0.25, line: 'continuous' },
  { name: 'cut', weightMm: 0.5, line: 'continuous' },
  { name: 'ground', weightMm: 0.7, line: 'continuous' },
  { name: 'thrust', weightMm: 0.35, line: 'continuous' },
  { name: 'dimension', weightMm: 0.18, line: 'continuous' },
  { name: 'text', weightMm: 0.25, line: 'continuous' },
  { name: 'form', weightMm: 0.25, line: 'continuous' },
  { name: 'frame', weightMm: 0.7, line: 'continuous' },
];

const DOT = 0.5;
const GAP = 3;
const DASH = 12;
const LONG = 24;

/**
 * Dashes of a line on paper, mm: marks positive, gaps negative, in turn; empty when unbroken.
 * Lengths in line widths d: dash 12 d, long dash 24 d, gap 3 d, dot 0.5 d (ISO 128-20, from memory).
 */
export function dashesOf(line: LineType, weightMm: number): readonly number[] {
  const inWidths: Readonly<Record<LineType, readonly number[]>> = {
    continuous: [],
    dashed: [DASH, -GAP],
    chain: [LONG, -GAP, DOT, -GAP],
    'double-chain': [LONG, -GAP, DOT, -GAP, DOT, -GAP],
    dotted: [DOT, -GAP],
  };
  return inWidths[line].map((length) => length * weightMm);
}
