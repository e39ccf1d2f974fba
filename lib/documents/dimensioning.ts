import { formatAngle, formatLength, type WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/sheet-frame.js';
import { atan2 } from '../math/elementary.js';
import { DEG, dot2, length2, lerp2, perp2, sub2, type Vec2 } from '../math/vec.js';
import { expandTurn, turnOf, turnRadius } from './dimension-arcs.js';
import { extension, DIMENSION_STYLE as STYLE, thin, tick, unit } from './dimension-style.js';
import type { DiameterDimension, DimensionPrimitive, RadiusDimension } from './drawing.js';
import {
  type Expansion,
  expandedOnce,
  middleOf,
  readableDeg,
  type Stroke,
  type TextBox,
  textBox,
} from './expansion.js';
import { direction, line, shifted } from './segments.js';

export interface DimensionExpansion extends Expansion {
  /** What is measured: mm, or degrees of an angle. */
  readonly measure: number;
  /** Middle of the text. */
  readonly middle: Vec2;
}

/** What a dimension measures: mm, or degrees of an angle. */
export function measureOf(dim: DimensionPrimitive): number {
  switch (dim.type) {
    case 'linear':
      return Math.abs(dot2(sub2(dim.to, dim.from), unit(dim.angleDeg)));
    case 'aligned':
      return length2(sub2(dim.to, dim.from));
    case 'radius':
      return length2(sub2(dim.on, dim.centre));
    case 'diameter':
      return 2 * length2(sub2(dim.on, dim.centre));
    case 'angle':
      return turnOf(dim) / DEG;
    case 'arc':
      return turnOf(dim) * length2(sub2(dim.from, dim.centre));
  }
}

/** The text of a dimension, made from its measure. */
export function dimensionText(dim: DimensionPrimitive, units: WrittenUnits): string {
  const measure = measureOf(dim);
  if (dim.type === 'angle') return formatAngle(measure);
  return prefixOf(dim) + formatLength(measure, units);
}

function prefixOf(dim: Exclude<DimensionPrimitive, { type: 'angle' }>): string {
  switch (dim.type) {
    case 'radius':
      return 'R';
    case 'diameter':
      return 'Ø';
    case 'arc':
      // ISO 129-1 has a sign for it, which the drawings' font and those of many readers lack.
      return texts.arcLength;
    default:
      return dim.prefix ?? '';
  }
}

/** Whether the text stands between the terminators; when not, it is set outside. */
export function dimensionTextFits(dim: DimensionPrimitive, scale: number, units: WrittenUnits): boolean {
  const width = textBox(dimensionText(dim, units), [0, 0], 'centre', STYLE.textHeight * scale).width;
  const room = dim.type === 'angle' || dim.type === 'arc' ? turnOf(dim) * turnRadius(dim) : measureOf(dim);
  return width + 2 * STYLE.margin * scale <= room;
}

/** Strokes and text of a dimension at `1 : scale`, model mm. */
export const expandDimension = expandedOnce(
  (dim: DimensionPrimitive, scale: number, units: WrittenUnits): DimensionExpansion => {
    const parts =
      dim.type === 'angle' || dim.type === 'arc'
        ? expandTurn(dim, dimensionText(dim, units), scale, dimensionTextFits(dim, scale, units))
        : dim.type === 'radius' || dim.type === 'diameter'
          ? expandRound(dim, scale, units)
          : expandStraight(dim, scale, units);
    return { ...parts, dots: [], measure: measureOf(dim), middle: middleOf(parts.texts[0] as TextBox) };
  },
);

type Parts = { readonly strokes: readonly Stroke[]; readonly texts: readonly TextBox[] };

/** Where the dimension line of a linear or aligned dimension begins and ends. */
export function dimensionLineEnds(dim: Extract<DimensionPrimitive, { type: 'linear' | 'aligned' }>): [Vec2, Vec2] {
  const across = perp2(dim.type === 'linear' ? unit(dim.angleDeg) : direction(dim.from, dim.to));
  const foot = (p: Vec2): Vec2 => {
    const d = dot2(sub2(dim.line, p), across);
    return [p[0] + across[0] * d, p[1] + across[1] * d];
  };
  return [foot(dim.from), foot(dim.to)];
}

function expandStraight(
  dim: Extract<DimensionPrimitive, { type: 'linear' | 'aligned' }>,
  scale: number,
  units: WrittenUnits,
): Parts {
  const [a, b] = dimensionLineEnds(dim);
  const spill = dim.spill ?? 'to';
  const backward = spill === 'from' || spill === 'out-from';
  const [start, end] = backward ? [b, a] : [a, b];
  const out = spill === 'out-from' || spill === 'out-to' ? awayFrom(dim, a) : undefined;
  const text = dimensionText(dim, units);
  const run =
    dim.type === 'aligned' && dim.share !== undefined
      ? lineWithTextAt(a, b, dim.share, text, scale)
      : lineWithText(start, end, text, scale, out);
  return {
    strokes: [
      ...extension(dim.from, a, scale),
      ...extension(dim.to, b, scale),
      ...run.strokes,
      tick(a, run.reading, scale),
      tick(b, run.reading, scale),
    ],
    texts: [run.text],
  };
}

/** Square to the dimension line, away from what is measured; to its left where that lies on the line. */
function awayFrom(dim: Extract<DimensionPrimitive, { type: 'linear' | 'aligned' }>, foot: Vec2): Vec2 {
  const across = perp2(dim.type === 'linear' ? unit(dim.angleDeg) : direction(dim.from, dim.to));
  return dot2(sub2(foot, dim.from), across) < 0 ? [-across[0], -across[1]] : across;
}

/**
 * The line from `a` to `b` with its text above the middle or, where that is too tight, above a run-on past `b`, or above
 * the shelf of a leader that goes `out` from its middle.
 */
function lineWithText(
  a: Vec2,
  b: Vec2,
  text: string,
  scale: number,
  out?: Vec2,
): { strokes: Stroke[]; text: TextBox; reading: number } {
  const along = direction(a, b);
  const heading = atan2(along[1], along[0]) / DEG;
  const reading = readableDeg(heading);
  const up = unit(reading + 90);
  const gap = STYLE.textGap * scale;
  const height = STYLE.textHeight * scale;
  const place = (p: Vec2): Vec2 => [p[0] + up[0] * gap, p[1] + up[1] * gap];
  const length = length2(sub2(b, a));
  const middle: Vec2 = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const centred = textBox(text, place(middle), 'centre', height, reading);
  if (centred.width + 2 * STYLE.margin * scale <= length)
    return { strokes: [thin(line(a, b))], text: centred, reading };

  const forward = dot2(along, unit(reading)) > 0;
  const anchor = forward ? 'left' : 'right';
  if (out) {
    const far = (dot2(out, up) > 0 ? STYLE.shelfAbove : STYLE.shelfBelow) * scale;
    const aside = Math.min(STYLE.shelfAside * scale, length / 4);
    const knee: Vec2 = shifted([middle[0] + out[0] * far, middle[1] + out[1] * far], along, aside);
    const strokes = [line(a, b), line(middle, knee), line(knee, shifted(knee, along, centred.width))].map(thin);
    return { strokes, text: textBox(text, place(knee), anchor, height, reading), reading };
  }
  const start = shifted(b, along, STYLE.margin * scale);
  const outside = textBox(text, place(start), anchor, height, reading);
  return { strokes: [thin(line(a, shifted(start, along, centred.width)))], text: outside, reading };
}

/** The same with the text's middle at a share of the line, between 0 and 1. */
function lineWithTextAt(a: Vec2, b: Vec2, share: number, text: string, scale: number): ReturnType<typeof lineWithText> {
  const at = (t: number) => lerp2(a, b, t);
  // The stretch whose middle the text stands in; the rest of the line is drawn beside it.
  const [from, to] = [Math.max(0, 2 * share - 1), Math.min(1, 2 * share)];
  const around = lineWithText(at(from), at(to), text, scale);
  const rest = [...(from > 0 ? [line(a, at(from))] : []), ...(to < 1 ? [line(at(to), b)] : [])];
  return { ...around, strokes: [...rest.map(thin), ...around.strokes] };
}

function expandRound(dim: RadiusDimension | DiameterDimension, scale: number, units: WrittenUnits): Parts {
  const text = dimensionText(dim, units);
  const opposite: Vec2 = [2 * dim.centre[0] - dim.on[0], 2 * dim.centre[1] - dim.on[1]];
  const inHalf = lineWithText(dim.centre, dim.on, text, scale);
  const fitsHalf = inHalf.text.anchor === 'centre';
  if (dim.type === 'radius') {
    const run = lineWithTextAt(dim.centre, dim.on, dim.share ?? 0.5, text, scale);
    return { strokes: [...run.strokes, tick(dim.on, run.reading, scale)], texts: [run.text] };
  }
  const whole = lineWithText(opposite, dim.on, text, scale);
  return {
    strokes: [...whole.strokes, tick(opposite, whole.reading, scale), tick(dim.on, whole.reading, scale)],
    // In one half the text keeps clear of the axes that cross in the centre.
    texts: [fitsHalf ? inHalf.text : whole.text],
  };
}
