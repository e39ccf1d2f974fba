import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../lib/base/quantities.js';
import { GRAVITY } from '../../lib/base/units.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { driftFactor, driftMoment, snowDrift } from '../../lib/statics/drift.js';
import { designEffect, unitLoads } from '../../lib/statics/loads.js';
import { luneOf } from '../../lib/statics/lune.js';
import type { DomeStatics } from '../../lib/statics/results.js';
import { staticsOf } from '../../lib/statics/statics.js';
import { tableStrength } from '../../lib/statics/strength.js';
import { type ThrustBody, thrustRange } from '../../lib/statics/thrust.js';
import { barArea, lapLength, steelArea, steelStrength, tieSteelKg } from '../../lib/statics/tie.js';
import { HEMISPHERE_ON_GROUND, type OneSided, windCoefficient } from '../../lib/statics/unsymmetrical.js';
import { domeOf, houseOf, MATERIAL } from '../tools/house.js';

// 8 kN/m3, blocks and mortar alike.
const EIGHT = 8000 / GRAVITY;
const worked = () =>
  staticsOf(
    setOutHouse(
      houseOf({
        wall: { thickness: 300, renderInside: 0, renderOutside: 0 },
        domes: [domeOf({ radius: 2500, stemWall: 0 })],
        material: { ...MATERIAL, dryDensity: EIGHT, mortarDensity: EIGHT },
        footing: null,
      }),
    ),
  ).domes[0] as ReturnType<typeof staticsOf>['domes'][number];

describe('the worked dome Ri 2.5, Re 2.8 m, 8 kN/m3, as a house (derived)', () => {
  it('weighs 2π γ (Re³ − Ri³)/3 = 106.0099 kN: 6.36679 kN/m and 21.223 kPa at its base', () => {
    const { weights } = worked();
    expect(weights.masonry).toBeCloseTo(106.0099, 4);
    const line = weights.masonry / (2 * Math.PI * 2.65);
    expect(line).toBeCloseTo(6.36679, 5);
    expect(line / 0.3).toBeCloseTo(21.223, 3);
    // 1500 psf of clay, IBC Table 1806.2: width 0.08865 m, so least sizes govern.
    const clay = parseQuantity('1500 psf', 'pressure', null);
    expect('value' in clay && clay.value).toBeCloseTo(71.82, 2);
    expect(line / 71.82).toBeCloseTo(0.08865, 5);
  });

  it('thrusts 3.12823 kN per radian at least, which a ring would pull with', () => {
    const { thrust, pull } = worked();
    // Rings push at the middles of courses here, not everywhere: the least thrust of a hemisphere is the same.
    expect(Math.abs((thrust.least as number) - 3.12823)).toBeLessThan(3e-4);
    expect(Math.abs((pull.all as number) - 3.12823)).toBeLessThan(3e-4);
  });

  it('uncracked, its hoops pull 0.300283 q R² = 5.0610 kN below 51.83 degrees', () => {
    const { shell } = worked();
    // The layer's weight on the middle surface is γ t (1 + t²/12R²).
    const q = 8 * 0.3 * (1 + 0.3 ** 2 / (12 * 2.65 ** 2));
    expect(Math.abs(shell.hoopTension - 0.30028311 * q * 2.65 ** 2)).toBeLessThan(5e-3);
    expect(Math.abs((shell.hoopTurnZ as number) / 2650 - (Math.sqrt(5) - 1) / 2)).toBeLessThan(1e-6);
  });
});

describe('combinations', () => {
  it('EN 1990, 6.10: 1.35 G + 1.5 Q', () => expect(designEffect('EN 1990', 10, 4)).toBeCloseTo(19.5, 12));
  it('ASCE 7: 1.4 D, or 1.2 D + 1.6 S', () => {
    expect(designEffect('ASCE 7', 10, 0)).toBeCloseTo(14, 12);
    expect(designEffect('ASCE 7', 10, 4)).toBeCloseTo(18.4, 12);
  });
});

describe('steel', () => {
  it('EN 1992-1-1: 14.6447 kN × 1.35 at 500 MPa needs 45.472 mm2', () => {
    expect(steelStrength(500)).toBeCloseTo(434.783, 3);
    expect(Math.abs(steelArea(14.6447 * 1.35, 500) - 45.472)).toBeLessThan(1e-3);
  });
  it.each([
    [6, 28.274],
    [8, 50.265],
    [10, 78.54],
    [12, 113.097],
    [14, 153.938],
    [16, 201.062],
    [20, 314.159],
    [25, 490.874],
  ])('a bar of %d mm has %f mm2', (diameter, area) => expect(barArea(1, diameter)).toBeCloseTo(area, 3));
  it('laps are at least 15 diameters and 200 mm', () => {
    // 1.5 (10 / 4) 434.783 / 2.3.
    expect(lapLength(10, 434.783, 2.3)).toBeCloseTo(708.89, 2);
    expect(lapLength(16, 1, 2.3)).toBe(240);
    expect(lapLength(6, 1, 2.3)).toBe(200);
  });
});

