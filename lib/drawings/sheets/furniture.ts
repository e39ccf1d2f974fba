import type { WrittenUnits } from '../../base/measures.js';
import { CAUTION } from '../../base/texts/cautions.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import { type Block, placeBlock, stackBlocks } from '../../documents/block.js';
import type { HatchPattern, PaperPrimitive } from '../../documents/drawing.js';
import { scaleWords } from '../../documents/scales.js';
import { words } from '../../documents/shapes.js';
import { wrapText } from '../../documents/text-fit.js';
import type { FootSpec } from '../foot.js';
import { measureSentence } from '../foot.js';
import { hatchSamples, scaleBar, TEXT } from '../foot-blocks.js';
import { northPoint } from '../north-point.js';

/** What is said beside the views of a sheet. */
export interface Furniture {
  /** Scale bars, and the north point of a plan. */
  readonly signs: readonly Block[];
  readonly patterns: readonly HatchPattern[];
  readonly notes: readonly string[];
}

const LINE = TEXT + 1.7;
/** After each note a little more room than between its lines. */
const NOTE_GAP = 1;
/** Between blocks, and between signs in a row. */
const BETWEEN = 5;
/** The longest line of notes that is still easy to read. */
const LONGEST_LINE = 150;

/** What the feet of some views say together, each thing once; a note of one view names it where there are several. */
export function furnitureOf(
  feet: readonly FootSpec[],
  scales: readonly number[],
  units: WrittenUnits,
  extra: readonly string[] = [],
): Furniture {
  const north = feet.find((f) => f.northDeg !== undefined)?.northDeg;
  const own =
    feet.length === 1
      ? feet.flatMap((f) => f.notes)
      : feet.filter((f) => f.notes.length > 0).map((f) => `${f.title}: ${f.notes.join(' ')}`);
  const signs = [...new Set(scales)].map((scale) =>
    stackBlocks([captionBlock(texts.scaleText(scaleWords(scale, units))), scaleBar(scale, units)], 2),
  );
  return {
    signs: [...signs, ...(north === undefined ? [] : [northPoint(north)])],
    patterns: [...new Set(feet.flatMap((f) => f.patterns))],
    notes: [
      measureSentence(units),
      ...own,
      ...new Set(feet.flatMap((f) => f.general)),
      ...extra,
      `${CAUTION.rings} ${CAUTION.cubes}`,
    ],
  };
}

/** Furniture in one column. */
export function columnOf({ signs, patterns, notes }: Furniture, width: number): Block {
  const samples = hatchSamples(patterns, width);
  return stackBlocks(
    [rowOfBlocks(signs), samples, notesBlock(notes, width)].filter((b) => b.height > 0),
    BETWEEN,
  );
}

/** Furniture in a low strip: signs and hatches at the left, notes beside them in one or two columns. */
export function stripOf({ signs, patterns, notes }: Furniture, width: number): Block {
  const row = rowOfBlocks(signs);
  const left = Math.max(row.width, SAMPLES_WIDTH);
  const first = stackBlocks(
    [row, hatchSamples(patterns, left)].filter((b) => b.height > 0),
    BETWEEN,
  );
  const room = width - left - 2 * BETWEEN;
  const columns = room > LONGEST_LINE ? 2 : 1;
  const each = (room - (columns - 1) * 2 * BETWEEN) / columns;
  const parts = columns === 1 ? [notes] : halves(notes, each);
  const blocks = [first, ...parts.map((part) => notesBlock(part, each))];
  let x = 0;
  const primitives = blocks.flatMap((block, i) => {
    const own = placeBlock(block, [x, 0]);
    x += (i === 0 ? left : each) + 2 * BETWEEN;
    return own;
  });
  return { width, height: Math.max(...blocks.map((b) => b.height)), primitives };
}

/** The least width of hatch samples in a strip. */
const SAMPLES_WIDTH = 92;

const captionBlock = (text: string): Block => ({
  width: 0,
  height: TEXT,
  primitives: [words('text', text, [0, -TEXT], TEXT)],
});

function rowOfBlocks(blocks: readonly Block[]): Block {
  let x = 0;
  const primitives = blocks.flatMap((block) => {
    const own = placeBlock(block, [x, 0]);
    x += block.width + 2 * BETWEEN;
    return own;
  });
  return { width: Math.max(0, x - 2 * BETWEEN), height: Math.max(0, ...blocks.map((b) => b.height)), primitives };
}

function notesBlock(notes: readonly string[], width: number): Block {
  const primitives: PaperPrimitive[] = [];
  const height = setNotes(wrappedNotes(notes, width), (text, y) => primitives.push(words('text', text, [0, y], TEXT)));
  return { width, height, primitives };
}

/** Lines of each note. */
const wrappedNotes = (notes: readonly string[], width: number): string[][] =>
  notes.map((note) => wrapText(note, width, TEXT));

/** Height of notes under one another; `write` is told each line and its level. */
function setNotes(notes: readonly (readonly string[])[], write: (text: string, y: number) => void): number {
  let y = 0;
  for (const note of notes) {
    note.forEach((text, i) => {
      y -= i === 0 ? TEXT : LINE;
      write(text, y);
    });
    y -= LINE - TEXT + NOTE_GAP;
  }
  return Math.max(0, -y - NOTE_GAP);
}

/** Notes in two columns, as even as they can be in their order. */
function halves(notes: readonly string[], width: number): [readonly string[], readonly string[]] {
  const wrapped = wrappedNotes(notes, width);
  const height = (part: readonly (readonly string[])[]) => setNotes(part, () => undefined);
  const taller = (k: number) => Math.max(height(wrapped.slice(0, k)), height(wrapped.slice(k)));
  let best = 1;
  let least = taller(1);
  for (let i = 2; i <= notes.length; i++) {
    const tall = taller(i);
    if (tall < least) [best, least] = [i, tall];
  }
  return [notes.slice(0, best), notes.slice(best)];
}
