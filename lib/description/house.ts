import type { LengthUnit } from '../base/units.js';
import type { SHEET_KINDS } from './schema/drawings.js';

export type { LengthUnit };

/**
 * The description after reading: every default filled in, every quantity in one unit.
 * Lengths mm, bearings degrees clockwise from project north in [0, 360), densities kg/m3,
 * pressures kPa (`compressiveStrengthMpa` excepted), masses kg, times days.
 * Everything is plain data that survives `JSON.stringify`.
 */
export interface House {
  readonly format: 1;
  readonly project: Project;
  /** The unit of bare numbers in the file, and of what is printed for its reader. */
  readonly units: LengthUnit;
  readonly site: Site;
  readonly wall: Wall;
  readonly blocks: BlockRules;
  readonly domes: readonly Dome[];
  readonly openings: readonly Opening[];
  readonly passages: readonly Passage[];
  readonly rooms: readonly Room[];
  /** `null` when the description says `none`. */
  readonly partitions: readonly Partition[];
  readonly footing: Footing | null;
  readonly slab: Slab | null;
  /** `null` when the description says nothing of it. */
  readonly tie: Tie | 'none' | null;
  readonly material: Material;
  readonly casting: Casting;
  readonly settingOut: SettingOut;
  readonly centering: Centering;
  readonly warmth: Warmth;
  readonly drawings: DrawingChoice;
  readonly print: Print;
  readonly prices: Prices;
}

export interface Project {
  readonly title: string;
  readonly number: string;
  readonly address: string;
  readonly client: string;
  readonly drawnBy: string;
  /** ISO date as written, or `null`: printed as "undated". */
  readonly date: string | null;
  readonly revision: string;
}

export interface Site {
  /** Bearing of true north from project north. */
  readonly northDeg: number;
  /** Outside ground level, below 0 when the floor stands above it. */
  readonly ground: number;
  readonly snowKpa: number | null;
  readonly windKpa: number | null;
  readonly seismicCoefficient: number | null;
  /** Upright, up or down, as a part of the dead load. */
  readonly seismicVertical: number | null;
  readonly bearingCapacityKpa: number | null;
  /** Footing on soil. */
  readonly soilFriction: number | null;
  readonly combinations: 'EN 1990' | 'ASCE 7';
  /** Pressure coefficients: windward springing, crown line, leeward springing. */
  readonly windCoefficients: readonly [number, number, number] | null;
  readonly frostDepth: number | null;
  readonly plot: readonly (readonly [number, number])[] | null;
  readonly setback: number | null;
}

export interface Wall {
  readonly thickness: number;
  readonly renderInside: number;
  readonly renderOutside: number;
}

/** `banded`: numbers of blocks constant over bands of courses; `free`: free in each course. */
export type Bond = 'banded' | 'free';

export interface BlockRules {
  readonly courseHeight: number;
  readonly length: number;
  readonly joint: number;
  readonly jointRange: readonly [number, number];
  readonly tolerance: number;
  /** Fraction, 0.0025 for 0.25 %. */
  readonly shrinkage: number;
  readonly faceStep: number;
  readonly faces: 'curved' | 'flat';
  readonly bond: Bond;
  /** 1, or 2 that a course may mix. */
  readonly mouldsInCourse: number;
  readonly shortestPiece: number;
  readonly leastLap: number;
  readonly heaviestKg: number;
}

export type ProfileShape = 'hemisphere' | 'segmental' | 'pointed' | 'catenary' | 'elliptical';

export interface Dome {
  readonly id: string;
  /** East, north of the dome's axis. */
  readonly at: readonly [number, number];
  /** Inside radius at the springing. */
  readonly radius: number;
  /** `rise` is inside, springing to crown; a hemisphere's equals its radius. */
  readonly profile: { readonly shape: ProfileShape; readonly rise: number };
  /** Height of the stem wall; 0 for none. */
  readonly stemWall: number;
  readonly oculus: Oculus | null;
}

export interface Oculus {
  /** Clear inside the curb. */
  readonly radius: number;
  /** Width of the curb's ring, measured outward from the clear radius at the intrados. */
  readonly curb: number;
  /** Height of the curb's level top above the extrados (prolonged to the clear radius). */
  readonly upstand: number;
}

export type OpeningUse = 'door' | 'window' | 'egress window' | 'vent' | 'niche';
export type HeadShape = 'semicircular' | 'segmental' | 'pointed' | 'flat';

export interface Head {
  readonly shape: HeadShape;
  /** Springing of the head to its intrados' crown: half the width when semicircular, 0 when flat. */
  readonly rise: number;
}

export interface ArchRules {
  /** Thickness of ring and jambs, measured in the face. */
  readonly ring: number;
  /** Distance of the flat face beyond the extrados at the springing, or `flush`: the ring follows the extrados. */
  readonly face: number | 'flush';
  readonly madeAs: 'cast' | 'voussoirs';
  /** Count of voussoirs, odd; `null` when cast. */
  readonly voussoirs: number | null;
}

export interface Opening {
  readonly id: string;
  /** Id of its dome. */
  readonly in: string;
  readonly bearingDeg: number;
  readonly use: OpeningUse;
  readonly width: number;
  /** Sill to the intrados of the head's crown. */
  readonly height: number;
  /** Above the floor. */
  readonly sill: number;
  readonly head: Head;
  readonly arch: ArchRules;
  readonly frame: number;
  /** Of a niche, from the intrados outward; `null` otherwise. */
  readonly depth: number | null;
}

