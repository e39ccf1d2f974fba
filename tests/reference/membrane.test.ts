import { describe, expect, it } from 'vitest';
import { hoopTurn, type MembraneForces, membraneForces, type Surface } from '../../lib/statics/membrane.js';

// Membrane theory of shells of revolution: Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959,
// ch. 14; Flügge, Stresses in Shells, ch. 2; Billington, Thin Shell Concrete Structures, ch. 2: closed forms from
// memory, values evaluated by an independent script. Metres, kN; the parameter is the angle from the axis.
const DEG = Math.PI / 180;

/** A surface by its two radii at the angle `a` from the axis. */
const surfaceOf = (r1: (a: number) => number, r: (a: number) => number, top: number, edge: number): Surface => ({
  top,
  edge,
  at: (a) => ({ r: r(a), z: 0, normalRad: Math.PI / 2 - a, curvature: 1 / r1(a), speed: r1(a) }),
});
const sphere = (radius: number, top = 0, edge = Math.PI / 2) =>
  surfaceOf(
    () => radius,
    (a) => radius * Math.sin(a),
    top,
    edge,
  );
const dead = (q: number, onTop = 0) => ({ area: () => q, plan: () => 0, onTop });
const snow = (p: number) => ({ area: () => 0, plan: () => p, onTop: 0 });
const forces = (surface: Surface, load: ReturnType<typeof dead>, degrees: readonly number[]) =>
  membraneForces(
    surface,
    load,
    degrees.map((d) => d * DEG),
  );
const at = (surface: Surface, load: ReturnType<typeof dead>, degrees: number) => {
  const steps = Array.from(
    { length: 40 },
    (_, i) => surface.top / DEG + ((degrees - surface.top / DEG) * (i + 1)) / 40,
  );
  return forces(surface, load, steps).at(-1) as MembraneForces;
};
/** Printed to 5 decimals. */
const near = (value: number, printed: number) => expect(Math.abs(value - printed)).toBeLessThan(5.1e-6);

const turnOf = (surface: Surface, load: ReturnType<typeof dead>) => {
  const steps = Array.from({ length: 91 }, (_, i) => surface.top + ((surface.edge - surface.top) * i) / 90);
  return (hoopTurn(surface, load, membraneForces(surface, load, steps)) ?? Number.NaN) / DEG;
};

describe('sphere R 5 m, q 2, p 1.5 kN/m2', () => {
  it.each([
    [0, -5, -5, 0, -3.75, -3.75],
    [15, -5.08666, -4.5726, 10.7047, -3.75, -3.2476],
    [30, -5.35898, -3.30127, 42.0894, -3.75, -1.875],
    [45, -5.85786, -1.2132, 92.0151, -3.75, 0],
    [60, -6.66667, 1.66667, 157.0796, -3.75, 1.875],
    [75, -7.94395, 5.35576, 232.8489, -3.75, 3.2476],
    [90, -10, 10, 314.1593, -3.75, 3.75],
  ])('at %d degrees', (a, nDead, hDead, v, nSnow, hSnow) => {
    const d = at(sphere(5), dead(2), a);
    near(d.meridian, nDead);
    near(d.hoop, hDead);
    expect(d.above).toBeCloseTo(v, 3.9);
    const s = at(sphere(5), snow(1.5), a);
    near(s.meridian, nSnow);
    near(s.hoop, hSnow);
  });

  it('hoops turn into tension at 51.827292 degrees under weight: cos a = (√5 − 1)/2; at 45 under snow', () => {
    expect(turnOf(sphere(5), dead(2))).toBeCloseTo(51.827292, 6);
    expect(turnOf(sphere(5), dead(2))).toBeCloseTo(Math.acos((Math.sqrt(5) - 1) / 2) / DEG, 8);
    expect(turnOf(sphere(5), snow(1.5))).toBeCloseTo(45, 8);
  });

  it.each([
    [0, 51.8273],
    [10, 53.0671],
    [15, 54.4756],
    [20, 56.2478],
    [30, 60.4699],
  ])('with an oculus of half angle %d they turn at %f', (oculus, turn) => {
    expect(turnOf(sphere(5, oculus * DEG), dead(2))).toBeCloseTo(turn, 4);
  });

  it.each([
    [45, 4.142136, 3.535534, 92.01512, 14.644661, 9.375],
    [60, 3.333333, 4.330127, 157.07963, 14.433757, 8.118988],
    [75, 2.056046, 4.829629, 232.84886, 9.929942, 4.6875],
    [90, 0, 5, 314.15927, 0, 0],
  ])('ring tension at an edge at %d degrees: T = V cot a / 2π', (a, thrust, radius, weight, tDead, tSnow) => {
    const d = at(sphere(5), dead(2), a);
    expect(d.thrust).toBeCloseTo(thrust, 6);
    expect(d.r).toBeCloseTo(radius, 6);
    expect(d.above).toBeCloseTo(weight, 5);
    expect(d.ringTension).toBeCloseTo(tDead, 6);
    expect(at(sphere(5), snow(1.5), a).ringTension).toBeCloseTo(tSnow, 6);
  });

  it('ring tension is greatest at 51.83 degrees: 0.30028311 q R²', () => {
    const greatest = Math.acos((Math.sqrt(5) - 1) / 2) / DEG;
    expect(at(sphere(5), dead(2), greatest).ringTension / 50).toBeCloseTo(0.30028311, 8);
  });
});

