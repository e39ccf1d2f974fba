import { circlePoint } from '../math/curves.js';
import { atan2 } from '../math/elementary.js';
import { cross2, DEG, dot2, length2, sub2, turnPositive, type Vec2 } from '../math/vec.js';
import { DIMENSION_STYLE, extension, thin, tick, unit } from './dimension-style.js';
import type { AngleDimension, ArcDimension } from './drawing.js';
import { readableDeg, type Stroke, type TextBox, textBox } from './expansion.js';

/** Dimensions whose line is an arc about a centre. */
export type TurnDimension = AngleDimension | ArcDimension;

/** Turn of an angle or arc from its first ray to its second, radians counter-clockwise. */
export function turnOf(dim: TurnDimension): number {
  const a = sub2(dim.from, dim.centre);
  const b = sub2(dim.to, dim.centre);
  return turnPositive(atan2(cross2(a, b), dot2(a, b)));
}

/** Radius of the dimension line. */
export const turnRadius = (dim: TurnDimension): number => length2(sub2(dim.line, dim.centre));

/** Middle of the dimension line. */
export const arcMiddle = (dim: TurnDimension): Vec2 =>
  circlePoint(dim.centre, turnRadius(dim), angleOf(dim.centre, dim.from) + turnOf(dim) / 2);

/** Strokes and text of an angle or an arc's length at `1 : scale`, model mm; `fits` says whether the text stands along the line. */
export function expandTurn(
  dim: TurnDimension,
  text: string,
  scale: number,
  fits: boolean,
): { strokes: Stroke[]; texts: TextBox[] } {
  const radius = turnRadius(dim);
  const start = angleOf(dim.centre, dim.from);
  const sweep = turnOf(dim);
  const ends = [start, start + sweep];
  const measured = [dim.from, dim.type === 'arc' ? onRay(dim) : dim.to];
  const strokes: Stroke[] = [
    ...measured.flatMap((p, i) => extension(p, circlePoint(dim.centre, radius, ends[i] as number), scale)),
    thin({ kind: 'arc', centre: dim.centre, radius, start, end: start + sweep, ccw: true }),
    ...ends.map((angle) => tick(circlePoint(dim.centre, radius, angle), readableDeg(angle / DEG + 90), scale)),
  ];
  return { strokes, texts: [turnText(dim, text, start + sweep / 2, scale, fits)] };
}

/** Where a measured arc ends. */
const onRay = (dim: ArcDimension): Vec2 =>
  circlePoint(dim.centre, length2(sub2(dim.from, dim.centre)), angleOf(dim.centre, dim.to));

/** Along the arc above its middle; level and beyond the extension lines where the arc is too short or too tight. */
function turnText(dim: TurnDimension, text: string, middle: number, scale: number, fits: boolean): TextBox {
  const radius = turnRadius(dim);
  const height = DIMENSION_STYLE.textHeight * scale;
  const outward = unit(middle / DEG);
  const reading = readableDeg(middle / DEG + 90);
  const up = unit(reading + 90);
  const half = textBox(text, [0, 0], 'centre', height).width / 2;
  const inside = dot2(up, outward) < 0;
  if (fits && !(inside && half > radius / 2)) {
    // Inside the arc, its ends rise towards the text by the sagitta of the text's width.
    const gap = DIMENSION_STYLE.textGap * scale + (inside ? radius - Math.sqrt(radius * radius - half * half) : 0);
    const at = arcMiddle(dim);
    return textBox(text, [at[0] + up[0] * gap, at[1] + up[1] * gap], 'centre', height, reading);
  }
  const reach = radius + (DIMENSION_STYLE.beyond + DIMENSION_STYLE.margin) * scale + height * Math.abs(outward[1]);
  const at = circlePoint(dim.centre, reach, middle);
  return textBox(text, [at[0], at[1] - height / 2], outward[0] >= 0 ? 'left' : 'right', height);
}

const angleOf = (centre: Vec2, p: Vec2): number => atan2(p[1] - centre[1], p[0] - centre[0]);
