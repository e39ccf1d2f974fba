import {
  type Color,
  converter,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
} from 'culori';
import { beforeAll, describe, expect, it } from 'vitest';
import type { ModelPage } from '../../lib/documents/model-page.js';
import { instancesOf, placed } from '../../lib/documents/scene.js';
import { longerFormId } from '../../lib/masonry/longer.js';
import type { Vec3 } from '../../lib/math/vec.js';
import { housePage } from '../../lib/models/page.js';
import { alongScale, DISTINCT, manyLooks, STUFF } from '../../lib/models/page-colours.js';
import { type BuiltHouse, builtScene } from '../../lib/models/page-scene.js';
import { swatchOf } from '../../lib/page/hatches.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { builtOf, sampleHouse } from '../tools/built.js';

let built: BuiltHouse;
let page: ModelPage;

beforeAll(async () => {
  built = await builtOf(sampleHouse('family-house'));
  page = housePage(built, builtScene(built));
});

const step = (name: string) => page.pieces[instancesOf(page.scene).findIndex((p) => p.instance.name === name)]?.step;

describe('names of rooms', () => {
  it('stand over the axis of their dome, or over their own place', () => {
    const { setout } = built;
    const dome = setout.domes.find((d) => d.id === setout.house.rooms[0]?.in) as DomeSetout;
    const [x, y] = dome.at;
    const room = { id: 'a', in: dome.id, use: 'habitable', name: 'A', at: null } as const;
    const rooms = [
      room,
      { ...room, id: 'b', name: 'B' },
      { ...room, id: 'c', name: 'C', at: [x + 600, y - 800] as const },
    ];
    const changed = { ...built, setout: { ...setout, house: { ...setout.house, rooms } } };
    const [whole, part] = housePage(changed, builtScene(built)).rooms;
    expect(whole).toMatchObject({ text: 'A, B', inside: [x, y, 1200], over: [x, y, dome.topZ + 250] });
    expect(part).toMatchObject({
      text: 'C',
      inside: [x + 600, y - 800, 1200],
      over: [x + 600, y - 800, dome.topZ + 250],
    });
    // 600, 800 and 1000 make a right triangle.
    expect(part?.reach).toBeCloseTo(dome.springingRadius - 1000, 9);
    // Cut away, a name never moves past a partition into the room beside it.
    const partition = {
      in: dome.id,
      from: [x, y - 2000],
      to: [x, y + 2000],
      thickness: 100,
      height: null,
      door: null,
    } as const;
    const parted = { ...changed.setout.house, partitions: [partition] };
    const beside = housePage({ ...changed, setout: { ...changed.setout, house: parted } }, builtScene(built)).rooms;
    expect(beside.map(({ reach }) => reach)).toEqual([dome.springingRadius, 600]);
  });
});

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

type Rgb = readonly [number, number, number];
type Seen = (colour: Color) => Color;
const lab = converter('lab65');

/**
 * How a screen's colours look to people without one kind of cone, as culori has it: Machado, Oliveira and Fernandes, A
 * Physiologically-based Model for Simulation of Color Vision Deficiency (2009), matrices at severity 1.0.
 */
const SEEN_BY: Readonly<Record<string, Seen>> = {
  anyone: (colour) => colour,
  protanopes: filterDeficiencyProt(1),
  deuteranopes: filterDeficiencyDeuter(1),
  tritanopes: filterDeficiencyTrit(1),
};
const seenAs = ([r, g, b]: Rgb, by: Seen) => by({ mode: 'rgb', r: r / 255, g: g / 255, b: b / 255 });
const ciede2000 = differenceCiede2000();
const apart = (a: Rgb, b: Rgb, by: Seen) => ciede2000(seenAs(a, by), seenAs(b, by));
/** Least difference among colours. */
const leastApart = (colours: readonly Rgb[], by: Seen): number =>
  Math.min(...colours.flatMap((a, i) => colours.slice(i + 1).map((b) => apart(a, b, by))));

describe.each(Object.entries(SEEN_BY))('colours as seen by %s', (_, by) => {
  // A CIEDE2000 difference of 1 is about what is just seen side by side (CIE 142-2001; from memory): ten times that.
  const FAR = 10;
  it('tell parts apart, as built and in colours of their own', () => {
    for (const name of ['as built', 'part']) {
      const { entries } = page.colourings.find((c) => c.name === name) as ModelPage['colourings'][number];
      expect(
        leastApart(
          entries.map((e) => e.colour),
          by,
        ),
      ).toBeGreaterThan(FAR);
    }
    // Whatever parts a house has.
    expect(leastApart(Object.values(STUFF), by)).toBeGreaterThan(FAR);
    expect(leastApart(DISTINCT, by)).toBeGreaterThan(FAR);
  });

  it('tell moulds apart by colour, and by lines across where colours come again', () => {
    const looks = manyLooks(200);
    const plain = looks.filter(({ hatch }) => hatch === 0);
    expect(leastApart([...plain.map((look) => look.colour), [190, 190, 188]], by)).toBeGreaterThan(FAR);
    for (const hatch of new Set(looks.map((look) => look.hatch)))
      expect(
        leastApart(
          looks.filter((look) => look.hatch === hatch).map((look) => look.colour),
          by,
        ),
      ).toBeGreaterThan(FAR);
    const signs = looks.map(({ colour, hatch }) => swatchOf(colour, hatch ?? 0));
    expect(new Set(signs).size).toBe(looks.length);
  });

  it('tell a course by lightness alone, the higher the lighter', () => {
    const light = Array.from({ length: 21 }, (_, i) => lab(seenAs(alongScale(i / 20), by)).l);
    for (const [i, l] of light.entries()) if (i > 0) expect(l).toBeGreaterThan((light[i - 1] as number) + 1);
  });
});
