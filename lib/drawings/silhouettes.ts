import { edgeTangent } from '../math/curves.js';
import { cos, sin } from '../math/elementary.js';
import { bearingOf, type Vec2 } from '../math/vec.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { barrelCrown } from './arch-edges.js';
import { edgeFeature, type Feature } from './feature.js';
import { atBearing, extradosMeridian } from './meridian.js';
import { passageCrown } from './passage-edges.js';
import { spaceLine } from './space-curve.js';

/** Outermost lines of round faces that a level look along `look` sees: the meridians square to it, and round barrels' crowns. */
export function levelSilhouettes(house: HouseSetout, look: Vec2): Feature[] {
  const side = bearingOf(look) + Math.PI / 2;
  const round = house.domes.flatMap((dome) => {
    const upright = extradosMeridian(dome).filter((e) => e.kind === 'arc' || edgeTangent(e, 0)[1] > 0.5);
    const meridians = [side, side + Math.PI].flatMap((b) => upright.map((e) => edgeFeature(atBearing(e, dome, b))));
    const footing = house.footings.find((f) => f.domeId === dome.id);
    const slab = house.slabs.find((s) => s.domeId === dome.id);
    const base = footing
      ? { r: footing.outerRadius, z: footing.bottomZ }
      : slab
        ? { r: slab.radius, z: slab.bottomZ }
        : null;
    const sides = base
      ? [side, side + Math.PI].map((b) => {
          const [x, y] = [dome.at[0] + base.r * sin(b), dome.at[1] + base.r * cos(b)];
          return edgeFeature(spaceLine([x, y, base.z], [x, y, 0]));
        })
      : [];
    return [...meridians, ...sides, ...archesOf(house, dome).flatMap(barrelCrown)];
  });
  return [...round, ...house.passages.flatMap(passageCrown)];
}
