import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readDescription } from '../../lib/description/read.js';
import { auditMesh } from '../../lib/documents/mesh-audit.js';
import { meshEuler } from '../../lib/documents/mesh-measure.js';
import { balanceOf } from '../../lib/masonry/balance.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import { nodeKernel } from '../tools/kernel.js';

interface Keeps {
  'crown-level': number;
  'top-level': number;
  handles: number;
  courses: number;
  'blocks-in-first-course': number;
  blocks: number;
  'cut-blocks': number;
  'envelope-m3': number;
  parts: string[];
}

const folder = new URL('../../samples/', import.meta.url);
const names = readdirSync(folder)
  .filter((f) => f.endsWith('.yaml') && !f.endsWith('.keeps.yaml'))
  .map((f) => f.replace('.yaml', ''));

describe('samples keep what they state', () => {
  it('there are six one-dome houses, one of every profile', () => {
    const shapes = names.map((name) => house(name).domes[0]?.profile.shape);
    expect(new Set(shapes)).toEqual(new Set(['hemisphere', 'segmental', 'pointed', 'catenary', 'elliptical']));
    expect(names.length).toBeGreaterThanOrEqual(6);
  });

  it.each(names)('%s', async (name) => {
    const keeps = parse(readFileSync(new URL(`${name}.keeps.yaml`, folder), 'utf8')) as Keeps;
    const setout = setOutHouse(house(name));
    const laid = layBlocks(setout);
    const dome = setout.domes[0] as (typeof setout.domes)[number];
    const { whole, parts } = houseSolids(await nodeKernel(), setout);
    const pieces = meshEuler(whole);
    const balance = balanceOf(setout, laid);
    expect({
      'crown-level': Number(dome.crownZ.toFixed(3)),
      'top-level': Number(dome.topZ.toFixed(3)),
      handles: pieces.reduce((sum, piece) => sum + 1 - piece.euler / 2, 0),
      courses: dome.courses.length,
      'blocks-in-first-course': dome.courses[0]?.count,
      blocks: laid.blocks.length,
      'cut-blocks': laid.blocks.filter((b) => b.cutBy.length > 0).length,
      'envelope-m3': Number((balance.envelope / 1e9).toFixed(6)),
    }).toEqual({ ...keeps, parts: undefined });
    expect(pieces).toHaveLength(1);
    expect(parts.map((p) => p.name)).toEqual(expect.arrayContaining(keeps.parts));
    for (const mesh of [whole, ...parts]) expect(auditMesh(mesh)).toEqual([]);
    expect(Math.abs(balance.error)).toBeLessThan(1e-6);
  });
});

function house(name: string) {
  return readDescription(readFileSync(new URL(`${name}.yaml`, folder), 'utf8'), `${name}.yaml`);
}