describe('oculus of half angle 15 degrees with a lantern of 1.2 kN/m, sphere R 5', () => {
  it.each([
    [15, -4.63644, -5.02281, 9.7572, 0, -6.9976],
    [20, -4.89764, -4.49929, 17.9987, -1.60256, -5.0201],
    [30, -5.23835, -3.42191, 41.1419, -2.74519, -2.87981],
    [45, -5.79755, -1.27352, 91.0676, -3.2476, -0.5024],
    [60, -6.62645, 1.62645, 156.1322, -3.41506, 1.54006],
    [75, -7.91163, 5.32344, 231.9014, -3.48076, 2.97836],
    [90, -9.96984, 9.96984, 313.2118, -3.4988, 3.4988],
  ])('at %d degrees', (a, nDead, hDead, v, nSnow, hSnow) => {
    const shell = sphere(5, 15 * DEG);
    const d = at(shell, dead(2, 1.2), a);
    near(d.meridian, nDead);
    near(d.hoop, hDead);
    expect(d.above).toBeCloseTo(v, 3.9);
    const s = at(shell, snow(1.5), a);
    near(s.meridian, nSnow);
    near(s.hoop, hSnow);
  });
});

describe('closed forms, within 1e-6', () => {
  const [R, q, p, P, cut] = [5, 2, 1.5, 1.2, 15 * DEG];
  const same = (value: number, wanted: number) =>
    expect(Math.abs(value - wanted)).toBeLessThan(1e-6 * Math.max(1, Math.abs(wanted)));
  const both = (found: MembraneForces, meridian: number, hoop: number) => {
    same(found.meridian, meridian);
    same(found.hoop, hoop);
  };

  it.each([20, 33, 47, 61, 74, 88])('sphere, whole and with oculus and lantern, at %d degrees', (deg) => {
    const [c, s2] = [Math.cos(deg * DEG), Math.sin(deg * DEG) ** 2];
    both(at(sphere(R), dead(q), deg), (-q * R) / (1 + c), -q * R * (c - 1 / (1 + c)));
    both(at(sphere(R), snow(p), deg), (-p * R) / 2, ((-p * R) / 2) * Math.cos(2 * deg * DEG));
    const own = (-q * R * (Math.cos(cut) - c)) / s2;
    const lantern = (P * Math.sin(cut)) / s2;
    both(at(sphere(R, cut), dead(q, P), deg), own - lantern, -q * R * c - own + lantern);
    const snowed = ((-p * R) / 2) * (1 - Math.sin(cut) ** 2 / s2);
    both(at(sphere(R, cut), snow(p), deg), snowed, -p * R * c * c - snowed);
  });

  it.each([15, 40, 60])('paraboloid, ellipsoid and pointed dome at %d degrees', (deg) => {
    const [c, s] = [Math.cos(deg * DEG), Math.sin(deg * DEG)];
    const a = 4;
    const bowl = surfaceOf(
      (x) => a / Math.cos(x) ** 3,
      (x) => a * Math.tan(x),
      0,
      60 * DEG,
    );
    both(
      at(bowl, dead(q), deg),
      ((-q * a) / 3) * ((1 - c ** 3) / (s * s * c * c)),
      ((-q * a) / 3) * ((2 - 3 * c * c + c ** 3) / (s * s)),
    );
    both(at(bowl, snow(p), deg), (-p * a) / (2 * c), ((-p * a) / 2) * c);
    const width = (x: number) => Math.sqrt(25 * Math.sin(x) ** 2 + 9 * Math.cos(x) ** 2);
    const oblate = surfaceOf(
      (x) => 225 / width(x) ** 3,
      (x) => (25 / width(x)) * Math.sin(x),
      0,
      Math.PI / 2,
    );
    const [r1, r2] = [225 / width(deg * DEG) ** 3, 25 / width(deg * DEG)];
    both(at(oblate, snow(p), deg), (-p * r2) / 2, -p * r2 * (c * c - r2 / (2 * r1)));
    const [arc, from] = [6, 10 * DEG];
    const [s0, c0, turn] = [Math.sin(from), Math.cos(from), deg * DEG - from];
    const pointed = surfaceOf(
      () => arc,
      (x) => arc * (Math.sin(x) - s0),
      from,
      Math.PI / 2,
    );
    both(
      at(pointed, dead(q), deg),
      (-q * arc * (c0 - c - turn * s0)) / ((s - s0) * s),
      ((-q * arc) / (s * s)) * (turn * s0 - (c0 - c) + (s - s0) * c * s),
    );
  });
});

