import { describe, expect, it } from 'vitest';
import { expandDimension, measureOf } from '../../lib/documents/dimensioning.js';
import type {
  DimensionPrimitive,
  LevelPrimitive,
  Primitive,
  Segment,
  TextPrimitive,
  View,
} from '../../lib/documents/drawing.js';
import { boxCorners, textBox } from '../../lib/documents/expansion.js';
import { elevationView } from '../../lib/drawings/elevation.js';
import { houseViews } from '../../lib/drawings/house-views.js';
import { planView } from '../../lib/drawings/plan.js';
import { sectionView } from '../../lib/drawings/section.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { samples } from './houses.js';

const dims = (view: View): DimensionPrimitive[] => view.primitives.filter((p) => p.kind === 'dimension');
const measures = (view: View): number[] => dims(view).map(measureOf);
const levels = (view: View): LevelPrimitive[] => view.primitives.filter((p) => p.kind === 'level');
const texts = (view: View): string[] =>
  view.primitives.filter((p): p is TextPrimitive => p.kind === 'text').map((p) => p.text);
const segments = (view: View, layer: string): Segment[] =>
  view.primitives.flatMap((p: Primitive) => (p.kind === 'path' && p.layer === layer ? [...p.segments] : []));
const has = (values: readonly number[], wanted: number) =>
  expect(
    values.some((v) => Math.abs(v - wanted) < 1e-6),
    `${wanted} among ${values.map((v) => v.toFixed(3))}`,
  ).toBe(true);

describe('views', () => {
  it('are the same bytes for the same house', () => {
    const [name, house] = samples()[0] as [string, ReturnType<typeof setOutHouse>];
    const again = samples().find(([n]) => n === name)?.[1] as typeof house;
    expect(JSON.stringify(houseViews(again))).toBe(JSON.stringify(houseViews(house)));
  });

  it('keep to the scale that is asked for', () => {
    const house = setOutHouse(houseOf({ openings: [openingOf()] }));
    for (const scale of [20, 75, 200]) {
      expect(planView(house, { scale }).scale).toBe(scale);
      expect(elevationView(house, 'west', { scale }).scale).toBe(scale);
      expect(sectionView(house, { scale }).scale).toBe(scale);
    }
  });

  it('choose the largest standard scale that fits', () => {
    // ISO 5455: 1:20, 1:50, 1:100, 1:200.
    const of = (radius: number) => {
      const house = setOutHouse(houseOf({ domes: [domeOf({ radius })] }));
      return elevationView(house, 'south').scale;
    };
    expect([of(1500), of(4000), of(9000), of(20000)]).toEqual([20, 50, 100, 200]);
  });

  it('choose among the usual scales of feet and inches where the description does', () => {
    const of = (radius: number) => {
      const view = sectionView(setOutHouse(houseOf({ units: 'ft', domes: [domeOf({ radius })] })));
      return [
        view.scale,
        texts(view)
          .find((t) => t.startsWith('Scale'))
          ?.split(';')[0],
      ];
    };
    // Common practice, no source: 3/4", 3/8", 1/8" to the foot.
    expect([of(1500), of(4000), of(9000)]).toEqual([
      [16, 'Scale 1:16 (3/4" = 1\'-0")'],
      [32, 'Scale 1:32 (3/8" = 1\'-0")'],
      [96, 'Scale 1:96 (1/8" = 1\'-0")'],
    ]);
  });

  it('refuse a section through a dome that is not there, and say so', () => {
    expect(() => sectionView(setOutHouse(houseOf()), { domeId: 'halle' })).toThrow(/dome "halle"/);
  });
});

