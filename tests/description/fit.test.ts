import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { houseFrom } from '../../lib/description/read.js';
import { PROFILE_SHAPES } from '../../lib/description/schema/domes.js';
import { HEAD_SHAPES } from '../../lib/description/schema/openings.js';
import type { Description } from '../../lib/description/schema.js';
import type { ArchSetout } from '../../lib/setout/arch.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { problemsOf } from './helpers.js';

const mm = (min: number, max: number) => fc.integer({ min, max });
const opening = (id: string) =>
  fc.record({
    id: fc.constant(id),
    in: fc.constant('hall'),
    bearing: mm(0, 90),
    use: fc.constant('window' as const),
    width: mm(200, 1200),
    height: mm(400, 1400),
    sill: mm(100, 1500),
    head: fc.constantFrom(...HEAD_SHAPES),
    arch: fc.record({ ring: mm(60, 200), face: fc.constantFrom('flush' as const, 0, 300) }),
    frame: fc.constant(0),
  });

const RISE = {
  hemisphere: [1, 1],
  segmental: [0.2, 0.95],
  pointed: [1.05, 2],
  catenary: [0.3, 2],
  elliptical: [0.3, 2],
} as const;
const houses: fc.Arbitrary<Description> = fc
  .record({
    shape: fc.constantFrom(...PROFILE_SHAPES),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
    radius: mm(1500, 5000),
    stem: fc.constantFrom(0, 400, 900),
    oculus: fc.option(fc.record({ radius: mm(200, 700), curb: mm(50, 250) }), { nil: undefined }),
    course: mm(100, 400),
    length: mm(200, 600),
    piece: mm(40, 100),
    openings: fc.tuple(opening('one'), opening('two')),
  })
  .map(({ shape, part, radius, stem, oculus, course, length, piece, openings }) => {
    const [low, high] = RISE[shape];
    const rise = shape === 'hemisphere' ? radius : radius * (low + part * (high - low));
    return {
      format: 1,
      units: 'mm',
      blocks: { 'course-height': course, length, 'shortest-piece': piece, 'least-lap': piece },
      domes: [{ id: 'hall', radius, profile: { shape, rise }, 'stem-wall': stem, oculus }],
      openings,
    };
  });

/** Whether a point of the intrados at this height and bearing lies in the opening's ring or clear space. */
function covers(arch: ArchSetout, z: number, bearingDeg: number, grow: number): boolean {
  const turn = ((bearingDeg - arch.opening.bearingDeg) * Math.PI) / 180;
  const half = arch.section.halfWidthAt(z, arch.ring + grow, arch.baseZ - grow);
  return Math.cos(turn) > 0 && Math.abs(arch.dome.radiusAt(z) * Math.sin(turn)) < half;
}

describe('openings that are let through', () => {
  test('stay under the curb or plug, have room to both sides, and share no wall (seed 11)', () => {
    let through = 0;
    fc.assert(
      fc.property(houses, (description) => {
        if (problemsOf(description).length > 0) return;
        through++;
        const house = houseFrom(description);
        const setout = setOutHouse(house);
        const [dome] = setout.domes;
        if (!dome) throw new Error('no dome');
        const bedS = dome.curb?.bedS ?? dome.plug?.bedS ?? dome.shell.length;
        for (const arch of setout.arches) {
          expect(arch.topZ).toBeLessThan(dome.shell.at(bedS).z);
          for (let i = 0; i <= 50; i++) {
            const z = arch.baseZ + ((arch.topZ - arch.baseZ) * i) / 50;
            expect(arch.outerHalfAt(z)).toBeLessThan(0.9 * dome.radiusAt(z) + 1e-6);
          }
        }
        const [one, two] = setout.arches as [ArchSetout, ArchSetout];
        for (let z = 10; z < dome.crownZ; z += 97)
          for (let bearing = -45; bearing < 135; bearing += 3)
            expect(covers(one, z, bearing, 0) && covers(two, z, bearing, 0)).toBe(false);
      }),
      { seed: 11, numRuns: 150 },
    );
    expect(through).toBeGreaterThan(20);
  });

  test('neighbours that are refused do come nearer than the shortest piece (seed 12)', () => {
    let refused = 0;
    fc.assert(
      fc.property(houses, (description) => {
        const codes = problemsOf(description).map((p) => p.code);
        if (codes.length !== 1 || codes[0] !== 'openings-meet') return;
        refused++;
        const { openings, blocks, ...rest } = description;
        // One at a time both are let through.
        const [one, two] = (openings ?? []).map(
          (o) => setOutHouse(houseFrom({ ...rest, blocks, openings: [o] })).arches[0],
        ) as [ArchSetout, ArchSetout];
        const grow = Number(blocks?.['shortest-piece']) / 2;
        let common = false;
        for (let z = 0; z < one.dome.crownZ && !common; z += 11)
          for (let bearing = -45; bearing < 135 && !common; bearing += 0.5)
            common = covers(one, z, bearing, grow + 12) && covers(two, z, bearing, grow + 12);
        expect(common).toBe(true);
      }),
      { seed: 12, numRuns: 150 },
    );
    expect(refused).toBeGreaterThan(10);
  });
});
