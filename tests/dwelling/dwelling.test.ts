import { describe, expect, it } from 'vitest';
import type { House, Opening, Partition, Room } from '../../lib/description/house.js';
import { dwellingChecks } from '../../lib/dwelling/checks.js';
import { areaOf, clearRectangle, clearWidthAt, glazedArea, LEAF } from '../../lib/dwelling/clear.js';
import { dwellingOf } from '../../lib/dwelling/dwelling.js';
import { EGRESS_DOOR, ESCAPE, FULL_HEADROOM, LEAST_ROOM } from '../../lib/dwelling/rules.js';
import { sectionOf } from '../../lib/math/section.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const IN = 25.4;
const living: Room = { id: 'living', in: 'hall', use: 'habitable', name: 'Living', at: null };
const bare = { thickness: 250, renderInside: 0, renderOutside: 0 };

const study = (part: Partial<House>) => dwellingOf(setOutHouse(houseOf(part)));
const checks = (part: Partial<House>) => {
  const setout = setOutHouse(houseOf(part));
  return new Map(dwellingChecks(setout, dwellingOf(setout)).map((c) => [c.id, c]));
};
const room = (radius: number, stemWall = 0) => {
  const { rooms } = study({ wall: bare, domes: [domeOf({ radius, stemWall })], rooms: [living] });
  if (!rooms[0]) throw new Error('no room');
  return rooms[0];
};

describe('rules by IRC 2021 in metric', () => {
  it('are those of the code', () => {
    // R310.2.1: 5.7 ft2 is 0.530 m2, 5.0 ft2 0.465 m2; R310.2.2: 20 by 24 in; R310.2.3: 44 in; R311.2: 32 by 78 in.
    expect([ESCAPE.area, ESCAPE.gradeArea].map((a) => a.toFixed(3))).toEqual(['0.530', '0.465']);
    expect([ESCAPE.width, ESCAPE.height, ESCAPE.sill].map(Math.round)).toEqual([508, 610, 1118]);
    expect([EGRESS_DOOR.width, EGRESS_DOOR.height].map(Math.round)).toEqual([813, 1981]);
    // R304.1: 70 ft2 is 6.503 m2; R305.1: 7 ft.
    expect(LEAST_ROOM.area).toBeCloseTo(6.503, 3);
    expect(FULL_HEADROOM).toBeCloseTo(2133.6, 9);
  });
});

