import { describe, expect, it } from 'vitest';
import type { ProfileShape } from '../../lib/description/house.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { templateBoards, templatePoints } from '../../lib/works/meridian-template.js';
import { type PoleSetting, poleSettings, rigOf } from '../../lib/works/radius-pole.js';
import { domeOf, houseOf } from '../tools/house.js';

const dome = (part: Parameters<typeof domeOf>[0]): DomeSetout =>
  setOutHouse(houseOf({ domes: [domeOf(part)] })).domes[0] as DomeSetout;

/** Where a pole of this length and elevation ends: distance from the axis, height above the floor. */
const poleEnd = ({ pivotZ, arm, length, angleRad }: PoleSetting): [number, number] => [
  -arm + length * Math.cos(angleRad),
  pivotZ + length * Math.sin(angleRad),
];

const HUNDREDTH = 0.01;

describe('the radius pole', () => {
  it.each<[string, Parameters<typeof domeOf>[0]]>([
    ['a hemisphere', { radius: 3000 }],
    [
      'a hemisphere with an oculus and no stem wall',
      { radius: 2500, stemWall: 0, oculus: { radius: 300, curb: 150, upstand: 50 } },
    ],
    [
      'a segmental dome whose centre lies over the floor',
      { shape: 'segmental', radius: 3000, rise: 2500, stemWall: 1200 },
    ],
    ['a pointed dome', { shape: 'pointed', radius: 2200, rise: 2900 }],
    ['a tall pointed dome', { shape: 'pointed', radius: 2000, rise: 4200, stemWall: 300 }],
  ])('of %s ends on the analytic intrados in every course', (_, part) => {
    const d = dome(part);
    const settings = poleSettings(d);
    expect(settings.filter((s) => s.course !== null)).toHaveLength(d.courses.length);
    for (const { pole, edge, course, check } of settings) {
      const [r, z] = poleEnd(pole as PoleSetting);
      // Held against the profile's own equation, not against the set-out.
      expect(Math.abs(r - d.radiusAt(z)), `course ${course}`).toBeLessThan(HUNDREDTH);
      expect(Math.hypot(r - edge[0], z - edge[1])).toBeLessThan(HUNDREDTH);
      expect(check).toBeCloseTo(Math.hypot(r, z), 6);
    }
  });

  it('of a pointed dome, radius 2200 and rise 2900, turns on an arm at the springing', () => {
    // e = (f² − r²) / 2r = (2900² − 2200²) / 4400, R = r + e.
    const rig = rigOf(dome({ shape: 'pointed', radius: 2200, rise: 2900, stemWall: 300 }));
    expect(rig).toMatchObject({ kind: 'pole', pivotZ: 300 });
    expect(rig.kind === 'pole' && rig.arm).toBeCloseTo(811.364, 3);
  });

  it('lies level on the stem wall, at the inside radius', () => {
    const stem = poleSettings(dome({ radius: 3000, stemWall: 600 })).filter((s) => s.what === 'stem wall');
    expect(stem.length).toBeGreaterThan(1);
    for (const { pole } of stem) expect(pole).toMatchObject({ length: 3000, angleRad: 0, arm: 0 });
  });

  it('never turns below the floor, nor follows what is no arc', () => {
    expect(rigOf(dome({ shape: 'segmental', radius: 3000, rise: 1500, stemWall: 1000 })).kind).toBe('template');
    for (const shape of ['catenary', 'elliptical'] satisfies ProfileShape[])
      expect(rigOf(dome({ shape, radius: 2500, rise: 2400 })).kind).toBe('template');
  });

  it('turns on the floor where the arc’s centre lies just there', () => {
    // (3² − 2²) / (2 · 2) = 1.25 m under the springing.
    const low = (stemWall: number) => rigOf(dome({ shape: 'segmental', radius: 3000, rise: 2000, stemWall })).kind;
    expect(low(1250)).toBe('pole');
    expect(low(1249)).toBe('template');
  });

  it('sets upper edges a joint short of the next bed, and the plug’s bed after the last', () => {
    const d = dome({ radius: 3000, stemWall: 600 });
    const shell = poleSettings(d).filter((s) => s.what !== 'stem wall');
    const turnOf = ([r, z]: readonly [number, number]) => Math.atan2(z - 600, r);
    for (const [k, { upperEdge, edge }] of shell.entries()) {
      const next = shell[k + 1];
      if (!next) continue;
      const upper = upperEdge as readonly [number, number];
      expect(Math.hypot(upper[0], upper[1] - 600)).toBeCloseTo(3000, 6);
      // 10 mm in the middle of the wall; what is cast against the last course has no joint.
      const joint = next.what === 'shell' ? 10 / 3125 : 0;
      expect(turnOf(next.edge) - turnOf(upper)).toBeCloseTo(joint, 9);
      expect(turnOf(upper)).toBeGreaterThan(turnOf(edge));
    }
    expect(shell.at(-1)).toMatchObject({ what: 'plug bed', course: null, upperEdge: null });
  });

  it('catches a slip of 10 mm in length by more than 5 mm on the check', () => {
    for (const { pole, check } of poleSettings(dome({ radius: 3000 }))) {
      const [r, z] = poleEnd({ ...(pole as PoleSetting), length: (pole as PoleSetting).length + 10 });
      expect(Math.hypot(r, z) - check).toBeGreaterThan(5);
    }
  });
});

