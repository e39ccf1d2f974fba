import { type Profile, profileOf } from '../../math/profile.js';
import { monotoneRoot } from '../../math/roots.js';
import type { BlockRules, Dome } from '../house.js';

/** A dome whose own sizes are sound, as far as the rules need its geometry. Heights are above the floor. */
export interface DomeShape {
  readonly profile: Profile;
  /** Inside radius at height z; NaN above the crown. */
  radiusAt(z: number): number;
  /** Arc length from the springing to the curb, or to the crown. */
  readonly shellLength: number;
  /** Inside radius out to which the crown is no course of blocks: the curb's, or a bound of the crown plug's. */
  crownRadius(blocks: BlockRules): number;
  /** The highest that an arch may reach: curb or crown plug lie a course further in. */
  archLimit(blocks: BlockRules): number;
}

export function shapeOf(dome: Dome): DomeShape {
  const { shape, rise } = dome.profile;
  const profile = profileOf({ shape, radius: dome.radius, rise });
  const { stemWall, oculus } = dome;
  const curbRadius = oculus ? oculus.radius + oculus.curb : 0;
  return {
    profile,
    radiusAt: (z) => (z <= stemWall ? dome.radius : Math.min(dome.radius, profile.radiusAt(z - stemWall))),
    shellLength: oculus ? monotoneRoot((s) => profile.at(s).r - curbRadius, 0, profile.length) : profile.length,
    // A crown plug is at most about one and a half course heights in radius, as shortest-piece is at most half a block.
    crownRadius: (blocks) => (oculus ? curbRadius : Math.min(dome.radius, 2 * blocks.courseHeight)),
    archLimit(blocks) {
      const radius = oculus ? curbRadius + blocks.courseHeight : 2 * blocks.courseHeight;
      return radius < dome.radius ? stemWall + profile.heightAt(radius) : stemWall;
    },
  };
}

/** What holds of a dome whatever its rise, where that is wrong: nowhere is it wider than at its springing. */
export function widestShapeOf({ radius }: Dome): Pick<DomeShape, 'radiusAt' | 'archLimit'> {
  return { radiusAt: () => radius, archLimit: () => Number.POSITIVE_INFINITY };
}
