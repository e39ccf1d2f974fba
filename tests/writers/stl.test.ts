import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mesh } from '../../lib/documents/mesh.js';
import { meshVolume } from '../../lib/documents/mesh-measure.js';
import { roundApart } from '../../lib/writers/float-rounding.js';
import { auditStl, writeStl } from '../../lib/writers/stl.js';
import { boxOf, globeOf, torusOf } from '../documents/solids.js';
import { readByAdmesh } from '../readers/admesh.js';

const CLEAN = { openEdges: 0, crowdedEdges: 0, opposedEdges: 0, nonFinite: 0, degenerate: 0 };

describe('writeStl', () => {
  it('writes a solid that admesh finds whole, of our size and volume', () => {
    const mesh = torusOf('ring', 48, 2500, 300);
    const read = readByAdmesh(writeStl([mesh], { title: 'ring' }));
    expect(read).toMatchObject({
      facets: 384,
      disconnected: 0,
      parts: 1,
      degenerate: 0,
      backwardsEdges: 0,
      normalsFixed: 0,
      facetsReversed: 0,
    });
    expect(read.volume / meshVolume(mesh)).toBeCloseTo(1, 5);
    expect(read.min).toEqual([-2800, -2800, 0]);
    expect(read.max).toEqual([2800, 2800, 300]);
  });

  it('writes a scale model: lengths by the scale, volume by its cube', () => {
    const mesh = globeOf('globe', 3000, 64, 32);
    const read = readByAdmesh(writeStl([mesh], { title: 'globe', scale: 1 / 50 }));
    expect(read.disconnected).toBe(0);
    expect(read.max[2]).toBeCloseTo(60, 4);
    // admesh sums in single precision.
    expect(read.volume / (meshVolume(mesh) / 50 ** 3)).toBeCloseTo(1, 4);
  });

  it('writes several solids into one file, each a part of its own', () => {
    const blocks = [0, 1, 2].map((i) => boxOf(`block ${i}`, [400, 250, 200], [410 * i, 0, 0]));
    const bytes = writeStl(blocks, { title: 'three blocks' });
    expect(readByAdmesh(bytes)).toMatchObject({ facets: 36, disconnected: 0, parts: 3 });
    expect(auditStl(bytes)).toMatchObject({ ...CLEAN, triangles: 36, vertices: 24 });
  });

  it('stays closed when triangles are thinner than a last digit of float32', () => {
    // A globe of 1 mm at 10 km from the origin: neighbours there are a millimetre apart in float32.
    const far = globeOf('far globe', 1, 40, 20);
    const moved: Mesh = { ...far, positions: far.positions.map((x) => x + 1e7) };
    const bytes = writeStl([moved], { title: 'far' });
    expect(auditStl(bytes)).toMatchObject({ ...CLEAN, vertices: moved.positions.length / 3 });
    expect(readByAdmesh(bytes)).toMatchObject({ disconnected: 0, parts: 1 });
  });

  it('names solids that touch along an edge', () => {
    const pair = [boxOf('left block', [10, 10, 10]), boxOf('right block', [10, 10, 10], [10, 10, 0])];
    expect(() => writeStl(pair, { title: 'pair' })).toThrow(
      /^left block, right block: 1 edges are shared by solids that touch/,
    );
  });

  it('refuses a leaking solid and names it', () => {
    const good = boxOf('plug', [10, 10, 10], [50, 0, 0]);
    const leaking = boxOf('shell', [10, 10, 10]);
    const open = { ...leaking, triangles: leaking.triangles.slice(3), faceOf: leaking.faceOf.slice(1) };
    expect(() => writeStl([good, open], { title: 'house' })).toThrow(/^shell: .*leaks at open edges/);
    expect(() => writeStl([], { title: 'house' })).toThrow(/house: there is no solid/);
  });

  it('refuses a solid too small or too large for float32', () => {
    expect(() => writeStl([boxOf('mountain', [1e300, 1, 1])], { title: 'mountain' })).toThrow(/float32/);
    expect(() => writeStl([boxOf('speck', [1, 1, 1])], { title: 'speck', scale: 1e-33 })).toThrow(/float32/);
  });

  it('begins with our title, in printable letters, never with the word of the text form', () => {
    const header = (title: string): string =>
      new TextDecoder().decode(writeStl([boxOf('b', [1, 1, 1])], { title }).subarray(0, 80));
    expect(header('garden studio 1:50')).toBe('STL mm: garden studio 1:50'.padEnd(80));
    expect(header('a\nb\u0000Ø').trimEnd()).toBe('STL mm: a?b??');
    expect(header('x'.repeat(200))).toHaveLength(80);
    expect(header('solid')).not.toMatch(/^solid/);
  });

  it('gives the same bytes again', () => {
    const write = (): Uint8Array => writeStl([torusOf('t', 13, 77.7, 3.3)], { title: 't', scale: 1 / 3 });
    expect(write()).toEqual(write());
  });
});

