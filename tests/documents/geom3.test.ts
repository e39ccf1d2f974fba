import modeling from '@jscad/modeling';
import { describe, expect, it } from 'vitest';
import { fromGeom3, toGeom3 } from '../../lib/documents/geom3.js';
import { meshEuler, meshVolume } from '../../lib/documents/mesh-measure.js';
import { boxOf, torusOf } from './solids.js';

const { primitives, measurements, geometries, transforms } = modeling;

describe('toGeom3', () => {
  it('gives solids that JSCAD validates and measures as we do', () => {
    for (const mesh of [boxOf('b', [400, 250, 200]), torusOf('t', 24, 1000, 100)]) {
      const geom = toGeom3(mesh);
      geometries.geom3.validate(geom);
      expect(measurements.measureVolume(geom)).toBeCloseTo(meshVolume(mesh), 3);
    }
  });
});

describe('fromGeom3', () => {
  it('takes back what toGeom3 gave: same counts, same volume', () => {
    const mesh = torusOf('ring', 24, 1000, 100);
    const back = fromGeom3(toGeom3(mesh), 'ring');
    expect(meshEuler(back)).toEqual(meshEuler(mesh));
    expect(meshVolume(back)).toBeCloseTo(meshVolume(mesh), 6);
  });

  it('takes solids of other tools, moved ones too: polygons become triangles, corners become one', () => {
    const cuboid = transforms.translate([5, 6, 7], primitives.cuboid({ size: [10, 20, 30] }));
    const mesh = fromGeom3(cuboid, 'cuboid');
    expect(meshEuler(mesh)).toEqual([{ vertices: 8, edges: 18, triangles: 12, euler: 2 }]);
    expect(meshVolume(mesh)).toBeCloseTo(6000, 9);
    expect(meshEuler(fromGeom3(primitives.geodesicSphere({ radius: 100, frequency: 6 }), 'ball'))[0]?.euler).toBe(2);
  });

  it('welds corners that differ by less than the tolerance, and no others', () => {
    const polygons = geometries.geom3.toPolygons(primitives.cuboid({ size: [10, 10, 10] }));
    const apart = polygons.map((p, i) => geometries.poly3.create(p.vertices.map(([x, y, z]) => [x + i * 1e-4, y, z])));
    expect(meshEuler(fromGeom3(geometries.geom3.create(apart), 'rough', 1e-3))[0]?.vertices).toBe(8);
    expect(() => fromGeom3(geometries.geom3.create(apart), 'rough', 1e-6)).toThrow(/^rough: .*open edges/);
  });

  it('refuses a solid that leaks, and tells part and place', () => {
    const open = geometries.geom3.create(geometries.geom3.toPolygons(primitives.cuboid({ size: [2, 2, 2] })).slice(1));
    expect(() => fromGeom3(open, 'lid')).toThrow(/^lid: the solid leaks at open edges\. 4 of them\. First near \(/);
    expect(() => fromGeom3(geometries.geom3.create(), 'nothing')).toThrow(/nothing: the solid has no triangles/);
    expect(() => fromGeom3(geometries.geom3.invert(primitives.cuboid()), 'inside out')).toThrow(/face inward/);
  });
});
