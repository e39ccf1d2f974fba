import { ONE_SIZE } from '../base/tolerances.js';
import type { LevelPrimitive, Primitive } from '../documents/drawing.js';
import { boxCorners } from '../documents/expansion.js';
import { expandLevel } from '../documents/marks.js';
import { type Box, boxOf, lineEdge } from '../math/curves.js';
import type { Layout } from './layout.js';

export interface LevelNote {
  readonly z: number;
  readonly label: string;
  /** Whose level it is; follows the label. */
  readonly about?: string;
}

/** Columns in which level marks are tried, and the steps between them, paper mm. */
const FIRST_COLUMN = 5;
const COLUMN_STEP = 2.5;
const COLUMNS = 110;
/** Columns in which a mark is tried with air round it, and that air above and below and to both sides, paper mm. */
const AIRY_COLUMNS = 70;
const MARK_AIR = 0.8;
const MARK_ASIDE = 2;

/**
 * Level marks to the left of a figure, from `edge` outward, each on a narrow line at its level that begins at the
 * figure. The uppermost stands nearest; a mark that finds no place goes a column out, with
 * air between it and others where the nearer columns have that room. Levels told twice are marked
 * once, with both labels.
 */
export function placeLevels(
  layout: Layout,
  notes: readonly LevelNote[],
  edge: number,
  begin: (z: number) => number,
): void {
  for (const { z, label } of joined(notes)) {
    function* columns(count: number): Generator<readonly [Primitive, LevelPrimitive]> {
      for (let i = 0; i < count; i++) {
        const x = edge - layout.mm(FIRST_COLUMN + i * COLUMN_STEP);
        yield [
          {
            kind: 'path',
            layer: 'dimension',
            segments: [lineEdge([begin(z) - layout.mm(1.5), z], [x, z])],
            closed: false,
          },
          { kind: 'level', at: [x, z], level: z, side: 'left', label },
        ];
      }
    }
    function* airy(): Generator<readonly Primitive[]> {
      for (const column of columns(AIRY_COLUMNS)) if (!layout.hasTextIn(roundMark(column[1], layout))) yield column;
    }
    if (!layout.placeFree(airy())) layout.place(columns(COLUMNS));
  }
}

/** What a mark takes up, with air round it. */
function roundMark(mark: LevelPrimitive, layout: Layout): Box {
  const { min, max } = boxOf(expandLevel(mark, layout.scale, layout.units).texts.flatMap(boxCorners));
  const [aside, air] = [layout.mm(MARK_ASIDE), layout.mm(MARK_AIR)];
  return { min: [min[0] - aside, min[1] - air], max: [max[0] + aside, max[1] + air] };
}

function joined(notes: readonly LevelNote[]): LevelNote[] {
  const groups: LevelNote[][] = [];
  for (const note of [...notes].sort((a, b) => b.z - a.z)) {
    const last = groups[groups.length - 1];
    if (last?.[0] && Math.abs(last[0].z - note.z) < ONE_SIZE) last.push(note);
    else groups.push([note]);
  }
  return groups.map((group) => ({ z: (group[0] as LevelNote).z, label: labelsOf(group).join(', ') }));
}

/** "springing hall" and "springing bath" are told as "springing hall, bath". */
function labelsOf(group: readonly LevelNote[]): string[] {
  const told = new Map<string, string[]>();
  for (const { label, about } of group) {
    const abouts = told.get(label) ?? [];
    told.set(label, abouts);
    if (about !== undefined && !abouts.includes(about)) abouts.push(about);
  }
  return [...told].map(([label, abouts]) => (abouts.length > 0 ? `${label} ${abouts.join(', ')}` : label));
}