describe('snow and wind', () => {
  it.each([
    [0.05, 0.7],
    [0.1, 1.2],
    [0.18, 2],
    [0.5, 2],
  ])('drift on a rise of %f of the span has the factor %f (EN 1991-1-3, 5.3.5, from memory)', (rise, factor) =>
    expect(driftFactor(rise, 1)).toBeCloseTo(factor, 12),
  );

  // The structural extrados of a hemisphere, 3.25 m.
  const R = 3.25;
  const drifted = (combinations: 'EN 1990' | 'ASCE 7', shape: Parameters<typeof domeOf>[0] = {}) => {
    const house = houseOf({
      domes: [domeOf({ stemWall: 0, ...shape })],
      wall: { thickness: 250, renderInside: 0, renderOutside: 0 },
      site: { ...houseOf().site, snowKpa: 1, combinations },
    });
    const setout = setOutHouse(house);
    const dome = setout.domes[0] as (typeof setout.domes)[number];
    const lune = luneOf(dome, unitLoads(setout, dome), {
      renderInside: 0,
      renderOutside: 0,
      footing: null,
      sections: 2000,
    });
    return { law: snowDrift(lune, house.site), statics: staticsOf(setout).domes[0] as DomeStatics };
  };

  it('drift by EN 1991-1-3, 5.3.5 (ii): triangles of the factor 2 and 1, R² / 4 each a radian', () => {
    const { law } = drifted('EN 1990');
    const reach = 1000 * R * Math.sin(Math.PI / 3);
    expect(Math.abs(law.radii[2] / reach - 1)).toBeLessThan(1e-9);
    expect([law.windward, law.leeward]).toEqual([
      [0, 1, 0],
      [0, 2, 0],
    ]);
    // ∫ r (2r/R) dr to R/2 is R²/12, from there on R²/6; the moment R³/32 + 11 R³/96.
    const [, , edge] = law.radii;
    expect(driftMoment(law.radii, law.leeward, edge, 1) / edge ** 2).toBeCloseTo(2 / 4, 12);
    expect(driftMoment(law.radii, law.leeward, edge, 2) / edge ** 3).toBeCloseTo(2 * (1 / 32 + 11 / 96), 12);
  });

  it('drift by ASCE 7-16, Figure 7.4-2: half at the crown, twice at 30 degrees, none at 70; nothing to windward', () => {
    const { law, statics } = drifted('ASCE 7');
    expect(law.windward).toEqual([0, 0, 0]);
    const [, turn, reach] = law.radii;
    expect(Math.abs(turn / (1000 * R * 0.5) - 1)).toBeLessThan(1e-5);
    expect(Math.abs(reach / (1000 * R * Math.sin((70 * Math.PI) / 180)) - 1)).toBeLessThan(1e-9);
    // 0.7 of the ground's 1 kPa.
    expect(law.leeward[0]).toBeCloseTo(0.35, 12);
    expect(law.leeward[1]).toBeCloseTo(1.4, 12);
    expect(law.leeward[2]).toBeCloseTo(0, 9);
    const one = statics.oneSided.find((s) => s.load === 'drifted snow');
    expect(one?.peakKpa).toBeCloseTo(1.4, 12);
    // Both halves of the pair bear their weight and the leeward one the drift, whatever shear the crown hands over.
    const base = (one as OneSided).lines.map((l) => l.at(-1)?.vertical ?? 0);
    const dead = (statics.weights.masonry + statics.weights.render + statics.weights.footing) / (2 * Math.PI);
    const [a, b] = [turn / 1000, reach / 1000];
    const by = 1.4 / (b - a);
    const snow = 0.7 * (0.25 * a ** 2 + 0.5 * a ** 2) + by * ((b * (b ** 2 - a ** 2)) / 2 - (b ** 3 - a ** 3) / 3);
    expect((base[0] ?? 0) + (base[1] ?? 0) - 2 * dead).toBeCloseTo(snow, 4);
  });

  it.each(['EN 1990', 'ASCE 7'] as const)(
    '%s: drifted snow ends where even snow does, on the render',
    (combinations) => {
      const render = 40;
      const house = houseOf({
        domes: [domeOf({ stemWall: 0 })],
        wall: { thickness: 250, renderInside: 0, renderOutside: render },
        site: { ...houseOf().site, snowKpa: 1, combinations },
      });
      const setout = setOutHouse(house);
      const dome = setout.domes[0] as (typeof setout.domes)[number];
      const lune = luneOf(dome, unitLoads(setout, dome), { renderInside: 0, renderOutside: render, footing: null });
      const reach = (1000 * R + render) * Math.sin(((combinations === 'EN 1990' ? 60 : 70) * Math.PI) / 180);
      expect(Math.abs(snowDrift(lune, house.site).radii[2] / reach - 1)).toBeLessThan(1e-9);
      // Even snow on the same plan: p reach² / 2 a radian.
      const even = (combinations === 'EN 1990' ? 0.8 : 0.7) * 1e-6 * (reach ** 2 / 2);
      expect(Math.abs((lune.sections.at(-1)?.snow.weight ?? 0) / even - 1)).toBeLessThan(1e-9);
    },
  );

  it('ASCE 7: a low dome keeps at its edge what does not slide', () => {
    // R = (3² + 0.5²) / 1 = 9.25: slope at the edge asin(3/9.25) = 18.9 degrees.
    const { law } = drifted('ASCE 7', { shape: 'segmental', rise: 500 });
    expect(law.leeward[2]).toBeCloseTo(1.4, 12);
    // Nowhere 30 degrees steep: the most lies at the edge.
    expect(law.radii[1]).toBe(law.radii[2]);
    // R = (3² + 1.5²) / 3 = 3.75: slope 53.13 degrees, 1.4 (70 − 53.13) / 40.
    const { law: steep } = drifted('ASCE 7', { shape: 'segmental', rise: 1500 });
    expect(steep.leeward[2]).toBeCloseTo((1.4 * (70 - Math.asin(3 / 3.75) * (180 / Math.PI))) / 40, 6);
  });

  it('coefficients +0.8, −1.2, 0 push a hemisphere with 0.4 q π R² / 2 and lift it with 0.72423 q π R² (derived)', () => {
    // Constant on circles across the wind; linear in the angle along it.
    let [push, lift] = [0, 0];
    const steps = 20_000;
    for (let i = 0; i < steps; i++) {
      const x = -1 + (2 * (i + 0.5)) / steps;
      const cp = windCoefficient(HEMISPHERE_ON_GROUND, Math.asin(x) / (Math.PI / 2));
      // The half circle at x: its area is π dx; pressure acts towards the centre.
      push += cp * -x * Math.PI * (2 / steps);
      lift += -cp * 2 * Math.sqrt(1 - x * x) * (2 / steps);
    }
    expect(push / (Math.PI / 2)).toBeCloseTo(0.4, 5);
    expect(lift / Math.PI).toBeCloseTo(0.72423, 5);
  });
});