describe('rooms that partitions close off', () => {
  const R = 2500;
  const north: Room = { id: 'north', in: 'hall', use: 'bath', name: 'North', at: [0, 1500] };
  const south: Room = { id: 'south', in: 'hall', use: 'habitable', name: 'South', at: [300, -200] };
  const wall = (west: number, east: number): Partition => ({
    in: 'hall',
    from: [west, 500],
    to: [east, 500],
    thickness: 100,
    height: 2000,
    door: { at: 1000, width: 700, height: 1900 },
  });
  const across = Math.sqrt(R * R - 500 * 500);
  const openings = [
    openingOf({ id: 'out', bearingDeg: 180, width: 800, height: 1500 }),
    openingOf({ id: 'light', bearingDeg: 20, use: 'window', sill: 900, width: 500, height: 600 }),
  ];
  const parted = (rooms: readonly Room[], partition = wall(-across, across), stemWall = 0) =>
    study({ wall: bare, domes: [domeOf({ radius: R, stemWall })], rooms, partitions: [partition], openings });
  /** Area beyond a chord at distance h from the middle of a circle, m2. */
  const segment = (r: number, h: number) =>
    r > h ? (r * r * Math.acos(h / r) - h * Math.sqrt(r * r - h * h)) / 1e6 : 0;
  const disc = (r: number) => (Math.PI * r * r) / 1e6;
  // The partition's flat ends meet the wall in their middle: south of that a wedge is left beside each.
  const wedges = segment(R, 450) - segment(R, 500) - (2 * across * 50) / 1e6;

  it('have the floor of their side of a chord, at the floor and under headroom', () => {
    const { rooms, roomFloor } = parted([north, south]);
    const at = (z: number) => Math.sqrt(R * R - z * z);
    for (const [key, z] of [
      ['floor', 0],
      ['low', 5 * 12 * IN],
      ['bath', 80 * IN],
      ['full', 84 * IN],
    ] as const) {
      expect(rooms[0]?.[key], key).toBeCloseTo(segment(at(z), 550), 9);
      expect(rooms[1]?.[key], key).toBeCloseTo(disc(at(z)) - segment(at(z), 450) + (z === 0 ? wedges : 0), 9);
    }
    expect(roomFloor).toBeCloseTo(disc(R) - segment(R, 450) + wedges + segment(R, 550), 9);
    expect(rooms.map((r) => r.sharedWith)).toEqual([[], []]);
  });

  it('have the same floor under headroom as at the floor where an upright wall is higher', () => {
    const [first] = parted([north], wall(-across, across), 2200).rooms;
    expect(first?.full).toBeCloseTo(first?.floor ?? 0, 9);
    expect(first?.floor).toBeCloseTo(segment(R, 550), 9);
  });

  it.each([5 * 12 * IN, 80 * IN, 84 * IN])(
    'never have more floor under headroom than at the floor: walls about %d',
    (z) => {
      for (let up = -5; up <= 5; up += 0.25) {
        const { rooms } = parted([north, south], wall(-across, across), z + up);
        for (const { floor, low, bath, full } of rooms) {
          const areas = [floor, low, bath, full];
          for (let k = 1; k < areas.length; k++)
            expect(areas[k], `${z + up}`).toBeLessThanOrEqual((areas[k - 1] as number) + 1e-9);
          if (up >= 0) expect(areas[z > 2100 ? 3 : z > 2000 ? 2 : 1]).toBeCloseTo(floor, 9);
        }
      }
    },
  );

  it('are as high as the dome over their place nearest to its axis, and have the openings in their own wall', () => {
    const [first, second] = parted([north, south]).rooms;
    expect(first?.highest).toBeCloseTo(Math.sqrt(R * R - 550 * 550), 6);
    expect(second?.highest).toBeCloseTo(R, 9);
    expect([first?.glazing, second?.glazing].map((m2) => (m2 ?? 0) > 0)).toEqual([true, false]);
    expect([first?.escapes, second?.escapes]).toEqual([[], ['out']]);
  });

  it('are measured as one where the partition leaves a gap, or where one has no place', () => {
    const gap = parted([north, south], wall(-across, across - 300));
    expect(gap.rooms.map((r) => r.sharedWith)).toEqual([['south'], ['north']]);
    expect(gap.rooms[0]?.floor).toBeCloseTo(gap.rooms[1]?.floor ?? 0, 9);
    expect(gap.roomFloor).toBeCloseTo(gap.rooms[0]?.floor ?? 0, 9);
    const whole = parted([north, { ...south, at: null }]);
    expect(whole.rooms.map((r) => r.sharedWith)).toEqual([['south'], ['north']]);
    expect(whole.rooms[0]?.floor).toBeCloseTo(segment(R, 550), 9);
    expect(whole.roomFloor).toBeCloseTo(whole.rooms[1]?.floor ?? 0, 9);
  });
});

