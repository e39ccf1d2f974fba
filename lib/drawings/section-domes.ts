import { MERIDIAN_CURVE } from '../base/tolerances.js';
import { cross2, dot2, sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { inEarlier } from './parts.js';
import type { SectionPlane } from './section-plane.js';
import { onPlane } from './slice-upright.js';

/** What a section through a dome's axis measures of it. */
export interface CutDome {
  readonly dome: DomeSetout;
  /** Place of its axis along the plane. */
  readonly x: number;
  /** Openings that the plane cuts. */
  readonly arches: readonly ArchSetout[];
  /**
   * Places of its wall's faces at the floor. A barrel's flat face stands for the outer one, the axis for a side that
   * gives way to an earlier dome; no outer face where a passage joins.
   */
  readonly faces: readonly number[];
  /** Footing under a bare wall, from face to face; `null` where there is none. */
  readonly footing: Vec2 | null;
}

export function cutDome(house: HouseSetout, plane: SectionPlane, dome: DomeSetout): CutDome {
  const x = dot2(sub2(dome.at, plane.through), plane.right);
  const [r, t] = [dome.springingRadius, dome.thickness];
  const arches = archesOf(house, dome).filter((arch) => {
    const reach = arch.faceV ?? r + t;
    return Math.abs(cross2(arch.along, plane.right)) * reach < arch.section.width / 2;
  });
  const sides = ([-1, 1] as const).map((side) => {
    const towards = (arch: ArchSetout) => Math.sign(dot2(arch.along, plane.right)) === side;
    const barrel = arches.find((a) => a.faceV !== null && towards(a));
    const face = barrel ? (barrel.faceV as number) / Math.abs(dot2(barrel.along, plane.right)) : r + t;
    const joined = house.passages.some((p) => p.domes.includes(dome) && endsAt(p, dome, plane) === side);
    const taken = inEarlier(house, dome, onPlane(plane, [x + side * r, 0]));
    return { side, barrel, face, taken, free: !joined && !taken };
  });
  const footing = house.footings.find((f) => f.domeId === dome.id);
  const bare = footing && sides.find((s) => s.free && !s.barrel);
  return {
    dome,
    x,
    arches,
    faces: sides.flatMap(({ side, face, taken, free }) => [
      taken ? x : x + side * r,
      ...(free ? [x + side * face] : []),
    ]),
    footing: bare && footing ? [x + bare.side * footing.innerRadius, x + bare.side * footing.outerRadius] : null,
  };
}

/** A dome that a section cuts beside its axis. */
export interface AsideDome {
  readonly dome: DomeSetout;
  /** From the plane to its axis. */
  readonly off: number;
  /** Places of its wall's faces along the plane, just above the floor, where they stand free. */
  readonly faces: readonly number[];
  /** Where the cut is highest, inside and outside. */
  readonly insideZ: number;
  readonly outsideZ: number;
}

/** How far from its axis a dome's cut is still worth measuring, of its inside radius. */
const WORTH_MEASURING = 0.95;
/** How far beside a face it is asked what the plane cuts there, mm. */
const BESIDE = 5;

/** Domes that a section cuts beside their axes; `solid` tells whether the plane cuts masonry at a place. */
export function asideDomes(house: HouseSetout, plane: SectionPlane, solid: (p: Vec2) => boolean): AsideDome[] {
  return house.domes.flatMap((dome) => {
    if (plane.domes.includes(dome)) return [];
    const from = sub2(dome.at, plane.through);
    const off = Math.abs(cross2(plane.right, from));
    const [r, t] = [dome.springingRadius, dome.thickness];
    if (off > WORTH_MEASURING * r) return [];
    const x = dot2(from, plane.right);
    const half = (radius: number) => Math.sqrt(radius * radius - off * off);
    const faces = [-1, 1].flatMap((side) => {
      const is = (place: number, inward: boolean, outward: boolean) =>
        solid([place - side * BESIDE, BESIDE]) === inward && solid([place + side * BESIDE, BESIDE]) === outward;
      const [inner, outer] = [x + side * half(r), x + side * half(r + t)];
      return [...(is(inner, false, true) ? [inner] : []), ...(is(outer, true, false) ? [outer] : [])];
    });
    const { curb } = dome;
    const [insideZ, outsideZ] = [
      off < (curb?.clearRadius ?? 0) ? crownOf(dome) : dome.heightAt(off),
      off < (curb?.bedOuter[0] ?? 0) ? dome.topZ : dome.heightAt(off, t),
    ];
    return [{ dome, off, faces, insideZ, outsideZ }];
  });
}

/** On which side of a dome a passage that runs along the plane leaves it; 0 for others. */
function endsAt(passage: PassageSetout, dome: DomeSetout, plane: SectionPlane): number {
  const turn = passage.domes[0] === dome ? 1 : -1;
  if (Math.abs(cross2(passage.along, plane.right)) * passage.distance > passage.section.width / 2) return 0;
  return turn * Math.sign(dot2(passage.along, plane.right));
}

/** Passages along whose axis the plane runs. */
export const cutPassages = (house: HouseSetout, plane: SectionPlane): PassageSetout[] =>
  house.passages.filter((p) =>
    p.domes.every((d) => Math.abs(cross2(plane.right, sub2(d.at, plane.through))) < MERIDIAN_CURVE),
  );

/** Level of the intrados at the crown, or at the edge of the oculus. */
export const crownOf = (dome: DomeSetout): number => (dome.curb ? dome.heightAt(dome.curb.clearRadius) : dome.crownZ);
