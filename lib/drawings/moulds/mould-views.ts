import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-moulds.js';
import { expandDimension } from '../../documents/dimensioning.js';
import type { AlignedDimension, LinearDimension, Primitive, Segment, View } from '../../documents/drawing.js';
import { boundsOf } from '../../documents/drawing-bounds.js';
import { boxCorners } from '../../documents/expansion.js';
import { extremePoints, line } from '../../documents/segments.js';
import { words } from '../../documents/shapes.js';
import { textWidth } from '../../documents/text-size.js';
import { type CastShape, LINING } from '../../masonry/moulds/shape.js';
import { halfAngleAt } from '../../masonry/placed.js';
import type { Stop } from '../../masonry/stops.js';
import { lineEdge } from '../../math/curves.js';
import { hypot } from '../../math/elementary.js';
import { cross2, dot2, sub2, type Vec2 } from '../../math/vec.js';
import { spanPoint } from '../../setout/span.js';
import { brokenLine } from '../broken-line.js';
import { arcThrough } from '../templates/curves.js';
import { developedBed, headFigure } from './developed.js';

/** Dimension lines stand so far off the figure, paper mm. */
const OFF = 7;
/** A stop board nearer to the head, mm, is the head. */
const SAME_LINE = 0.5;

/** The views of a mould's block as cast; all mirror-equal about their upright middle where the block is, but for stop boards. */
export function mouldViews(shape: CastShape, scale: number, units: WrittenUnits, stops: readonly Stop[] = []): View[] {
  const view = (id: string, title: string, primitives: readonly Primitive[]): View => ({
    id,
    title,
    scale,
    units,
    primitives,
  });
  return [
    view('intrados', texts.intrados, [...faceView(shape, 0, scale, units), ...stopLines(shape, 0, stops, scale)]),
    view('extrados', texts.extrados, [...faceView(shape, 1, scale, units), ...stopLines(shape, 1, stops, scale)]),
    view('section', texts.sectionInMiddle, sectionView(shape, scale)),
    view('head', texts.headTrueShape, headView(shape, scale)),
    view('lower-bed', texts.lowerBedUnrolled, bedView(shape, 'lower', scale)),
    view('upper-bed', texts.upperBedUnrolled, bedView(shape, 'upper', scale)),
    view('casting', texts.asItIsCast, castingView(shape, scale)),
  ];
}

const outline = (segments: readonly Segment[]): Primitive => ({ kind: 'path', layer: 'cut', segments, closed: true });

/** Level or upright, its line `off` beyond the box of the figure on the side told. */
function beside(
  segments: readonly Segment[],
  side: 'below' | 'above' | 'left' | 'right',
  from: Vec2,
  to: Vec2,
  off: number,
): LinearDimension {
  const { min, max } = boundsOf(segments.flatMap(extremePoints));
  const at: Readonly<Record<typeof side, Vec2>> = {
    below: [0, min[1] - off],
    above: [0, max[1] + off],
    left: [min[0] - off, 0],
    right: [max[0] + off, 0],
  };
  const upright = side === 'left' || side === 'right';
  return { kind: 'dimension', type: 'linear', from, to, angleDeg: upright ? 90 : 0, line: at[side] };
}

const aligned = (from: Vec2, to: Vec2, line: Vec2): AlignedDimension => ({
  kind: 'dimension',
  type: 'aligned',
  from,
  to,
  line,
});

/** A face seen square: chords of its edges, height, diagonal, sagitta of the lower edge. */
function faceView(shape: CastShape, depth: 0 | 1, scale: number, units: WrittenUnits): Primitive[] {
  const at = (s: number, side: number): Vec2 => {
    const [across, up] = shape.at(s, depth, side);
    return [across, up];
  };
  const [lowLeft, lowRight, highRight, highLeft] = [at(0, -1), at(0, 1), at(1, 1), at(1, -1)];
  const edges = [
    arcThrough(lowLeft, at(0, 0), lowRight),
    arcThrough(lowRight, at(0.5, 1), highRight),
    arcThrough(highRight, at(1, 0), highLeft),
    arcThrough(highLeft, at(0.5, -1), lowLeft),
  ];
  const [left, right] = [at(0.5, -1), at(0.5, 1)];
  const diagonal = aligned(lowLeft, highRight, lowLeft);
  const numbers = expandDimension(diagonal, scale, units).texts.map(boxCorners);
  return [
    outline(edges),
    ...brokenLine(lineEdge(left, right), numbers, NAME_GAP * scale).map(
      (segment): Primitive => ({ kind: 'path', layer: 'joint', segments: [segment], closed: false }),
    ),
    beside(edges, 'below', lowLeft, lowRight, OFF * scale),
    beside(edges, 'above', highLeft, highRight, OFF * scale),
    { ...beside(edges, 'below', left, right, 2 * OFF * scale), prefix: texts.midHeightSize },
    beside(edges, 'left', at(0, 0), at(1, 0), OFF * scale),
    diagonal,
  ];
}

