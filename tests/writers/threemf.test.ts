import { describe, expect, test } from 'vitest';
import { IN_PLACE, moved, type Scene } from '../../lib/documents/scene.js';
import { writeThreeMf } from '../../lib/writers/threemf.js';
import { boxOf } from '../documents/solids.js';
import { modelXml, readByLib3mf, requireSchema } from '../readers/threemf.js';

const box = () => boxOf('box', [200, 300, 100]);

const scene: Scene = {
  title: 'Tern & <Point>',
  facts: { scale: '1:50' },
  materials: [
    { name: 'wall "A"', colour: [222, 206, 178] },
    { name: 'roof', colour: [0, 255, 10] },
  ],
  meshes: [box()],
  nodes: [
    {
      kind: 'group',
      name: 'course',
      place: moved([100, 50, 0]),
      nodes: [0, 1, 2].map((k) => ({
        kind: 'instance',
        name: `hall-1-${k}`,
        place: moved([200 * k, 0, 0]),
        mesh: 0,
        material: 0,
      })),
    },
    { kind: 'instance', name: 'lid', place: IN_PLACE, mesh: 0, material: 1 },
  ],
};

describe('writeThreeMf', () => {
  const bytes = writeThreeMf(scene, { scale: 1 / 50 });

  test('keeps the core schema', () => {
    expect(() => requireSchema(bytes)).not.toThrow();
  });

  test('as lib3mf reads it: one mesh for repeats, components, names, materials, millimetres at the scale', () => {
    const { unit, warnings, objects, items, materials } = readByLib3mf(bytes);
    expect({ unit, warnings, materials }).toEqual({ unit: 1, warnings: 0, materials: ['wall "A"', 'roof'] });
    // The same mesh in two materials is two objects, since an object has one.
    expect(objects.map((o) => o.components ?? o.triangles)).toEqual([12, 3, 12]);
    expect(objects.every((o) => o.valid && o.sound !== false)).toBe(true);
    expect(items.map((i) => i.partNumber)).toEqual(['course', 'lid']);
    expect(items[0]?.move.map((x) => Number(x.toFixed(5)))).toEqual([2, 1, 0]);
    const [mesh] = objects;
    const sides = [0, 1, 2].map((k) => ((mesh?.high?.[k] ?? 0) - (mesh?.low?.[k] ?? 0)) * 50);
    const whole = box().positions;
    for (const k of [0, 1, 2]) {
      const along = Array.from(whole).filter((_, i) => i % 3 === k);
      expect(sides[k]).toBeCloseTo(Math.max(...along) - Math.min(...along), 3);
    }
  });

  test('escapes what XML would read, and refuses a scene with nothing in it', () => {
    expect(modelXml(bytes)).toContain('Tern &amp; &lt;Point&gt;');
    expect(() => writeThreeMf({ ...scene, nodes: [] })).toThrow(/nothing to show/);
  });

  test('the same bytes again', () => {
    expect(Buffer.compare(bytes, writeThreeMf(scene, { scale: 1 / 50 }))).toBe(0);
  });
});
