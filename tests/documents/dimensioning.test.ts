import { describe, expect, it } from 'vitest';
import { dimensionText, dimensionTextFits, expandDimension, measureOf } from '../../lib/documents/dimensioning.js';
import type { AngleDimension, DimensionPrimitive } from '../../lib/documents/drawing.js';
import { boxCorners, readableDeg, type TextBox } from '../../lib/documents/expansion.js';
import { expandLeader, expandLevel } from '../../lib/documents/marks.js';
import { segmentAt } from '../../lib/documents/segments.js';
import type { Vec2 } from '../../lib/math/vec.js';

const linear = (from: Vec2, to: Vec2, angleDeg: number, line: Vec2, more = {}): DimensionPrimitive => ({
  kind: 'dimension',
  type: 'linear',
  from,
  to,
  angleDeg,
  line,
  ...more,
});
const onCircle = (r: number, deg: number): Vec2 => [
  r * Math.cos((deg * Math.PI) / 180),
  r * Math.sin((deg * Math.PI) / 180),
];
const angle = (fromDeg: number, toDeg: number, r: number): AngleDimension => ({
  kind: 'dimension',
  type: 'angle',
  centre: [0, 0],
  from: onCircle(r * 0.8, fromDeg),
  to: onCircle(r * 0.8, toDeg),
  line: [r, 0],
});

describe('measureOf', () => {
  it('measures what the points say', () => {
    expect(measureOf(linear([0, 0], [3000, 400], 0, [0, -500]))).toBe(3000);
    expect(measureOf(linear([0, 0], [3000, 400], 90, [0, -500]))).toBe(400);
    expect(measureOf(linear([0, 0], [3000, 4000], (Math.atan2(4, 3) * 180) / Math.PI, [0, -500]))).toBeCloseTo(5000, 9);
    expect(measureOf({ kind: 'dimension', type: 'aligned', from: [0, 0], to: [3000, 4000], line: [0, 0] })).toBe(5000);
    expect(measureOf({ kind: 'dimension', type: 'radius', centre: [1, 1], on: [301, 401] })).toBe(500);
    expect(measureOf({ kind: 'dimension', type: 'diameter', centre: [1, 1], on: [301, 401] })).toBe(1000);
    expect(measureOf(angle(350, 30, 1000))).toBeCloseTo(40, 9);
  });

  it('gives the text its sign of kind and the writing of the view', () => {
    expect(dimensionText(linear([0, 0], [2133.6, 0], 0, [0, 0]), 'feet-inches')).toBe(`7'-0"`);
    expect(dimensionText(linear([0, 0], [900, 0], 0, [0, 0], { prefix: 'clear ' }), 'metric')).toBe('clear 900');
    expect(dimensionText({ kind: 'dimension', type: 'radius', centre: [0, 0], on: [3000, 0] }, 'metric')).toBe('R3000');
    expect(dimensionText({ kind: 'dimension', type: 'diameter', centre: [0, 0], on: [3000, 0] }, 'metric')).toBe(
      'Ø6000',
    );
    expect(dimensionText(angle(10, 32.5, 1000), 'feet-inches')).toBe('22.5°');
    // A quarter of a circle of radius 2000 / π · 2 is 2000 long.
    const quarter = { ...angle(20, 110, 1000), type: 'arc', from: onCircle(4000 / Math.PI, 20) } as const;
    expect(dimensionText(quarter, 'metric')).toBe('arc 2000');
  });
});

describe('readableDeg', () => {
  it('turns every text to be read from the bottom or the right (ISO 129-1)', () => {
    for (let deg = -720; deg <= 720; deg += 7.5) {
      const turned = readableDeg(deg);
      expect(turned).toBeGreaterThan(-90);
      expect(turned).toBeLessThanOrEqual(90);
      expect(Math.abs(((((deg - turned) % 180) + 270) % 180) - 90)).toBeCloseTo(0, 9);
    }
    expect(readableDeg(-90 + 1e-9)).toBeCloseTo(90, 6);
    expect(readableDeg(90 + 1e-9)).toBeCloseTo(90, 6);
  });
});

/** Each edge of a text's box against each stroke, sampled: texts and lines must not cross. */
function crossesText(box: TextBox, points: readonly Vec2[]): boolean {
  const [a, b, , d] = boxCorners(box) as [Vec2, Vec2, Vec2, Vec2];
  const inside = (p: Vec2): boolean => {
    const share = (q: Vec2): number => {
      const [ux, uy] = [q[0] - a[0], q[1] - a[1]];
      return ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / (ux * ux + uy * uy);
    };
    const [s, t] = [share(b), share(d)];
    return s > 0 && s < 1 && t > 0 && t < 1;
  };
  return points.some(inside);
}

