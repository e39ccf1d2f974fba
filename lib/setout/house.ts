import { remembered } from '../base/remembered.js';
import type { House } from '../description/house.js';
import { hypot } from '../math/elementary.js';
import { type ArchSetout, setOutArch } from './arch.js';
import { type DomeSetout, setOutDome } from './dome.js';
import { type PassageSetout, setOutPassage } from './passage.js';

/** Ring footing under a dome's wall; its top is the finished floor's level. */
export interface FootingSetout {
  readonly domeId: string;
  readonly innerRadius: number;
  readonly outerRadius: number;
  /** How far it stands beyond the wall's faces, jambs and flat faces included. */
  readonly projection: number;
  readonly bottomZ: number;
}

/** Floor slab: inside the footing's ring, or under the whole wall where there is no footing. */
export interface SlabSetout {
  readonly domeId: string;
  readonly radius: number;
  readonly bottomZ: number;
}

/** The analytic house: everything that later stages measure, draw or mesh. */
export interface HouseSetout {
  readonly house: House;
  readonly domes: readonly DomeSetout[];
  readonly arches: readonly ArchSetout[];
  readonly passages: readonly PassageSetout[];
  readonly footings: readonly FootingSetout[];
  readonly slabs: readonly SlabSetout[];
}

/** Sets out a house whose description has passed its rules. */
export function setOutHouse(house: House): HouseSetout {
  const domes = house.domes.map((dome) => setOutDome(dome, house.wall, house.blocks));
  const arches = house.openings.map((opening) => {
    const dome = domes.find((d) => d.id === opening.in);
    if (!dome) throw new Error(`opening ${opening.id} names no dome of the house`);
    return setOutArch(opening, dome);
  });
  const passages = house.passages.map((passage) => {
    const at = passage.between.map((id) => domes.findIndex((d) => d.id === id));
    const [first, second] = at.map((k) => domes[k]);
    if (!first || !second) throw new Error(`passage ${passage.id} names no two domes of the house`);
    return setOutPassage(passage, [first, second], (at[0] as number) < (at[1] as number) ? 1 : 0);
  });
  const footings = house.footing
    ? domes.map((d) => setOutFooting(d, house.footing as NonNullable<House['footing']>))
    : [];
  const { slab } = house;
  const slabs = slab
    ? domes.map((dome, i) => ({
        domeId: dome.id,
        radius: footings[i]?.innerRadius ?? dome.springingRadius + dome.thickness,
        bottomZ: -slab.thickness,
      }))
    : [];
  return { house, domes, arches, passages, footings, slabs };
}

/** What of a house concerns one dome. */
export interface Surroundings {
  readonly arches: readonly ArchSetout[];
  /** Passages that end in it. */
  readonly passages: readonly PassageSetout[];
  /** Earlier domes that it abuts: listed before it, and overlapping it in plan. */
  readonly earlier: readonly DomeSetout[];
}

/**
 * For each dome of a house, in the same order, what concerns it. Told by the house's own lists, so that a changed copy
 * of a house tells of itself; found once for each, since every line through the house asks.
 */
export const surroundings = remembered((house: HouseSetout): readonly Surroundings[] => {
  const { domes, arches, passages } = house;
  return domes.map((dome, k) => ({
    arches: arches.filter((arch) => arch.dome.id === dome.id),
    passages: passages.filter((passage) => passage.domes.some((d) => d.id === dome.id)),
    earlier: domes.slice(0, k).filter((other) => overlap(other, dome)),
  }));
});

const surroundingsOf = (house: HouseSetout, dome: DomeSetout): Surroundings =>
  surroundings(house)[house.domes.findIndex((d) => d.id === dome.id)] as Surroundings;

export const archesOf = (house: HouseSetout, dome: DomeSetout): readonly ArchSetout[] =>
  surroundingsOf(house, dome).arches;

export const passagesOf = (house: HouseSetout, dome: DomeSetout): readonly PassageSetout[] =>
  surroundingsOf(house, dome).passages;

export const earlierThan = (house: HouseSetout, dome: DomeSetout): readonly DomeSetout[] =>
  surroundingsOf(house, dome).earlier;

/** Whether `later` abuts `earlier`. Domes are told by their ids: a stage may hold one in a form of its own. */
export const abuts = (house: HouseSetout, later: DomeSetout, earlier: DomeSetout): boolean =>
  earlierThan(house, later).some((d) => d.id === earlier.id);

/** Walls only lean inward, so domes overlap where they do so at the floor. */
function overlap(one: DomeSetout, other: DomeSetout): boolean {
  const between = hypot(one.at[0] - other.at[0], one.at[1] - other.at[1]);
  return between < one.outerRadiusAt(0) + other.outerRadiusAt(0);
}

function setOutFooting(dome: DomeSetout, footing: NonNullable<House['footing']>): FootingSetout {
  const middle = dome.springingRadius + dome.thickness / 2;
  return {
    domeId: dome.id,
    innerRadius: middle - footing.width / 2,
    outerRadius: middle + footing.width / 2,
    projection: (footing.width - dome.thickness) / 2,
    bottomZ: -footing.depth,
  };
}
