import { type Figure, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/warmth.js';
import type { Layer } from '../description/house.js';
import { cos, square } from '../math/elementary.js';
import { exp, log } from '../math/hyperbolic.js';
import { integrate, integrateSoftEnds } from '../math/quadrature.js';
import { monotoneRoot } from '../math/roots.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { MeridianSpan } from '../setout/span.js';
import { areasOf, intradosArea } from './areas.js';
import { groundAreas } from './ground-areas.js';

/** Surface resistances, m2K/W: ISO 6946 table 7, by the direction of the heat flow. */
export const SURFACE = { outside: 0.04, level: 0.13, up: 0.1, down: 0.17 } as const;
/** Elevation of a surface's normal up to which the heat flow counts as level (ISO 6946). */
const LEVEL_UP_TO = Math.PI / 6;
/** Heat that a cubic metre of air holds, Wh/(m3 K): 1.2 kg/m3 × 1005 J/(kg K). */
const AIR_HEAT = (1.2 * 1005) / 3600;

/** A layer of the shell, thickness in mm, from the inside out. */
export interface ShellLayer extends Layer {
  /** The blocks; renders and layers of the description stand on either side. */
  readonly structural: boolean;
}

/** Conductivity of dry cellular concrete, W/(m K): λ = 0.072 e^(0.00125 ρ), ACI 122R-02 equation 2-1 (from memory). */
export const dryConductivity = (density: number): number => 0.072 * exp(0.00125 * density);

/** Layers of the shell from the inside out; those without thickness are left out. */
export function shellLayers({ house }: HouseSetout): ShellLayer[] {
  const { wall, warmth, material } = house;
  const dry = warmth.conductivity ?? dryConductivity(material.dryDensity);
  const beside = (layer: Layer): ShellLayer => ({ ...layer, structural: false });
  const render = (name: string, thickness: number) =>
    beside({ name, thickness, conductivity: warmth.renderConductivity });
  return [
    render(texts.renderInside, wall.renderInside),
    ...[...warmth.insideLayers].reverse().map(beside),
    {
      name: 'blocks',
      thickness: wall.thickness,
      conductivity: dry * warmth.moistureFactor,
      structural: true,
    },
    ...warmth.outsideLayers.map(beside),
    render(texts.renderOutside, wall.renderOutside),
  ].filter((layer) => layer.thickness > 0);
}

/** Transmittance of plane layers, W/(m2 K): 1 / (Rsi + Σ d/λ + Rse), ISO 6946. */
export const planeTransmittance = (layers: readonly Layer[], inside: number, outside = SURFACE.outside): number =>
  1 / (inside + layers.reduce((sum, l) => sum + l.thickness / 1000 / l.conductivity, 0) + outside);

/**
 * Heat that a dome's whole shell passes, W/K: for each ring of the intrados the layers' resistances in series, each
 * with the area that the ring has at its depth: an exact sphere gives 2π / ((1/ri − 1/re)/λ + Rsi/ri² + Rse/re²).
 */
export function domeTransmission(dome: DomeSetout, layers: readonly ShellLayer[]): number {
  // Depths are counted from the structural intrados, so layers inside it lie at negative ones.
  const blocks = layers.findIndex((l) => l.structural);
  const inside = layers.slice(0, Math.max(0, blocks)).reduce((sum, l) => sum + l.thickness, 0);
  const over = (span: MeridianSpan, from: number, to: number): number =>
    to > from ? integrateSoftEnds((s) => ringTransmission(span, s, layers, -inside), from, to, 32) : 0;
  const { stem, shell, curb } = dome;
  // Layers inside a pointed intrados meet at the axis before it does; beyond that they have no ring.
  const inner = (s: number) => shell.at(s).r - inside * cos(shell.at(s).normalRad);
  const end = curb
    ? monotoneRoot((s) => shell.at(s).r - curb.clearRadius, 0, shell.length)
    : monotoneRoot(inner, 0, shell.length);
  const steep = monotoneRoot((s) => shell.at(s).normalRad - LEVEL_UP_TO, 0, end);
  return (over(stem, 0, stem.length) + over(shell, 0, steep) + over(shell, steep, end)) / 1e6;
}

/** W/K of a ring for each millimetre of its meridian, times 1e6. */
function ringTransmission(span: MeridianSpan, s: number, layers: readonly Layer[], from: number): number {
  const p = span.at(s);
  const area = (depth: number) => 2 * Math.PI * (p.r + depth * cos(p.normalRad)) * (1 + p.curvature * depth);
  let depth = from;
  let resistance = (p.normalRad <= LEVEL_UP_TO ? SURFACE.level : SURFACE.up) / area(depth);
  for (const { thickness, conductivity } of layers) {
    resistance += integrate((d) => 1 / area(d), depth, depth + thickness, 8) / 1000 / conductivity;
    depth += thickness;
  }
  return 1 / (resistance + SURFACE.outside / area(depth));
}

/** Slab on the ground by ISO 13370 (from memory): areas m2, lengths m; W/(m2 K). */
export function slabTransmittance(
  area: number,
  perimeter: number,
  wall: number,
  ground: number,
  resistance: number,
): number {
  const breadth = area / (perimeter / 2);
  const equivalent = wall + ground * (SURFACE.down + resistance + SURFACE.outside);
  return equivalent < breadth
    ? ((2 * ground) / (Math.PI * breadth + equivalent)) * log((Math.PI * breadth) / equivalent + 1)
    : ground / (0.457 * breadth + equivalent);
}

/** Transmittances and losses of a house, each figure with formula and source. */
export interface Warmth {
  readonly layers: readonly ShellLayer[];
  readonly figures: readonly Figure[];
  /** Heat loss coefficient of the whole house, W/K. */
  readonly lossWk: number;
}

/** Transmittances, heat loss and the surface against a box's, each with its formula. */
export function warmthOf(house: HouseSetout): Warmth {
  const { warmth, slab, wall } = house.house;
  const layers = shellLayers(house);
  const areas = areasOf(house);
  const uWall = planeTransmittance(layers, SURFACE.level);
  const uRoof = planeTransmittance(layers, SURFACE.up);
  // Of the whole shell's heat the share that is left of its intrados; openings have their own.
  const shell = house.domes.reduce((sum, dome) => {
    const whole = intradosArea({ ...house, arches: [], passages: [], domes: [dome] }, dome);
    return sum + (domeTransmission(dome, layers) * intradosArea(house, dome)) / whole;
  }, 0);
  const vaults = passageLoss(house);
  const openings = openingLoss(house, areas.openings);
  const ground = groundAreas(house);
  const floorArea = floorOf(house);
  const floorR = (slab ? slab.thickness / 1000 / warmth.slabConductivity : 0) + resistanceOf(warmth.floorLayers);
  const wallM = (wall.thickness + wall.renderInside + wall.renderOutside) / 1000;
  const uFloor = slabTransmittance(floorArea, ground.perimeter / 1000, wallM, warmth.groundConductivity, floorR);
  const volume = house.domes.reduce((sum, dome) => sum + roomVolume(dome), 0);
  const air = AIR_HEAT * warmth.airChanges * volume;
  const lossWk = shell + vaults + openings + uFloor * floorArea + air;
  const surface = house.domes.reduce((sum, dome) => sum + intradosArea(house, dome), 0) / 1e6;
  const figure = (
    id: string,
    label: string,
    value: number,
    unit: string,
    formula: string,
    source: string,
    limit = '',
  ) => givenFigure(`warmth.${id}`, label, value, unit, { formula, source, ...(limit ? { limit } : {}) });
  const derived = 'derived';
  return {
    layers,
    lossWk,
    figures: [
      figure(
        'u-wall',
        texts.shellSteepPartTransmittance,
        uWall,
        'W/(m2 K)',
        '1 / (0.13 + Σ d/λ + 0.04)',
        'ISO 6946',
        texts.normalUpTo30,
      ),
      figure(
        'u-roof',
        texts.shellFlatPartTransmittance,
        uRoof,
        'W/(m2 K)',
        '1 / (0.10 + Σ d/λ + 0.04)',
        'ISO 6946',
        texts.normalMoreThan30,
      ),
      figure(
        'u-slab',
        texts.slabOnGroundTransmittance,
        uFloor,
        'W/(m2 K)',
        texts.slabTransmittanceFormula,
        texts.iso13370FromMemory,
        texts.levelGroundNoEdge,
      ),
      figure('shell', texts.heatLossOfShells, shell, 'W/K', texts.ringsOfIntradosLayers, texts.iso6946CurvedLayers),
      ...(house.passages.length > 0
        ? [figure('passages', texts.heatLossOfPassages, vaults, 'W/K', texts.outsideOfVaultTransmittance, 'ISO 6946')]
        : []),
      figure('openings', texts.heatLossOfOpenings, openings, 'W/K', texts.clearAreaTransmittance, texts.description),
      figure(
        'floor',
        texts.heatLossOfFloor,
        uFloor * floorArea,
        'W/K',
        texts.transmittanceFloorArea,
        texts.iso13370FromMemory,
      ),
      figure('air', texts.heatLossByChange, air, 'W/K', texts.airChangeFormula, derived),
      figure('loss', texts.heatLossCoefficient, lossWk, 'W/K', texts.sumOfLosses, derived, texts.noThermalBridges),
      figure(
        'volume',
        texts.volumeOfRooms,
        volume,
        'm3',
        texts.figureOfRevolutionInside,
        derived,
        texts.domesThatOverlap,
      ),
      figure('floor-area', texts.floorAreaInsideWalls, floorArea, 'm2', texts.floorAreaFormula, derived),
      figure('surface', texts.insideSurfaceOverFloor, surface / floorArea, '1', 'intrados / floor', derived),
      figure(
        'box',
        texts.sameOfSquareBox,
        boxSurface(volume, floorArea) / floorArea,
        '1',
        '(4 √A · V/A + A) / A',
        derived,
      ),
    ],
  };
}

const resistanceOf = (layers: readonly Layer[]): number =>
  layers.reduce((sum, l) => sum + l.thickness / 1000 / l.conductivity, 0);

const floorOf = (house: HouseSetout): number =>
  house.domes.reduce((sum, d) => sum + Math.PI * square(d.springingRadius / 1000), 0);

/** m3 inside the intrados of a dome. */
export function roomVolume(dome: DomeSetout): number {
  const slice = (z: number) => Math.PI * square(dome.radiusAt(z));
  return (
    (integrateSoftEnds(slice, 0, dome.springingZ, 8) + integrateSoftEnds(slice, dome.springingZ, dome.crownZ, 40)) / 1e9
  );
}

/** Walls and roof of a square box of a volume over a floor area. */
export const boxSurface = (volume: number, floor: number): number => (4 * Math.sqrt(floor) * volume) / floor + floor;

function openingLoss(house: HouseSetout, clear: Readonly<Record<string, number>>): number {
  const { warmth, openings } = house.house;
  const through = openings.reduce(
    (sum, o) => sum + ((clear[o.id] ?? 0) / 1e6) * (o.use === 'door' ? warmth.door : warmth.window),
    0,
  );
  const oculi = house.domes.reduce((sum, d) => sum + (d.curb ? Math.PI * square(d.curb.clearRadius / 1000) : 0), 0);
  return through + oculi * warmth.window;
}

/** Outsides of the vaults, each with the thickness of its own ring. */
function passageLoss(house: HouseSetout): number {
  const layers = shellLayers(house);
  return house.passages.reduce((sum, passage) => {
    const outside = areasOf({ ...house, arches: [], domes: [], passages: [passage] }).barrels / 1e6;
    const own = layers.map((l) => (l.structural ? { ...l, thickness: passage.ring } : l));
    return sum + outside * planeTransmittance(own, SURFACE.level);
  }, 0);
}
