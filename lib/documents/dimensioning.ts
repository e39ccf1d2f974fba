import { formatAngle, formatLength, type WrittenUnits } from '../base/measures.js';
import { PAPER_POINT } from '../base/tolerances.js';
import { circlePoint } from '../math/curves.js';
import { atan2, cos } from '../math/elementary.js';
import { cross2, DEG, dot2, length2, perp2, scale2, sub2, turnPositive, type Vec2 } from '../math/vec.js';
import type { AngleDimension, DiameterDimension, DimensionPrimitive, RadiusDimension } from './drawing.js';
import { type Expansion, middleOf, readableDeg, type Stroke, type TextBox, textBox } from './expansion.js';
import { direction, line, shifted } from './segments.js';

/**
 * How dimensions look on paper, mm. Narrow lines, oblique strokes at 45° as the one terminator, figures above the line
 * and readable from the bottom or the right: ISO 129-1, from memory; the sizes are common practice, no source.
 */
export const DIMENSION_STYLE = {
  textHeight: 2.5,
  /** From the line up to the text. */
  textGap: 0.8,
  /** From the measured point to the beginning of its extension line. */
  offset: 1.5,
  /** Extension line past the dimension line. */
  beyond: 1.5,
  /** Length of the oblique stroke. */
  tick: 2.5,
  /** Free line on each side of a text between its terminators; also from a terminator to a text set outside. */
  margin: 1.2,
  lineWeight: 0.18,
  tickWeight: 0.35,
} as const;

const STYLE = DIMENSION_STYLE;

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
      return angleBetween(dim) / DEG;
  }
}

/** The text of a dimension, made from its measure. */
export function dimensionText(dim: DimensionPrimitive, units: WrittenUnits): string {
  const measure = measureOf(dim);
  if (dim.type === 'angle') return formatAngle(measure);
  const prefix = dim.type === 'radius' ? 'R' : dim.type === 'diameter' ? 'Ø' : (dim.prefix ?? '');
  return prefix + formatLength(measure, units);
}

/** Whether the text stands between the terminators; when not, it is set outside. */
export function dimensionTextFits(dim: DimensionPrimitive, scale: number, units: WrittenUnits): boolean {
  const width = textBox(dimensionText(dim, units), [0, 0], 'centre', STYLE.textHeight * scale).width;
  const room = dim.type === 'angle' ? angleBetween(dim) * length2(sub2(dim.line, dim.centre)) : measureOf(dim);
  return width + 2 * STYLE.margin * scale <= room;
}

/** Strokes and text of a dimension at `1 : scale`, model mm. */
export function expandDimension(dim: DimensionPrimitive, scale: number, units: WrittenUnits): DimensionExpansion {
  const parts =
    dim.type === 'angle'
      ? expandAngle(dim, scale, units)
      : dim.type === 'radius' || dim.type === 'diameter'
        ? expandRound(dim, scale, units)
        : expandStraight(dim, scale, units);
  return { ...parts, dots: [], measure: measureOf(dim), middle: middleOf(parts.texts[0] as TextBox) };
}

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
  const spillFrom = dim.spill === 'from';
  const run = lineWithText(spillFrom ? b : a, spillFrom ? a : b, dimensionText(dim, units), scale);
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

/** The line from `a` to `b` with its text above the middle or, where that is too tight, above a run-on past `b`. */
function lineWithText(
  a: Vec2,
  b: Vec2,
  text: string,
  scale: number,
): { strokes: Stroke[]; text: TextBox; reading: number } {
  const along = direction(a, b);
  const heading = atan2(along[1], along[0]) / DEG;
  const reading = readableDeg(heading);
  const up = unit(reading + 90);
  const gap = STYLE.textGap * scale;
  const height = STYLE.textHeight * scale;
  const place = (p: Vec2): Vec2 => [p[0] + up[0] * gap, p[1] + up[1] * gap];
  const length = length2(sub2(b, a));
  const centred = textBox(text, place([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]), 'centre', height, reading);
  if (centred.width + 2 * STYLE.margin * scale <= length)
    return { strokes: [thin(line(a, b))], text: centred, reading };

  const forward = dot2(along, unit(reading)) > 0;
  const start = shifted(b, along, STYLE.margin * scale);
  const outside = textBox(text, place(start), forward ? 'left' : 'right', height, reading);
  return { strokes: [thin(line(a, shifted(start, along, centred.width)))], text: outside, reading };
}

