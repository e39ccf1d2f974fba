import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import { CUT_POINT } from '../../base/tolerances.js';
import type { LeaderPrimitive, PlainPrimitive, Primitive } from '../../documents/drawing.js';
import { expandLeader } from '../../documents/marks.js';
import { words } from '../../documents/shapes.js';
import { wrapText } from '../../documents/text-fit.js';
import type { Box, Edge } from '../../math/curves.js';
import { cross2, sub2, type Vec2 } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { clipRegion, clipTo } from '../clip.js';
import { cutPrimitives } from '../cut.js';
import type { Draft, DraftedView } from '../draft.js';
import { TEXT } from '../foot-blocks.js';
import type { HandedOver } from '../handed.js';
import { NOTHING_HANDED } from '../handed.js';
import { Layout } from '../layout.js';
import { PATTERN_OF, type Part } from '../parts.js';
import { strokesOf } from '../paths.js';
import type { CutPlane } from '../slice-upright.js';
import { bedsAcross, type UprightCut, uprightCut } from '../upright-cut.js';
import { writtenUnits } from '../words.js';

/** Something that a detail tells of, with a line to its text. */
export interface DetailNote {
  readonly at: Vec2;
  readonly text: string;
}

/** A part of a section, enlarged: the cut house, what is added to it, sizes and notes. */
export interface DetailSpec {
  readonly id: string;
  readonly title: string;
  readonly plane: CutPlane;
  /** What of the section is shown, mm in the section's plane. */
  readonly box: Box;
  /** Lines that the description doesn't know of: render, flashing, damp-proof course, pipes. */
  readonly extra: (cut: UprightCut, handed: HandedOver) => readonly PlainPrimitive[];
  readonly notes: (cut: UprightCut, handed: HandedOver, units: WrittenUnits) => readonly DetailNote[];
  readonly sizes: (layout: Layout, handed: HandedOver) => void;
  readonly words: readonly string[];
}

/** What every detail says of itself. */
const PRACTICE = texts.commonPracticeOfMasonry;

/** Rows of notes beside a detail, their further lines, how long a line may be, and how far out they stand, paper mm. */
const ROW = 6;
const LINE = 3.8;
const LONGEST = 48;
const OUT = 8;

export function detailDraft(house: HouseSetout, spec: DetailSpec): Draft {
  const units = writtenUnits(house.house);
  const { box } = spec;
  const cut = uprightCut(house, spec.plane, box);
  const clipped = clipTo(cutPrimitives(cut) as PlainPrimitive[], box);
  const joints = clipTo(strokesOf('joint', bedsAcross(house, spec.plane, cut)) as PlainPrimitive[], box);
  const solid = clipRegion(cut.loops(), box);
  const edges = solid.flat().filter((e) => onFrame(e, box));

  const draw = (scale: number, handed: HandedOver = NOTHING_HANDED): DraftedView => {
    const layout = new Layout(scale, units);
    layout.add(...clipped, ...joints, ...strokesOf('joint', edges), ...clipTo(spec.extra(cut, handed), box));
    spec.sizes(layout, handed);
    addNotes(layout, box, spec.notes(cut, handed, units));
    const used = (Object.keys(PATTERN_OF) as Part[]).filter((p) => clipRegion(cut.loops(p), box).length > 0);
    return {
      layout,
      foot: {
        title: spec.title,
        notes: spec.words,
        general: [PRACTICE],
        patterns: [...new Set(used.map((p) => PATTERN_OF[p]))],
      },
    };
  };
  return { id: spec.id, units, figure: box, draw };
}

/** Whether a piece of the outline lies on the detail's own frame: there the masonry goes on. */
function onFrame(e: Edge, { min, max }: Box): boolean {
  if (e.kind !== 'line') return false;
  return ([0, 1] as const).some((k) =>
    [min[k], max[k]].some((at) => Math.abs(e.from[k] - at) < CUT_POINT && Math.abs(e.to[k] - at) < CUT_POINT),
  );
}

/** Notes in a column to the right of a detail, about in the order of their places from the top, so that no lines cross. */
function addNotes(layout: Layout, { min, max }: Box, notes: readonly DetailNote[]): void {
  const right = layout.bounds().max[0] + layout.mm(OUT);
  const sorted = notes
    .map(({ at, text }): WrappedNote => ({ at, lines: wrapText(text, LONGEST, TEXT) }))
    .sort((a, b) => b.at[1] - a.at[1]);
  const rowsOf = (all: readonly WrappedNote[]): number[] => {
    const steps = all.map(({ lines }) => layout.mm(ROW + (lines.length - 1) * LINE));
    const sum = (some: readonly number[]) => some.reduce((s, step) => s + step, 0);
    const lowest = Math.min(min[1], max[1] - sum(steps.slice(0, -1)));
    let next = max[1];
    return all.map(({ at }, i) => {
      // Room is kept below for those that are still to come.
      const y = Math.min(next, Math.max(at[1], lowest + sum(steps.slice(i, -1))));
      next = y - (steps[i] as number);
      return y;
    });
  };
  const { order, rows } = uncrossed(sorted, rowsOf, right);
  order.forEach(({ at, lines: [first = '', ...more] }, i) => {
    const bend: Vec2 = [right, rows[i] as number];
    const leader: LeaderPrimitive = { kind: 'leader', at, bend, text: first, heightMm: TEXT, side: 'right' };
    const [text] = expandLeader(leader, layout.scale).texts;
    layout.add(leader as Primitive);
    for (const [k, line] of more.entries())
      if (text) layout.add(words('text', line, [text.at[0], text.at[1] - layout.mm((k + 1) * LINE)], TEXT));
  });
}

interface WrappedNote {
  readonly at: Vec2;
  readonly lines: readonly string[];
}

/**
 * Notes in an order in which no two of the lines to their rows of a column at `x` cross. Where all rows are as far apart,
 * each exchange makes the lines shorter, so it ends; where they aren't, after as many as there are pairs.
 */
function uncrossed(
  notes: readonly WrappedNote[],
  rowsOf: (all: readonly WrappedNote[]) => number[],
  x: number,
): { readonly order: readonly WrappedNote[]; readonly rows: readonly number[] } {
  const order = [...notes];
  let rows = rowsOf(order);
  const crossing = (): readonly [number, number] | null => {
    for (let i = 0; i < order.length; i++)
      for (let j = i + 1; j < order.length; j++) {
        const [a, b] = [(order[i] as WrappedNote).at, (order[j] as WrappedNote).at];
        if (linesCross(a, [x, rows[i] as number], b, [x, rows[j] as number])) return [i, j];
      }
    return null;
  };
  for (let left = order.length * order.length; left > 0; left--) {
    const found = crossing();
    if (!found) break;
    const [i, j] = found;
    [order[i], order[j]] = [order[j] as WrappedNote, order[i] as WrappedNote];
    rows = rowsOf(order);
  }
  return { order, rows };
}

function linesCross(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  const side = (p: Vec2, q: Vec2, r: Vec2) => cross2(sub2(q, p), sub2(r, p));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
