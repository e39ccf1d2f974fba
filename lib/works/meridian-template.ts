import { atan2, cos, hypot, sin } from '../math/elementary.js';
import { lerp2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';

/** Wood left under the deepest part of a board's curved edge, mm; common practice, no source. */
const LEAST_WOOD = 80;
/** Greatest curve cut into one board, mm; common practice, no source. */
const DEEPEST_CURVE = 90;

/** A point of the template's working edge, which touches the intrados; its mast stands on the dome's axis. */
export interface TemplatePoint {
  readonly domeId: string;
  /** Course whose lower inner edge it marks; `null` for a point that only draws the curve, or the end. */
  readonly course: number | null;
  /** Distance from the axis, height above the springing. */
  readonly ordinate: number;
  readonly height: number;
  /** Along the edge from the springing. */
  readonly arcLength: number;
  /** Elevation of the bed that the mark sets, radians. */
  readonly bedRad: number;
  /** Straight from the point before: catches a slip; `null` for the first. */
  readonly fromLast: number | null;
}

/** Where the template ends: at the bed of curb or plug. */
const templateEnd = (dome: DomeSetout): number => dome.curb?.bedS ?? dome.plug?.bedS ?? dome.shell.length;

/** The working edge from the springing up: the bed of every course, and a point between each two. */
export function templatePoints(dome: DomeSetout): TemplatePoint[] {
  const end = templateEnd(dome);
  const marks = dome.courses.filter((c) => c.part === 'shell').map((c) => ({ s: c.bed, course: c.index }));
  const stops = [{ s: 0, course: null }, ...marks, { s: end, course: null }];
  const points = stops.flatMap((stop, i) => {
    const next = stops[i + 1];
    return next ? [stop, { s: (stop.s + next.s) / 2, course: null }] : [stop];
  });
  const places = points.map(({ s }) => spanPoint(dome.shell, s, 0));
  return points.map(({ s, course }, i) => {
    const [r, z] = places[i] as Vec2;
    const last = places[i - 1];
    return {
      domeId: dome.id,
      course,
      ordinate: r,
      height: z - dome.springingZ,
      arcLength: s,
      bedRad: dome.shell.at(s).normalRad,
      fromLast: last ? hypot(r - last[0], z - last[1]) : null,
    };
  });
}

/** One board of the template, cut with both ends on the normals of the meridian. */
export interface TemplateBoard {
  readonly domeId: string;
  /** 1 the lowest. */
  readonly number: number;
  /** The stretch of the meridian that its edge follows, by arc length from the springing. */
  readonly from: number;
  readonly to: number;
  /** Straight along its working edge, from end to end. */
  readonly chord: number;
  /** Of the board to cut it from. */
  readonly width: number;
  /** The curved edge stands out over its chord at a quarter, a half and three quarters of it. */
  readonly offsets: readonly [number, number, number];
  /** Angles between chord and end cut, radians, at the lower and upper end. */
  readonly endsRad: readonly [number, number];
}

/** The cut list: the fewest equal stretches of the meridian that the boards at hand can give. */
export function templateBoards(dome: DomeSetout, longest: number): TemplateBoard[] {
  const end = templateEnd(dome);
  for (let count = 1; ; count++) {
    const boards = Array.from({ length: count }, (_, i) =>
      board(dome, i + 1, (end * i) / count, (end * (i + 1)) / count),
    );
    if (boards.every((b) => b.chord <= longest && b.width <= DEEPEST_CURVE + LEAST_WOOD)) return boards;
  }
}

function board(dome: DomeSetout, number: number, from: number, to: number): TemplateBoard {
  const low = spanPoint(dome.shell, from, 0);
  const high = spanPoint(dome.shell, to, 0);
  const along = sub2(high, low);
  const chord = hypot(along[0], along[1]);
  const unit: Vec2 = [along[0] / chord, along[1] / chord];
  // Outward from the axis: the working edge bulges that way.
  const out: Vec2 = [unit[1], -unit[0]];
  const standsOut = (s: number): readonly [number, number] => {
    const p = sub2(spanPoint(dome.shell, s, 0), low);
    return [p[0] * unit[0] + p[1] * unit[1], p[0] * out[0] + p[1] * out[1]];
  };
  const fine = Array.from({ length: 65 }, (_, i) => standsOut(from + ((to - from) * i) / 64));
  const at = (share: number): number => {
    const i = fine.findIndex(([x]) => x >= share * chord);
    const [a, b] = [fine[i - 1] as Vec2, fine[i] as Vec2];
    return lerp2(a, b, (share * chord - a[0]) / (b[0] - a[0]))[1];
  };
  const normal = (s: number): Vec2 => {
    const { normalRad } = dome.shell.at(s);
    return [cos(normalRad), sin(normalRad)];
  };
  const angle = (a: Vec2, b: Vec2) => Math.abs(atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]));
  return {
    domeId: dome.id,
    number,
    from,
    to,
    chord,
    width: Math.max(...fine.map(([, y]) => y)) + LEAST_WOOD,
    offsets: [at(0.25), at(0.5), at(0.75)],
    endsRad: [angle([-unit[0], -unit[1]], normal(from)), angle(unit, normal(to))],
  };
}
