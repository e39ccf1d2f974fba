import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { descriptionJsonSchema, descriptionKeys, type JsonSchema } from '../../lib/description/json-schema.js';
import { houseFrom, readDescription } from '../../lib/description/read.js';
import type { Description } from '../../lib/description/schema.js';
import { starterDescription } from '../../lib/description/starter.js';
import { problemsOf } from './helpers.js';

const STATION = readFileSync(new URL('./fixtures/station.yaml', import.meta.url), 'utf8');

/** The station as it must be after reading, worked out by hand. */
const EXPECTED: House = {
  format: 1,
  project: {
    title: 'Tern Point field station',
    number: 'TP-014',
    address: '4 Shore Road',
    client: 'Tern Point Trust',
    drawnBy: 'drawing office',
    date: '2026-05-04',
    revision: 'B',
  },
  units: 'm',
  site: {
    northDeg: 20,
    ground: -150,
    snowKpa: 0.8,
    windKpa: 0.6,
    seismicCoefficient: 0.1,
    seismicVertical: null,
    bearingCapacityKpa: 100,
    soilFriction: 0.35,
    combinations: 'ASCE 7',
    windCoefficients: [0.8, -1.4, 0],
    frostDepth: 500,
    plot: [
      [-12000, -9000],
      [14000, -9000],
      [14000, 11000],
      [-12000, 11000],
    ],
    setback: 3000,
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
    shortestPiece: 120,
    leastLap: 80,
    bond: 'banded',
    mouldsInCourse: 1,
    heaviestKg: 20,
  },
  domes: [
    {
      id: 'hall',
      at: [0, 0],
      radius: 3000,
      profile: { shape: 'hemisphere', rise: 3000 },
      stemWall: 600,
      oculus: { radius: 350, curb: 150, upstand: 50 },
    },
    {
      id: 'lab',
      at: [6400, 1500],
      radius: 2200,
      profile: { shape: 'pointed', rise: 2900 },
      stemWall: 300,
      oculus: null,
    },
  ],
  openings: [
    {
      id: 'entrance',
      in: 'hall',
      bearingDeg: 180,
      use: 'door',
      width: 1050,
      height: 2400,
      sill: 0,
      head: { shape: 'semicircular', rise: 525 },
      arch: { ring: 200, face: 300, madeAs: 'cast', voussoirs: null },
      frame: 50,
      depth: null,
    },
    {
      id: 'bay',
      in: 'hall',
      bearingDeg: 300,
      use: 'window',
      width: 1200,
      height: 1100,
      sill: 900,
      head: { shape: 'segmental', rise: 250 },
      arch: { ring: 200, face: 'flush', madeAs: 'voussoirs', voussoirs: 9 },
      frame: 50,
      depth: null,
    },
  ],
  passages: [
    {
      id: 'link',
      between: ['hall', 'lab'],
      width: 1100,
      height: 2100,
      head: { shape: 'semicircular', rise: 550 },
      ring: 200,
    },
  ],
  rooms: [{ id: 'living', in: 'hall', use: 'habitable', name: 'living', at: null }],
  partitions: [],
  drawings: { sheet: null, scale: null, sheets: null },
  footing: { width: 500, depth: 400 },
  slab: { thickness: 100 },
  tie: {
    level: 'above openings',
    bars: 2,
    diameter: 10,
    yieldMpa: 500,
    bondMpa: 2.3,
    lap: 700,
  },
  material: {
    dryDensity: 600,
    compressiveStrengthMpa: 1,
    waterCement: 0.5,
    mortarDensity: 1900,
    mortarStrengthMpa: 2.5,
    renderDensity: 1900,
    concreteDensity: 2400,
    partialFactor: 3,
    friction: 0.4,
    wetDensity: null,
    sandCement: 0,
    foamDensity: 50,
    foamConcentrate: 0.025,
    cementBagKg: 25,
  },
  casting: {
    mixerLitresPerMinute: 38,
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
    targetDays: 30,
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
  print: {
    scale: 50,
    bed: [220, 220, 250],
    thinnest: 1.2,
    nozzle: 0.4,
    clearance: 0.15,
    roof: 'above openings',
    looseBlocks: null,
  },
  prices: { currency: 'EUR', items: { cement: { amount: 25, unit: 'kg', price: 6.2 } } },
};

describe('a whole description', () => {
  test('every key of two domes is read into base units', () => {
    expect(readDescription(STATION, 'station.yaml')).toEqual(EXPECTED);
  });

  test('with one dome, passage and all that names the other removed', () => {
    const one = STATION.replace(/^ {2}- \{ id: lab.*\n/m, '').replace(/^passages:\n.*\n/m, '');
    const { domes, passages, ...rest } = EXPECTED;
    const house = readDescription(one, 'station.yaml');
    expect(house).toEqual({ ...rest, domes: [domes[0]], passages: [] });
    expect(passages).toHaveLength(1);
  });

  test('as bytes, with a byte order mark, with Windows line ends', () => {
    expect(readDescription(new TextEncoder().encode(STATION), 's.yaml')).toEqual(EXPECTED);
    expect(readDescription(`\uFEFF${STATION}`, 's.yaml')).toEqual(EXPECTED);
    expect(readDescription(new TextEncoder().encode(`\uFEFF${STATION}`), 's.yaml')).toEqual(EXPECTED);
    expect(readDescription(STATION.replaceAll('\n', '\r\n'), 's.yaml')).toEqual(EXPECTED);
  });

  test('survives JSON', () => {
    expect(JSON.parse(JSON.stringify(readDescription(STATION, 's.yaml')))).toEqual(EXPECTED);
  });
});

describe('defaults', () => {
  const minimal: Description = { format: 1, domes: [{ id: 'hall', radius: 3 }] };

  test('only format and domes are needed; the defaults make a sound house', () => {
    const house = houseFrom(minimal);
    expect(house).toEqual(readDescription('format: 1\ndomes: [{ id: hall, radius: 3 }]', 'h.yaml'));
    expect(house.units).toBe('m');
    expect(house.project.date).toBeNull();
    expect(house.footing).toEqual({ width: 500, depth: 400 });
    expect(house.prices).toEqual({ currency: '', items: {} });
  });

  test('are the same lengths whatever the units of the file', () => {
    for (const units of ['mm', 'ft', 'in'] as const) {
      const house = houseFrom({ format: 1, units, domes: [{ id: 'hall', radius: '3 m' }] });
      expect({ ...house, units: 'm' }).toEqual(houseFrom(minimal));
    }
  });

  const dome = (profile: NonNullable<Description['domes'][number]['profile']>) =>
    houseFrom({ format: 1, domes: [{ id: 'hall', radius: 3, profile }] }).domes[0]?.profile.rise;
  test.each([
    ['hemisphere', 3000],
    ['segmental', 1500],
    ['pointed', 3000 * Math.sqrt(3)],
    ['catenary', 3000],
    ['elliptical', 2250],
  ] as const)('a %s rises %d', (shape, rise) => {
    expect(dome(shape)).toBeCloseTo(rise, 9);
    expect(dome({ shape })).toBeCloseTo(rise, 9);
  });

  type OpeningInput = NonNullable<Description['openings']>[number];
  const opened = (more: Partial<OpeningInput>) =>
    houseFrom({
      format: 1,
      domes: [{ id: 'hall', radius: 3, 'stem-wall': 0.6 }],
      openings: [{ id: 'bay', in: 'hall', bearing: -90, width: 0.8, height: 1, ...more }],
    }).openings[0];

  test.each([
    ['semicircular', 400],
    ['segmental', 200],
    ['pointed', 400 * Math.sqrt(3)],
    ['flat', 0],
  ] as const)('a %s head rises %d', (head, rise) => {
    expect(opened({ head })?.head).toEqual({ shape: head, rise });
  });

  test('sill, face and voussoirs follow use and make', () => {
    expect(opened({})).toMatchObject({ use: 'window', sill: 900, bearingDeg: 270, arch: { face: 'flush', ring: 200 } });
    expect(opened({ use: 'door', height: 2 })).toMatchObject({ sill: 0, arch: { face: 300, voussoirs: null } });
    expect(opened({ use: 'niche', depth: '150 mm' })).toMatchObject({ sill: 900, depth: 150, arch: { face: 'flush' } });
    expect(opened({ arch: { 'made-as': 'voussoirs' } })).toMatchObject({ arch: { voussoirs: 9 } });
  });

  test('none is an answer for footing and slab', () => {
    expect(houseFrom({ ...minimal, footing: 'none', slab: 'none' })).toMatchObject({ footing: null, slab: null });
    expect(houseFrom({ ...minimal, wall: { thickness: 0.3 } }).footing?.width).toBe(600);
  });
});

describe('ways to write a value', () => {
  test('text keeps what the file says, digits and all', () => {
    const text =
      'format: 1\nproject: { number: 014, revision: 2, title: 2.40, address: yes }\ndomes: [{ id: hall, radius: 3.00 }]';
    expect(readDescription(text, 'h.yaml').project).toMatchObject({
      number: '014',
      revision: '2',
      title: '2.40',
      address: 'yes',
    });
  });

  test('feet and inches', () => {
    const text = `format: 1\nunits: ft\ndomes: [{ id: cabin, radius: 9' 6", stem-wall: 2 }]\nwall: { thickness: 9 1/2 in }`;
    const house = readDescription(text, 'h.yaml');
    expect(house.domes[0]).toMatchObject({ radius: 114 * 25.4, stemWall: 609.6 });
    expect(house.wall.thickness).toBeCloseTo(241.3, 9);
  });

  test('a printer’s bare sizes are millimetres in any file', () => {
    expect(
      houseFrom({ format: 1, units: 'ft', domes: [{ id: 'a', radius: 10 }], print: { bed: [200, 200, '8 in'] } }).print
        .bed,
    ).toEqual([200, 200, 203.2]);
  });

  test('JSON is read as it is', () => {
    const given = { format: 1, domes: [{ id: 'hall', radius: 3, at: [0, -1.5] }] };
    for (const space of [0, 2, '\t'])
      expect(readDescription(JSON.stringify(given, null, space), 'h.json').domes[0]?.at).toEqual([0, -1500]);
  });

  test('a bearing is turned into one turn', () => {
    const north = (value: number | string) =>
      houseFrom({ format: 1, domes: [{ id: 'a', radius: 3 }], site: { north: value } });
    expect(north('-30 deg').site.northDeg).toBe(330);
    expect(north(360).site.northDeg).toBe(0);
    expect(Object.is(north(-0).site.northDeg, 0)).toBe(true);
  });

  test('undefined keys of an object are as good as missing', () => {
    const given = { format: 1 as const, domes: [{ id: 'hall', radius: 3, oculus: undefined }], slab: undefined };
    expect(problemsOf(given)).toEqual([]);
  });
});

describe('documents made from the schema', () => {
  const schema = descriptionJsonSchema();

  function* nodes(node: JsonSchema, path: string): Generator<[string, JsonSchema]> {
    yield [path, node];
    for (const [key, child] of Object.entries(node.properties ?? {})) yield* nodes(child, `${path}.${key}`);
    for (const child of node.anyOf ?? []) yield* nodes(child, path);
    const items = Array.isArray(node.items) ? node.items : node.items ? [node.items as JsonSchema] : [];
    for (const child of items) yield* nodes(child, `${path}[]`);
    if (typeof node.additionalProperties === 'object') yield* nodes(node.additionalProperties, `${path}.*`);
  }

  test('draft 7, only format and domes required, unknown keys refused everywhere', () => {
    expect(schema.$schema).toBe('http://json-schema.org/draft-07/schema#');
    expect(schema.required).toEqual(['format', 'domes']);
    for (const [path, node] of nodes(schema, ''))
      if (node.properties) expect([path, node.additionalProperties]).toEqual([path, false]);
  });

  test('holds draft 7 words alone, as plain JSON', () => {
    const words = new Set(
      '$schema title description type const enum default pattern properties required additionalProperties items additionalItems anyOf minItems maxItems propertyNames'.split(
        ' ',
      ),
    );
    for (const [path, node] of nodes(schema, ''))
      expect([path, Object.keys(node).filter((word) => !words.has(word))]).toEqual([path, []]);
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });

  test('every key of the station is in the key list, with words of what it is', () => {
    const listed = new Map(descriptionKeys().map((key) => [key.path, key]));
    for (const key of listed.values())
      expect([key.path, key.about.length > 3, key.kind.length > 0]).toEqual([key.path, true, true]);
    for (const path of [
      'site.seismic-coefficient',
      'domes[].oculus.upstand',
      'openings[].arch.made-as',
      'prices.*.per',
      'footing.depth',
    ])
      expect([...listed.keys()]).toContain(path);
    expect(listed.get('wall.thickness')).toMatchObject({ default: '250 mm', required: false, kind: 'length' });
    expect(listed.get('domes[].radius')).toMatchObject({ required: true, range: '0.40 m to 20.00 m' });
  });
});

test('the starter is read without problems, and has all that a first house needs', () => {
  const house = readDescription(starterDescription(), 'house.yaml');
  expect(house.openings.map((o) => o.use)).toEqual(['door', 'window', 'niche']);
  expect(house.domes).toHaveLength(1);
});
