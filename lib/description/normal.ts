import type {
  BlockRules,
  Casting,
  Centering,
  Dome,
  DrawingChoice,
  Footing,
  Head,
  HeadShape,
  Material,
  Opening,
  Partition,
  Passage,
  Print,
  ProfileShape,
  Project,
  Room,
  SettingOut,
  Site,
  Slab,
  Tie,
  Wall,
  Warmth,
} from './house.js';
import type { DescriptionOutput } from './schema.js';

/** One section of the schema's output each: keys to properties, defaults that follow from other keys. */
type Output<K extends keyof DescriptionOutput> = DescriptionOutput[K];
type Entry<K extends 'domes' | 'openings' | 'passages' | 'rooms' | 'partitions'> = Output<K>[number];

const DEFAULT_SILL = 900;
const DOOR_FACE = 300;
const VOUSSOIRS = 9;

export function projectFrom(project: Output<'project'>): Project {
  const { 'drawn-by': drawnBy, date, ...rest } = project;
  return { ...rest, drawnBy, date: date ?? null };
}

export function siteFrom(site: Output<'site'>): Site {
  return {
    northDeg: bearing(site.north),
    ground: site.ground,
    snowKpa: site.snow ?? null,
    windKpa: site.wind ?? null,
    seismicCoefficient: site['seismic-coefficient'] ?? null,
    seismicVertical: site['seismic-vertical'] ?? null,
    bearingCapacityKpa: site['bearing-capacity'] ?? null,
    soilFriction: site['soil-friction'] ?? null,
    combinations: site.combinations,
    windCoefficients: site['wind-coefficients'] ?? null,
    frostDepth: site['frost-depth'] ?? null,
    plot: site.plot ?? null,
    setback: site.setback ?? null,
  };
}

export function wallFrom(wall: Output<'wall'>): Wall {
  return { thickness: wall.thickness, renderInside: wall['render-inside'], renderOutside: wall['render-outside'] };
}

export function blocksFrom(blocks: Output<'blocks'>): BlockRules {
  return {
    courseHeight: blocks['course-height'],
    length: blocks.length,
    joint: blocks.joint,
    jointRange: blocks['joint-range'],
    tolerance: blocks.tolerance,
    shrinkage: blocks.shrinkage,
    faceStep: blocks['face-step'],
    faces: blocks.faces,
    bond: blocks.bond,
    mouldsInCourse: blocks['moulds-in-course'],
    shortestPiece: blocks['shortest-piece'],
    leastLap: blocks['least-lap'],
    heaviestKg: blocks.heaviest,
  };
}

export function domeFrom(dome: Entry<'domes'>): Dome {
  const { profile, radius, oculus } = dome;
  const { shape, rise } = typeof profile === 'string' ? { shape: profile, rise: undefined } : profile;
  return {
    id: dome.id,
    at: dome.at,
    radius,
    profile: { shape, rise: rise ?? defaultRise(shape, radius) },
    stemWall: dome['stem-wall'],
    oculus: oculus ?? null,
  };
}

function defaultRise(shape: ProfileShape, radius: number): number {
  switch (shape) {
    case 'hemisphere':
    case 'catenary':
      return radius;
    case 'segmental':
      return radius / 2;
    case 'pointed':
      return radius * Math.sqrt(3);
    case 'elliptical':
      return radius * 0.75;
  }
}

export function openingFrom(opening: Entry<'openings'>): Opening {
  const { arch, use, width } = opening;
  const madeAs = arch['made-as'];
  return {
    id: opening.id,
    in: opening.in,
    bearingDeg: bearing(opening.bearing),
    use,
    width,
    height: opening.height,
    sill: opening.sill ?? (use === 'door' ? 0 : DEFAULT_SILL),
    head: headFrom(opening.head, width),
    arch: {
      ring: arch.ring,
      face: arch.face ?? (use === 'door' ? DOOR_FACE : 'flush'),
      madeAs,
      voussoirs: arch.voussoirs ?? (madeAs === 'voussoirs' ? VOUSSOIRS : null),
    },
    frame: opening.frame,
    depth: opening.depth ?? null,
  };
}

export function passageFrom(passage: Entry<'passages'>): Passage {
  return { ...passage, head: headFrom(passage.head, passage.width) };
}

function headFrom(head: Entry<'openings'>['head'], width: number): Head {
  const { shape, rise } = typeof head === 'string' ? { shape: head, rise: undefined } : head;
  return { shape, rise: rise ?? headRise(shape, width) };
}

