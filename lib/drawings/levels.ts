import type { Primitive } from '../documents/drawing.js';
import { lineEdge } from '../math/curves.js';
import type { Layout } from './layout.js';

export interface LevelNote {
  readonly z: number;
  readonly label: string;
}

/** Columns in which level marks are tried, and the steps between them, paper mm. */
const FIRST_COLUMN = 5;
const COLUMN_STEP = 6;
const COLUMNS = 16;

/**
 * Level marks to the left of a figure, from `edge` outward, each on a narrow line at its level that begins at the
 * figure. The uppermost stands nearest; a mark that finds no place goes a column out. Levels told twice are marked
 * once, with both labels.
 */
export function placeLevels(
  layout: Layout,
  notes: readonly LevelNote[],
  edge: number,
  begin: (z: number) => number,
): void {
  for (const { z, label } of joined(notes)) {
    layout.place(
      Array.from({ length: COLUMNS }, (_, i): Primitive[] => {
        const x = edge - layout.mm(FIRST_COLUMN + i * COLUMN_STEP);
        return [
          {
            kind: 'path',
            layer: 'dimension',
            segments: [lineEdge([begin(z) - layout.mm(1.5), z], [x, z])],
            closed: false,
          },
          { kind: 'level', at: [x, z], level: z, side: 'left', label },
        ];
      }),
    );
  }
}

function joined(notes: readonly LevelNote[]): LevelNote[] {
  const sorted = [...notes].sort((a, b) => b.z - a.z);
  const marks: LevelNote[] = [];
  for (const note of sorted) {
    const last = marks[marks.length - 1];
    if (last && Math.abs(last.z - note.z) < 0.5) {
      if (!last.label.split(', ').includes(note.label))
        marks[marks.length - 1] = { z: last.z, label: `${last.label}, ${note.label}` };
    } else marks.push(note);
  }
  return marks;
}
