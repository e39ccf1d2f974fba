import { DRAWN_CURVE, EDGE_ON_RAD } from '../base/tolerances.js';
import { edgeAt } from '../math/curves.js';
import { traceCurve } from '../math/curves-trace.js';
import { alongBearing, dot2, type Vec2, type Vec3 } from '../math/vec.js';
import { type Course, perpendBearings } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';
import { inOuter, type Prism } from './arch-places.js';
import { type Feature, jointFeature } from './feature.js';
import { halfToward, levelCircle } from './space-curve.js';

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
  // Made when first asked for, and the same for all looks.
  let made: readonly Perpend[] | undefined;
  const perpends = () => {
    made ??= dome.courses.flatMap((course) => perpendsOf(dome, course, where));
    return made;
  };
  return {
    outside(look) {
      const toward: Vec2 = [-look[0], -look[1]];
      return [
        ...beds(dome.thickness, toward),
        ...stemTop(dome.springingRadius + dome.thickness, toward),
        ...perpends().flatMap(({ along, features }) => (dot2(along, toward) > EDGE_ON_RAD ? features : [])),
      ];
    },
    inside: (look) => beds(0, look),
  };
}

/** One perpend outside: the way that it lies from the axis, and its pieces. */
interface Perpend {
  readonly along: Vec2;
  readonly features: readonly Feature[];
}

/** Pieces of meridian between beds, each a stretch of the course's own turned to its bearing. */
function perpendsOf(dome: DomeSetout, course: Course, where: (p: Vec3) => boolean): Perpend[] {
  const span = spanOf(dome, course);
  const pieces = traceCurve((s) => spanPoint(span, s, dome.thickness), course.bed, course.to, DRAWN_CURVE);
  return perpendBearings(course).map((rad): Perpend => {
    const along = alongBearing(rad);
    const features = pieces.map((piece) => {
      const at = (t: number): Vec3 => {
        const [r, z] = edgeAt(piece, t);
        return [dome.at[0] + r * along[0], dome.at[1] + r * along[1], z];
      };
      return jointFeature({ kind: 'free', at, from: 0, to: 1 }, where);
    });
    return { along, features };
  });
}
