import { describe, expect, it } from 'vitest';
import { edgeEnd, edgeStart } from '../../lib/math/curves.js';
import { type HeadShape, sectionOf, sectionOutline } from '../../lib/math/section.js';

const RING = 200;
const RISES: Readonly<Record<HeadShape, number>> = { semicircular: 500, segmental: 250, pointed: 800, flat: 0 };
const SHAPES = Object.keys(RISES) as HeadShape[];
/** One metre wide, two metres from its sill at 0.5 m to the crown. */
const opening = (shape: HeadShape) =>
  sectionOf({ width: 1000, height: 2000, sill: 500, head: { shape, rise: RISES[shape] } });

describe.each(SHAPES)('a section with a %s head', (shape) => {
  const section = opening(shape);

  it('is as wide as its jambs from the sill, that height included, and nothing below it or over its top', () => {
    for (const grow of [0, RING]) {
      for (const z of [500, 1000, section.springingZ]) expect(section.halfWidthAt(z, grow)).toBe(500 + grow);
      expect(section.halfWidthAt(499, grow)).toBe(0);
      expect(section.halfWidthAt(section.topZ(grow) + 1, grow)).toBe(0);
      // Grown, the jambs go on down to where they are asked from.
      expect(section.halfWidthAt(300, grow, 300)).toBe(500 + grow);
    }
    expect(section.halfWidthAt(2500)).toBeCloseTo(shape === 'flat' ? 500 : 0, 9);
  });

  it('has its top as high over the left as over the right, where it is just so wide', () => {
    for (const u of [0, 120, 480, 620]) {
      const top = section.topAt(u, RING);
      expect(section.topAt(-u, RING)).toBe(top);
      if (shape !== 'flat') expect(section.halfWidthAt(top, RING)).toBeCloseTo(u, 6);
    }
    expect(section.topAt(701, RING)).toBeNaN();
  });

  it('has an outline that closes and keeps to its widths, from whatever height', () => {
    for (const from of [0, 500, 1400, 2300, 2600]) {
      if (from >= section.topZ(RING)) continue;
      const edges = sectionOutline(section, RING, from);
      for (const [k, edge] of edges.entries()) {
        const [end, next] = [edgeEnd(edge), edgeStart(edges[(k + 1) % edges.length] as typeof edge)];
        expect(Math.hypot(end[0] - next[0], end[1] - next[1]), `from ${from}, edge ${k}`).toBeLessThan(1e-9);
        if (end[1] < section.topZ(RING) - 1e-9)
          expect(Math.abs(end[0])).toBeCloseTo(section.halfWidthAt(end[1], RING, from), 6);
      }
    }
  });
});

it('a segmental head 1 m wide and 0.25 m high, grown by 0.2 m, meets the jambs’ lines over its springing', () => {
  // R = (0.5² + 0.25²) / 0.5 = 0.625 m about 1.875 m; 0.825 m there, 0.7 m aside.
  const section = opening('segmental');
  const shoulder = 1875 + Math.sqrt(825 ** 2 - 700 ** 2);
  expect(section.shoulderZ(RING)).toBeCloseTo(shoulder, 9);
  expect(section.springingZ).toBe(2250);
  expect(section.halfWidthAt(shoulder - 1, RING)).toBe(700);
  expect(section.halfWidthAt(shoulder + 40, RING)).toBeCloseTo(Math.sqrt(825 ** 2 - (shoulder + 40 - 1875) ** 2), 9);
});
