import { describe, expect, it } from 'vitest';
import { meshBounds, meshEuler, meshVolume, transformMesh } from '../../lib/documents/mesh-measure.js';
import { boxOf, globeOf, sideBySide, torusOf } from './solids.js';

describe('meshVolume', () => {
  it('is exact on a box, wherever it stands', () => {
    expect(meshVolume(boxOf('b', [400, 250, 200]))).toBeCloseTo(20e6, 6);
    expect(meshVolume(boxOf('b', [400, 250, 200], [1e6, -2e6, 5e5]))).toBeCloseTo(20e6, 3);
  });

  it('approaches the ball from below: 4.171996 and 4.184586 at 64 × 32 and 128 × 64 facets of the unit ball', () => {
    // The faceted ball in closed form: prismatoids between parallels, (n/2) sin(2π/n) for the area factor.
    const faceted = (n: number, m: number): number => {
      const area = (n / 2) * Math.sin((2 * Math.PI) / n);
      let volume = 0;
      for (let j = 0; j < m; j++) {
        const [r1, r2] = [Math.sin((Math.PI * j) / m), Math.sin((Math.PI * (j + 1)) / m)];
        const h = Math.cos((Math.PI * j) / m) - Math.cos((Math.PI * (j + 1)) / m);
        volume += (area * h * (r1 * r1 + r1 * r2 + r2 * r2)) / 3;
      }
      return volume;
    };
    for (const [n, m, known] of [
      [64, 32, 4.171996],
      [128, 64, 4.184586],
    ] as const) {
      const volume = meshVolume(globeOf('ball', 1, n, m));
      expect(volume).toBeCloseTo(faceted(n, m), 9);
      expect(volume).toBeCloseTo(known, 6);
      expect(volume).toBeLessThan((4 / 3) * Math.PI);
    }
  });
});

describe('meshEuler', () => {
  it('is 2 − 2·genus for each piece (Euler, Poincaré)', () => {
    expect(meshEuler(boxOf('b', [1, 1, 1]))).toEqual([{ vertices: 8, edges: 18, triangles: 12, euler: 2 }]);
    expect(meshEuler(torusOf('t', 9, 10, 1)).map((p) => p.euler)).toEqual([0]);
    const three = sideBySide('all', [boxOf('a', [1, 1, 1]), torusOf('t', 9, 10, 1), globeOf('g', 1, 8, 4)]);
    expect(meshEuler(three).map((p) => p.euler)).toEqual([2, 0, 2]);
  });
});

describe('transformMesh', () => {
  it('scales about the origin, then moves', () => {
    const half = transformMesh(boxOf('b', [2, 4, 6], [2, 2, 2]), { scale: 0.5, move: [10, 0, -1] });
    expect(meshBounds(half)).toEqual({ min: [11, 1, 0], max: [12, 3, 3] });
    expect(meshVolume(half)).toBeCloseTo(6, 12);
  });

  it('refuses a scale that is no scale', () => {
    for (const scale of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => transformMesh(boxOf('b', [1, 1, 1]), { scale })).toThrow(/b: a scale of/);
  });
});
