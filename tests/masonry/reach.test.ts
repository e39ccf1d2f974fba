import { describe, expect, it } from 'vitest';
import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { halfAngleAt, headAngle, moved, placedInCourse, placedVolume, singleForm } from '../../lib/masonry/placed.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { courseMiss, reachLeft, reachLines } from '../../lib/masonry/reach.js';
import { integrate } from '../../lib/math/quadrature.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { spanPoint } from '../../lib/setout/span.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const R = 2000;
/** A house some of whose courses are laid of other courses’ moulds. */
const planned = (faces: 'curved' | 'flat', bond: 'free' | 'banded', mouldsInCourse: 1 | 2) => {
  const house = houseOf({
    domes: [domeOf({ radius: R, stemWall: 400, oculus: { radius: 350, curb: 150, upstand: 100 } })],
  });
  const blocks = { ...house.blocks, bond, faces, mouldsInCourse };
  // Two moulds in a course serve houses whose openings ask for short pieces.
  const openings = [
    openingOf({ bearingDeg: 180, height: 1700, width: 900 }),
    openingOf({ id: 'bay', bearingDeg: 70, sill: 500, height: 800, width: 1100, use: 'window' }),
  ];
  const { setout } = planMasonry(setOutHouse({ ...house, blocks, openings: mouldsInCourse === 2 ? openings : [] }));
  const [dome] = setout.domes;
  if (!dome) throw new Error('no dome');
  return { setout, dome };
};

describe.each([
  ['curved', 'free', 1],
  ['flat', 'free', 1],
  ['curved', 'banded', 2],
] as const)('blocks of other courses’ moulds, %s, bond %s, %d in a course', (faces, bond, mouldsInCourse) => {
  const { setout, dome } = planned(faces, bond, mouldsInCourse);

  it('miss beds and faces of their course as their corners do, carried to the sphere', () => {
    let foreign = 0;
    let uneven = 0;
    for (const course of dome.courses) {
      if (course.part !== 'shell') continue;
      const found = courseMiss(setout, dome, course);
      const [over, under, off] = [[0], [0], [0]];
      for (const second of course.mix ? [false, true] : [false]) {
        const placed = placedInCourse(setout, dome, course, singleForm(course, second));
        if (placed.atHome) continue;
        foreign++;
        for (const [s, bed, way] of [
          [placed.bed, course.bed, -1],
          [placed.top, course.to, 1],
        ] as const)
          for (const [depth, radius] of [
            [0, R],
            [250, R + 250],
          ] as const) {
            const [r, z] = spanPoint(placed.span, s, depth);
            const half = halfAngleAt(placed, r, z);
            // Middles of the edges count as well, but of flat faces.
            for (const angle of faces === 'flat' ? [half] : [0, half]) {
              const [distance, height] = moved(placed.motion, r * Math.cos(angle), z);
              const [out, up] = [Math.hypot(distance, r * Math.sin(angle)), height - 400];
              // Beds are cones about the sphere's centre.
              const lat = bed / R;
              const past = way * (up * Math.cos(lat) - out * Math.sin(lat));
              over.push(past);
              under.push(-past);
              off.push(Math.abs(Math.hypot(out, up) - radius));
            }
          }
      }
      expect(Math.abs(found.bedOver - Math.max(...over)), `course ${course.index}`).toBeLessThan(0.01);
      expect(Math.abs(found.bedUnder - Math.max(...under)), `course ${course.index}`).toBeLessThan(0.01);
      expect(Math.abs(found.faceMiss - Math.max(...off)), `course ${course.index}`).toBeLessThan(0.01);
      if (Math.abs(found.bedOver - found.bedUnder) > 0.1) uneven++;
    }
    expect(foreign).toBeGreaterThan(1);
    // Flat faces are seated unevenly, so that which way a bed lies shows.
    expect(uneven > 0).toBe(faces === 'flat');
    expect(dome.courses.some((course) => course.mix !== null)).toBe(mouldsInCourse === 2);
  });
});

it('blocks of other moulds, of other radii too, reach over beds and faces by what they hold more than their course’s own box', () => {
  const house = houseOf({ domes: [domeOf({ radius: R }), domeOf({ id: 'lab', at: [9000, 0], radius: R + 500 })] });
  const { setout } = planMasonry(setOutHouse({ ...house, blocks: { ...house.blocks, bond: 'free' } }));
  const laid = layBlocks(setout);
  const most = { beds: 0, faces: 0 };
  for (const dome of setout.domes)
    for (const course of dome.courses) {
      const placed = placedInCourse(setout, dome, course);
      const block = laid.blocks.find((b) => b.domeId === dome.id && b.course === course.index);
      if (placed.atHome || !block) continue;
      const reach = reachLeft(reachLines(dome, block, placed), (block.startRad + block.endRad) / 2, []);
      // Between its heads, in the course's own beds and faces.
      const span = dome[course.part];
      const column = (s: number, depth: number) => {
        const [r, z] = spanPoint(span, s, depth);
        return 2 * headAngle(placed.head, r, z) * r * (1 + span.at(s).curvature * depth);
      };
      const box = integrate((s) => integrate((depth) => column(s, depth), 0, 250, 6), course.bed, course.to, 12);
      const over = reach.beds + reach.faces - (placedVolume(placed) - box);
      // Third powers of the distances are left out: less than 0.1 mm³ of some 25 million.
      expect(Math.abs(over), `${dome.id}-${course.index}`).toBeLessThan(0.1);
      for (const part of ['beds', 'faces'] as const) most[part] = Math.max(most[part], Math.abs(reach[part]));
    }
  expect(most.beds).toBeGreaterThan(1000);
  expect(most.faces).toBeGreaterThan(1000);
  // The balance takes it off joints and render.
  expect(Math.abs(balanceOf(setout, laid).error)).toBeLessThan(1e-6);
});
