import type { Vec3 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { inClear, inOuter } from './arch-places.js';
import { edgeFeature, type Feature } from './feature.js';
import { levelCircle } from './space-curve.js';

/** Creases of a dome that run round it; openings and barrels interrupt them. */
export function domeEdges(dome: DomeSetout, arches: readonly ArchSetout[]): Feature[] {
  const { at, springingRadius, thickness, skewback, curb, springingZ } = dome;
  const outer = springingRadius + thickness;
  const outside = (p: Vec3) => !arches.some((a) => (a.faceV === null ? inClear(a, p) : inOuter(a, p)));
  const inside = (p: Vec3) => !arches.some((a) => inClear(a, p));
  const features: Feature[] = [
    { ...edgeFeature(levelCircle(at, springingRadius, 0), inside), dashed: true },
    edgeFeature(levelCircle(at, outer, 0), outside),
  ];
  if (skewback) {
    features.push(edgeFeature(levelCircle(at, outer, skewback.shoulderZ), outside));
    if (springingZ > 0) features.push(edgeFeature(levelCircle(at, springingRadius, springingZ), inside));
  }
  if (curb) {
    features.push(
      edgeFeature(levelCircle(at, curb.bedOuter[0], curb.bedOuter[1]), outside),
      edgeFeature(levelCircle(at, curb.bedOuter[0], curb.topZ)),
      edgeFeature(levelCircle(at, curb.clearRadius, curb.topZ)),
      edgeFeature(levelCircle(at, curb.clearRadius, dome.heightAt(curb.clearRadius)), inside),
    );
  }
  return features;
}