export interface Passage {
  readonly id: string;
  readonly between: readonly [string, string];
  readonly width: number;
  readonly height: number;
  readonly head: Head;
  readonly ring: number;
}

export type RoomUse = 'habitable' | 'kitchen' | 'bath' | 'storage' | 'other';

export interface Room {
  readonly id: string;
  readonly in: string;
  readonly use: RoomUse;
  readonly name: string;
  /** East, north of a place in it: it is the part of its dome that partitions close off round that; `null`: all of it. */
  readonly at: readonly [number, number] | null;
}

/** A straight wall within a dome's room, which carries nothing. */
export interface Partition {
  /** Id of its dome. */
  readonly in: string;
  /** East, north of both ends of its centre line. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly thickness: number;
  /** Above the floor; `null`: up to the dome. */
  readonly height: number | null;
  readonly door: PartitionDoor | null;
}

export interface PartitionDoor {
  /** Of its middle, from the end `from`. */
  readonly at: number;
  readonly width: number;
  /** Above the floor. */
  readonly height: number;
}

export type SheetKind = (typeof SHEET_KINDS)[number];

/** What is asked of the drawings' sheets; `null`: chosen by the program. */
export interface DrawingChoice {
  /** Name of a size. */
  readonly sheet: string | null;
  /** 50 stands for 1:50. */
  readonly scale: number | null;
  readonly sheets: readonly SheetKind[] | null;
}

export interface Footing {
  readonly width: number;
  /** Below the finished floor; its top is at z = 0. */
  readonly depth: number;
}

export interface Slab {
  readonly thickness: number;
}

/** Closed hoop of steel round every dome. */
export interface Tie {
  /** In the footing, in the first bed above all openings, or at a height above the floor. */
  readonly level: 'footing' | 'above openings' | number;
  readonly bars: number;
  readonly diameter: number;
  readonly yieldMpa: number;
  /** Design bond strength; `null` when not given. */
  readonly bondMpa: number | null;
  readonly lap: number | null;
}

export interface Material {
  readonly dryDensity: number;
  /** `null` when the user hasn't given cube tests. */
  readonly compressiveStrengthMpa: number | null;
  /** What the fresh mix is cast to; `null`: what dries to `dryDensity`. */
  readonly wetDensity: number | null;
  readonly waterCement: number;
  readonly mortarDensity: number;
  readonly mortarStrengthMpa: number;
  readonly renderDensity: number;
  readonly concreteDensity: number;
  /** Characteristic over design strength of the masonry. */
  readonly partialFactor: number;
  /** Of a bed joint. */
  readonly friction: number;
  readonly sandCement: number;
  readonly foamDensity: number;
  /** Concentrate in the foamed liquid, fraction by volume. */
  readonly foamConcentrate: number;
  readonly cementBagKg: number;
}

export interface Casting {
  readonly mixerLitresPerMinute: number | null;
  readonly batchLitres: number;
  readonly bucketLitres: number;
  readonly measuredWetDensity: number | null;
  /** Fraction lost on site. */
  readonly waste: number;
  readonly crew: number;
  readonly hoursPerDay: number;
  /** Of one person. */
  readonly minutesPerBlock: number;
  readonly demouldDays: number;
  readonly readyToLayDays: number;
  readonly archStrikeDays: number;
  /** Bed boards of a mould: taken off before the block is drawn out, or one with the form of the intrados. */
  readonly bedBoards: 'loose' | 'fixed';
  readonly coursesPerDay: number;
  readonly targetDays: number | null;
}

export interface SettingOut {
  /** East, north of the two datum pegs; `null`: placed outside the house by the program. */
  readonly pegs: readonly [readonly [number, number], readonly [number, number]] | null;
  /** Longest board at hand. */
  readonly board: number;
}

export interface Centering {
  readonly ribSpacing: number;
  readonly lagging: number;
  readonly laggingWidth: number;
  readonly tube: number;
}

/** Thickness mm, conductivity W/(m K). */
export interface Layer {
  readonly name: string;
  readonly thickness: number;
  readonly conductivity: number;
}

/** Conductivities W/(m K), transmittances W/(m2 K). */
export interface Warmth {
  /** Of the dry block; `null`: from its density. */
  readonly conductivity: number | null;
  readonly moistureFactor: number;
  readonly renderConductivity: number;
  readonly slabConductivity: number;
  readonly groundConductivity: number;
  readonly outsideLayers: readonly Layer[];
  readonly insideLayers: readonly Layer[];
  readonly floorLayers: readonly Layer[];
  readonly window: number;
  readonly door: number;
  readonly airChanges: number;
}

export interface Print {
  /** 50 stands for 1:50. */
  readonly scale: number;
  readonly bed: readonly [number, number, number];
  readonly thinnest: number;
  readonly nozzle: number;
  /** Between a peg and its socket. */
  readonly clearance: number;
  /** Level (mm of the house) from which roofs come off, if not above all openings; `fixed`: they don't. */
  readonly roof: 'above openings' | 'fixed' | number;
  /** The course whose blocks are printed one by one. */
  readonly looseBlocks: { readonly in: string; readonly course: number } | null;
}

export interface Price {
  /** Amount the price is for, in `unit` (`25`, `kg`). */
  readonly amount: number;
  readonly unit: string;
  readonly price: number;
}

export interface Prices {
  /** Three capitals; empty when no prices are given. */
  readonly currency: string;
  readonly items: Readonly<Record<string, Price>>;
}
