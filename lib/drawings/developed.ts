import { acos, asin } from '../math/elementary.js';
import { bearingOf, length2, sub2, turnSigned, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import { seenFrom } from '../setout/passage.js';
import { spanPoint } from '../setout/span.js';

/** Something that takes blocks from a dome's courses, on the wall's middle surface. */
export interface Gap {
  readonly id: string;
  readonly bearingRad: number;
  /** Half of the bearings that it takes at height z on a circle of radius r, masonry joint included; 0 where it takes none. */
  halfAt(r: number, z: number): number;
  /** The same of the clear opening; `null` for an earlier dome. */
  readonly clearAt: ((r: number, z: number) => number) | null;
}

/** The wall's middle surface unrolled: lengths along each circle and up the meridian are true. */
export class Developed {
  readonly gaps: readonly Gap[];
  private readonly lift: number;

  constructor(
    house: HouseSetout,
    readonly dome: DomeSetout,
  ) {
    this.gaps = gapsOf(house, dome);
    this.lift = (dome.thickness / 2) * dome.shell.at(0).normalRad;
  }

  /** Radius, level, and height on paper of a place up the meridian. */
  at(part: Course['part'], s: number): { readonly r: number; readonly z: number; readonly y: number } {
    const { dome } = this;
    const [r, z] = spanPoint(dome[part], s, dome.thickness / 2);
    if (part === 'stem') return { r, z, y: s };
    const bend = (dome.thickness / 2) * (dome.shell.at(s).normalRad - dome.shell.at(0).normalRad);
    return { r, z, y: dome.stem.length + this.lift + s + bend };
  }

  /** Whether there are no blocks at a bearing. */
  taken(bearingRad: number, r: number, z: number): boolean {
    return this.gaps.some((gap) => Math.abs(turnSigned(bearingRad - gap.bearingRad)) < gap.halfAt(r, z));
  }
}

function gapsOf(house: HouseSetout, dome: DomeSetout): Gap[] {
  const { joint } = house.house.blocks;
  const angle = (half: number, r: number) => (half <= 0 ? 0 : half >= r ? Math.PI / 2 : asin(half / r));
  const prism = ({
    id,
    section,
    ring,
    baseZ,
    bearingRad,
  }: Pick<ArchSetout, 'id' | 'section' | 'ring' | 'baseZ' | 'bearingRad'>): Gap => ({
    id,
    bearingRad,
    halfAt: (r, z) =>
      angle(section.halfWidthAt(z, ring + joint, baseZ === 0 ? Number.NEGATIVE_INFINITY : baseZ - joint), r),
    clearAt: (r, z) => angle(section.halfWidthAt(z), r),
  });
  const earlier = earlierThan(house, dome).map((other): Gap => {
    const between = sub2(other.at, dome.at);
    const d = length2(between);
    return {
      id: other.id,
      bearingRad: bearingOf(between),
      halfAt(r, z) {
        const reach = (other.outerRadiusAt(z) || 0) + joint;
        const cos = (r * r + d * d - reach * reach) / (2 * r * d);
        return cos >= 1 ? 0 : cos <= -1 ? Math.PI : acos(cos);
      },
      clearAt: null,
    };
  });
  return [
    ...archesOf(house, dome).map(prism),
    ...passagesOf(house, dome).map((p) => prism(seenFrom(p, dome))),
    ...earlier,
  ];
}

/** A place on paper: `from` is the bearing that stands at x = 0. */
export const developedPoint = (r: number, y: number, bearingRad: number, from: number): Vec2 => [
  r * (bearingRad - from),
  y,
];