describe('floor that partitions stand on', () => {
  const wall = (from: Vec2, to: Vec2, thickness = 100): Partition => ({
    in: 'hall',
    from,
    to,
    thickness,
    height: 2000,
    door: null,
  });
  const floors = (partitions: readonly Partition[], domes = [domeOf({ radius: 2500, stemWall: 0 })]) => {
    const [first] = study({ wall: bare, domes, rooms: [{ ...living, in: domes.at(-1)?.id ?? '' }], partitions }).rooms;
    if (!first) throw new Error('no room');
    return first;
  };
  const whole = floors([]);

  it('is taken off: length by thickness, where two cross once, a door or not', () => {
    const one = wall([-1000, 0], [1000, 0]);
    expect(whole.floor - floors([one]).floor).toBeCloseTo(0.2, 9);
    expect(whole.floor - floors([{ ...one, door: { at: 500, width: 800, height: 1900 } }]).floor).toBeCloseTo(0.2, 9);
    expect(whole.floor - floors([one, wall([0, -800], [0, 800])]).floor).toBeCloseTo(0.2 + 0.16 - 0.01, 9);
  });

  it('is bounded by the wall at each headroom: half a strip across a circle by the handbook’s segment', () => {
    // Area of a strip of a circle between the chords at ±h: 2 (r² asin(h/r) + h √(r² − h²)); geometry.
    const strip = (r: number, h: number) => (2 * (r * r * Math.asin(h / r) + h * Math.sqrt(r * r - h * h))) / 1e6;
    const across = floors([wall([-2500, 0], [2500, 0])]);
    // Its ends are square: a sliver beyond the chord's ends stays floor.
    expect(whole.floor - across.floor).toBeCloseTo(strip(2500, 50), 4);
    const [low, full] = [whole.low, whole.full].map((area) => Math.sqrt((area * 1e6) / Math.PI)) as [number, number];
    expect(whole.low - across.low).toBeCloseTo(strip(low, 50), 9);
    expect(whole.full - across.full).toBeCloseTo(strip(full, 50), 9);
  });

  it('leaves the least width to be measured: never ok, and says so', () => {
    const width = (partitions: readonly Partition[], radius = 2500) =>
      checks({ wall: bare, domes: [domeOf({ radius, stemWall: 600 })], rooms: [living], partitions }).get(
        'room-width.living',
      );
    expect(width([])?.state).toBe('ok');
    const parted = width([wall([-1000, 0], [1000, 0])]);
    expect(parted?.state).toBe('attention');
    expect(parted?.advice).toContain("partitions (P1) aren't looked at");
    expect(parted?.capacity?.formula).toContain('partitions left out');
    expect(width([wall([-1000, 0], [1000, 0])], 1100)?.state).toBe('fails');
  });

  it('that an earlier dome has taken already isn’t taken twice', () => {
    const domes = [
      domeOf({ radius: 2500, stemWall: 0 }),
      domeOf({ id: 'later', at: [4000, 0], radius: 2500, stemWall: 0 }),
    ];
    const later = (partitions: readonly Partition[]) => floors(partitions, domes).floor;
    // The earlier dome's outside lies at x = 2750 on the wall's line; its rounding over 100 mm takes 0.08 mm more.
    const through = { ...wall([2000, 0], [4000, 0]), in: 'later' };
    expect(later([]) - later([through])).toBeCloseTo(0.125, 4);
  });
});

describe('floor under headroom in a hemisphere that springs at the floor', () => {
  it('R 2.5: the circle under 7 ft is 1.30298 m wide at its radius, 27.164 % of the floor', () => {
    const { floor, full } = room(2500);
    expect(Math.sqrt(full / Math.PI)).toBeCloseTo(1.30298, 5);
    expect(full / floor).toBeCloseTo(0.27164, 5);
    // With a stem wall of 0.6 m: 1.97435 m.
    expect(Math.sqrt(room(2500, 600).full / Math.PI)).toBeCloseTo(1.97435, 5);
  });

  it('the radii from which 70 ft2 are enough, by 7 ft and by 5 ft', () => {
    // Half of 70 ft2 under 7 ft from R 2.36374 m, 70 ft2 under 5 ft from R 2.09586 m.
    expect(room(2363.8).full).toBeGreaterThan(LEAST_ROOM.area / 2);
    expect(room(2363.7).full).toBeLessThan(LEAST_ROOM.area / 2);
    expect(room(2095.9).low).toBeGreaterThan(LEAST_ROOM.area);
    expect(room(2095.8).low).toBeLessThan(LEAST_ROOM.area);
    // Read strictly, half of all that counts under 7 ft: from R 2.604212 m.
    const state = (radius: number) =>
      checks({ wall: bare, domes: [domeOf({ radius, stemWall: 0 })], rooms: [living] }).get('headroom.living')?.state;
    expect(state(2604.3)).toBe('ok');
    expect(state(2604.1)).toBe('attention');
    expect(state(2363.7)).toBe('fails');
  });

  it('an earlier dome takes its part: areas by the formula of two circles', () => {
    const domes = [
      domeOf({ radius: 2500, stemWall: 0 }),
      domeOf({ id: 'lab', at: [4500, 0], radius: 2500, stemWall: 0 }),
    ];
    const labRoom: Room = { ...living, id: 'lab-room', in: 'lab' };
    const [sizes] = study({ wall: bare, domes, rooms: [labRoom] }).rooms;
    // Circles 2500 and 2750 at 4500 apart.
    const [a, b, d] = [2.5, 2.75, 4.5];
    const common =
      a * a * Math.acos((d * d + a * a - b * b) / (2 * d * a)) +
      b * b * Math.acos((d * d + b * b - a * a) / (2 * d * b)) -
      Math.sqrt((-d + a + b) * (d + a - b) * (d - a + b) * (d + a + b)) / 2;
    expect(sizes?.floor).toBeCloseTo(Math.PI * a * a - common, 6);
    expect(sizes?.width).toBeCloseTo(Math.sqrt(2500 ** 2 - 1524 ** 2) + 4500 - 2750, 6);
  });
});

