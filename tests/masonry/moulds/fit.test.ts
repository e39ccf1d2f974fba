import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { House } from '../../../lib/description/house.js';
import { mouldDimensions } from '../../../lib/masonry/moulds/dimensions.js';
import { fitLimits } from '../../../lib/masonry/moulds/limits.js';
import { misfitOf } from '../../../lib/masonry/moulds/misfit.js';
import { placeBlock } from '../../../lib/masonry/moulds/place.js';
import { fitsIn, searchMoulds } from '../../../lib/masonry/moulds/search.js';
import { siteOf } from '../../../lib/masonry/moulds/site.js';
import type { Mould } from '../../../lib/masonry/moulds/window.js';
import { setOutHouse } from '../../../lib/setout/house.js';
import { domeOf, houseOf } from '../../tools/house.js';
import { solidJoints } from './solid-joints.js';

const sitesOf = (house: House) => setOutHouse(house).domes.flatMap((d) => d.courses.map((c) => siteOf(d, c)));
const OCULUS = { radius: 350, curb: 150, upstand: 100 };
const hall = houseOf({ domes: [domeOf({ radius: 2000, oculus: OCULUS })] });
const limits = fitLimits(hall.blocks);
const sites = sitesOf(hall);
const siteAt = (k: number) => sites[k] as (typeof sites)[number];

describe('a block in another course', () => {
  it('misses its beds by half of what the small circles bend more: geodesic curvature tan(latitude) / R', () => {
    // Within one sphere faces agree and beds part by x²/2 · (tan λ' − tan λ) / R at the corners.
    const wide = fitLimits({ ...hall.blocks, jointRange: [1, 50] });
    const [parent, site] = [siteAt(6), siteAt(8)];
    const count = 40;
    const placement = placeBlock(parent, site, count, wide);
    const { lower, upper } = site.at;
    const miss = (edge: 'lower' | 'upper', depth: number) => {
      const x = (site.at[edge].r + depth * site.at[edge].normal[0]) * Math.sin(Math.PI / count);
      const bend = Math.tan(site.at[edge].normalRad) - Math.tan(parent.at[edge].normalRad);
      return ((x * x) / 2) * (bend / (2000 + depth));
    };
    expect(lower.normalRad).toBeLessThan(upper.normalRad);
    expect(placement?.faceMiss).toBeCloseTo(0, 6);
    // The block bends less than its new course: its corners hang below the lower bed, of all most outside.
    const reach = Math.max(miss('lower', 0), miss('lower', 250));
    expect(Math.abs((placement?.bedOver as number) / (reach / 2) - 1)).toBeLessThan(0.02);
  });

  it('of a straight wall misses a sphere by the meridian’s sagitta, half of it either way', () => {
    const stem = siteAt(0);
    const shell = siteAt(3);
    expect([stem.course.part, shell.course.part]).toEqual(['stem', 'shell']);
    const loose = fitLimits({ ...hall.blocks, faceStep: 20, jointRange: [1, 99] });
    const placement = placeBlock(stem, shell, 60, loose);
    const half = (stem.course.to - stem.course.bed) / 2;
    // Height against the intrados, s²/2R; along the course both have the same circle.
    expect(placement?.faceMiss).toBeCloseTo((half * half) / 2 / 2000 / 2, 1);
    expect(placeBlock(stem, shell, 60, { ...loose, faceStep: (placement?.faceMiss as number) * 1.99 })).toBeNull();
  });

  it('lies in its own course without a miss', () => {
    for (const site of sites)
      expect(placeBlock(site, site, 30, limits)).toMatchObject({ up: 0, out: 0, faceMiss: 0, bedOver: 0 });
  });
});

