import { describe, expect, it } from 'vitest';
import { IN_PLACE, type Scene } from '../../lib/documents/scene.js';
import { writePicture } from '../../lib/writers/picture.js';
import { boxOf } from '../documents/solids.js';
import { pixelsOf } from '../readers/raster.js';

const scene: Scene = {
  title: 'a cube',
  facts: {},
  materials: [{ name: 'stuff', colour: [200, 100, 50] }],
  meshes: [boxOf('cube', [1000, 1000, 1000])],
  nodes: [{ kind: 'instance', name: 'cube', mesh: 0, material: 0, place: IN_PLACE }],
};
const [low, high] = [0, 1].map((k) => {
  const all = [...(scene.meshes[0]?.positions ?? [])];
  return [0, 1, 2].map((axis) => (k === 0 ? Math.min : Math.max)(...all.filter((_, i) => i % 3 === axis)));
}) as [number[], number[]];

/** Square on from the south, level. */
const square = { width: 200, height: 200, bearingRad: Math.PI, elevationRad: 0 };

const isPaper = (rgb: readonly number[]) => rgb.every((v) => v === 250);

describe('a picture', () => {
  it('is a PNG of the size asked for, as MuPDF reads it, the same each time', () => {
    const png = writePicture(scene, { ...square, width: 123, height: 77 });
    const { width, height } = pixelsOf(png);
    expect([width, height]).toEqual([123, 77]);
    expect(writePicture(scene, { ...square, width: 123, height: 77 })).toEqual(png);
  });

  it('shows the near face of a cube as a square that fills the picture but for its margin', () => {
    const { at } = pixelsOf(writePicture(scene, square));
    const row = Array.from({ length: 200 }, (_, x) => !isPaper(at(x, 100)));
    const column = Array.from({ length: 200 }, (_, y) => !isPaper(at(100, y)));
    // 3 in a hundred are margin, on both sides together as many pixels as on one side in a half.
    for (const line of [row, column]) {
      expect(line.indexOf(true)).toBeGreaterThanOrEqual(2);
      expect(line.indexOf(true)).toBeLessThanOrEqual(4);
      expect(line.lastIndexOf(true)).toBeGreaterThanOrEqual(195);
      expect(line.lastIndexOf(true)).toBeLessThanOrEqual(197);
      expect(line.filter(Boolean)).toHaveLength(line.lastIndexOf(true) - line.indexOf(true) + 1);
    }
    // One face, one shade: the material's hue.
    const [red, green, blue] = at(100, 100) as [number, number, number];
    expect(at(60, 140)).toEqual([red, green, blue]);
    expect(red / green).toBeCloseTo(2, 1);
    expect(green / blue).toBeCloseTo(2, 1);
  });

  it('takes a colour for each instance', () => {
    const { at } = pixelsOf(writePicture(scene, { ...square, colours: [[0, 0, 240]] }));
    expect(at(100, 100)[0]).toBe(0);
    expect(at(100, 100)[2]).toBeGreaterThan(80);
  });

  it('shows a hatched section where a cut opens a solid, and nothing past the cut', () => {
    const middle = ((low[0] as number) + (high[0] as number)) / 2;
    const cut = { normal: [1, 0, 0] as const, distance: middle };
    // Looked at from the east, where the eastern half is gone: all that is seen is the section.
    const { at } = pixelsOf(writePicture(scene, { ...square, bearingRad: Math.PI / 2, cut }));
    const shades = new Set(Array.from({ length: 40 }, (_, i) => at(60 + 2 * i, 100).join()));
    expect(shades.size).toBeGreaterThan(1);
    // From the south, the half that is left stands alone and is centred.
    const half = pixelsOf(writePicture(scene, { ...square, cut }));
    const row = Array.from({ length: 200 }, (_, x) => !isPaper(half.at(x, 100)));
    const wide = row.lastIndexOf(true) - row.indexOf(true) + 1;
    const column = Array.from({ length: 200 }, (_, y) => !isPaper(half.at(row.indexOf(true) + 5, y)));
    expect(wide / column.filter(Boolean).length).toBeCloseTo(0.5, 1);
  });

  it('refuses what is no picture', () => {
    for (const width of [0, -1, 1.5, Number.NaN]) expect(() => writePicture(scene, { width })).toThrow(RangeError);
    expect(() => writePicture({ ...scene, nodes: [] })).toThrow('nothing');
  });
});
