import type { House } from '../description/house.js';
import { type ArchSetout, setOutArch } from './arch.js';
import { type DomeSetout, setOutDome } from './dome.js';

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
  return { house, domes, arches, footings, slabs };
}

export function archesOf(house: HouseSetout, dome: DomeSetout): ArchSetout[] {
  return house.arches.filter((arch) => arch.dome.id === dome.id);
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