/** The rise of a head whose description names only its shape. */
function headRise(shape: HeadShape, width: number): number {
  switch (shape) {
    case 'semicircular':
      return width / 2;
    case 'segmental':
      return width / 4;
    case 'pointed':
      return (width * Math.sqrt(3)) / 2;
    case 'flat':
      return 0;
  }
}

export function roomFrom(room: Entry<'rooms'>): Room {
  return { id: room.id, in: room.in, use: room.use, name: room.name ?? room.id, at: room.at ?? null };
}

export function partitionFrom({ height, door, ...rest }: Entry<'partitions'>): Partition {
  return { ...rest, height: height ?? null, door: door ?? null };
}

export function drawingsFrom({ sheet, scale, sheets }: Output<'drawings'>): DrawingChoice {
  return { sheet: sheet ?? null, scale: scale ?? null, sheets: sheets ?? null };
}

export function footingFrom(footing: Output<'footing'>, thickness: number): Footing | null {
  if (footing === 'none') return null;
  return { width: footing.width ?? 2 * thickness, depth: footing.depth };
}

export function slabFrom(slab: Output<'slab'>): Slab | null {
  return slab === 'none' ? null : slab;
}

export function tieFrom(tie: Output<'tie'>): Tie | 'none' | null {
  if (tie === undefined || tie === 'none') return tie ?? null;
  const bond = tie['bond-strength'];
  return {
    level: tie.level,
    bars: tie.bars,
    diameter: tie.diameter,
    yieldMpa: tie['yield-strength'] / 1000,
    bondMpa: bond === undefined ? null : bond / 1000,
    lap: tie.lap ?? null,
  };
}

export function materialFrom(material: Output<'material'>): Material {
  const strength = material['compressive-strength'];
  return {
    dryDensity: material['dry-density'],
    compressiveStrengthMpa: strength === undefined ? null : strength / 1000,
    wetDensity: material['wet-density'] ?? null,
    waterCement: material['water-cement'],
    mortarDensity: material['mortar-density'],
    mortarStrengthMpa: material['mortar-strength'] / 1000,
    renderDensity: material['render-density'],
    concreteDensity: material['concrete-density'],
    partialFactor: material['partial-factor'],
    friction: material.friction,
    sandCement: material['sand-cement'],
    foamDensity: material['foam-density'],
    foamConcentrate: material['foam-concentrate'],
    cementBagKg: material['cement-bag'],
  };
}

export function castingFrom(casting: Output<'casting'>): Casting {
  return {
    mixerLitresPerMinute: casting.mixer ?? null,
    batchLitres: casting.batch,
    bucketLitres: casting.bucket,
    measuredWetDensity: casting['measured-wet-density'] ?? null,
    waste: casting.waste,
    crew: casting.crew,
    hoursPerDay: casting['hours-per-day'],
    minutesPerBlock: casting['minutes-per-block'],
    demouldDays: casting.demould,
    readyToLayDays: casting['ready-to-lay'],
    archStrikeDays: casting['arch-strike'],
    bedBoards: casting['bed-boards'],
    coursesPerDay: casting['courses-per-day'],
    targetDays: casting['target-days'] ?? null,
  };
}

export function settingOutFrom(settingOut: Output<'setting-out'>): SettingOut {
  return { pegs: settingOut.pegs ?? null, board: settingOut.board };
}

export function centeringFrom(centering: Output<'centering'>): Centering {
  return {
    ribSpacing: centering['rib-spacing'],
    lagging: centering.lagging,
    laggingWidth: centering['lagging-width'],
    tube: centering.tube,
  };
}

export function warmthFrom(warmth: Output<'warmth'>): Warmth {
  return {
    conductivity: warmth.conductivity ?? null,
    moistureFactor: warmth['moisture-factor'],
    renderConductivity: warmth['render-conductivity'],
    slabConductivity: warmth['slab-conductivity'],
    groundConductivity: warmth['ground-conductivity'],
    outsideLayers: warmth['outside-layers'],
    insideLayers: warmth['inside-layers'],
    floorLayers: warmth['floor-layers'],
    window: warmth.window,
    door: warmth.door,
    airChanges: warmth['air-changes'],
  };
}

export function printFrom(print: Output<'print'>): Print {
  const { 'loose-blocks': looseBlocks, ...rest } = print;
  return { ...rest, looseBlocks: looseBlocks ?? null };
}

function bearing(deg: number): number {
  return ((deg % 360) + 360) % 360;
}
