import { describe, expect, it } from 'vitest';
import { profileOf } from '../../lib/math/profile.js';
import { domeSpan } from '../../lib/setout/span.js';
import { freshBlock, hangingShare, overhang, ringPush, ropePulls, slidingShare } from '../../lib/statics/laying.js';
import { recommendedLiftKg } from '../../lib/statics/lifting.js';

const DEG = Math.PI / 180;
const RI = 2500;
const sphere = domeSpan(profileOf({ shape: 'hemisphere', radius: RI, rise: RI }), 0);

/** Sector block of a sphere: bed at `deg`, its height and length along the middle of the wall, mm; weight in kN. */
function sector(deg: number, thickness: number, height: number, length: number) {
  const middle = RI + thickness / 2;
  const rise = height / middle;
  const width = length / (middle * Math.cos(deg * DEG + rise / 2));
  const block = freshBlock(sphere, [RI * deg * DEG, RI * (deg * DEG + rise)], thickness, width);
  return { block, weight: (block.volume / 1e9) * 8, width, rise };
}

describe('block of a spherical shell, 2.5 m inside, 0.30 m thick, 8 kN/m3', () => {
  // Closed forms of the spherical sector, checked by a Monte Carlo count outside this program.
  const rows = [
    [10, 2.579762, 0.607394, -0.129296, 0],
    [30, 2.216188, 1.45348, -0.064883, 0],
    [40, 1.929908, 1.816464, -0.030835, 0.03838],
    [50, 1.584808, 2.124256, 0.002234, 0.11385],
    [60, 1.191211, 2.367503, 0.031445, 0.18587],
    [70, 0.760521, 2.538815, 0.049162, 0.25223],
  ] as const;
  it.each(rows)('on a bed of %d degrees: centre of gravity, overhang, sliding at friction 0.7', (deg, r, z, o, s) => {
    const { block, weight } = sector(deg, 300, 300, 500);
    expect(block.volume / 1e9).toBeCloseTo(0.045024, 6);
    expect(weight).toBeCloseTo(0.36019, 5);
    expect(block.centroid[0] / 1000).toBeCloseTo(r, 6);
    expect(block.centroid[1] / 1000).toBeCloseTo(z, 6);
    expect(overhang(block) / 1000).toBeCloseTo(o, 6);
    expect(slidingShare(block, 0.7) * weight).toBeCloseTo(s, 5);
  });

  it('begins to tip at 49.30 degrees', () => {
    expect(overhang(sector(49.29, 300, 300, 500).block)).toBeLessThan(0);
    expect(overhang(sector(49.31, 300, 300, 500).block)).toBeGreaterThan(0);
  });

  it('holds itself in a closed ring by pushing on its neighbours', () => {
    // w tan λ without friction, w tan(λ ∓ arctan μ) with it.
    for (const [deg, w, plain] of [
      [30, 1.59661, 0.921803],
      [45, 1.27135, 1.27135],
      [60, 0.85945, 1.48861],
    ] as const) {
      expect((sector(deg, 300, 300, 500).block.perRadian / 1e9) * 8).toBeCloseTo(w, 6);
      const push = ringPush(w, deg * DEG, 0);
      expect(push.least).toBeCloseTo(plain, 5);
      expect(push.greatest).toBeCloseTo(plain, 5);
    }
    expect(ringPush(1.59661, 30 * DEG, 0.4).least).toBeCloseTo(0.230035, 5);
    expect(ringPush(1.27135, 45 * DEG, 0.4).least).toBeCloseTo(0.544864, 5);
    expect(ringPush(0.85945, 60 * DEG, 0.4).least).toBeCloseTo(0.676286, 5);
    expect(ringPush(1, 30 * DEG, 0.4).greatest).toBeCloseTo(Math.tan(30 * DEG + Math.atan(0.4)), 12);
    expect(ringPush(1, 60 * DEG, 0.4).greatest).toBeCloseTo(Math.tan(60 * DEG + Math.atan(0.4)), 9);
    expect(ringPush(1, 80 * DEG, 0.4).greatest).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('rope on a block 0.20 m thick, 0.35 m high, 0.45 m long', () => {
  it.each([
    [40, 0.027989, 0.030409],
    [45, 0.042991, 0.046712],
    [50, 0.057011, 0.061952],
    [60, 0.080301, 0.087301],
  ])('that leaves its upper edge clear of the wall, bed of %d degrees: against tipping', (deg, o, pull) => {
    const { block, weight } = sector(deg, 200, 350, 450);
    expect(weight).toBeCloseTo(0.251934, 6);
    expect(overhang(block) / 1000).toBeCloseTo(o, 6);
    expect(ropePulls(block, 0.4, 'clear').tipping * weight).toBeCloseTo(pull, 6);
  });

  it('clear of the wall against sliding: W (sin λ − μ cos λ) / (sin Δλ + μ cos Δλ)', () => {
    const { block, weight } = sector(60, 200, 350, 450);
    expect(ropePulls(block, 0.4, 'clear').sliding * weight).toBeCloseTo(0.316, 3);
  });

  it('lying on the block needs more: the balance of forces on block and rope together, by components', () => {
    const { block } = sector(50, 200, 350, 450);
    const { sliding, tipping } = ropePulls(block, 0.4, 'lying');
    expect(sliding).toBeGreaterThan(ropePulls(block, 0.4, 'clear').sliding);
    // The rope leaves along the outer face at the bed: straight into the bed. Weight (0, -1).
    const [along, into] = [
      [-Math.cos(50 * DEG), -Math.sin(50 * DEG)],
      [Math.sin(50 * DEG), -Math.cos(50 * DEG)],
    ] as const;
    const force = [sliding * into[0], sliding * into[1] - 1] as const;
    const down = force[0] * along[0] + force[1] * along[1];
    const normal = force[0] * into[0] + force[1] * into[1];
    expect(down / normal).toBeCloseTo(0.4, 9);
    // About the tipping edge the pull and the weight turn alike.
    const [re, ze] = block.edge;
    const arm = [block.outerBottom[0] - re, block.outerBottom[1] - ze] as const;
    const pull = tipping * (arm[0] * into[1] - arm[1] * into[0]);
    expect(pull + (re - block.centroid[0])).toBeCloseTo(0, 6);
    expect(ropePulls(block, 0, 'lying').sliding).toBe(Number.POSITIVE_INFINITY);
    // 1.5 times, and the rope's own friction through 50 degrees.
    expect(hangingShare(block, 0.4)).toBeCloseTo(1.5 * Math.max(sliding, tipping) * Math.exp(0.5 * 50 * DEG), 9);
  });
});

describe('lifting', () => {
  it('one example of NIOSH 94-110, and its load constant at best', () => {
    const lift = { horizontal: 40, vertical: 120, travel: 60, twistDeg: 30, frequency: 0.84, coupling: 0.95 };
    expect(recommendedLiftKg(lift)).toBeCloseTo(8.028, 3);
    const best = { horizontal: 25, vertical: 75, travel: 25, twistDeg: 0, frequency: 1, coupling: 1 };
    expect(recommendedLiftKg(best)).toBeCloseTo(23, 9);
    // Nearer hands and shorter ways bring no more; below and above 75 cm it falls by 0.003 a centimetre (from memory).
    expect(recommendedLiftKg({ ...best, horizontal: 20, travel: 10 })).toBeCloseTo(23, 9);
    for (const vertical of [30, 120])
      expect(recommendedLiftKg({ ...best, vertical })).toBeCloseTo(23 * (1 - 0.003 * 45), 9);
  });
});
