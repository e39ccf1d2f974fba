import { beforeAll, describe, expect, it } from 'vitest';
import type { ModelPage } from '../../lib/documents/model-page.js';
import { instancesOf, placed } from '../../lib/documents/scene.js';
import { longerFormId } from '../../lib/masonry/longer.js';
import type { Vec3 } from '../../lib/math/vec.js';
import { housePage } from '../../lib/models/page.js';
import { alongScale, DISTINCT, STUFF } from '../../lib/models/page-colours.js';
import { type BuiltHouse, builtScene } from '../../lib/models/page-scene.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { builtOf, sampleHouse } from '../tools/built.js';

let built: BuiltHouse;
let page: ModelPage;

beforeAll(async () => {
  built = await builtOf(sampleHouse('family-house'));
  page = housePage(built, builtScene(built));
});

const step = (name: string) => page.pieces[instancesOf(page.scene).findIndex((p) => p.instance.name === name)]?.step;

describe('the scene of a house', () => {
  it('holds each block once, by its mark, where its own solid stands', () => {
    const all = instancesOf(page.scene);
    expect(new Set(all.map((p) => p.instance.name)).size).toBe(all.length);
    for (const [k, block] of built.blocks.entries()) {
      const { instance, place } = all[k] as (typeof all)[number];
      expect(instance.name).toBe(block.mark);
      const shared = page.scene.meshes[instance.mesh] as ModelPage['scene']['meshes'][number];
      const own = built.solids[k] as typeof shared;
      expect(shared.triangles).toEqual(own.triangles);
      let off = 0;
      for (let i = 0; i < own.positions.length; i += 3) {
        const at = placed(place, [...shared.positions.subarray(i, i + 3)] as unknown as Vec3);
        for (let axis = 0; axis < 3; axis++)
          off = Math.max(off, Math.abs((at[axis] as number) - (own.positions[i + axis] as number)));
      }
      expect(off, block.mark).toBeLessThan(1e-6);
    }
  });

  it('shares the meshes of whole blocks: one for each mould and each form of longer blocks', () => {
    const domes = new Map(built.setout.domes.map((d) => [d.id, d]));
    const forms = built.blocks.map((b) => longerFormId(domes.get(b.domeId) as DomeSetout, b) ?? built.mouldOf(b));
    const whole = forms.filter((_, k) => built.blocks[k]?.cutBy.length === 0);
    expect(whole).not.toContain(null);
    const shared = new Set(whole);
    const cut = built.blocks.length - whole.length;
    const parts = built.parts.filter((p) => !/:(shell|stem-wall)$/.test(p.name)).length;
    expect(page.scene.meshes.length).toBe(shared.size + cut + parts);
    const courses = new Set(built.blocks.map((b) => `${b.domeId} ${b.course}`));
    expect([...shared].filter((form) => !form?.includes('-long')).length).toBeLessThan(courses.size);
    for (const [k, { instance }] of instancesOf(page.scene).entries())
      if (built.blocks[k]?.cutBy.length === 0) expect(page.scene.meshes[instance.mesh]?.name).toBe(forms[k]);
  });
});

describe('the order of building', () => {
  it('starts on the ground, lays every course above the one below, and sets an arch before what is cut at it', () => {
    for (const ground of ['footing', 'slab']) expect(step(ground)).toBe(0);
    const of = new Map(built.blocks.map((b, k) => [b, page.pieces[k]?.step as number]));
    for (const block of built.blocks) {
      const own = of.get(block) as number;
      for (const id of block.cutBy) {
        const arch = step(`arch ${id}`) ?? step(`passage ${id}`);
        if (arch !== undefined) expect(arch, `${block.mark} by ${id}`).toBeLessThan(own);
      }
      const below = built.blocks.find((b) => b.domeId === block.domeId && b.course === block.course - 1);
      if (below) expect(of.get(below) as number).toBeLessThan(own);
    }
    for (const dome of built.setout.domes) {
      const last = Math.max(...built.blocks.filter((b) => b.domeId === dome.id).map((b) => of.get(b) as number));
      expect(step(`${dome.id} ${dome.curb ? 'curb' : 'plug'}`)).toBeGreaterThan(last);
    }
    const used = new Set(page.pieces.map((p) => p.step));
    expect([...used].sort((a, b) => a - b)).toEqual(page.steps.map((_, i) => i));
  });

  it('draws courses apart upward, each farther than the one below', () => {
    for (const dome of built.setout.domes) {
      const rises = dome.courses.map(({ index }) => {
        const k = built.blocks.findIndex((b) => b.domeId === dome.id && b.course === index);
        return page.pieces[k]?.lift[2] as number;
      });
      for (const [i, rise] of rises.entries()) if (i > 0) expect(rise).toBeGreaterThan(rises[i - 1] as number);
    }
  });
});

