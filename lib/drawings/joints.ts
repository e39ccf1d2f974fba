import { DRAWN_CURVE, EDGE_ON_RAD } from '../base/tolerances.js';
import { edgeAt } from '../math/curves.js';
import { traceCurve } from '../math/curves-trace.js';
import { alongBearing, dot2, type Vec2, type Vec3 } from '../math/vec.js';
import { type Course, perpendBearings } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';
import { inOuter, type Prism } from './arch-places.js';
import { type Feature, jointFeature } from './feature.js';
import { halfToward, levelCircle, type SpaceCurve } from './space-curve.js';

/** The middles of the joints of a dome's blocks, each as one line; none within the rings and jambs of openings and passages. */
export interface JointLines {
  /** Bed joints and perpends outside, on the half that faces against `look`. */
  outside(look: Vec2): Feature[];
  /** Bed joints inside, on the half that lies before `look`. */
  inside(look: Vec2): Feature[];
}

export const spanOf = (dome: DomeSetout, course: Course) => (course.part === 'stem' ? dome.stem : dome.shell);

/** Bed joints as arc lengths: middles of the joints, and the last bed, on which curb or crown plug stands. */
export function bedsOf(dome: DomeSetout): { readonly course: Course; readonly s: number }[] {
  const beds = dome.courses
    .filter((c) => c.index > 1 || c.part === 'shell')
    .map((course) => ({ course, s: (course.from + course.bed) / 2 }));
  const last = dome.courses[dome.courses.length - 1];
  return last?.part === 'shell' ? [...beds, { course: last, s: last.to }] : beds;
}

export function jointLines(dome: DomeSetout, prisms: readonly Prism[]): JointLines {
  const where = (p: Vec3) => !prisms.some((a) => inOuter(a, p));
  const beds = (depth: number, toward: Vec2): Feature[] =>
    bedsOf(dome).map(({ course, s }) => {
      const [r, z] = spanPoint(spanOf(dome, course), s, depth);
      return jointFeature(halfToward(levelCircle(dome.at, r, z), toward), where);
    });
  // Where the stem wall's level top carries a skewback, that joint shows as well.
  const stemTop = (r: number, toward: Vec2): Feature[] =>
    dome.skewback && dome.springingZ > 0
      ? [jointFeature(halfToward(levelCircle(dome.at, r, dome.springingZ), toward), where)]
      : [];
  return {
    outside(look) {
      const toward: Vec2 = [-look[0], -look[1]];
      return [
        ...beds(dome.thickness, toward),
        ...stemTop(dome.springingRadius + dome.thickness, toward),
        ...dome.courses.flatMap((c) => perpends(dome, c, toward)).map((curve) => jointFeature(curve, where)),
      ];
    },
    inside: (look) => beds(0, look),
  };
}

/** Pieces of meridian between beds, each a stretch of the course's own turned to its bearing. */
function perpends(dome: DomeSetout, course: Course, toward: Vec2): SpaceCurve[] {
  const span = spanOf(dome, course);
  const pieces = traceCurve((s) => spanPoint(span, s, dome.thickness), course.bed, course.to, DRAWN_CURVE);
  const curves: SpaceCurve[] = [];
  for (const rad of perpendBearings(course)) {
    const along = alongBearing(rad);
    if (dot2(along, toward) <= EDGE_ON_RAD) continue;
    for (const piece of pieces) {
      const at = (t: number): Vec3 => {
        const [r, z] = edgeAt(piece, t);
        return [dome.at[0] + r * along[0], dome.at[1] + r * along[1], z];
      };
      curves.push({ kind: 'free', at, from: 0, to: 1 });
    }
  }
  return curves;
}
