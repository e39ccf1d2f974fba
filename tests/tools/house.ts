import type { Dome, Head, House, Material, Opening, Print, ProfileShape } from '../../lib/description/house.js';

/** House literals for tests, in millimetres: every part has a plain default, any may be overridden. */
type Part<T> = { readonly [K in keyof T]?: T[K] };

export const MATERIAL: Material = {
  dryDensity: 600,
  compressiveStrengthMpa: 1,
  wetDensity: null,
  waterCement: 0.5,
  sandCement: 0,
  foamDensity: 50,
  foamConcentrate: 0.025,
  cementBagKg: 25,
  mortarDensity: 1900,
  mortarStrengthMpa: 2.5,
  renderDensity: 1900,
  concreteDensity: 2400,
  partialFactor: 3,
  friction: 0.4,
};

export const PRINT: Print = {
  scale: 50,
  bed: [220, 220, 250],
  thinnest: 1.2,
  nozzle: 0.4,
  clearance: 0.15,
  roof: 'above openings',
  looseBlocks: null,
};

export function domeOf(part: Part<Dome> & { readonly shape?: ProfileShape; readonly rise?: number } = {}): Dome {
  const { shape = 'hemisphere', rise, ...rest } = part;
  const radius = rest.radius ?? 3000;
  return {
    id: 'hall',
    at: [0, 0],
    radius,
    profile: { shape, rise: rise ?? radius },
    stemWall: 600,
    oculus: null,
    ...rest,
  };
}

export function openingOf(part: Part<Opening> & { readonly head?: Head } = {}): Opening {
  const width = part.width ?? 1000;
  return {
    id: 'entrance',
    in: 'hall',
    bearingDeg: 180,
    use: 'door',
    width,
    height: 2200,
    sill: 0,
    head: { shape: 'semicircular', rise: width / 2 },
    arch: { ring: 200, face: 300, madeAs: 'cast', voussoirs: null },
    frame: 50,
    depth: null,
    ...part,
  };
}

export function houseOf(part: Part<House> = {}): House {
  return {
    format: 1,
    project: { title: 'Test house', number: '', address: '', client: '', drawnBy: '', date: null, revision: '' },
    units: 'm',
    site: {
      northDeg: 0,
      ground: -150,
      snowKpa: null,
      windKpa: null,
      seismicCoefficient: null,
      seismicVertical: null,
      bearingCapacityKpa: null,
      soilFriction: null,
      combinations: 'EN 1990',
      windCoefficients: null,
      frostDepth: null,
      plot: null,
      setback: null,
    },
    wall: { thickness: 250, renderInside: 15, renderOutside: 20 },
    blocks: {
      courseHeight: 250,
      length: 400,
      joint: 10,
      jointRange: [5, 20],
      tolerance: 3,
      shrinkage: 0.0025,
      faceStep: 3,
      faces: 'curved',
      bond: 'banded',
      mouldsInCourse: 1,
      shortestPiece: 120,
      leastLap: 80,
      heaviestKg: 20,
    },
    domes: [domeOf()],
    openings: [],
    passages: [],
    rooms: [],
    partitions: [],
    footing: { width: 500, depth: 400 },
    slab: { thickness: 100 },
    tie: null,
    material: MATERIAL,
    casting: {
      mixerLitresPerMinute: null,
      batchLitres: 100,
      bucketLitres: 10,
      measuredWetDensity: null,
      waste: 0.05,
      crew: 2,
      hoursPerDay: 8,
      minutesPerBlock: 6,
      demouldDays: 1,
      readyToLayDays: 28,
      archStrikeDays: 14,
      bedBoards: 'loose',
      coursesPerDay: 1,
      targetDays: null,
    },
    settingOut: { pegs: null, board: 2400 },
    centering: { ribSpacing: 500, lagging: 20, laggingWidth: 50, tube: 27 },
    warmth: {
      conductivity: null,
      moistureFactor: 1.2,
      renderConductivity: 0.87,
      slabConductivity: 2,
      groundConductivity: 2,
      outsideLayers: [],
      insideLayers: [],
      floorLayers: [],
      window: 1.4,
      door: 1.8,
      airChanges: 0.5,
    },
    drawings: { sheet: null, scale: null, sheets: null },
    print: PRINT,
    prices: { currency: 'EUR', items: {} },
    ...part,
  };
}