describe('worked domes of published design sheets', () => {
  it.each([
    [5, 41.083292, -40.614884],
    [30, 43.949161, -27.073799],
    [45, 48.040492, -9.949512],
    [50, 49.921396, -2.793777],
    [55, 52.117106, 5.077959],
    [60, 54.6735, 13.668375],
    [70, 61.109552, 33.060395],
  ])('R 11.43 m, 7.175 kN/m2, at %d degrees (after Reynolds & Steedman, 10th ed., p. 313)', (a, thrust, hoop) => {
    const n = at(sphere(11.43), dead(7.175), a);
    expect(-n.meridian).toBeCloseTo(thrust, 6);
    expect(n.hoop).toBeCloseTo(hoop, 6);
  });

  it('span 4.5, rise 0.75, 4.8 kN/m2: crown 9, edge 10, horizontal 8, ring tension 18', () => {
    const edge = Math.asin(2.25 / 3.75) / DEG;
    expect(at(sphere(3.75), dead(4.8), 0).meridian).toBeCloseTo(-9, 9);
    const n = at(sphere(3.75), dead(4.8), edge);
    expect(n.meridian).toBeCloseTo(-10, 9);
    expect(n.thrust).toBeCloseTo(8, 9);
    expect(n.ringTension).toBeCloseTo(18, 9);
  });

  it('span 12.6, rise 3, 5.925 kN/m2: edge 29.492, horizontal 18.589, ring tension 117.112', () => {
    const n = at(sphere(8.115), dead(5.925), Math.asin(6.3 / 8.115) / DEG);
    expect(n.meridian).toBeCloseTo(-29.492, 2);
    expect(n.thrust).toBeCloseTo(18.589, 2);
    expect(Math.abs(n.ringTension - 117.112)).toBeLessThan(0.05);
  });
});

it.each([
  [1, -1.555724, -1.825872, -0.893815, -1.049025],
  [3, -4.667171, -5.477617, -2.681446, -3.147074],
  [5, -7.778619, -9.129362, -4.469075, -5.245123],
])('cone of 40 degrees, q 2, p 1.5, at %d m from its tip', (s, nDead, hDead, nSnow, hSnow) => {
  const slope = 40 * DEG;
  const cone: Surface = {
    top: 0,
    edge: 5,
    at: (u) => ({ r: u * Math.cos(slope), z: 0, normalRad: Math.PI / 2 - slope, curvature: 0, speed: 1 }),
  };
  const one = (load: ReturnType<typeof dead>) => membraneForces(cone, load, [s])[0] as MembraneForces;
  expect(one(dead(2)).meridian).toBeCloseTo(nDead, 5.6);
  expect(one(dead(2)).hoop).toBeCloseTo(hDead, 5.6);
  expect(one(snow(1.5)).meridian).toBeCloseTo(nSnow, 5.6);
  expect(one(snow(1.5)).hoop).toBeCloseTo(hSnow, 5.6);
});