describe('curves stay what they are', () => {
  const house = setOutHouse(
    houseOf({
      openings: [
        openingOf({ bearingDeg: 180 }),
        openingOf({ id: 'side', bearingDeg: 120, use: 'window', height: 1000, sill: 800 }),
      ],
    }),
  );
  const south = elevationView(house, 'south');
  const arcs = segments(south, 'visible').filter((s) => s.kind === 'arc');

  it('silhouette of a hemisphere: arcs of the outer radius about the springing’s middle, a half turn less a barrel', () => {
    const silhouette = arcs.filter((a) => Math.abs(a.radius - 3250) < 1e-9);
    const turn = silhouette.reduce((sum, a) => sum + Math.abs(a.end - a.start), 0);
    expect(silhouette.length).toBeLessThanOrEqual(2);
    expect(turn).toBeGreaterThan(0.8 * Math.PI);
    expect(turn).toBeLessThanOrEqual(Math.PI + 1e-9);
    for (const a of silhouette) expect([Math.abs(a.centre[0]) < 1e-9, a.centre[1]]).toEqual([true, 600]);
  });

  it('arch seen square: arcs of clear and outer radius', () => {
    for (const r of [500, 700]) expect(arcs.filter((a) => Math.abs(a.radius - r) < 1e-9).length).toBeGreaterThan(0);
  });

  it('arch seen at an angle: elliptical arcs as flat as the cosine of the angle', () => {
    const ellipses = south.primitives.filter((p) => p.kind === 'ellipse');
    expect(ellipses.length).toBeGreaterThanOrEqual(2);
    // The face at bearing 120 is turned 60 degrees out of a south elevation.
    for (const e of ellipses) {
      expect(e.ratio).toBeCloseTo(Math.cos((60 * Math.PI) / 180), 9);
      expect(Math.min(Math.abs(Math.hypot(...e.major) - 500), Math.abs(Math.hypot(...e.major) - 700))).toBeLessThan(
        1e-6,
      );
    }
  });

  it('level circles are level lines', () => {
    const bed = segments(south, 'joint').filter((s) => s.kind === 'line' && s.from[1] === s.to[1]);
    expect(bed.length).toBeGreaterThan(15);
  });

  it('a plan has its circles whole', () => {
    const bare = planView(setOutHouse(houseOf({ footing: null, slab: null })));
    const radii = bare.primitives.flatMap((p) => (p.kind === 'circle' && p.layer === 'cut' ? [p.radius] : []));
    const at = (r: number) => Math.sqrt(r * r - 600 * 600);
    expect(radii.sort((a, b) => a - b).map((r) => r.toFixed(6))).toEqual([at(3000), at(3250)].map((r) => r.toFixed(6)));
  });
});

