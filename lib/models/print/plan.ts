import * as texts from '../../base/texts/print.js';
import { alongBearing, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { axisLines, type CutLine, type CutTree, cutToFit, houseLines, linesOf } from './cut-lines.js';
import { baseCuts, type HeightCut, roofCuts } from './height-cuts.js';
import { type RoofLevel, roofLevels } from './levels.js';
import { roofPegs, type StandingPegs, socketSize } from './peg-places.js';
import { narrowPiers } from './piers.js';
import { type Plate, plateOf } from './plate.js';
import { type PrintSizes, printSizes } from './sizes.js';
import { printSetout, type Thickened } from './thicken.js';

/** One dome: where its roof comes off, on which pegs it sits, and how it is cut. */
export interface PlannedDome {
  readonly level: RoofLevel | null;
  readonly pegs: StandingPegs | null;
  readonly roof: CutTree | null;
  /** Levels at which a roof too high for the printer is parted. */
  readonly roofCuts: readonly HeightCut[];
}

/** What is printed, before anything is made: the same walls, levels and cuts that the solids then have. */
export interface PrintPlan {
  readonly sizes: PrintSizes;
  readonly setout: HouseSetout;
  readonly thickened: readonly Thickened[];
  readonly domes: readonly PlannedDome[];
  readonly plate: Plate;
  readonly base: CutTree;
  /** Levels at which a base too high for the printer is parted. */
  readonly baseCuts: readonly HeightCut[];
}

/** Why a house can't be printed at a scale, in words for whoever asked. */
export interface PrintObstacle {
  readonly code: 'nozzle' | 'pier' | 'bed' | 'height' | 'block';
  readonly message: string;
}

/** How the printed model is divided and joined, or what stands in the way of it. */
export type Planned =
  | { readonly plan: PrintPlan; readonly obstacles: readonly [] }
  | { readonly plan: null; readonly obstacles: readonly PrintObstacle[] };

/** Scales of models and drawings; the second list is of feet and inches. */
const SCALES = [1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, 250, 300, 400, 500, 750, 1000];
const SCALES_FEET = [12, 16, 24, 32, 48, 64, 96, 128, 192, 384];
/** Pegs that hold a roof without turning. */
const PEGS = 3;
/** Plans the print of a house at a scale, its description's own when missing; needs no geometry kernel. */
export function planPrint(house: HouseSetout, scale = house.house.print.scale): Planned {
  const first = printSizes(house.house, scale);
  const { setout, thickened } = printSetout(house, first);
  const bed: Vec2 = [first.bed[0], first.bed[1]];
  const thinPlate = plateOf(setout, first);
  const whole = cutToFit(cornersOf(thinPlate), [], bed);
  // Pegs between pieces lie in the plate.
  const thickness = whole ? first.plate.thickness : Math.max(first.plate.thickness, socketSize(first) + 2 * first.thin);
  const sizes: PrintSizes = { ...first, plate: { ...first.plate, thickness } };
  const plate = plateOf(setout, sizes);
  const uncut = setout.domes.map((dome) => planDome(setout, dome, sizes));
  const levels = uncut.map(({ level }) => level);
  const heights = levels.map((level) => level?.z ?? null);
  const base = whole ?? cutToFit(cornersOf(plate), houseLines(setout, heights, sizes), bed);
  const lines = base ? linesOf(base) : [];
  const domes = uncut.map((planned, i) => cutDome(setout, setout.domes[i] as DomeSetout, planned, lines, sizes));
  const standing = baseCuts(setout, levels, plate, lines, sizes);

  const obstacles: PrintObstacle[] = [...nozzleObstacles(house, scale), ...pierObstacles(house, sizes)];
  if (!base || domes.some(({ level, roof }) => level && !roof))
    obstacles.push({ code: 'bed', message: texts.partLargerThanBed });
  if (!standing || domes.some(({ roofCuts: cuts }) => cuts === null)) {
    const message = texts.partHigherThanPrinter(mm(sizes.bed[2], scale));
    obstacles.push({ code: 'height', message });
  }
  if (obstacles.length > 0 || !base || !standing) return { plan: null, obstacles };
  const planned = domes.map((dome) => ({ ...dome, roofCuts: dome.roofCuts ?? [] }));
  return { plan: { sizes, setout, thickened, domes: planned, plate, base, baseCuts: standing }, obstacles: [] };
}

/** The scale nearest to the described one at which the house can be printed; `null` where there is none. */
export function workableScale(house: HouseSetout): number | null {
  const { units, print } = house.house;
  const scales = units === 'ft' || units === 'in' ? SCALES_FEET : SCALES;
  const away = (scale: number) => Math.max(scale / print.scale, print.scale / scale);
  const nearest = [...scales].sort((a, b) => away(a) - away(b));
  return nearest.find((scale) => planPrint(house, scale).plan !== null) ?? null;
}

type UncutDome = Omit<PlannedDome, 'roofCuts'>;

function planDome(setout: HouseSetout, dome: DomeSetout, sizes: PrintSizes): UncutDome {
  let best: { level: RoofLevel; pegs: StandingPegs } | null = null;
  for (const level of roofLevels(setout, dome, sizes)) {
    const pegs = roofPegs(setout, dome, level.z, sizes);
    if (!best || pegs.at.length > best.pegs.at.length) best = { level, pegs };
    if (pegs.at.length >= PEGS) break;
  }
  if (!best) return { level: null, pegs: null, roof: null };
  const radius = dome.outerRadiusAt(best.level.z);
  const round = Array.from({ length: 64 }, (_, k): Vec2 => {
    const [x, y] = alongBearing(-(2 * Math.PI * k) / 64);
    return [dome.at[0] + radius * x, dome.at[1] + radius * y];
  });
  return { ...best, roof: cutToFit(round, axisLines(dome), [sizes.bed[0], sizes.bed[1]]) };
}

/** Where a dome's roof is parted, and its pegs away from all upright cuts. */
function cutDome(
  setout: HouseSetout,
  dome: DomeSetout,
  { level, pegs, roof }: UncutDome,
  lines: readonly CutLine[],
  sizes: PrintSizes,
): UncutDome & { readonly roofCuts: readonly HeightCut[] | null } {
  if (!level) return { level, pegs, roof, roofCuts: [] };
  const all = [...lines, ...(roof ? linesOf(roof) : [])];
  return {
    level,
    pegs: all.length === 0 ? pegs : roofPegs(setout, dome, level.z, sizes, all),
    roof,
    roofCuts: roofCuts(setout, dome, level, all, sizes),
  };
}

const cornersOf = ({ min, max }: Plate): Vec2[] => [min, [max[0], min[1]], max, [min[0], max[1]]];

function nozzleObstacles({ house }: HouseSetout, scale: number): PrintObstacle[] {
  const { wall, print } = house;
  const printed = wall.thickness / scale;
  if (printed >= print.nozzle) return [];
  const message = texts.wallThinnerThanNozzle(printed.toFixed(2), print.nozzle);
  return [{ code: 'nozzle', message }];
}

/** Piers between clear spaces can't grow outward: they are as wide as the house has them. */
function pierObstacles(setout: HouseSetout, { thin, scale }: PrintSizes): PrintObstacle[] {
  return narrowPiers(setout, thin).map(({ between: [one, other], width }) => {
    const message = texts.pierBetween(one, other, mm(width, scale), mm(thin, scale));
    return { code: 'pier', message };
  });
}

const mm = (length: number, scale: number): string => `${(length / scale).toFixed(1)} mm`;
