import { describe, expect, it } from 'vitest';
import type { Mesh } from '../../lib/documents/mesh.js';
import { auditMesh, type MeshFaultCode } from '../../lib/documents/mesh-audit.js';
import { boxOf, globeOf, torusOf } from './solids.js';

const sound = boxOf('block A-1-01', [400, 250, 200]);

const withTriangles = (change: (t: number[]) => number[]): Mesh => {
  const triangles = Uint32Array.from(change([...sound.triangles]));
  return { ...sound, triangles, faceOf: sound.faceOf.slice(0, triangles.length / 3) };
};

const withPositions = (change: (p: Float64Array) => void): Mesh => {
  const positions = sound.positions.slice();
  change(positions);
  return { ...sound, positions };
};

const codesOf = (mesh: Mesh): MeshFaultCode[] => auditMesh(mesh).map((f) => f.code);

describe('auditMesh', () => {
  it('passes closed solids, with and without holes', () => {
    for (const mesh of [sound, torusOf('ring', 12, 1000, 100), globeOf('globe', 500, 16, 8)])
      expect(auditMesh(mesh)).toEqual([]);
  });

  it('finds each kind of fault in a box spoilt in one way', () => {
    expect(codesOf(withTriangles(() => []))).toEqual(['empty']);
    expect(codesOf(withTriangles((t) => [...t.slice(0, -1), 99]))).toEqual(['bad-index']);
    expect(codesOf(withPositions((p) => p.set([Number.NaN], 4)))).toEqual(['non-finite']);
    expect(codesOf(withPositions((p) => p.set([Number.POSITIVE_INFINITY], 0)))).toEqual(['non-finite']);
    expect(codesOf(withTriangles((t) => t.slice(3)))).toEqual(['open-edge']);
    expect(codesOf(withTriangles((t) => [...t, ...t.slice(0, 3)]))).toEqual(['crowded-edge']);
    expect(codesOf(withTriangles(([a, b, c, ...rest]) => [a, c, b, ...rest] as number[]))).toEqual(['opposed-edge']);
    expect(codesOf(withTriangles((t) => t.toReversed()))).toEqual(['inverted']);
    expect(codesOf(withTriangles((t) => [...t, 0, 0, 1]))).toContain('degenerate');
    expect(codesOf(withPositions((p) => p.copyWithin(3, 0, 3)))).toContain('degenerate');
  });

  it('counts the places, and names part, face and point of the first', () => {
    const [fault] = auditMesh(withTriangles((t) => t.slice(6)));
    expect(fault).toMatchObject({ code: 'open-edge', part: 'block A-1-01', count: 4 });
    expect(fault?.at).toHaveLength(3);
    expect(fault?.message).toMatch(/open edges.*near \(.*mm, face \w+/);
  });

  it('tells apart vertices by index: two boxes that only touch are sound, one sharing an edge is not', () => {
    const other = boxOf('b', [100, 100, 100], [100, 100, 0]);
    const shared = [...other.triangles].map((v) => v + 8);
    const two: Mesh = {
      ...other,
      positions: Float64Array.of(...boxOf('a', [100, 100, 100]).positions, ...other.positions),
      triangles: Uint32Array.of(...other.triangles, ...shared),
      faceOf: new Uint16Array(24),
    };
    expect(auditMesh(two)).toEqual([]);
    // Corners 2 and 6 of the first stand where 0 and 4 of the second do.
    const joined = two.triangles.map((v) => (v === 8 ? 2 : v === 12 ? 6 : v));
    expect(codesOf({ ...two, triangles: joined })).toEqual(['crowded-edge']);
  });
});
