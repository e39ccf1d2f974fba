import type { ArchThrust } from './arch.js';
import type { DomeThrust } from './dome-thrust.js';
import type { JambLoad } from './jambs.js';
import type { Pier } from './piers.js';
import type { Strength } from './strength.js';
import type { PlacedTie } from './tie.js';
import type { OneSided } from './unsymmetrical.js';

/** Membrane forces at a point of a shell's middle surface, kN/m, compression negative; without load factors. */
export interface MembranePoint {
  readonly z: number;
  readonly r: number;
  readonly dead: { readonly meridian: number; readonly hoop: number };
  readonly snow: { readonly meridian: number; readonly hoop: number };
  /** Pull of a ring here that takes the membrane's thrust, kN. */
  readonly pull: { readonly dead: number; readonly snow: number };
}

export interface ShellForces {
  /** From the crown or curb down to the springing. */
  readonly points: readonly MembranePoint[];
  /** Height of the middle surface below which the hoops are in tension under dead load; `null` when nowhere. */
  readonly hoopTurnZ: number | null;
  /** All hoop tension below that height, kN. */
  readonly hoopTension: number;
}

export interface FootingForces {
  /** On the soil along the wall's middle, dead and snow, kN/m. */
  readonly lineLoad: number;
  /** Times that where piers gather the load of the openings beside them. */
  readonly gathering: number;
  /** Where jambs bring down what comes on the openings between them; `null` without any. */
  readonly jamb: JambLoad | null;
  /** Outward at the base, the least, kN/m; `null` when no thrust fits. */
  readonly thrust: number | null;
  /** Of the resultant from the footing's middle, outward positive, mm; `null` when no thrust fits. */
  readonly eccentricity: number | null;
  /** On the width that the resultant stands in the middle of, kPa; `null` when no thrust fits. */
  readonly pressureKpa: number | null;
  /** The same under that jamb. */
  readonly jambKpa: number | null;
}

/** Whole weights of a dome, kN. */
export interface DomeWeights {
  readonly masonry: number;
  readonly render: number;
  readonly footing: number;
  readonly snow: number;
  /** Masonry by lunes over masonry by level slices, less 1. */
  readonly balance: number;
}

/** Everything computed of one dome; plain data. Lengths mm, heights above the floor. */
export interface DomeStatics {
  readonly id: string;
  readonly weights: DomeWeights;
  readonly shell: ShellForces;
  /** Height of the springing; 0 where there is no stem wall. */
  readonly springingZ: number;
  /** Height over which every ring is closed. */
  readonly cutZ: number;
  readonly tie: PlacedTie | null;
  /** Pull of a ring there (in the footing, or over all openings, where none is described) by the least thrust, kN. */
  readonly pull: { readonly z: number; readonly dead: number | null; readonly all: number | null };
  /** As described, with the tie where there is one. */
  readonly thrust: DomeThrust;
  /** Without the tie; the same where there is none. */
  readonly untiedFactor: number;
  readonly oneSided: readonly OneSided[];
  readonly piers: readonly Pier[];
  readonly footing: FootingForces | null;
}

/** One head of an opening, niche or passage. */
export interface HeadStatics {
  readonly id: string;
  readonly of: 'opening' | 'niche' | 'passage';
  /** Heights of its springing and of the ring's top. */
  readonly springingZ: number;
  readonly topZ: number;
  /** `null` of a flat head. */
  readonly arch: ArchThrust | null;
  /** Of a passage that stands free between its domes: with its own walls down to the floor. */
  readonly free: ArchThrust | null;
  /** Of a flat head: bending moment, kN m, dead and snow each without load factors. */
  readonly bending: { readonly dead: number; readonly snow: number; readonly span: number } | null;
}

/** Everything computed of what a house carries; plain data. */
export interface Statics {
  readonly strength: Strength | null;
  readonly domes: readonly DomeStatics[];
  readonly heads: readonly HeadStatics[];
}
