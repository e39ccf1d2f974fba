import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import { CUT_POINT } from '../../base/tolerances.js';
import type { LeaderPrimitive, PlainPrimitive, Primitive } from '../../documents/drawing.js';
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

/** Lines of notes beside a detail, and how far out they stand, paper mm. */
const LINE = 6;
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
  const sorted = [...notes].sort((a, b) => b.at[1] - a.at[1]);
  const step = layout.mm(LINE);
  const lowest = Math.min(min[1], max[1] - step * (sorted.length - 1));
  let y = Number.POSITIVE_INFINITY;
  const rows = sorted.map(({ at }, i) => {
    // Room is kept below for those that are still to come.
    const least = lowest + step * (sorted.length - 1 - i);
    y = Math.min(y - step, Math.max(at[1], least), max[1]);
    return y;
  });
  uncrossed(sorted, rows, right).forEach(({ at, text }, i) => {
    const bend: Vec2 = [right, rows[i] as number];
    const leader: LeaderPrimitive = { kind: 'leader', at, bend, text, heightMm: TEXT, side: 'right' };
    layout.add(leader as Primitive);
  });
}

/** Notes to rows of a column at `x`, so that no two of their lines cross: each exchange makes the lines shorter, so it ends. */
function uncrossed(notes: readonly DetailNote[], rows: readonly number[], x: number): DetailNote[] {
  const all = [...notes];
  const crossing = (): readonly [number, number] | null => {
    for (let i = 0; i < all.length; i++)
      for (let j = i + 1; j < all.length; j++) {
        const [a, b] = [(all[i] as DetailNote).at, (all[j] as DetailNote).at];
        if (linesCross(a, [x, rows[i] as number], b, [x, rows[j] as number])) return [i, j];
      }
    return null;
  };
  for (let found = crossing(); found; found = crossing()) {
    const [i, j] = found;
    [all[i], all[j]] = [all[j] as DetailNote, all[i] as DetailNote];
  }
  return all;
}

function linesCross(a: Vec2, b: Vec2, c: Vec2, d: Vec2): boolean {
  const side = (p: Vec2, q: Vec2, r: Vec2) => cross2(sub2(q, p), sub2(r, p));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