describe('the meridian template', () => {
  const shapes: Parameters<typeof domeOf>[0][] = [
    { shape: 'catenary', radius: 2500, rise: 3000 },
    { shape: 'elliptical', radius: 2800, rise: 2100 },
    { shape: 'segmental', radius: 3000, rise: 1500, stemWall: 1800 },
  ];

  it.each(shapes)('%j: ordinates lie on the analytic intrados', (part) => {
    const d = dome(part);
    const points = templatePoints(d);
    for (const { ordinate, height } of points)
      expect(Math.abs(ordinate - d.radiusAt(d.springingZ + height))).toBeLessThan(HUNDREDTH);
    expect(points.filter((p) => p.course !== null)).toHaveLength(d.courses.filter((c) => c.part === 'shell').length);
    for (const [i, point] of points.entries()) {
      const last = points[i - 1];
      if (last) {
        const step = Math.hypot(point.ordinate - last.ordinate, point.height - last.height);
        expect(point.fromLast).toBeCloseTo(step, 6);
        // A chord is shorter than its arc.
        expect(step).toBeLessThan(point.arcLength - last.arcLength + 1e-6);
        // Half way between each two marks there is a point more.
        const next = points[i + 1];
        if (i % 2 === 1) expect(point.arcLength).toBeCloseTo((last.arcLength + (next?.arcLength ?? 0)) / 2, 6);
      }
    }
  });

  it.each(shapes)('%j: boards chain along the meridian and can be cut', (part) => {
    const d = dome(part);
    const boards = templateBoards(d, 1200);
    for (const { chord, width, offsets, endsRad } of boards) {
      expect(chord).toBeLessThanOrEqual(1200);
      expect(width).toBeLessThanOrEqual(170);
      expect(width).toBeGreaterThanOrEqual(80 + Math.max(...offsets) - 1e-6);
      for (const end of endsRad) expect(end).toBeGreaterThan(Math.PI / 4);
    }
    const whole = boards.reduce((sum, b) => sum + b.chord, 0);
    const end = templatePoints(d).at(-1)?.arcLength as number;
    expect(whole / end).toBeGreaterThan(0.99);
    expect(whole).toBeLessThan(end);
  });

  it('an ellipse’s boards touch it at their quarters, and are cut along its normals', () => {
    const [a, b] = [2800, 2100];
    const d = dome({ shape: 'elliptical', radius: a, rise: b });
    const z0 = d.springingZ;
    const at = (s: number) => [d.shell.at(s).r, d.shell.at(s).z - z0] as const;
    for (const { from, to, offsets, endsRad, chord } of templateBoards(d, 1200)) {
      const [low, high] = [at(from), at(to)];
      const unit = [(high[0] - low[0]) / chord, (high[1] - low[1]) / chord] as const;
      for (const [k, off] of offsets.entries()) {
        const along = ((k + 1) / 4) * chord;
        const [r, h] = [low[0] + along * unit[0] + off * unit[1], low[1] + along * unit[1] - off * unit[0]];
        expect(Math.abs(Math.sqrt(1 - (h / b) ** 2) * a - r)).toBeLessThan(0.1);
      }
      // The normal of an ellipse is (r / a², h / b²).
      const turn = ([r, h]: readonly [number, number], way: number) => {
        const [nr, nh] = [r / a ** 2, h / b ** 2];
        return Math.acos((way * (nr * unit[0] + nh * unit[1])) / Math.hypot(nr, nh));
      };
      expect(endsRad[0]).toBeCloseTo(turn(low, -1), 9);
      expect(endsRad[1]).toBeCloseTo(turn(high, 1), 9);
    }
  });

  it('beds of an arc dip as the radius to them does, and its boards are the fewest', () => {
    const d = dome({ shape: 'segmental', radius: 3000, rise: 1500, stemWall: 1800 });
    const R = 3750;
    const points = templatePoints(d);
    for (const { height, bedRad } of points) expect(Math.sin(bedRad)).toBeCloseTo((height + R - 1500) / R, 9);
    const end = points.at(-1)?.arcLength ?? 0;
    // As long as 2.4 m of chord allow, 90 mm of curve: 2 R asin(c / 2R), 2 R acos(1 − s / R).
    const most = 2 * R * Math.min(Math.asin(1200 / R), Math.acos(1 - 90 / R));
    expect(most).toBeLessThan(2 * R * Math.asin(1200 / R));
    expect(templateBoards(d, 2400)).toHaveLength(Math.ceil(end / most));
    expect(templateBoards(d, 800)).toHaveLength(Math.ceil(end / (2 * R * Math.asin(400 / R))));
  });

  it('a board of an arc has the sagitta R − √(R² − c²/4) and mitres that match', () => {
    const d = dome({ shape: 'segmental', radius: 3000, rise: 1500, stemWall: 1800 });
    const R = (3000 ** 2 + 1500 ** 2) / 3000;
    for (const { chord, offsets, endsRad } of templateBoards(d, 1200)) {
      expect(offsets[1]).toBeCloseTo(R - Math.sqrt(R * R - (chord / 2) ** 2), 1);
      expect(endsRad[0]).toBeCloseTo(endsRad[1], 6);
      // Both ends cut on radii: chord and radius enclose acos(c / 2R).
      expect(endsRad[0]).toBeCloseTo(Math.acos(chord / 2 / R), 6);
    }
  });
});