describe('sizes are those of the house', () => {
  const openings = [
    openingOf({ bearingDeg: 180 }),
    openingOf({
      id: 'light',
      bearingDeg: 90,
      use: 'window',
      width: 1200,
      height: 900,
      sill: 850,
      head: { shape: 'segmental', rise: 250 },
    }),
  ];
  const house = setOutHouse(
    houseOf({ domes: [domeOf({ oculus: { radius: 350, curb: 150, upstand: 120 } })], openings }),
  );
  const [dome] = house.domes;
  if (!dome) throw new Error('the house has a dome');

  it('plan: radius, wall, clear widths, bearings, overall sizes', () => {
    const view = planView(house);
    const found = measures(view);
    for (const size of [3000, 250, 1000, 1200, 3250 + 3550, 3250, 3550]) has(found, size);
    const radius = dims(view).find((d) => d.type === 'radius');
    expect(radius && measureOf(radius)).toBeCloseTo(3000, 9);
    for (const words of ['bearing 180°', 'bearing 90°', 'entrance (door)', 'light (window)', 'N'])
      expect(texts(view)).toContain(words);
    expect(texts(view).join(' ')).toContain('Cut 1200 above finished floor');
  });

  it('section: stem wall, rise, opening height, curb, footing, slab; levels', () => {
    const view = sectionView(house);
    const found = measures(view);
    const edge = dome.heightAt(350);
    for (const size of [600, edge - 600, dome.topZ - edge, 2200, 700, 400, 100, 500, 250, 6000, 550, dome.topZ + 150])
      has(found, size);
    expect(levels(view).map((l) => [l.level, l.label])).toEqual(
      expect.arrayContaining([
        [-150, 'ground'],
        [0, 'finished floor, sill entrance'],
        [600, 'springing'],
        [dome.topZ, 'top of masonry'],
        [edge, 'edge of oculus'],
        [2200, 'head entrance'],
      ]),
    );
    for (const l of levels(view)) expect(l.at[1]).toBe(l.level);
  });

  it('widths of rings and curb', () => {
    expect(texts(planView(house)).join(' ')).toContain('Width of rings and jambs: 200.');
    const { prefix } = dims(sectionView(house)).find((d) => d.type === 'linear' && d.prefix === 'curb ') as {
      prefix?: string;
    };
    expect(prefix).toBe('curb ');
    const curb = (dome.curb?.bedOuter[0] as number) - 350;
    has(measures(sectionView(house)), curb);
    expect(texts(planView(house)).join(' ')).toContain(
      `Width of curbs: 150 at the intrados, ${Math.round(curb)} outside.`,
    );
    // In the room under the curb as well, where no joint runs through the figure.
    has(measures(sectionView(house)), 150);
    // The ring over the door's crown.
    has(measures(sectionView(house)), 200);
  });

  it('a niche is told inside, not on the wall that closes it', () => {
    const niche = openingOf({ id: 'seat', use: 'niche', bearingDeg: 0, sill: 450, height: 1300, depth: 400 });
    const closed = setOutHouse(houseOf({ openings: [niche] }));
    const told = (view: View) =>
      levels(view)
        .map((l) => l.label)
        .join();
    expect(told(elevationView(closed, 'north'))).not.toContain('seat');
    expect(told(sectionView(closed))).toContain('head seat');
  });

  it('the name of an upright dimension stands far nearer to its own line than to the next figure', () => {
    // The middle of the window lies as high as that of the whole house.
    const low = setOutHouse(
      houseOf({
        domes: [domeOf({ radius: 2000 })],
        openings: [openingOf({ id: 'light', use: 'window', height: 900, sill: 850 })],
      }),
    );
    const { primitives, scale, units } = elevationView(low, 'south', { scale: 50 });
    const extent = (box: readonly Vec2[], axis: 0 | 1) => ({
      from: Math.min(...box.map((c) => c[axis])),
      to: Math.max(...box.map((c) => c[axis])),
    });
    const name = primitives.find((p) => p.kind === 'text' && p.text === 'light' && p.rotationDeg === 90);
    if (name?.kind !== 'text') throw new Error('no name');
    const box = boxCorners(textBox(name.text, name.at, name.anchor, name.heightMm * scale, 90));
    const [across, up] = [extent(box, 0), extent(box, 1)];
    const beside = primitives
      .flatMap((p) => (p.kind === 'dimension' ? expandDimension(p, scale, units).texts.map(boxCorners) : []))
      .filter((figure) => extent(figure, 1).from < up.to && extent(figure, 1).to > up.from)
      .map((figure) => extent(figure, 0).from - across.to)
      .filter((gap) => gap > 0);
    expect(beside).not.toHaveLength(0);
    // It stands 0.8 from its own line.
    for (const gap of beside) expect(gap / scale).toBeGreaterThan(2);
  });

  it('elevations: each opening is told in the one that it faces', () => {
    const south = elevationView(house, 'south');
    const east = elevationView(house, 'east');
    expect(
      levels(south)
        .map((l) => l.label)
        .join(),
    ).toContain('head entrance');
    expect(
      levels(south)
        .map((l) => l.label)
        .join(),
    ).not.toContain('light');
    expect(levels(east).find((l) => l.label === 'sill light')?.level).toBe(850);
    expect(levels(east).find((l) => l.label === 'head light')?.level).toBe(1750);
    has(measures(east), 900);
    has(measures(south), 2200);
  });

  it('a crown without oculus has its level on the intrados', () => {
    const plain = sectionView(setOutHouse(houseOf({ openings })));
    expect(levels(plain).find((l) => l.label === 'crown, intrados')?.level).toBe(3600);
    for (const size of [600, 3000, 250]) has(measures(plain), size);
  });

  it('a clear width is measured between the jambs, whatever the bearing', () => {
    for (const bearingDeg of [0, 33, 180, 271.5, 359.9]) {
      const view = planView(setOutHouse(houseOf({ openings: [openingOf({ bearingDeg, width: 917 })] })));
      has(measures(view), 917);
    }
  });

  it('tells feet and inches where the description does', () => {
    const view = planView(setOutHouse(houseOf({ units: 'ft', openings })));
    expect(view.units).toBe('feet-inches');
    expect(texts(view).join(' ')).toContain('feet and inches');
    expect(texts(view).join(' ')).toContain('Cut 3\'-11 1/4" above');
  });
});