describe('strength', () => {
  it('by density, where no cubes were tested (BCA 46.042, 1994, from memory)', () => {
    expect([400, 600, 700, 1600].map(tableStrength)).toEqual([0.5, 1, 1.25, 7.5]);
    expect(tableStrength(350)).toBeNull();
    expect(tableStrength(1700)).toBeNull();
  });
});

describe('arches by statics', () => {
  /** Hinges at crown and springing: thrust passes through their middles alone. */
  const threeHinged = (rise: number, half: number, weight: number, moment: number): ThrustBody => ({
    sections: [{ middle: [half, 0], half: [1e-9, 0], weight, moment, hoops: null }],
    crown: () => [rise, rise],
  });
  it('parabola, 10 kN/m on the plan, span 2, rise 0.5: H = w L² / 8f = 10, springing thrust 14.142136', () => {
    const body = threeHinged(0.5, 1, 10, 5);
    const range = thrustRange(body);
    expect(range?.least).toBeCloseTo(10, 6);
    expect(range?.greatest).toBeCloseTo(10, 6);
    expect(Math.sqrt(10 ** 2 + (range?.least ?? 0) ** 2)).toBeCloseTo(14.142136, 6);
  });
  it('semicircle: H = w R / 2 under a load on the plan, (π/2 − 1) w R under its own', () => {
    expect(thrustRange(threeHinged(1, 1, 1, 0.5))?.least).toBeCloseTo(0.5, 8);
    expect(thrustRange(threeHinged(1, 1, Math.PI / 2, 1))?.least).toBeCloseTo(Math.PI / 2 - 1, 8);
  });
});

describe('steel of the ties', () => {
  const tie = { level: 'footing', bars: 2, diameter: 10, yieldMpa: 500, bondMpa: null, lap: 700 } as const;

  it('weighs 0.617 kg a metre of a bar of 10 mm (handbook table of bars by EN 10080 sizes, from memory)', () => {
    const kg = tieSteelKg(setOutHouse(houseOf({ tie }))) as number;
    const metres = 2 * (2 * Math.PI * (3000 + houseOf().wall.thickness / 2) + 700) * 1e-3;
    expect(kg / metres).toBeCloseTo(0.617, 3);
  });

  it('is none without a tie, and unknown where nothing is said', () => {
    expect(tieSteelKg(setOutHouse(houseOf({ tie: 'none' })))).toBe(0);
    expect(tieSteelKg(setOutHouse(houseOf({ tie: null })))).toBeNull();
  });
});
