import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type MixRatios, mixLimits, mixOfDry, mixOfWet } from '../../lib/math/fresh-mix.js';
import { amountsFor, correctFoam, foamCorrections, mixChecks } from '../../lib/works/mix.js';
import { houseOf } from '../tools/house.js';

const { material, casting } = houseOf();
const NEAT: MixRatios = { waterCement: 0.5, sandCement: 0, foamDensity: 50 };

describe('volumes', () => {
  it('of cement, sand, water and foam fill the cubic metre, whatever the mix', () => {
    const ratios = fc.record({
      waterCement: fc.double({ min: 0.3, max: 1, noNaN: true }),
      sandCement: fc.double({ min: 0, max: 3, noNaN: true }),
      foamDensity: fc.double({ min: 25, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(ratios, fc.double({ min: 0.02, max: 0.98, noNaN: true }), (mix, share) => {
        const { wet, dryMost } = mixLimits(mix);
        const density = wet[0] + share * (wet[1] - wet[0]);
        for (const made of [mixOfWet(density, mix), mixOfDry(share * dryMost, mix)]) {
          const { cement, sand, water, foam } = made.litres;
          // From the masses and handbook densities: Portland cement 3150, quartz sand 2650, water 1000 kg/m3.
          const filled =
            made.cementKg / 3.15 + made.sandKg / 2.65 + made.waterKg + made.foamKg / (mix.foamDensity / 1000);
          expect(filled).toBeCloseTo(1000, 6);
          expect(cement + sand + water + foam).toBeCloseTo(1000, 6);
          expect(foam).toBeGreaterThan(0);
          expect(made.wetDensity).toBeCloseTo(made.cementKg + made.sandKg + made.waterKg + made.foamKg, 6);
        }
        expect(mixOfWet(density, mix).wetDensity).toBeCloseTo(density, 6);
        expect(mixOfDry(share * dryMost, mix).dryDensity).toBeCloseTo(share * dryMost, 6);
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  it('of a batch are its share of the cubic metre', () => {
    const batch = amountsFor(80, material, { ...casting, mixerLitresPerMinute: 38 });
    expect(batch.cementKg).toBeCloseTo(40, 9);
    expect(batch.bags).toBeCloseTo(1.6, 9);
    expect(batch.mixerMinutes).toBeCloseTo(80 / 38, 9);
    expect(batch.concentrateLitres / (batch.concentrateLitres + batch.foamWaterLitres)).toBeCloseTo(0.025, 9);
    expect(amountsFor(80, material, casting).mixerMinutes).toBeNull();
  });

  it('common practice, no source: a continuous drill-driven mixer of over 10 US gallons a minute fills a batch in under 3 minutes', () => {
    const minutes = amountsFor(100, material, { ...casting, mixerLitresPerMinute: 38 }).mixerMinutes;
    expect(minutes).toBeLessThan(3);
  });
});

describe('the weighed bucket', () => {
  it('on its target changes nothing', () => {
    const { wetDensity, foamLitres } = mixOfDry(600, NEAT);
    const fix = correctFoam(wetDensity, material, casting);
    expect(fix.lasted).toBeCloseTo(1, 9);
    expect(fix.nextFoamLitres).toBeCloseTo(foamLitres / 10, 9);
    expect(fix.verdict).toBe('cast it');
    expect(fix.bucketKg).toBeCloseTo(wetDensity / 100, 9);
  });

  it('after a loss of foam: the next batch with as great a loss comes out right', () => {
    // Told forward: a share of the foam is lost, its liquid stays; the density of what is left is weighed.
    for (const sandCement of [0, 1.5])
      for (const lasted of [0.8, 0.9, 1.05]) {
        const mix = mixOfDry(600, { ...NEAT, sandCement });
        const slurryKg = (mix.cementKg + mix.sandKg + mix.waterKg) / 10;
        const slurryLitres = (1000 - mix.foamLitres) / 10;
        const density = (foam: number) => ((slurryKg + foam * 0.05) / (slurryLitres + lasted * foam)) * 1000;
        const fix = correctFoam(density(mix.foamLitres / 10), { ...material, sandCement }, casting);
        expect(fix.lasted).toBeCloseTo(lasted, 6);
        expect(density(fix.nextFoamLitres)).toBeCloseTo(mix.wetDensity, 6);
        if (fix.addNowLitres !== null)
          expect(density(mix.foamLitres / 10 + fix.addNowLitres)).toBeCloseTo(mix.wetDensity, 6);
        else expect(lasted).toBeGreaterThan(1);
      }
  });

  it('table: the heavier the bucket the more foam, and none casts what is far off', () => {
    const rows = foamCorrections(material, casting);
    expect(rows.length).toBeGreaterThan(10);
    for (const [i, row] of rows.entries()) {
      if (i > 0) expect(row.nextFoamLitres).toBeGreaterThan(rows[i - 1]?.nextFoamLitres as number);
      expect(row.verdict === 'cast it').toBe(Math.abs(row.measured - mixOfDry(600, NEAT).wetDensity) <= 50);
    }
  });

  it('entered in the description gives the next batch’s foam in words', () => {
    const heavy = mixChecks(material, { ...casting, measuredWetDensity: 880 }).find((c) => c.id === 'mix-bucket');
    expect(heavy?.state).toBe('attention');
    expect(heavy?.advice).toMatch(/^Put \d+\.\d L of foam into the next batch; this one needs \d+\.\d L more\.$/);
  });
});

describe('checks', () => {
  it('call attention to a dry density that the wet one does not dry to', () => {
    const dry = (wetDensity: number | null) =>
      mixChecks({ ...material, wetDensity }, casting).find((c) => c.id === 'mix-dry-density');
    expect(dry(null)).toBeUndefined();
    expect(dry(780)?.state).toBe('ok');
    expect(dry(1100)).toMatchObject({ state: 'attention' });
    expect(dry(1100)?.advice).toContain('material.dry-density: 86');
  });

  it('call attention to a mix with hardly any air', () => {
    expect(mixChecks({ ...material, dryDensity: 1300 }, casting)[0]?.state).toBe('attention');
    expect(mixChecks(material, casting)[0]?.state).toBe('ok');
  });
});
