import { expect, test } from 'vitest';
import { houseFrom } from '../../lib/description/read.js';
import { bodyOf } from '../../lib/description/rules/body.js';
import { nearest } from '../../lib/description/rules/runs.js';
import { archRun, openedIn } from '../../lib/description/rules/ways.js';

/** A ring 1.2 m wide in a stem wall beside another: all that matters happens between two upright cylinders. */
const houseWith = (bearing: number) =>
  houseFrom({
    format: 1,
    units: 'm',
    domes: [
      { id: 'hall', radius: 3, 'stem-wall': 2.4 },
      { id: 'lab', radius: 2, 'stem-wall': 2.4, at: [0, 6.4] },
    ],
    openings: [
      {
        id: 'bay',
        in: 'hall',
        bearing,
        use: 'window',
        width: 0.9,
        height: 1,
        sill: 0.9,
        head: 'flat',
        arch: { ring: 0.15, face: 'flush' },
      },
    ],
  });

test.each([
  ['its face, where that looks straight at the other axis', 5],
  ['the corner of its face', 14],
])('a flush ring comes nearest to another dome at %s', (_, bearing) => {
  const { domes, openings, wall, blocks } = houseWith(bearing);
  const bodies = domes.map((value, order) => bodyOf({ path: [], value }, order, wall, blocks));
  const [hall, lab] = bodies;
  const [opened] = openedIn(
    bodies,
    openings.map((value) => ({ path: [], value })),
  );
  if (!hall || !lab || !opened) throw new Error('two domes and a window are asked for');
  // The place of the face that is nearest to the other axis, by its bearing from that.
  const reach = hall.footRadius;
  const off = (bearing * Math.PI) / 180 - Math.min((bearing * Math.PI) / 180, Math.asin(600 / reach));
  const gap = Math.hypot(reach * Math.sin(off), 6400 - reach * Math.cos(off)) - lab.footRadius;
  expect(nearest(archRun(opened), lab).gap).toBeCloseTo(gap, 5);
});
