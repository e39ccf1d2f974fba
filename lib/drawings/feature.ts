import {
  END_ON,
  PICTURE_STEP,
  SAME_ANGLE_RAD,
  SIGHT_CHANGE,
  SIGHT_STEP,
  SIGHT_STEP_JOINT,
} from '../base/tolerances.js';
import type { Edge } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { hypot } from '../math/elementary.js';
import type { Vec2, Vec3 } from '../math/vec.js';
import type { Sight } from './sight.js';
import { curveAt, type EllipseArc, pictureOf, roughLength, type SpaceCurve } from './space-curve.js';

/** A line of the house that a view may show. */
export interface Feature {
  readonly curve: SpaceCurve;
  /** `edge`: a crease or silhouette; `joint`: a line on a smooth face. */
  readonly kind: 'edge' | 'joint';
  /** Where on the curve the line exists; everywhere when missing. */
  readonly where?: (p: Vec3) => boolean;
  /** A level circle whose faces all look outward or inward: a level look sees at most the half that faces it. */
  readonly turned?: 'out' | 'in';
  /** A plan dashes it where it lies hidden. */
  readonly dashed?: true;
}

export const edgeFeature = (curve: SpaceCurve, where?: Feature['where']): Feature =>
  where ? { curve, kind: 'edge', where } : { curve, kind: 'edge' };

export const jointFeature = (curve: SpaceCurve, where?: (p: Vec3) => boolean): Feature =>
  where ? { curve, kind: 'joint', where } : { curve, kind: 'joint' };

export type Picture = Edge | EllipseArc;

/** What of a feature is seen, and what of it exists but is hidden. */
export function seenParts(feature: Feature, sight: Sight): Picture[] {
  return partsWhere(feature, sight, (p, across) =>
    feature.kind === 'joint' ? sight.seesFace(p) : sight.seesEdge(p, across),
  );
}

export function hiddenParts(feature: Feature, sight: Sight): Picture[] {
  return partsWhere(feature, sight, (p, across) => !sight.seesEdge(p, across));
}

function partsWhere(feature: Feature, sight: Sight, holds: (p: Vec3, across: () => Vec2) => boolean): Picture[] {
  const { curve, where } = feature;
  const length = roughLength(curve);
  if (!(length > SIGHT_CHANGE)) return [];
  const joint = feature.kind === 'joint';
  const samples = Math.max(joint ? 1 : 2, Math.ceil(length / (joint ? SIGHT_STEP_JOINT : SIGHT_STEP)));
  const perMm = Math.abs(curve.to - curve.from) / length;
  const test = (t: number): boolean => {
    const p = curveAt(curve, t);
    return (!where || where(p)) && holds(p, () => acrossAt(curve, sight, t, perMm));
  };
  const near = (a: number, b: number): boolean => Math.abs(a - b) < SIGHT_CHANGE * perMm;
  return rangesWhere(test, curve.from, curve.to, samples, near).flatMap(([a, b]) =>
    pictureOf(curve, sight.project, a, b),
  );
}

/** Unit vector on paper square to the curve's picture; level where the curve is seen end on. */
function acrossAt(curve: SpaceCurve, sight: Sight, t: number, perMm: number): Vec2 {
  const step = PICTURE_STEP * perMm;
  const a = sight.project(curveAt(curve, t - step));
  const b = sight.project(curveAt(curve, t + step));
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const l = hypot(x, y);
  if (!(l > END_ON)) return [1, 0];
  return Math.abs(y) < SAME_ANGLE_RAD * l ? [0, 1] : [-y / l, x / l];
}