describe('clear sizes', () => {
  const clear = (part: Partial<Opening>, frame = 50) => {
    const opening = openingOf(part);
    return { section: sectionOf(opening), frame };
  };

  it('a flat head leaves the rectangle less frame and leaf', () => {
    const flat = clear({ width: 1000, height: 2100, head: { shape: 'flat', rise: 0 } });
    const size = clearRectangle(flat);
    expect(size.width).toBeCloseTo(900 - LEAF, 9);
    expect(size.height).toBeCloseTo(2050, 4);
    expect(clearWidthAt(flat, 2050)).toBeCloseTo(900 - LEAF, 9);
    expect(clearWidthAt(flat, 2051)).toBe(0);
    expect(glazedArea(flat)).toBeCloseTo(0.9 * 2.05, 9);
  });

  it('a semicircular head narrows it: half chord of the inner circle', () => {
    const door = clear({ width: 1000, height: 2200 });
    const z = EGRESS_DOOR.height;
    expect(clearWidthAt(door, z)).toBeCloseTo(2 * Math.sqrt(450 ** 2 - (z - 1700) ** 2) - LEAF, 6);
    const size = clearRectangle(door);
    // No other rectangle under the arch is larger.
    for (let top = 1000; top < 2150; top += 7) {
      expect(clearWidthAt(door, top) * top).toBeLessThanOrEqual(areaOf(size) * 1e6 + 1e-3);
    }
    expect(glazedArea(door)).toBeCloseTo(0.9 * 1.7 + (Math.PI * 0.45 ** 2) / 2, 6);
  });

  it('a window’s frame takes of its sill as well', () => {
    const window = clear({ width: 1000, height: 900, sill: 800, head: { shape: 'flat', rise: 0 } });
    const size = clearRectangle(window);
    expect(size.sill).toBe(850);
    expect(size.height).toBeCloseTo(800, 4);
    expect(glazedArea(window)).toBeCloseTo(0.9 * 0.8, 9);
  });

  it('no narrower than asked where one so wide fits: half chord of that width and the leaf', () => {
    const low = clear({ width: 1000, height: 700 }, 0);
    const least = 900;
    expect(clearRectangle(low).width).toBeLessThan(least - 50);
    const size = clearRectangle(low, least);
    expect(size.width).toBeCloseTo(least, 4);
    expect(size.height).toBeCloseTo(200 + Math.sqrt(500 ** 2 - ((least + LEAF) / 2) ** 2), 4);
    // None is so wide: the largest of all.
    expect(clearRectangle(low, 1000)).toEqual(clearRectangle(low));
  });

  it('a pointed head inside its frame: two arcs about the same centres', () => {
    // Span 1 and rise 0.8: arcs of 0.89 about centres 0.39 past the middle, 0.84 inside the frame.
    const pointed = clear({ width: 1000, height: 1800, head: { shape: 'pointed', rise: 800 } });
    const [past, r] = [0.39, 0.84];
    // From x = past to r under √(r² − x²): half the head.
    const half = (r * r * Math.acos(past / r) - past * Math.sqrt(r * r - past * past)) / 2;
    expect(glazedArea(pointed)).toBeCloseTo(0.9 * 1 + 2 * half, 6);
  });

  it('a segmental head inside its frame: the arc meets the frame’s jambs under its springing', () => {
    // R = (0.5² + 0.25²) / 0.5 = 0.625 about 1.175; inside the frame 0.575, 0.45 aside.
    const window = clear({ width: 1000, height: 1800, head: { shape: 'segmental', rise: 250 } });
    const [r, half] = [0.575, 0.45];
    const up = Math.sqrt(r * r - half * half);
    const head = r * r * Math.asin(half / r) - half * up;
    expect(glazedArea(window)).toBeCloseTo(2 * half * (1.175 + up) + head, 7);
    // At the springing, 0.375 over the centre, the leaf opens less than the jambs.
    expect(clearWidthAt(window, 1550)).toBeCloseTo(2000 * Math.sqrt(r * r - 0.375 ** 2) - LEAF, 6);
    expect(clearWidthAt(window, 1175 + 1000 * up - 1)).toBeCloseTo(900 - LEAF, 9);
  });

  it('24 in wide with a round top holds 5.7 ft2 over jambs of 24.775 in', () => {
    const jamb = 24.775 * IN;
    const shape = clear({ width: 24 * IN, height: jamb + 12 * IN, head: { shape: 'semicircular', rise: 12 * IN } }, 0);
    expect(glazedArea(shape)).toBeCloseTo(ESCAPE.area, 5);
    // A whole circle that holds it is 32.328 in across.
    const half = {
      width: 32.328 * IN,
      height: 16.164 * IN,
      head: { shape: 'semicircular', rise: 16.164 * IN },
    } as const;
    expect(2 * glazedArea(clear(half, 0))).toBeCloseTo(ESCAPE.area, 4);
  });

  it('a frame as wide as the opening leaves nothing', () => {
    const shut = clear({ width: 100, height: 300, sill: 900 }, 50);
    expect(clearRectangle(shut)).toMatchObject({ width: 0, height: 0 });
    expect(glazedArea(shut)).toBe(0);
  });
});