describe('openings of the page', () => {
  it('are as long, between their ends in space, as the description says', () => {
    const length = (a: Vec3, b: Vec3) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
    for (const { opening, id } of built.setout.arches) {
      const told = page.openings.find((o) => o.name === id) as ModelPage['openings'][number];
      const sizes = told.dimensions.map(({ from, to }) => length(from, to));
      expect(sizes[0]).toBeCloseTo(opening.width, 6);
      expect(sizes[1]).toBeCloseTo(opening.height, 6);
      expect(sizes[2] ?? 0).toBeCloseTo(opening.sill, 6);
      expect(told.dimensions.map((d) => Number.parseInt(d.text, 10))).toEqual(sizes.map(Math.round));
    }
    expect(page.openings.map((o) => o.name)).toEqual([
      ...built.setout.arches.map((a) => a.id),
      ...built.setout.passages.map((p) => p.id),
    ]);
  });
});

/**
 * How a screen's colours look to people without one kind of cone: Machado, Oliveira and Fernandes, A Physiologically-based
 * Model for Simulation of Color Vision Deficiency (2009), table of matrices at severity 1.0, in linear RGB; from memory.
 */
const SEEN_BY = {
  anyone: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  protanopes: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
  deuteranopes: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  tritanopes: [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.3039],
} as const;

/** CIE 1976 L*, a*, b* of a screen's colour (IEC 61966-2-1, D65) as someone sees it. */
function labOf(rgb: readonly number[], by: readonly number[]): readonly [number, number, number] {
  const linear = rgb.map((v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4));
  const at = (m: readonly number[], row: number) =>
    m.slice(3 * row, 3 * row + 3).reduce((sum, k, i) => sum + k * (linear[i] as number), 0);
  const seen = [0, 1, 2].map((row) => Math.min(1, Math.max(0, at(by, row))));
  const [r, g, b] = seen as [number, number, number];
  const f = (t: number) => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

const apart = (a: readonly number[], b: readonly number[], by: readonly number[]) => {
  const [p, q] = [labOf(a, by), labOf(b, by)];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
};

describe.each(Object.entries(SEEN_BY))('colours as seen by %s', (_, by) => {
  // A difference of 2.3 is just seen side by side (Mahy and others, 1994; from memory); asked for is several times that.
  it('tell parts apart', () => {
    const { entries } = page.colourings.find((c) => c.name === 'part') as ModelPage['colourings'][number];
    const colours = entries.map((e) => e.colour);
    for (const [i, a] of colours.entries())
      for (const b of colours.slice(i + 1)) expect(apart(a, b, by)).toBeGreaterThan(9);
    for (const [i, a] of DISTINCT.entries())
      for (const b of DISTINCT.slice(i + 1)) expect(apart(a, b, by)).toBeGreaterThan(9);
  });

  it('tell a course by lightness alone, the higher the lighter', () => {
    const light = Array.from({ length: 21 }, (_, i) => labOf(alongScale(i / 20), by)[0]);
    for (const [i, l] of light.entries()) if (i > 0) expect(l).toBeGreaterThan((light[i - 1] as number) + 1);
  });

  it('tell the blocks from what is built in between them', () => {
    for (const [name, colour] of Object.entries(STUFF))
      if (name !== 'block') expect(apart(colour, STUFF.block as [number, number, number], by)).toBeGreaterThan(9);
  });
});
