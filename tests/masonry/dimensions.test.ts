import { describe, expect, it } from 'vitest';
import type { Block } from '../../lib/masonry/block.js';
import { revolvedBox } from '../../lib/masonry/column.js';
import { blockCentroid, blockDimensions } from '../../lib/masonry/dimensions.js';
import { wetDensity } from '../../lib/masonry/mass.js';
import { wholeVolume } from '../../lib/masonry/measure.js';
import { DEG } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, MATERIAL } from '../tools/house.js';

// Spherical sector block, closed form: V = Δψ (Re³ − Ri³)/3 (sin λ2 − sin λ1); centroid from the same integrals.
// Derived, and checked by Monte Carlo integration elsewhere: Ri 2.5 m, Re 2.8 m, Δλ 6.4863°.
const house = setOutHouse(
  houseOf({
    wall: { thickness: 300, renderInside: 0, renderOutside: 0 },
    domes: [domeOf({ radius: 2500, stemWall: 0 })],
  }),
);
const dome = house.domes[0] as NonNullable<(typeof house.domes)[0]>;

function sectorBlock(lowerDeg: number, headDeg: number): Block {
  const bed = 2500 * lowerDeg * DEG;
  const half = (headDeg * DEG) / 2;
  const step = 0.3 / 2.65;
  return {
    mark: 'x',
    domeId: 'hall',
    course: 1,
    number: 1,
    part: 'shell',
    bed,
    top: bed + 2500 * step,
    startRad: -half,
    endRad: half,
    cutBy: [],
    seed: null,
  };
}

describe('spherical sector blocks against closed forms', () => {
  it.each([
    [10, 11.1059, 2.579762, 0.607394],
    [30, 12.9258, 2.216188, 1.45348],
    [50, 18.0651, 1.584808, 2.124256],
    [70, 37.4961, 0.760521, 2.538815],
  ])('bed at %d°: volume 0.045024 m3 and centroid', (lowerDeg, headDeg, distance, z) => {
    const block = sectorBlock(lowerDeg, headDeg);
    const volume = wholeVolume(
      revolvedBox(dome.shell, [block.bed, block.top], [0, 300], [block.startRad, block.endRad]),
    );
    expect(volume / 1e9).toBeCloseTo(0.045024, 5);
    const centroid = blockCentroid(dome, block);
    expect(centroid.distance / 1000).toBeCloseTo(distance, 5);
    expect(centroid.z / 1000).toBeCloseTo(z, 5);
  });

  it('edges, heights and sagittas of a block on a sphere', () => {
    const block = sectorBlock(30, 12.9258);
    const d = blockDimensions(house, dome, block);
    const r = 2500 * Math.cos(30 * DEG);
    expect(d.intradosLower.arc).toBeCloseTo(r * 12.9258 * DEG, 6);
    expect(d.intradosLower.chord).toBeCloseTo(2 * r * Math.sin((12.9258 * DEG) / 2), 6);
    expect(d.extradosLower.chord / d.intradosLower.chord).toBeCloseTo(2800 / 2500, 9);
    expect(d.extradosHeight / d.intradosHeight).toBeCloseTo(2800 / 2500, 9);
    expect(d.lowerBedRad).toBeCloseTo(30 * DEG, 9);
    // Sagitta of an arc: R (1 − cos(half angle)).
    expect(d.sagitta.intradosUp).toBeCloseTo(2500 * (1 - Math.cos(0.3 / 2.65 / 2)), 6);
    expect(d.sagitta.extradosAlong).toBeCloseTo(2800 * Math.cos(30 * DEG) * (1 - Math.cos((12.9258 * DEG) / 2)), 6);
  });
});

describe('density of the fresh mix', () => {
  // Absolute volumes as Kearsley & Mostert 2005 and ACI 523.3R (from memory), worked by an independent script.
  it.each([
    [400, 536.376],
    [600, 779.563],
    [800, 1022.751],
  ])('dry %d kg/m3 at water/cement 0.5', (dryDensity, wet) => {
    expect(wetDensity({ ...MATERIAL, dryDensity })).toBeCloseTo(wet, 2);
  });
});