describe('auditStl', () => {
  const sound = writeStl([boxOf('b', [10, 20, 30])], { title: 'b' });
  const spoilt = (change: (view: DataView, bytes: Uint8Array) => void): Uint8Array => {
    const bytes = sound.slice();
    change(new DataView(bytes.buffer), bytes);
    return bytes;
  };
  const corner = (t: number, c: number): number => 84 + 50 * t + 12 + 12 * c;

  it('passes a closed box and finds one moved corner', () => {
    expect(auditStl(sound)).toEqual({ ...CLEAN, triangles: 12, vertices: 8, faulty: [] });
    const moved = auditStl(spoilt((v) => v.setFloat32(corner(3, 1), v.getFloat32(corner(3, 1), true) + 1e-5, true)));
    expect(moved).toMatchObject({ openEdges: 4, vertices: 9 });
    expect(moved.faulty).toContain(3);
  });

  it('finds numbers that are none, turned, doubled and collapsed triangles', () => {
    expect(auditStl(spoilt((v) => v.setFloat32(corner(0, 0), Number.NaN, true))).nonFinite).toBe(1);
    expect(auditStl(spoilt((v) => v.setFloat32(84, Number.POSITIVE_INFINITY, true))).nonFinite).toBe(1);
    const turned = spoilt((_, b) => {
      const first = b.slice(corner(0, 1), corner(0, 2));
      b.copyWithin(corner(0, 1), corner(0, 2), corner(0, 3));
      b.set(first, corner(0, 2));
    });
    expect(auditStl(turned)).toMatchObject({ opposedEdges: 3, openEdges: 0 });
    const doubled = spoilt((_, b) => b.copyWithin(84 + 50, 84, 84 + 50));
    expect(auditStl(doubled)).toMatchObject({ openEdges: 2 });
    expect(auditStl(spoilt((_, b) => b.copyWithin(corner(0, 1), corner(0, 0), corner(0, 1)))).degenerate).toBe(1);
  });

  it('takes zero and negative zero for one place', () => {
    const negative = spoilt((v) => {
      for (let t = 0; t < 12; t++)
        for (let i = 0; i < 9; i++)
          if (v.getFloat32(corner(t, 0) + 4 * i, true) === 0 && t % 2) v.setFloat32(corner(t, 0) + 4 * i, -0, true);
    });
    expect(auditStl(negative)).toMatchObject(CLEAN);
  });

  it('refuses bytes whose length belies their head', () => {
    expect(() => auditStl(sound.subarray(0, 500))).toThrow(/don't hold the 12 triangles/);
    expect(() => auditStl(new Uint8Array(10))).toThrow(/10 bytes/);
  });
});

describe('roundApart', () => {
  it('never lets two points fall together, and moves none by more than a few last digits', () => {
    const near = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 })),
      { minLength: 1, maxLength: 64 },
    );
    fc.assert(
      fc.property(near, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (cells, size) => {
        const positions = Float64Array.from(cells.flat(), (k) => size + k * size * 1e-9);
        const rounded = roundApart(positions);
        const keys = new Set(Array.from({ length: cells.length }, (_, i) => rounded.subarray(3 * i, 3 * i + 3).join()));
        expect(keys.size).toBe(cells.length);
        for (let i = 0; i < rounded.length; i++)
          expect(Math.abs((rounded[i] as number) - (positions[i] as number))).toBeLessThan(
            size * 2 ** -22 * (cells.length / 6 + 2),
          );
      }),
      { seed: 20260504, numRuns: 300 },
    );
  });

  it('leaves points alone that are apart already', () => {
    expect([...roundApart(Float64Array.of(0.1, 0.2, 0.3, -0, 1, 2))]).toEqual([
      Math.fround(0.1),
      Math.fround(0.2),
      Math.fround(0.3),
      0,
      1,
      2,
    ]);
  });
});
