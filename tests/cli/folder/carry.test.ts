import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { groupOf } from '../../../cli/folder/carry.js';
import { writeFolder } from '../../../cli/folder/write.js';
import { delivery, temporaryFolder, tree } from './helpers.js';

const temporary = temporaryFolder();
const out = () => join(temporary.path, 'out');
const WHOLE = { 'drawings/plan.dxf': 'd1', 'drawings/gone.dxf': 'd1', 'model/house.stl': 'm1', 'report.html': 'r1' };

describe('a run limited to some groups', () => {
  it('carries the others over when the description is the same', async () => {
    await writeFolder(out(), delivery(WHOLE));
    const { carried } = await writeFolder(out(), delivery({ 'drawings/plan.dxf': 'd2' }, { only: ['drawings'] }));
    expect(carried.files.map(({ path }) => path)).toEqual(['model/house.stl', 'report.html']);
    expect(carried.dropped).toEqual([]);
    const now = tree(out());
    expect(now).toMatchObject({ 'drawings/plan.dxf': 'd2', 'model/house.stl': 'm1', 'report.html': 'r1' });
    expect(now).not.toHaveProperty(['drawings/gone.dxf']);
    expect(JSON.parse(now['manifest.json'] ?? '').files).toHaveLength(3);
  });

  it.each([
    ['another description', { description: 'b'.repeat(64) }],
    ['another version', { version: '0.2.0' }],
  ])('drops the others made by or from %s, and says so', async (words, more) => {
    await writeFolder(out(), delivery(WHOLE));
    const given = delivery({ 'drawings/plan.dxf': 'd2' }, { only: ['drawings'], ...more });
    const { carried } = await writeFolder(out(), given);
    expect(carried.dropped).toEqual(['model/house.stl', 'report.html']);
    expect(carried.because).toContain(words);
    expect(Object.keys(tree(out()))).toEqual(['drawings/', 'drawings/plan.dxf', 'manifest.json']);
  });

  it('drops a file that was changed or removed since', async () => {
    await writeFolder(out(), delivery(WHOLE));
    writeFileSync(join(out(), 'model/house.stl'), 'edited');
    rmSync(join(out(), 'report.html'));
    const { carried } = await writeFolder(out(), delivery({ 'drawings/plan.dxf': 'd2' }, { only: ['drawings'] }));
    expect(carried.dropped).toEqual(['model/house.stl', 'report.html']);
    expect(carried.because).toContain('changed');
  });

  it('carries nothing in a run for everything', async () => {
    await writeFolder(out(), delivery(WHOLE));
    const { carried } = await writeFolder(out(), delivery({ 'drawings/plan.dxf': 'd2' }));
    expect(carried).toMatchObject({ files: [], dropped: [] });
    expect(Object.keys(tree(out()))).toEqual(['drawings/', 'drawings/plan.dxf', 'manifest.json']);
  });

  it('starts a package of its own in a new folder', async () => {
    const { carried } = await writeFolder(out(), delivery({ 'drawings/plan.dxf': 'd2' }, { only: ['drawings'] }));
    expect(carried).toMatchObject({ files: [], dropped: [] });
  });

  it('knows the group of a file by its top folder, or by its name outside any', () => {
    expect(['drawings/a.b/c.dxf', 'report.html', 'a/b'].map(groupOf)).toEqual(['drawings', 'report', 'a']);
  });
});
