import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-details.js';
import { CUT_POINT } from '../../base/tolerances.js';
import type { LeaderPrimitive, PlainPrimitive, Primitive } from '../../documents/drawing.js';
import { expandLeader } from '../../documents/marks.js';
import { words } from '../../documents/shapes.js';
import { wrapText } from '../../documents/text-fit.js';
import { type Box, type Edge, edgeAt, edgeLength, edgePart, type LineEdge } from '../../math/curves.js';
import { rangesWhere } from '../../math/curves-ranges.js';
import { cross2, dot2, length2, lerp2, sub2, type Vec2 } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { clipRegion, clipTo } from '../clip.js';
import { cutPrimitives } from '../cut.js';
import type { Draft, DraftedView } from '../draft.js';
import { TEXT } from '../foot-blocks.js';
import type { HandedOver } from '../handed.js';
import { NOTHING_HANDED } from '../handed.js';
import { Layout } from '../layout.js';
import { PATTERN_OF, type Part } from '../parts.js';
import { loopOf, strokeOf, strokesOf } from '../paths.js';
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
  /** Loops in the masonry that are cut out of it and filled with mortar; none where missing. */
  readonly hollows?: readonly (readonly Edge[])[];
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
  const { hollows = [] } = spec;
  const beds = bedsAcross(house, spec.plane, cut).flatMap((bed) => outsideOf(bed, hollows));
  const clipped = clipTo(
    (cutPrimitives(cut) as PlainPrimitive[]).map((p) => hollowed(p, hollows)),
    box,
  );
  const joints = clipTo([...strokesOf('joint', beds), ...hollows.map(strokeOfLoop)] as PlainPrimitive[], box);
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

/** Hatches of blocks with what is cut out of them left free. */
const hollowed = (p: PlainPrimitive, hollows: readonly (readonly Edge[])[]): PlainPrimitive =>
  p.kind === 'hatch' && p.pattern === PATTERN_OF.blocks && hollows.length > 0
    ? { ...p, loops: [...p.loops, ...hollows.map((loop) => loopOf(loop))] }
    : p;

const strokeOfLoop = (loop: readonly Edge[]) => strokeOf('visible', { edges: loop, closed: true });

/** The pieces of a straight joint that no hollow takes. */
function outsideOf(joint: Edge, hollows: readonly (readonly Edge[])[]): Edge[] {
  if (hollows.length === 0) return [joint];
  const free = (share: number) => !hollows.some((loop) => onLeftOfAll(edgeAt(joint, share), loop));
  const near = (a: number, b: number) => Math.abs(a - b) * edgeLength(joint) < CUT_POINT;
  return rangesWhere(free, 0, 1, 50, near).map(([a, b]) => edgePart(joint, a, b));
}

/** Whether a point lies inside a convex loop of lines that runs counter-clockwise. */
const onLeftOfAll = (p: Vec2, loop: readonly Edge[]): boolean =>
  loop.every((e) => e.kind === 'line' && cross2(sub2(e.to, e.from), sub2(p, e.from)) > 0);

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
  const lines = straightLines(layout);
  const rowsOf = (all: readonly WrappedNote[]): number[] => {
    const steps = all.map(({ lines: own }) => layout.mm(ROW + (own.length - 1) * LINE));
    const sum = (some: readonly number[]) => some.reduce((s, step) => s + step, 0);
    const lowest = Math.min(min[1], max[1] - sum(steps.slice(0, -1)));
    let next = max[1];
    return all.map(({ at }, i) => {
      // Room is kept below for those that are still to come.
      const y = Math.min(next, Math.max(at[1], lowest + sum(steps.slice(i, -1))));
      const row = shortestWay(
        LOWER.map((down) => y - layout.mm(down)),
        (to) => Math.max(0, ...lines.map((line) => wayAlong(at, [right, to], line, layout))),
      );
      next = row - (steps[i] as number);
      return row;
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

/** How much lower a note is put so that its line doesn't run along another, paper mm: the least that helps. */
const LOWER = [0, 2, 4, 6, 8, 10, 12, 14] as const;

/** A leader that is so near to a drawn line over a longer way, paper mm, is taken for that line. */
const TOO_NEAR = 1;
const LONGEST_WAY = 12;

const straightLines = (layout: Layout): LineEdge[] =>
  layout.primitives.flatMap((p) =>
    p.kind === 'path'
      ? p.segments.flatMap((s) => (s.kind === 'line' && edgeLength(s) > layout.mm(LONGEST_WAY) ? [s] : []))
      : [],
  );

/** The first place to which a leader runs along no line for long, else the first of those where that is shortest. */
function shortestWay(places: readonly number[], wayTo: (place: number) => number): number {
  let best = Number.NaN;
  let least = Number.POSITIVE_INFINITY;
  for (const place of places) {
    const way = wayTo(place);
    if (way < least) [best, least] = [place, way];
    if (least <= LONGEST_WAY) break;
  }
  return best;
}

/** How far a leader runs along a line, paper mm. */
function wayAlong(from: Vec2, to: Vec2, line: LineEdge, layout: Layout): number {
  const count = Math.ceil(length2(sub2(to, from)) / layout.mm(1));
  const along = sub2(line.to, line.from);
  const length = length2(along);
  let near = 0;
  for (let i = 0; i <= count; i++) {
    const off = sub2(lerp2(from, to, i / count), line.from);
    const t = dot2(off, along) / length;
    if (t > 0 && t < length && Math.abs(cross2(along, off)) / length < layout.mm(TOO_NEAR)) near++;
  }
  return near;
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
