import { CREASE_RAD } from '../base/tolerances.js';
import type { Vec2, Vec3 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { inClear, inOuter, type Prism } from './arch-places.js';
import { edgeFeature, type Feature } from './feature.js';
import { levelCircle } from './space-curve.js';

/** Creases of a dome that run round it; openings, barrels and passages interrupt them. */
export function domeEdges(dome: DomeSetout, prisms: readonly Prism[]): Feature[] {
  const { at, springingRadius, thickness, skewback, curb, springingZ } = dome;
  const outer = springingRadius + thickness;
  // A flush ring follows the wall, and behind a niche the wall goes on.
  const outside = (p: Vec3) =>
    !prisms.some((a) =>
      'faceV' in a && a.faceV === null ? a.clear.kind === 'through' && inClear(a, p) : inOuter(a, p),
    );
  const inside = (p: Vec3) => !prisms.some((a) => inClear(a, p));
  const out = (r: number, z: number, where: Feature['where']): Feature => round(at, r, z, 'out', where);
  const inn = (r: number, z: number, where: Feature['where']): Feature => round(at, r, z, 'in', where);
  const features: Feature[] = [{ ...inn(springingRadius, 0, inside), dashed: true }, out(outer, 0, outside)];
  if (skewback && dome.shell.at(0).normalRad > CREASE_RAD) {
    features.push(out(outer, skewback.shoulderZ, outside));
    if (springingZ > 0) features.push(inn(springingRadius, springingZ, inside));
  }
  if (curb) {
    features.push(
      out(curb.bedOuter[0], curb.bedOuter[1], outside),
      out(curb.bedOuter[0], curb.topZ, outside),
      inn(curb.clearRadius, curb.topZ, inside),
      inn(curb.clearRadius, dome.heightAt(curb.clearRadius), inside),
    );
  }
  return features;
}

const round = (at: Vec2, r: number, z: number, turned: 'in' | 'out', where: Feature['where']): Feature => ({
  ...edgeFeature(levelCircle(at, r, z), where),
  turned,
});
