import type { Tie } from '../description/house.js';
import { square } from '../math/elementary.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import { crossedAt, cutLevel } from './voids.js';

/** Partial factor of reinforcing steel: EN 1992-1-1:2004, 2.4.2.4 (from memory). */
const STEEL_FACTOR = 1.15;

/** Design strength of the steel, MPa. */
export const steelStrength = (yieldMpa: number): number => yieldMpa / STEEL_FACTOR;

/** Area of so many round bars, mm2. */
export const barArea = (bars: number, diameter: number): number => (bars * Math.PI * square(diameter)) / 4;

/** Steel area for a design pull in kN, mm2. */
export const steelArea = (pullKn: number, yieldMpa: number): number => (pullKn * 1000) / steelStrength(yieldMpa);

/**
 * Lap of two bars, mm: all bars lapped in one place, 1.5 times the anchorage, (diameter / 4) stress / bond, at least
 * 15 diameters and 200 mm. EN 1992-1-1:2004, 8.7.3 (from memory).
 */
export function lapLength(diameter: number, stressMpa: number, bondMpa: number): number {
  return Math.max((1.5 * (diameter / 4) * stressMpa) / bondMpa, 15 * diameter, 200);
}

/** A dome's tie, where it comes to lie. */
export interface PlacedTie {
  readonly tie: Tie;
  readonly z: number;
  readonly place: 'footing' | 'wall';
  /** What it would run through: it is no closed hoop then, and takes no pull. */
  readonly crosses: readonly string[];
  /** Greatest pull that the steel takes, kN; 0 when the hoop isn't closed. */
  readonly strength: number;
}

/** Places the described tie in one dome; `null` without a tie, or where no closed bed is left for it. */
export function placeTie(house: HouseSetout, dome: DomeSetout, cutZ: number): PlacedTie | null {
  const { tie, footing } = house.house;
  if (tie === null || tie === 'none') return null;
  const strength = (barArea(tie.bars, tie.diameter) * steelStrength(tie.yieldMpa)) / 1000;
  if (tie.level === 'footing') {
    return footing ? { tie, z: -footing.depth / 2, place: 'footing', crosses: [], strength } : null;
  }
  const z = tie.level === 'above openings' ? closedBed(dome, cutZ) : tie.level;
  if (z === null) return null;
  const crosses = crossedAt(house, dome, z);
  return { tie, z, place: 'wall', crosses, strength: crosses.length === 0 ? strength : 0 };
}

/** Middle of the lowest bed joint of the shell that lies over everything that cuts the dome. */
function closedBed(dome: DomeSetout, cutZ: number): number | null {
  for (const course of dome.courses) {
    if (course.part !== 'shell' || dome.shell.at(course.from).z < cutZ) continue;
    return spanPoint(dome.shell, course.from, dome.thickness / 2)[1];
  }
  return null;
}

/** Mass of steel, kg/m3: EN 1991-1-1:2002, table A.4 (from memory). */
const STEEL_DENSITY = 7850;

/**
 * Steel of all ties of a house, kg, each bar with one lap where that is given: hoops at mid-thickness. 0 where the
 * description does without; `null` where it says nothing, or a tie finds no place.
 */
export function tieSteelKg(house: HouseSetout): number | null {
  const { tie } = house.house;
  if (tie === null) return null;
  if (tie === 'none') return 0;
  let sum = 0;
  for (const dome of house.domes) {
    const placed = placeTie(house, dome, cutLevel(house, dome));
    if (placed === null) return null;
    const inside = placed.place === 'footing' ? dome.springingRadius : dome.radiusAt(placed.z);
    const length = 2 * Math.PI * (inside + dome.thickness / 2) + (tie.lap ?? 0);
    sum += (length * barArea(tie.bars, tie.diameter) * STEEL_DENSITY) / 1e9;
  }
  return sum;
}
