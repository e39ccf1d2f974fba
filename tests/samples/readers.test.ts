import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { tools } from '../../cli/tools.js';
import type { PackageFile } from '../../lib/deliver/file.js';
import { buildPackage } from '../../lib/deliver/package.js';
import type { House } from '../../lib/description/house.js';
import { readDescription } from '../../lib/description/read.js';
import { measureOf } from '../../lib/documents/dimensioning.js';
import type { View } from '../../lib/documents/drawing.js';
import { houseViews } from '../../lib/drawings/house-views.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { readByAdmesh } from '../readers/admesh.js';
import { lintDxf } from '../readers/dxf-lint.js';
import { readByEzdxf } from '../readers/ezdxf.js';

const names = readdirSync('samples')
  .filter((f) => f.endsWith('.yaml') && !f.endsWith('.keeps.yaml'))
  .map((f) => f.replace('.yaml', ''));

const count = (view: View, kind: View['primitives'][number]['kind']) =>
  view.primitives.filter((p) => p.kind === kind).length;

describe.each(names)('outside readers on every file of %s', (name) => {
  let house: House;
  let files: readonly PackageFile[];
  let views: readonly View[];
  beforeAll(async () => {
    house = readDescription(readFileSync(`samples/${name}.yaml`, 'utf8'), `${name}.yaml`);
    files = (await buildPackage(house, tools)).files;
    views = houseViews(setOutHouse(house));
  });
  const ending = (end: string) => files.filter((f) => f.path.endsWith(end));

  it('admesh finds every STL closed, in as many parts as it stands for', () => {
    const stls = ending('.stl');
    expect(stls.length).toBeGreaterThan(6);
    for (const { path, bytes } of stls) {
      const read = readByAdmesh(bytes);
      expect({
        path,
        disconnected: read.disconnected,
        degenerate: read.degenerate,
        backwards: read.backwardsEdges,
      }).toEqual({
        path,
        disconnected: 0,
        degenerate: 0,
        backwards: 0,
      });
      expect(read.volume, path).toBeGreaterThan(0);
    }
    const part = (path: string) => readByAdmesh((files.find((f) => f.path === path) as PackageFile).bytes);
    expect(part('model/house.stl').parts).toBe(1);
    const [one, scaled] = [part('model/house.stl'), part(`model/house-1-${house.print.scale}.stl`)];
    // The reader adds up tetrahedra in float32, which costs it a digit or two on a large house.
    expect((scaled.volume * house.print.scale ** 3) / one.volume).toBeCloseTo(1, 3);
  });

  it('ezdxf finds no fault in any DXF, and counts and measures what the views say', () => {
    expect(ending('.dxf').map((f) => f.path)).toEqual(views.map((v) => `drawings/${v.id}.dxf`));
    for (const view of views) {
      const { bytes } = files.find((f) => f.path === `drawings/${view.id}.dxf`) as PackageFile;
      expect(lintDxf(bytes), view.id).toEqual([]);
      const read = readByEzdxf(bytes);
      expect({ view: view.id, errors: read.errors, fixes: read.fixes, units: read.units }).toEqual({
        view: view.id,
        errors: [],
        fixes: [],
        units: 4,
      });
      expect(read.counts.HATCH ?? 0, view.id).toBe(count(view, 'hatch'));
      expect(read.counts.ELLIPSE ?? 0, view.id).toBe(count(view, 'ellipse'));
      expect(read.counts.DIMENSION ?? 0, view.id).toBe(count(view, 'dimension'));
      const ours = view.primitives
        .filter((p) => p.kind === 'dimension')
        .map((d) => ({ measure: measureOf(d), angle: d.type === 'angle' }));
      for (const [k, dimension] of read.dimensions.entries()) {
        const { measure, angle } = ours[k] as (typeof ours)[number];
        const read = dimension.measurement;
        expect(
          Math.abs(read - measure),
          `${view.id} dimension ${k}: ${read} for ${measure}${angle ? ' deg' : ' mm'}`,
        ).toBeLessThan(1e-6);
      }
    }
  });
});