describe('egress windows', () => {
  // Without frame; the leaf is added to the width so that the clear width is the one of the rule.
  const egress = (width: number, height: number, sill = 900, ground = -600) => {
    const window = openingOf({
      id: 'out',
      use: 'egress window',
      width: width + LEAF,
      height,
      sill,
      head: { shape: 'flat', rise: 0 },
      frame: 0,
    });
    return checks({ openings: [window], site: { ...houseOf().site, ground } });
  };

  it('20 in wide needs 41.04 in, 24 in high needs 34.2 in; 20 by 24 in is too small', () => {
    const state = (w: number, h: number) => egress(w * IN, h * IN).get('egress-area.out')?.state;
    expect(state(20.001, 41.041)).toBe('ok');
    expect(state(20, 41.03)).toBe('fails');
    expect(state(34.21, 24)).toBe('ok');
    expect(state(34.19, 24)).toBe('fails');
    expect(egress(20 * IN, 24 * IN).get('egress-area.out')?.capacity?.value).toBeCloseTo(3.333 * 0.3048 ** 2, 3);
  });

  it('each limit by itself, and 5.0 ft2 with the sill near the ground', () => {
    expect(egress(500, 1300).get('egress-width.out')?.state).toBe('fails');
    expect(egress(1300, 600).get('egress-height.out')?.state).toBe('fails');
    expect(egress(700, 800, 1119).get('egress-sill.out')?.state).toBe('fails');
    expect(egress(700, 800, 1117).get('egress-sill.out')?.state).toBe('ok');
    expect(egress(610, 800, 900, -100).get('egress-area.out')?.state).toBe('ok');
    expect(egress(610, 800, 900, -600).get('egress-area.out')?.state).toBe('fails');
  });
});

describe('doors, escape, setback', () => {
  it('an arched door is measured where heads pass', () => {
    const door = (height: number) =>
      checks({ rooms: [living], openings: [openingOf({ height })] }).get('egress-door')?.state;
    expect(door(2200)).toBe('fails');
    expect(door(2450)).toBe('ok');
    // Nobody lives in a store.
    expect(checks({ openings: [openingOf()] }).get('egress-door')?.state).toBe('attention');
    expect(checks({ rooms: [living] }).get('egress-door')?.advice).toContain('use: door');
  });

  it('a room without a way of its own is told', () => {
    expect(checks({ rooms: [living] }).get('escape.living')?.state).toBe('attention');
    expect(checks({ rooms: [living], openings: [openingOf()] }).get('escape.living')?.state).toBe('ok');
  });

  it('missing inputs are named; the plot is measured to the finished wall', () => {
    expect(checks({}).get('rooms')?.advice).toContain('rooms');
    expect(checks({}).get('setback')?.advice).toContain('`site.plot` and `site.setback`');
    const plot = [
      [-7000, -7000],
      [9000, -7000],
      [9000, 9000],
      [-7000, 9000],
    ] as const;
    const at = (setback: number, openings: Opening[] = []) =>
      checks({ site: { ...houseOf().site, plot, setback }, openings }).get('setback');
    // 7000 - 3000 - 250 - 20.
    expect(at(3730)?.state).toBe('ok');
    expect(at(3731)?.state).toBe('fails');
    // The barrel's flat face stands 300 beyond, to the south.
    expect(at(3430, [openingOf()])?.capacity?.value).toBeCloseTo(3430, 6);
  });

  it('two rooms in one dome are never ok', () => {
    const two = checks({ rooms: [living, { ...living, id: 'den' }] });
    expect(two.get('room-area.living')?.state).toBe('attention');
    expect(two.get('room-area.living')?.advice).toContain('den');
  });
});