/** Rows for names of stop boards between a face and its dimension lines, paper mm from its box: two above, two below. */
const NAME_ROWS = [1, 4, -3.5, -6.5];
const NAME_HEIGHT = 2.5;
const NAME_GAP = 1;

/** Where stop boards stand on a face, those alike as one, named beside the face; none for what fills the form. */
function stopLines(shape: CastShape, depth: 0 | 1, stops: readonly Stop[], scale: number): Primitive[] {
  const { span, bed, top, thickness } = shape.block;
  const onFace = (s: number, side: number): Vec2 => {
    const [across, up] = shape.at(s, depth, side);
    return [across, up];
  };
  const boards = new Map<string, { points: [Vec2, Vec2, Vec2]; keeps: Stop['keeps']; numbers: number[] }>();
  for (const { block, keeps, placed } of stops) {
    const at = (s: number): Vec2 => {
      const [r, z] = spanPoint(span, bed + s * (top - bed), depth * thickness);
      const share = halfAngleAt(placed, r, z) / halfAngleAt(shape.block, r, z);
      // The head first met clockwise is the left one of a block seen from inside.
      return onFace(s, keeps === 'start' ? 2 * share - 1 : 1 - 2 * share);
    };
    const away = keeps === 'start' ? 1 : -1;
    const middle = at(0.5);
    if (Math.abs(middle[0]) > Math.abs(onFace(0.5, away)[0]) - SAME_LINE) continue;
    const key = `${keeps} ${Math.round(middle[0] / SAME_LINE)}`;
    const known = boards.get(key) ?? { points: [at(0), middle, at(1)], keeps, numbers: [] };
    known.numbers.push(block.number);
    boards.set(key, known);
  }
  const { min, max } = boundsOf([0, 1].flatMap((s) => [-1, 0, 1].map((side) => onFace(s, side))));
  const taken = NAME_ROWS.map((): [number, number][] => []);
  return [...boards.values()].flatMap(({ points, keeps, numbers }): Primitive[] => {
    const name = texts.stopNumbers(numbers);
    // Over the part that is cast, clear of the extension lines at the head.
    const [low, , high] = points;
    const wide = textWidth(name, NAME_HEIGHT) * scale;
    const free = NAME_ROWS.findIndex((off, row) => {
      const [from, to] = namePlace(off > 0 ? high[0] : low[0], keeps, wide);
      return (taken[row] ?? []).every(([a, b]) => to + NAME_GAP * scale < a || from > b + NAME_GAP * scale);
    });
    const line: Primitive = { kind: 'path', layer: 'hidden', segments: [arcThrough(...points)], closed: false };
    // The table beside the views tells what has no room.
    if (free < 0) return [line];
    const off = NAME_ROWS[free] as number;
    const place = namePlace(off > 0 ? high[0] : low[0], keeps, wide);
    taken[free]?.push(place);
    const y = (off > 0 ? max[1] : min[1]) + off * scale;
    return [line, words('text', name, [place[0], y], NAME_HEIGHT, 'left')];
  });
}

/** From where to where a name stands whose board is at `x`. */
const namePlace = (x: number, keeps: Stop['keeps'], wide: number): [number, number] =>
  keeps === 'start' ? [x - wide, x] : [x, x + wide];

/** The block cut in its middle: heights of both faces, thickness on both beds. */
function sectionView(shape: CastShape, scale: number): Primitive[] {
  const at = (s: number, depth: number): Vec2 => {
    const [, up, out] = shape.at(s, depth, 0);
    return [out, up];
  };
  const edges = [
    arcThrough(at(0, 0), at(0, 0.5), at(0, 1)),
    arcThrough(at(0, 1), at(0.5, 1), at(1, 1)),
    arcThrough(at(1, 1), at(1, 0.5), at(1, 0)),
    arcThrough(at(1, 0), at(0.5, 0), at(0, 0)),
  ];
  return [
    { kind: 'hatch', layer: 'hatch', pattern: 'blockwork', loops: [edges] },
    outline(edges),
    beside(edges, 'left', at(0, 0), at(1, 0), OFF * scale),
    beside(edges, 'right', at(0, 1), at(1, 1), OFF * scale),
    aligned(at(0, 0), at(0, 1), [0, Math.min(at(0, 0)[1], at(0, 1)[1]) - OFF * scale]),
    aligned(at(1, 0), at(1, 1), [0, Math.max(at(1, 0)[1], at(1, 1)[1]) + OFF * scale]),
  ];
}

function headView(shape: CastShape, scale: number): Primitive[] {
  const { outline: edges, corners } = headFigure(shape);
  const [lowerInner, upperInner, upperOuter, lowerOuter] = corners;
  return [
    outline(edges),
    beside(edges, 'left', lowerInner, upperInner, OFF * scale),
    beside(edges, 'right', lowerOuter, upperOuter, OFF * scale),
    beside(edges, 'below', lowerInner, lowerOuter, OFF * scale),
    beside(edges, 'above', upperInner, upperOuter, OFF * scale),
  ];
}

