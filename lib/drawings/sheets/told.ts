import * as texts from '../../base/texts/drawing-sheets.js';
import { type Block, placeBlock, stackBlocks } from '../../documents/block.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import type { Table } from '../../documents/table.js';
import { type Flowing, LONGEST, NARROWEST, tableBlocks } from './flow.js';
import { GAP } from './free-room.js';
import { type TextPart, textBlock } from './text-parts.js';

/** A table and the notes to it. */
export interface Told {
  /** What is told on a sheet of words where it finds no room beside views. */
  readonly flowing: readonly Flowing[];
  /** How it may stand beside views, the best first: all blocks of a way together. */
  readonly ways: readonly (readonly Block[])[];
}

/** Tables that are told beside views or on sheets of words; only one that fits a sheet may stand beside views. */
export const toldOf = (tables: readonly Table[], size: SheetSize): Told[] =>
  tables
    .filter((table) => table.rows.length > 0)
    .map((table): Told => {
      const { notes = [] } = table;
      const [part, ...others] = tableBlocks(table, size);
      if (!part || others.length > 0 || notes.length === 0)
        return {
          flowing: notes.length === 0 ? [table] : [table, noteOf(table)],
          ways: part && others.length === 0 ? [[part]] : [],
        };
      const note = noteOf(table);
      const apart = [LONGEST, NARROWEST].map((width) => [part, textBlock(note, width)]);
      return { flowing: [table, note], ways: [[withNotes(part, note)], ...apart] };
    });

/** Tables that stand beside views where there is room, each part for itself, and are told elsewhere too. */
export const besideOf = (tables: readonly Table[], size: SheetSize): Told[] =>
  tables
    .filter((table) => table.rows.length > 0)
    .flatMap((table) => tableBlocks(table, size).map((block) => ({ flowing: [block], ways: [[block]] })));

const noteOf = ({ title, notes = [] }: Table): TextPart => ({ heading: texts.notes(title), paragraphs: notes });

/** A table and under it its notes: as wide as it where lines stay readable, in two columns where both have room. */
function withNotes(table: Block, note: TextPart): Block {
  const two = table.width >= 2 * NARROWEST + GAP;
  const width = Math.max(NARROWEST, Math.min(LONGEST, two ? (table.width - GAP) / 2 : table.width));
  return stackBlocks([table, two ? inTwoColumns(note, width) : textBlock(note, width)], GAP);
}

/** A text in two columns, broken between the paragraphs where it takes the least height. */
function inTwoColumns({ heading, paragraphs }: TextPart, width: number): Block {
  const breaks = paragraphs.map((_, i): readonly [Block, Block] => [
    textBlock({ heading, paragraphs: paragraphs.slice(0, i + 1) }, width),
    textBlock({ heading: '', paragraphs: paragraphs.slice(i + 1) }, width),
  ]);
  const heights = breaks.map(([left, right]) => Math.max(left.height, right.height));
  const height = Math.min(...heights);
  const [left, right] = breaks[heights.indexOf(height)] as readonly [Block, Block];
  const primitives = [...left.primitives, ...placeBlock(right, [width + GAP, 0])];
  return { width: 2 * width + GAP, height, primitives };
}
