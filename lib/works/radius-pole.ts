import { SAME_POINT } from '../base/tolerances.js';
import { hypot } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { type MeridianSpan, spanPoint } from '../setout/span.js';

/**
 * What turns about a dome's axis and sets the blocks of its shell.
 * `pole`: a straight pole on a pivot; the pivot is `arm` beyond the axis, on the side away from the block, and 0
 * where the pole turns on the axis itself. `template`: no pole reaches, since the arc's centre lies below the floor
 * or the meridian is no arc; a board cut to the meridian turns on a mast.
 */
export type Rig =
  | { readonly kind: 'pole'; readonly pivotZ: number; readonly arm: number }
  | { readonly kind: 'template' };

export function rigOf(dome: DomeSetout): Rig {
  const { arc } = dome.profile;
  if (!arc) return { kind: 'template' };
  const pivotZ = dome.springingZ + arc.centre[1];
  return pivotZ < -SAME_POINT ? { kind: 'template' } : { kind: 'pole', pivotZ, arm: Math.max(0, -arc.centre[0]) };
}

/** One setting of the rig: the lower inner edge of a course, or of what closes the crown. Lengths mm, z above floor. */
export interface Setting {
  readonly domeId: string;
  /** Course set by it; `null` for the bed of curb or plug. */
  readonly course: number | null;
  readonly what: 'stem wall' | 'shell' | 'curb bed' | 'plug bed';
  /** The lower inner edge: distance from the axis, height above the floor. */
  readonly edge: Vec2;
  /** The upper inner edge; `null` for the bed of curb or plug. */
  readonly upperEdge: Vec2 | null;
  /** Elevation of the bed outward from the edge, radians: 0 on the stem wall. */
  readonly bedRad: number;
  /** Arc length along the intrados from the springing, or from the floor on the stem wall. */
  readonly arcLength: number;
  /** The pole that reaches the edge; `null` where a template sets it. */
  readonly pole: PoleSetting | null;
  /** Straight from the foot of the axis on the floor to the edge: the measurement that catches a slip. */
  readonly check: number;
}

export interface PoleSetting {
  readonly pivotZ: number;
  readonly arm: number;
  /** From the pivot to the lower inner edge, where the head plate begins. */
  readonly length: number;
  /** Elevation of the pole from level, radians; the head plate lies in its prolongation. */
  readonly angleRad: number;
}

/** Every setting of a dome from the floor up; on the stem wall the pole lies level and its pivot slides up the mast. */
export function poleSettings(dome: DomeSetout): Setting[] {
  const rig = rigOf(dome);
  const courses = dome.courses.map((course) => {
    const span = dome[course.part];
    const what = course.part === 'stem' ? ('stem wall' as const) : ('shell' as const);
    return { ...settingAt(dome, rig, span, course.bed, what, course.index), upperEdge: spanPoint(span, course.to, 0) };
  });
  const closing = dome.curb
    ? [settingAt(dome, rig, dome.shell, dome.curb.bedS, 'curb bed', null)]
    : dome.plug && dome.plug.bedS < dome.shell.length
      ? [settingAt(dome, rig, dome.shell, dome.plug.bedS, 'plug bed', null)]
      : [];
  return [...courses, ...closing];
}

function settingAt(
  dome: DomeSetout,
  rig: Rig,
  span: MeridianSpan,
  s: number,
  what: Setting['what'],
  course: number | null,
): Setting {
  const edge = spanPoint(span, s, 0);
  const bedRad = span.at(s).normalRad;
  return {
    domeId: dome.id,
    course,
    what,
    edge,
    upperEdge: null,
    bedRad,
    arcLength: s,
    pole: poleTo(dome, rig, what, edge, bedRad),
    check: hypot(edge[0], edge[1]),
  };
}

function poleTo(dome: DomeSetout, rig: Rig, what: Setting['what'], edge: Vec2, bedRad: number): PoleSetting | null {
  if (what === 'stem wall') return { pivotZ: edge[1], arm: 0, length: edge[0], angleRad: 0 };
  const { arc } = dome.profile;
  if (rig.kind === 'template' || !arc) return null;
  return { pivotZ: rig.pivotZ, arm: rig.arm, length: arc.radius, angleRad: bedRad };
}
