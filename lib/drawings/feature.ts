import type { Edge } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import type { Vec2, Vec3 } from '../math/vec.js';
import { CHANGE, SAMPLE, SAMPLE_JOINT } from './fineness.js';
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
    feature.kind === 'joint' ? sight.seesFace(p) : sight.seesEdge(p, across()),
  );
}

export function hiddenParts(feature: Feature, sight: Sight): Picture[] {
  return partsWhere(feature, sight, (p, across) => !sight.seesEdge(p, across()));
}

function partsWhere(feature: Feature, sight: Sight, holds: (p: Vec3, across: () => Vec2) => boolean): Picture[] {
  const { curve, where } = feature;
  const length = roughLength(curve);
  if (!(length > CHANGE)) return [];
  const samples = Math.max(2, Math.ceil(length / (feature.kind === 'joint' ? SAMPLE_JOINT : SAMPLE)));
  const perMm = Math.abs(curve.to - curve.from) / length;
  const test = (t: number): boolean => {
    const p = curveAt(curve, t);
    return (!where || where(p)) && holds(p, () => acrossAt(curve, sight, t, perMm));
  };
  const near = (a: number, b: number): boolean => Math.abs(a - b) < CHANGE * perMm;
  return rangesWhere(test, curve.from, curve.to, samples, near).flatMap(([a, b]) =>
    pictureOf(curve, sight.project, a, b),
  );
}

/** Unit vector on paper square to the curve's picture; level where the curve is seen end on. */
function acrossAt(curve: SpaceCurve, sight: Sight, t: number, perMm: number): Vec2 {
  const step = 0.05 * perMm;
  const a = sight.project(curveAt(curve, t - step));
  const b = sight.project(curveAt(curve, t + step));
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const l = Math.hypot(x, y);
  if (!(l > 1e-9)) return [1, 0];
  return Math.abs(y) < 1e-9 * l ? [0, 1] : [-y / l, x / l];
}