describe('expandDimension', () => {
  const samples: DimensionPrimitive[] = [
    ...[0, 30, 45, 90, 135, 180, 250, 270, -60].flatMap((deg): DimensionPrimitive[] => {
      const to: Vec2 = onCircle(4000, deg);
      return [
        linear([0, 0], to, deg, [300 * Math.sin((deg * Math.PI) / 180), -300 * Math.cos((deg * Math.PI) / 180)]),
        { kind: 'dimension', type: 'aligned', from: [0, 0], to: onCircle(60, deg), line: onCircle(500, deg + 90) },
        {
          kind: 'dimension',
          type: 'aligned',
          from: [0, 0],
          to: onCircle(60, deg),
          line: onCircle(500, deg + 90),
          spill: 'from',
        },
        ...(['out-from', 'out-to'] as const).flatMap((spill) =>
          [1, -1].map((side): DimensionPrimitive => {
            const across = onCircle(side * 500, deg + 90);
            return { kind: 'dimension', type: 'aligned', from: [0, 0], to: onCircle(100, deg), line: across, spill };
          }),
        ),
        { kind: 'dimension', type: 'radius', centre: [50, 80], on: [50 + to[0], 80 + to[1]] },
        { kind: 'dimension', type: 'radius', centre: [50, 80], on: [50 + to[0] / 20, 80 + to[1] / 20] },
        { kind: 'dimension', type: 'diameter', centre: [50, 80], on: [50 + to[0] / 20, 80 + to[1] / 20] },
        { kind: 'dimension', type: 'diameter', centre: [50, 80], on: [50 + to[0], 80 + to[1]] },
        angle(deg, deg + 40, 2000),
        angle(deg, deg + 2, 2000),
        angle(deg, deg + 170, 500),
        { ...angle(deg, deg + 40, 2000), type: 'arc' },
        { ...angle(deg, deg + 2, 2000), type: 'arc' },
      ];
    }),
  ];

  it('lets no text touch a line, be it in its place or set outside', () => {
    const crossed: string[] = [];
    for (const scale of [1, 20, 50, 100])
      for (const units of ['metric', 'feet-inches'] as const)
        for (const dim of samples) {
          const e = expandDimension(dim, scale, units);
          const points = e.strokes.flatMap((s) => Array.from({ length: 401 }, (_, i) => segmentAt(s.segment, i / 400)));
          for (const box of e.texts) {
            expect(box.rotationDeg).toBeLessThanOrEqual(90.001);
            expect(box.rotationDeg).toBeGreaterThan(-90);
            if (crossesText(box, points)) crossed.push(JSON.stringify({ dim, scale, units, text: box.text }));
          }
        }
    expect(crossed).toEqual([]);
  });

  it('sets a text outside exactly when it does not fit', () => {
    const wide = linear([0, 0], [2000, 0], 0, [0, -500]);
    const tight = linear([0, 0], [100, 0], 0, [0, -500]);
    expect([dimensionTextFits(wide, 50, 'metric'), dimensionTextFits(tight, 50, 'metric')]).toEqual([true, false]);
    expect(expandDimension(wide, 50, 'metric').texts[0]).toMatchObject({ anchor: 'centre', at: [1000, -460] });
    const toEnd = expandDimension(tight, 50, 'metric').texts[0] as TextBox;
    expect(toEnd.at[0]).toBeGreaterThan(100);
    const fromEnd = expandDimension({ ...tight, spill: 'from' } as DimensionPrimitive, 50, 'metric')
      .texts[0] as TextBox;
    expect(fromEnd).toMatchObject({ anchor: 'right' });
    expect(fromEnd.at[0]).toBeLessThan(0);
    // On a leader it stands farther from what is measured than the dimension line.
    const onLeader = expandDimension({ ...tight, spill: 'out-to' } as DimensionPrimitive, 50, 'metric');
    expect(Math.max(...boxCorners(onLeader.texts[0] as TextBox).map((p) => p[1]))).toBeLessThan(-500);
    expect(onLeader.strokes.some((s) => segmentAt(s.segment, 0)[0] === 50)).toBe(true);
  });

  it('keeps off the object: extension lines begin away from the points and pass the dimension line', () => {
    const e = expandDimension(linear([0, 0], [2000, 100], 0, [0, -500]), 50, 'metric');
    const uprights = e.strokes
      .map((s) => [segmentAt(s.segment, 0), segmentAt(s.segment, 1)])
      .filter(([p, q]) => p?.[0] === q?.[0]);
    expect(uprights).toEqual([
      [
        [0, -75],
        [0, -575],
      ],
      [
        [2000, 25],
        [2000, -575],
      ],
    ]);
  });

  it('draws oblique strokes at 45 degrees on both ends', () => {
    const e = expandDimension(linear([0, 0], [2000, 0], 0, [0, -500]), 50, 'metric');
    const ticks = e.strokes
      .filter((s) => s.weightMm === 0.35)
      .map((s) => [segmentAt(s.segment, 0), segmentAt(s.segment, 1)]);
    expect(ticks).toHaveLength(2);
    for (const [p, q] of ticks as [Vec2, Vec2][]) {
      expect(q[0] - p[0]).toBeCloseTo(q[1] - p[1], 9);
      expect(Math.hypot(q[0] - p[0], q[1] - p[1])).toBeCloseTo(125, 9);
    }
  });
});

describe('marks', () => {
  it('puts the level above its shelf and the label below it, clear of the triangle', () => {
    for (const side of ['left', 'right'] as const) {
      const e = expandLevel({ kind: 'level', at: [100, 2700], level: 2700, side, label: 'crown' }, 50, 'metric');
      const points = e.strokes.flatMap((s) => Array.from({ length: 101 }, (_, i) => segmentAt(s.segment, i / 100)));
      expect(e.texts.map((t) => t.text)).toEqual(['+2.700', 'crown']);
      for (const box of e.texts) expect(crossesText(box, points)).toBe(false);
      expect(points.some((p) => p[0] === 100 && p[1] === 2700)).toBe(true);
    }
    expect(
      expandLevel({ kind: 'level', at: [0, 0], level: 0, side: 'left', label: '' }, 50, 'metric').texts,
    ).toHaveLength(1);
  });

  it('leads from a dot to a text beside the bend', () => {
    const e = expandLeader(
      { kind: 'leader', at: [0, 0], bend: [500, 500], text: 'arch ring', heightMm: 2.5, side: 'right' },
      50,
    );
    expect(e.dots).toEqual([{ centre: [0, 0], radius: 30 }]);
    expect(e.texts[0]).toMatchObject({ text: 'arch ring', anchor: 'left', height: 125 });
    expect(e.texts[0]?.at[0]).toBeGreaterThan(500);
  });
});
