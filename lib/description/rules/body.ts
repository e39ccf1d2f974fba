import { hypot } from '../../math/elementary.js';
import { monotoneRoot } from '../../math/roots.js';
import type { Vec2 } from '../../math/vec.js';
import type { Draft, Placed } from '../draft.js';
import type { BlockRules, Dome, Wall } from '../house.js';
import type { Path } from '../problem-list.js';
import { type DomeShape, shapeOf } from './shape.js';

/** A sound dome with its wall, as its neighbours meet it. Heights are above the floor. */
export interface DomeBody {
  readonly dome: Dome;
  readonly path: Path;
  readonly at: Vec2;
  /** Place in the list: where two domes overlap, the earlier stays whole. */
  readonly order: number;
  readonly shape: DomeShape;
  /** Outside radius at the floor, the greatest: walls lean inward or stand upright. */
  readonly footRadius: number;
  /** Heights at which the outside turns. */
  readonly turns: readonly number[];
  /** Curb or crown plug, which nothing may cut: from this height up, out to this radius. */
  readonly crown: { readonly fromZ: number; readonly radius: number };
  /** Outside radius at height z, curb included; NaN above the top. */
  outerRadiusAt(z: number): number;
}

/** The sound domes as bodies; none while nothing is known of the wall or the blocks. */
export function bodiesOf(draft: Draft, domes: readonly Placed<Dome>[]): DomeBody[] {
  const { wall, blocks } = draft;
  if (!wall || !blocks) return [];
  return domes.map((placed) => bodyOf(placed, draft.domes.indexOf(placed), wall, blocks));
}

export function bodyOf({ path, value: dome }: Placed<Dome>, order: number, wall: Wall, blocks: BlockRules): DomeBody {
  const { oculus, stemWall, radius } = dome;
  const { thickness } = wall;
  const shape = shapeOf(dome);
  const { profile } = shape;
  const bed = profile.at(
    oculus ? shape.shellLength : monotoneRoot((s) => profile.at(s).r - shape.crownRadius(blocks), 0, profile.length),
  );
  const bedOuter = bed.r + thickness * bed.normal[0];
  const extradosAt = (z: number) =>
    z <= stemWall ? radius + thickness : Math.min(radius + thickness, profile.radiusAt(z - stemWall, thickness));
  const curb = oculus && {
    fromZ: stemWall + bed.h + thickness * bed.normal[1],
    topZ: stemWall + profile.heightAt(oculus.radius, thickness) + oculus.upstand,
  };
  return {
    dome,
    path,
    at: dome.at,
    order,
    shape,
    footRadius: radius + thickness,
    turns: [stemWall, ...(curb ? [curb.fromZ, curb.topZ] : [stemWall + profile.heightAt(0, thickness)])],
    crown: { fromZ: stemWall + bed.h, radius: bedOuter },
    outerRadiusAt(z) {
      if (!curb || z <= curb.fromZ) return extradosAt(z);
      return z <= curb.topZ ? bedOuter : Number.NaN;
    },
  };
}

export const between = (one: DomeBody, other: DomeBody): number =>
  hypot(one.at[0] - other.at[0], one.at[1] - other.at[1]);