it.each([
  [15, 1.0718, -4.21457, -4.06775, -3.10583, -2.89778],
  [30, 2.3094, -4.98462, -4.26154, -3.4641, -2.59808],
  [45, 4, -6.89543, -4.55228, -4.24264, -2.12132],
  [60, 6.9282, -12.44444, -4.88889, -6, -1.5],
])('paraboloid z = r²/8, q 2, p 1.5, at %d degrees', (a, r, nDead, hDead, nSnow, hSnow) => {
  const shell = surfaceOf(
    (x) => 4 / Math.cos(x) ** 3,
    (x) => 4 * Math.tan(x),
    0,
    60 * DEG,
  );
  const d = at(shell, dead(2), a);
  near(d.r, r);
  near(d.meridian, nDead);
  near(d.hoop, hDead);
  near(at(shell, snow(1.5), a).meridian, nSnow);
  near(at(shell, snow(1.5), a).hoop, hSnow);
});

describe('ellipsoid, half axes 5 and 3, q 2, p 1.5', () => {
  const [a2, b2] = [25, 9];
  const d = (x: number) => Math.sqrt(a2 * Math.sin(x) ** 2 + b2 * Math.cos(x) ** 2);
  const shell = surfaceOf(
    (x) => (a2 * b2) / d(x) ** 3,
    (x) => (a2 / d(x)) * Math.sin(x),
    0,
    Math.PI / 2,
  );
  it.each([
    [15, 2.03884, -8.0088, -6.25554, -5.9081, -4.41298],
    [30, 3.46688, -7.36698, -1.36842, -5.20031, -0.28891],
    [45, 4.28746, -6.85677, 4.37674, -4.54754, 4.04226],
    [60, 4.72456, -6.65664, 10.0767, -4.09159, 7.50124],
    [90, 5, -7.47188, 20.75522, -3.75, 10.41667],
  ])('at %d degrees', (x, r, nDead, hDead, nSnow, hSnow) => {
    const weight = at(shell, dead(2), x);
    near(weight.r, r);
    near(weight.meridian, nDead);
    near(weight.hoop, hDead);
    near(at(shell, snow(1.5), x).meridian, nSnow);
    near(at(shell, snow(1.5), x).hoop, hSnow);
  });

  it('its area above the edge is 117.367980 m2; hoops turn under snow at 30.96376 degrees', () => {
    expect(at(shell, dead(1), 90).above).toBeCloseTo(117.36798, 5);
    expect(turnOf(shell, snow(1.5))).toBeCloseTo(30.96376, 5);
  });
});

describe('pointed dome, arc R 6, 20 degrees cut off at the axis, q 2, p 1.5', () => {
  const pointed = (cut: number) =>
    surfaceOf(
      () => 6,
      (x) => 6 * (Math.sin(x) - Math.sin(cut * DEG)),
      cut * DEG,
      Math.PI / 2,
    );
  it.each([
    [25, 0.48359, -1.24641, -1.83642, 1.60053, -0.8582, -1.24617],
    [30, 0.94788, -2.12282, -2.61282, 6.32144, -1.42182, -1.68349],
    [45, 2.19052, -3.87448, -2.38061, 37.70728, -2.3234, -1.1238],
    [60, 3.14403, -5.31291, -0.41573, 90.89294, -2.72281, 0.28608],
    [75, 3.74343, -7.02019, 2.52834, 159.49339, -2.90662, 1.48801],
    [90, 3.94788, -9.51706, 6.26203, 236.07313, -2.96091, 1.94822],
  ])('at %d degrees', (x, r, nDead, hDead, v, nSnow, hSnow) => {
    const weight = at(pointed(20), dead(2), x);
    near(weight.r, r);
    near(weight.meridian, nDead);
    near(weight.hoop, hDead);
    near(weight.above, v);
    near(at(pointed(20), snow(1.5), x).meridian, nSnow);
    near(at(pointed(20), snow(1.5), x).hoop, hSnow);
  });

  it.each([
    [5, 54.7867],
    [10, 57.4958],
    [15, 60.0229],
    [20, 62.4115],
    [30, 66.8829],
  ])('cut off at %d degrees, hoops turn at %f', (cut, turn) => {
    expect(turnOf(pointed(cut), dead(2))).toBeCloseTo(turn, 4);
  });
});