describe('plans at other heights', () => {
  const house = setOutHouse(
    houseOf({
      openings: [
        openingOf(),
        openingOf({ id: 'high', bearingDeg: 60, use: 'window', width: 500, height: 400, sill: 1600 }),
      ],
    }),
  );
  const patterns = (view: View) =>
    view.primitives.flatMap((p) => (p.kind === 'hatch' && p.layer === 'hatch' ? [p.pattern] : []));
  const drawn = (view: View, layer: string) => view.primitives.filter((p) => 'layer' in p && p.layer === layer).length;

  it('through footing and slab there is concrete and no floor line', () => {
    const view = planView(house, { height: -50 });
    expect(new Set(patterns(view))).toEqual(new Set(['concrete']));
  });

  it('an opening above the cut lies overhead', () => {
    // Its two sides, and the line at which the headroom ends.
    expect(drawn(planView(house), 'overhead')).toBe(3);
    expect(drawn(planView(house, { height: 1700 }), 'overhead')).toBe(1);
  });

  it('above the door its barrel is seen from above', () => {
    const view = planView(house, { height: 2600 });
    expect(new Set(patterns(view))).toEqual(new Set(['blockwork']));
    const face = segments(view, 'visible').filter(
      (s) => s.kind === 'line' && Math.abs(s.from[1] + 3550) < 1e-6 && Math.abs(s.to[1] + 3550) < 1e-6,
    );
    const reach = face.flatMap((s) => (s.kind === 'line' ? [s.from[0], s.to[0]] : []));
    expect([Math.min(...reach), Math.max(...reach)].map((x) => Number(x.toFixed(6)))).toEqual([-700, 700]);
    has(measures(view), 1000);
  });
});

describe('north', () => {
  it.each([
    [0, 'true north'],
    [20, 'true north 20° clockwise'],
    [350, 'true north 10° anticlockwise'],
  ])('true north at %d degrees', (northDeg, words) => {
    const { site } = houseOf();
    const view = planView(setOutHouse(houseOf({ site: { ...site, northDeg } })));
    expect(texts(view)).toContain(words);
    // The letter stands off the circle in true north's direction.
    const needle = view.primitives.find((p) => p.kind === 'symbol' && p.name === 'north-point');
    const letter = view.primitives.find((p) => p.kind === 'text' && p.text === 'N');
    if (needle?.kind !== 'symbol' || letter?.kind !== 'text') throw new Error('a plan has a north point');
    expect((needle.rotationDeg + northDeg) % 360).toBeCloseTo(0, 9);
    const [dx, dy] = [letter.at[0] - needle.at[0], letter.at[1] + (letter.heightMm / 2) * view.scale - needle.at[1]];
    expect(((Math.atan2(dx, dy) * 180) / Math.PI + 360) % 360).toBeCloseTo(northDeg, 6);
  });
});