/** A bed when it is unrolled: chords of both edges, depth, sagittas of the curves to be cut. */
function bedView(shape: CastShape, edge: 'lower' | 'upper', scale: number): Primitive[] {
  const bed = developedBed(shape, edge);
  const [innerLeft, innerRight, outerRight, outerLeft] = bed.corners;
  const [inner, outer] = bed.middles;
  const sagitta = (corner: Vec2, middle: Vec2, x: number): Primitive[] =>
    middle[1] - corner[1] < LEAST_SAGITTA
      ? []
      : [{ kind: 'dimension', type: 'linear', from: corner, to: middle, angleDeg: 90, line: [x, 0] }];
  const right = outerRight[0] + OFF * scale;
  return [
    outline(bed.outline),
    beside(bed.outline, 'below', innerLeft, innerRight, OFF * scale),
    beside(bed.outline, 'above', outerLeft, outerRight, OFF * scale),
    { kind: 'dimension', type: 'linear', from: inner, to: outer, angleDeg: 90, line: [0, 0] },
    ...sagitta(innerRight, inner, right),
    ...sagitta(outerRight, outer, right),
  ];
}

/** A curve flatter than this is cut as a line, mm. */
const LEAST_SAGITTA = 0.5;

/** Boards are drawn so thick, mm; theirs is what the maker has. */
const BOARD = 25;

/** The mould as it stands, cut at the block's mid-height: struck head up and level, floor below, forms on either side. */
function castingView(shape: CastShape, scale: number): Primitive[] {
  const flat = (depth: number, side: number): Vec2 => {
    const [across, , out] = shape.at(0.5, depth, side);
    return [across, out];
  };
  const corner = flat(0, -1);
  const along = sub2(flat(1, -1), corner);
  const length = hypot(along[0], along[1]);
  const e: Vec2 = [along[0] / length, along[1] / length];
  const down: Vec2 = cross2(e, sub2(flat(0, 1), corner)) > 0 ? [-e[1], e[0]] : [e[1], -e[0]];
  const turn = (p: Vec2): Vec2 => {
    const d = sub2(p, corner);
    return [dot2(d, e), -dot2(d, down)];
  };
  const at = (depth: number, side: number): Vec2 => turn(flat(depth, side));
  const past = LINING / shape.thickness;
  const block = [
    arcThrough(at(0, -1), at(0, 0), at(0, 1)),
    line(at(0, 1), at(1, 1)),
    arcThrough(at(1, 1), at(1, 0), at(1, -1)),
    line(at(1, -1), at(0, -1)),
  ];
  const linings = [-past, 1 + past].map((depth): Primitive => {
    const own = depth < 0 ? 0 : 1;
    return outline([
      arcThrough(at(own, -1), at(own, 0), at(own, 1)),
      line(at(own, 1), at(depth, 1)),
      arcThrough(at(depth, 1), at(depth, 0), at(depth, -1)),
      line(at(depth, -1), at(own, -1)),
    ]);
  });
  const [inner, outer] = [at(-past, 1), at(1 + past, 1)];
  const floor = sub2(outer, inner);
  const size = hypot(floor[0], floor[1]);
  const under: Vec2 = [(floor[1] / size) * BOARD, (-floor[0] / size) * BOARD];
  const lower = (p: Vec2): Vec2 => [p[0] + under[0], p[1] + under[1]];
  const [a, b] = [at(0, 1), at(1, 1)];
  const note = (text: string, place: Vec2, bend: Vec2, side: 'left' | 'right'): Primitive => ({
    kind: 'leader',
    at: place,
    bend,
    text,
    heightMm: 2.5,
    side,
  });
  const reach = 5 * scale;
  return [
    { kind: 'hatch', layer: 'hatch', pattern: 'cast', loops: [block] },
    ...linings,
    outline([
      line(inner, outer),
      line(outer, lower(outer)),
      line(lower(outer), lower(inner)),
      line(lower(inner), inner),
    ]),
    { kind: 'path', layer: 'ground', segments: [line(at(0, -1), at(1, -1))], closed: false },
    {
      kind: 'dimension',
      type: 'linear',
      from: a,
      to: b,
      angleDeg: 90,
      line: [Math.max(outer[0], at(1, -1)[0]) + OFF * scale, 0],
    },
    note('struck', [at(0.5, -1)[0], 0], [at(0.5, -1)[0] + reach, reach], 'right'),
    note('intrados', at(-past / 2, 0), [at(0, 0)[0] - reach, at(0, 0)[1] + reach], 'left'),
    note('extrados', at(1 + past / 2, 0), [at(1, 0)[0] + reach, at(1, 0)[1] + reach], 'right'),
    note('floor', lower(inner), [lower(inner)[0] - reach, lower(inner)[1] - reach / 2], 'left'),
  ];
}