describe('the windows of a mould', () => {
  it('hold just the moulds whose solids keep every joint', () => {
    // Slopes and leans about those of a course's own mould; half of them miss.
    const input = fc.record({
      parent: fc.nat(sites.length - 1),
      site: fc.nat(sites.length - 1),
      count: fc.integer({ min: 8, max: 60 }),
      joint: fc.double({ min: 4, max: 22, noNaN: true }),
      taper: fc.double({ min: -12, max: 12, noNaN: true }),
    });
    let [kept, missed] = [0, 0];
    fc.assert(
      fc.property(input, ({ parent, site, count, joint: asked, taper }) => {
        const [from, to] = [siteAt(parent), siteAt(site)];
        const placement = placeBlock(from, to, count, limits);
        if (!placement) return;
        const width = to.course.midRadius * 2 * Math.tan(Math.PI / count) - asked;
        const mould: Mould = {
          parent: from,
          slope: width / 2 / from.course.midRadius,
          lean: taper / 2 / (from.course.to - from.course.bed) + leanFor(from, to, width),
        };
        const joints = solidJoints(mould, placement);
        const lengths = radii(to).map((r) => 2 * Math.sin(Math.PI / count) * r);
        const keeps = joints.every(
          (joint, k) => joint <= limits.thick && joint >= limits.thin + limits.shrinkage * (lengths[k] as number),
        );
        const fits = fitsIn(mould, 0, { site: to, counts: [count], ideal: count }, limits);
        expect(fits.length === 1).toBe(keeps);
        if (keeps) kept++;
        else missed++;
        for (const fit of fits) {
          expect(fit.joints[0]).toBeCloseTo(Math.min(...joints), 6);
          expect(fit.joints[1]).toBeCloseTo(Math.max(...joints), 6);
        }
      }),
      { seed: 7, numRuns: 4000 },
    );
    expect(kept).toBeGreaterThan(50);
    expect(missed).toBeGreaterThan(50);
  });
});

/** Radii of the six points of a head, in the order of the solid's. */
const radii = ({ at, thickness }: (typeof sites)[number]): number[] =>
  [at.lower, at.middle, at.upper].flatMap(({ r, normalRad }) => [r, r + thickness * Math.cos(normalRad)]);

/** Makes a mould narrow upward as the course does that it goes to. */
function leanFor(from: (typeof sites)[number], to: (typeof sites)[number], width: number): number {
  const rate = ({ at }: (typeof sites)[number]) => (at.upper.r - at.lower.r) / at.middle.r;
  return (width * (rate(to) - rate(from))) / 2 / (from.course.to - from.course.bed);
}

describe('the search over a house', () => {
  const counts = Array.from({ length: 12 }, (_, k) => 22 + k);
  const places = sites.slice(0, 8).map((site) => ({ site, counts, ideal: 26 }));
  const plan = searchMoulds(places, limits);

  it('finds for every course a mould whose solids keep the joints', () => {
    expect(plan).toMatchObject({ proven: true, atLeast: plan.moulds.length });
    for (const [k, fits] of plan.fits.entries()) {
      expect(fits.length).toBeGreaterThan(0);
      for (const { mould, count, joints } of fits) {
        const own = plan.moulds[mould] as Mould;
        const placement = placeBlock(own.parent, siteAt(k), count, limits);
        const solid = solidJoints(own, placement as NonNullable<typeof placement>);
        expect(Math.min(...solid)).toBeCloseTo(joints[0], 6);
        expect(Math.max(...solid)).toBeCloseTo(joints[1], 6);
        expect(joints[0]).toBeGreaterThanOrEqual(limits.thin);
        expect(joints[1]).toBeLessThanOrEqual(limits.thick);
      }
    }
  });

  it('needs no fewer moulds for a narrower range, and one for each kind of course at an exact joint', () => {
    const at = (jointRange: [number, number], tolerance: number) =>
      searchMoulds(places, fitLimits({ ...hall.blocks, jointRange, tolerance, shrinkage: 0 })).moulds.length;
    const counted = [at([2, 40], 0), at([5, 20], 0), at([5, 20], 3), at([7, 16], 3)];
    expect(counted).toEqual([...counted].sort((a, b) => a - b));
    expect(counted[0]).toBeLessThan(counted[3] as number);
  });

  it('is as few as it says: no mould drawn at random serves more courses than that leaves room for', () => {
    fc.assert(
      fc.property(
        fc.nat(7),
        fc.integer({ min: 22, max: 33 }),
        fc.double({ min: 8, max: 17, noNaN: true }),
        fc.integer({ min: -20, max: 20 }),
        (k, count, joint, notch) => {
          const parent = siteAt(k);
          const width = parent.course.midRadius * 2 * Math.tan(Math.PI / count) - joint;
          const mould = {
            parent,
            slope: width / 2 / parent.course.midRadius,
            lean: (notch * 0.5) / 2 / (parent.course.to - parent.course.bed),
          };
          const served = places.filter((place) => fitsIn(mould, 0, place, limits).length > 0).length;
          expect(served).toBeLessThanOrEqual(places.length - plan.moulds.length + 1);
        },
      ),
      { seed: 11, numRuns: 500 },
    );
  });

  it('gives courses of one kind one kind of mould: those of the stem wall', () => {
    const stem = places.filter(({ site }) => site.course.part === 'stem').length;
    expect(stem).toBeGreaterThan(1);
    const own = plan.fits.slice(0, stem).map((fits) => fits.map(({ mould, count }) => `${mould} ${count}`).join());
    expect(new Set(own).size).toBe(1);
  });
});

