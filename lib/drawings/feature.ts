import { remembered } from '../base/remembered.js';
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

/** Where a feature is asked whether it is seen: the same places in each of the views that look at it. */
interface Asked {
  readonly length: number;
  readonly samples: number;
  /** The sampled places that were asked; `null` where the feature doesn't exist. */
  readonly places: (Place | null)[];
}

/** A place of a feature, and two close by on both sides of it: they tell its direction where that has a say. */
interface Place {
  readonly at: Vec3;
  beside?: readonly [Vec3, Vec3];
}

const askedOf = remembered(({ curve, kind }: Feature): Asked => {
  const length = roughLength(curve);
  const joint = kind === 'joint';
  const samples = Math.max(joint ? 1 : 2, Math.ceil(length / (joint ? SIGHT_STEP_JOINT : SIGHT_STEP)));
  return { length, samples, places: [] };
});

function partsWhere(feature: Feature, sight: Sight, holds: (p: Vec3, across: () => Vec2) => boolean): Picture[] {
  const { curve, where } = feature;
  const { length, samples, places } = askedOf(feature);
  if (!(length > SIGHT_CHANGE)) return [];
  const perMm = Math.abs(curve.to - curve.from) / length;
  const placeAt = (t: number): Place | null => {
    const at = curveAt(curve, t);
    return !where || where(at) ? { at } : null;
  };
  const test = (t: number, sample?: number): boolean => {
    let place = sample === undefined ? undefined : places[sample];
    if (place === undefined) {
      place = placeAt(t);
      if (sample !== undefined) places[sample] = place;
    }
    return place !== null && holds(place.at, () => acrossAt(place, curve, sight, t, PICTURE_STEP * perMm));
  };
  const near = (a: number, b: number): boolean => Math.abs(a - b) < SIGHT_CHANGE * perMm;
  return rangesWhere(test, curve.from, curve.to, samples, near).flatMap(([a, b]) =>
    pictureOf(curve, sight.project, a, b),
  );
}

/** Unit vector on paper square to the curve's picture; level where the curve is seen end on. */
function acrossAt(place: Place, curve: SpaceCurve, sight: Sight, t: number, step: number): Vec2 {
  place.beside ??= [curveAt(curve, t - step), curveAt(curve, t + step)];
  const a = sight.project(place.beside[0]);
  const b = sight.project(place.beside[1]);
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const l = hypot(x, y);
  if (!(l > END_ON)) return [1, 0];
  return Math.abs(y) < SAME_ANGLE_RAD * l ? [0, 1] : [-y / l, x / l];
}
