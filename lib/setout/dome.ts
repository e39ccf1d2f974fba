import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import type { BlockRules, Dome, Wall } from '../description/house.js';
import { type Profile, profileOf } from '../math/profile.js';
import { monotoneRoot } from '../math/roots.js';
import type { Vec2 } from '../math/vec.js';
import { type Course, setOutCourses } from './courses.js';
import { domeSpan, type MeridianSpan, stemSpan } from './span.js';

/** Cast wedge that joins the stem wall's level top to the first conical bed, where the meridian isn't upright. */
export interface Skewback {
  /** Height at which the prolonged extrados meets the stem wall's outer face. */
  readonly shoulderZ: number;
  /** Where the conical bed meets the extrados. */
  readonly bed: Vec2;
}

/** Ring round the oculus: bore upright at the clear radius, level top, outer face upright above the last bed. */
export interface Curb {
  readonly clearRadius: number;
  /** Arc length of the bed that it stands on. */
  readonly bedS: number;
  /** Where that bed meets the extrados (r, z). */
  readonly bedOuter: Vec2;
  readonly topZ: number;
}

/** Cast piece that closes a crown without oculus, from its bed to the axis. */
export interface CrownPlug {
  readonly bedS: number;
}

/** One dome as an analytic figure of revolution about `at`; z = 0 is the finished floor. */
export interface DomeSetout {
  readonly id: string;
  readonly at: Vec2;
  readonly thickness: number;
  readonly springingRadius: number;
  readonly springingZ: number;
  readonly profile: Profile;
  readonly crownZ: number;
  /** Top of the masonry on the outside: extrados at the axis, or the curb's level top. */
  readonly topZ: number;
  readonly stem: MeridianSpan;
  readonly shell: MeridianSpan;
  readonly skewback: Skewback | null;
  readonly curb: Curb | null;
  readonly plug: CrownPlug | null;
  readonly courses: readonly Course[];
  /** Inside radius of the surface `offset` outside the intrados at height z; NaN above its top. */
  radiusAt(z: number, offset?: number): number;
  /** Outside radius of the masonry at height z, curb included; NaN above its top. */
  outerRadiusAt(z: number): number;
  /** Height of the surface `offset` outside the intrados at radius r. */
  heightAt(r: number, offset?: number): number;
}

export function setOutDome(dome: Dome, wall: Wall, blocks: BlockRules): DomeSetout {
  const { thickness } = wall;
  const profile = profileOf({ shape: dome.profile.shape, radius: dome.radius, rise: dome.profile.rise });
  const springingZ = dome.stemWall;
  const stem = stemSpan(dome.radius, springingZ);
  const shell = domeSpan(profile, springingZ);

  const radiusAt = (z: number, offset = 0): number =>
    z <= springingZ ? dome.radius + offset : Math.min(dome.radius + offset, profile.radiusAt(z - springingZ, offset));
  const heightAt = (r: number, offset = 0): number => springingZ + profile.heightAt(r, offset);

  const curb = dome.oculus ? setOutCurb(dome.oculus, shell, thickness, heightAt) : null;
  const { courses, plugBedS } = setOutCourses({ stem, shell, thickness, curbBedS: curb?.bedS ?? null, blocks });
  const extradosTop = heightAt(0, thickness);

  return {
    id: dome.id,
    at: dome.at,
    thickness,
    springingRadius: dome.radius,
    springingZ,
    profile,
    crownZ: springingZ + profile.rise,
    topZ: curb ? curb.topZ : extradosTop,
    stem,
    shell,
    skewback: setOutSkewback(dome.radius, springingZ, shell, profile, thickness),
    curb,
    plug: plugBedS === null ? null : { bedS: plugBedS },
    courses,
    radiusAt,
    outerRadiusAt(z) {
      if (!curb || z <= curb.bedOuter[1]) return radiusAt(z, thickness);
      return z <= curb.topZ ? curb.bedOuter[0] : Number.NaN;
    },
    heightAt,
  };
}

function setOutSkewback(
  radius: number,
  springingZ: number,
  shell: MeridianSpan,
  profile: Profile,
  thickness: number,
): Skewback | null {
  const start = shell.at(0);
  if (start.normalRad < SAME_ANGLE_RAD) return null;
  return {
    shoulderZ: springingZ + profile.heightAt(radius + thickness, thickness),
    bed: [start.r + thickness * start.normal[0], start.z + thickness * start.normal[1]],
  };
}

function setOutCurb(
  oculus: NonNullable<Dome['oculus']>,
  shell: MeridianSpan,
  thickness: number,
  heightAt: (r: number, offset: number) => number,
): Curb {
  const bedS = monotoneRoot((s) => shell.at(s).r - (oculus.radius + oculus.curb), 0, shell.length);
  const bed = shell.at(bedS);
  return {
    clearRadius: oculus.radius,
    bedS,
    bedOuter: [bed.r + thickness * bed.normal[0], bed.z + thickness * bed.normal[1]],
    topZ: heightAt(oculus.radius, thickness) + oculus.upstand,
  };
}