function expandRound(dim: RadiusDimension | DiameterDimension, scale: number, units: WrittenUnits): Parts {
  const text = dimensionText(dim, units);
  const opposite: Vec2 = [2 * dim.centre[0] - dim.on[0], 2 * dim.centre[1] - dim.on[1]];
  const inHalf = lineWithText(dim.centre, dim.on, text, scale);
  const fitsHalf = inHalf.text.anchor === 'centre';
  if (dim.type === 'radius')
    return { strokes: [...inHalf.strokes, tick(dim.on, inHalf.reading, scale)], texts: [inHalf.text] };
  const whole = lineWithText(opposite, dim.on, text, scale);
  return {
    strokes: [...whole.strokes, tick(opposite, whole.reading, scale), tick(dim.on, whole.reading, scale)],
    // In one half the text keeps clear of the axes that cross in the centre.
    texts: [fitsHalf ? inHalf.text : whole.text],
  };
}

/** Middle of the arc of an angle. */
export function arcMiddle(dim: AngleDimension): Vec2 {
  const middle = angleOf(dim.centre, dim.from) + angleBetween(dim) / 2;
  return circlePoint(dim.centre, length2(sub2(dim.line, dim.centre)), middle);
}

function expandAngle(dim: AngleDimension, scale: number, units: WrittenUnits): Parts {
  const radius = length2(sub2(dim.line, dim.centre));
  const start = angleOf(dim.centre, dim.from);
  const sweep = angleBetween(dim);
  const ends = [start, start + sweep];
  const strokes: Stroke[] = [
    ...[dim.from, dim.to].flatMap((p, i) => extension(p, circlePoint(dim.centre, radius, ends[i] as number), scale)),
    thin({ kind: 'arc', centre: dim.centre, radius, start, end: start + sweep, ccw: true }),
    ...ends.map((angle) => tick(circlePoint(dim.centre, radius, angle), readableDeg(angle / DEG + 90), scale)),
  ];

  return { strokes, texts: [angleText(dim, radius, start + sweep / 2, scale, units)] };
}

/** Along the arc above its middle; level and beyond the extension lines where the arc is too short or too tight. */
function angleText(dim: AngleDimension, radius: number, middle: number, scale: number, units: WrittenUnits): TextBox {
  const text = dimensionText(dim, units);
  const height = STYLE.textHeight * scale;
  const outward = unit(middle / DEG);
  const reading = readableDeg(middle / DEG + 90);
  const up = unit(reading + 90);
  const half = textBox(text, [0, 0], 'centre', height).width / 2;
  const inside = dot2(up, outward) < 0;
  if (dimensionTextFits(dim, scale, units) && !(inside && half > radius / 2)) {
    // Inside the arc, its ends rise towards the text by the sagitta of the text's width.
    const gap = STYLE.textGap * scale + (inside ? radius - Math.sqrt(radius * radius - half * half) : 0);
    const at = arcMiddle(dim);
    return textBox(text, [at[0] + up[0] * gap, at[1] + up[1] * gap], 'centre', height, reading);
  }
  const reach = radius + (STYLE.beyond + STYLE.margin) * scale + height * Math.abs(outward[1]);
  const at = circlePoint(dim.centre, reach, middle);
  return textBox(text, [at[0], at[1] - height / 2], outward[0] >= 0 ? 'left' : 'right', height);
}

/** From a measured point to the dimension line and a little past it; nothing where the point lies on the line. */
function extension(from: Vec2, to: Vec2, scale: number): Stroke[] {
  const length = length2(sub2(to, from));
  if (length < scale * PAPER_POINT) return [];
  const along = direction(from, to);
  const begin = Math.min(STYLE.offset * scale, length);
  return [thin(line(shifted(from, along, begin), shifted(to, along, STYLE.beyond * scale)))];
}

/** Oblique stroke, rising to the right for the reader of the text. */
function tick(at: Vec2, readingDeg: number, scale: number): Stroke {
  const d = scale2(unit(readingDeg + 45), (STYLE.tick * scale) / 2);
  return { segment: line([at[0] - d[0], at[1] - d[1]], [at[0] + d[0], at[1] + d[1]]), weightMm: STYLE.tickWeight };
}

const thin = (segment: Stroke['segment']): Stroke => ({ segment, weightMm: STYLE.lineWeight });
const unit = (deg: number): Vec2 => [cosDeg(deg), cosDeg(deg - 90)];
const angleOf = (centre: Vec2, p: Vec2): number => atan2(p[1] - centre[1], p[0] - centre[0]);

/** Exactly 0 at right angles, so that an upright dimension measures no trace of the horizontal. */
function cosDeg(deg: number): number {
  const quarter = deg / 90;
  return Number.isInteger(quarter) ? ([1, 0, -1, 0][((quarter % 4) + 4) % 4] as number) : cos(deg * DEG);
}

function angleBetween(dim: AngleDimension): number {
  const a = sub2(dim.from, dim.centre);
  const b = sub2(dim.to, dim.centre);
  return turnPositive(atan2(cross2(a, b), dot2(a, b)));
}