describe('what no mould can keep', () => {
  it('names the joints that would do when the bed joint is out of range', () => {
    const thin = fitLimits({ ...hall.blocks, joint: 7 });
    const misfit = misfitOf(siteAt(5), thin);
    const height = siteAt(5).course.to - siteAt(5).course.bed;
    expect(misfit).toEqual({ kind: 'bed', thinnest: 8 + 0.0025 * height, thickest: 17 });
    expect(misfitOf(siteAt(5), fitLimits({ ...hall.blocks, joint: 9 }))).toBeNull();
  });

  it('says how much thicker the thickest joint must be, and that is enough', () => {
    const narrow = { ...limits, thin: 9.0, thick: 10.2, joint: 10.1 };
    const last = siteAt(sites.length - 1);
    const misfit = misfitOf(last, narrow);
    if (misfit?.kind !== 'perpend') throw new Error('the last course should miss by its perpends');
    expect(misfit.lacking).toBeGreaterThan(0);
    expect(misfitOf(last, { ...narrow, thick: narrow.thick + misfit.lacking * 1.001 })).toBeNull();
    expect(misfitOf(last, { ...narrow, thick: narrow.thick + misfit.lacking * 0.999 })).not.toBeNull();
  });
});

describe('sizes of a mould', () => {
  const site = siteAt(7);
  const half = 0.09;
  const mould: Mould = { parent: site, slope: Math.tan(half), lean: 0 };

  it('of a course’s own mould are those of the spherical sector, by closed forms', () => {
    const d = mouldDimensions(mould, { faces: 'curved', shrinkage: 0 });
    const [a, b] = [site.at.lower.normalRad, site.at.upper.normalRad];
    // V = Δψ (Re³ − Ri³)/3 (sin λ2 − sin λ1), derived.
    const volume = ((2 * half * (2250 ** 3 - 2000 ** 3)) / 3) * (Math.sin(b) - Math.sin(a));
    expect(d.volume / volume).toBeCloseTo(1, 9);
    expect(d.intrados.edges.lower.arc).toBeCloseTo(2 * half * 2000 * Math.cos(a), 6);
    expect(d.extrados.edges.upper.chord).toBeCloseTo(2 * 2250 * Math.cos(b) * Math.sin(half), 6);
    expect(d.extrados.sagittaLower).toBeCloseTo(2250 * Math.cos(a) * (1 - Math.cos(half)), 6);
    expect(d.intrados.height).toBeCloseTo(2000 * (b - a), 6);
    expect(d.bedAngleRad).toBeCloseTo(b - a, 9);
    // Diagonal of a spherical quadrilateral's corners in space.
    const corner = (lambda: number, psi: number) =>
      [Math.cos(lambda) * Math.sin(psi), Math.cos(lambda) * Math.cos(psi), Math.sin(lambda)].map((c) => c * 2000);
    const [p, q] = [corner(a, -half), corner(b, half)];
    const diagonal = Math.hypot(...p.map((c, k) => c - (q[k] as number)));
    expect(d.intrados.diagonal).toBeCloseTo(diagonal, 6);
  });

  it('are larger by the shrinkage, and narrow upward with a lean', () => {
    const dry = mouldDimensions(mould, { faces: 'curved', shrinkage: 0 });
    const cast = mouldDimensions(mould, { faces: 'curved', shrinkage: 0.002 });
    expect(cast.extrados.edges.lower.chord * 0.998).toBeCloseTo(dry.extrados.edges.lower.chord, 9);
    expect(cast.volume * 0.998 ** 3).toBeCloseTo(dry.volume, 3);
    const leaning = mouldDimensions({ ...mould, lean: -0.01 }, { faces: 'curved', shrinkage: 0 });
    const narrower = (d: typeof dry) => d.intrados.edges.lower.chord - d.intrados.edges.upper.chord;
    expect(narrower(leaning) - narrower(dry)).toBeCloseTo(2 * 0.01 * dry.intrados.height, 0);
  });

  it('of flat faces enclose the polyhedron of the corners, a little less outside and more inside', () => {
    const curved = mouldDimensions(mould, { faces: 'curved', shrinkage: 0 }).volume;
    const flat = mouldDimensions(mould, { faces: 'flat', shrinkage: 0 }).volume;
    expect(flat / curved).toBeGreaterThan(0.96);
    expect(flat / curved).toBeLessThan(1);
  });
});
