import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../lib/base/texts/cautions.js';
import type { View } from '../../lib/documents/drawing.js';
import { boxCorners, type TextBox, textBox } from '../../lib/documents/expansion.js';
import { buildingScale, scaleWords } from '../../lib/documents/scales.js';
import { auditSheet, placedBounds, type Sheet, sheetForm } from '../../lib/documents/sheet.js';
import { drawingSpace } from '../../lib/documents/sheet-size.js';
import { SIDES } from '../../lib/drawings/elevation.js';
import { houseSections } from '../../lib/drawings/section-plane.js';
import { houseSheets } from '../../lib/drawings/sheets/house-sheets.js';
import { writtenUnits } from '../../lib/drawings/words.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { samples, variety } from './houses.js';
import { clashesOf, marksInNamesOf, tightLevelsOf } from './reading.js';
import { missingOn } from './required.js';

const textsOn = (sheet: Sheet): TextBox[] =>
  sheetForm(sheet).flatMap((p) => (p.kind === 'text' ? [textBox(p.text, p.at, p.anchor, p.heightMm)] : []));

type Box = { readonly min: Vec2; readonly max: Vec2 };
const boxOf = (t: TextBox): Box => {
  const corners = boxCorners(t);
  const [xs, ys] = [corners.map((c) => c[0]), corners.map((c) => c[1])];
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
};
const overlap = (a: Box, b: Box, by = 1e-6): boolean =>
  [0, 1].every(
    (i) => (a.min[i] as number) < (b.max[i] as number) - by && (b.min[i] as number) < (a.max[i] as number) - by,
  );

const some = variety().filter((_, i) => i % 8 === 0);
/** The sheets that the house's own views stand on; the whole set of every sample is held by its own test. */
const CORE = { sheet: null, scale: null, sheets: ['plan', 'elevations', 'sections', 'openings'] } as const;
const sets = [...samples(), ...some].map(
  ([name, house]) => [name, house, houseSheets(house, undefined, CORE)] as const,
);

describe('the sheets of a house', () => {
  it.each(sets)(
    'hold every view and schedule once, readable, within the frame: %s',
    (_, house, { sheets, summary }) => {
      const units = writtenUnits(house.house);
      const views = sheets.flatMap((s) => s.views.map((v) => v.view));
      const sections = houseSections(house).map((plane) => `section-${plane.mark.toLowerCase()}`);
      expect(views.map((v) => v.id)).toEqual(
        expect.arrayContaining(['plan', ...SIDES.map((s) => `elevation-${s}`), ...sections]),
      );
      const own = views.filter((v) => !v.id.startsWith('opening'));
      expect(own).toHaveLength(1 + SIDES.length + sections.length);
      expect(views[0]?.id).toBe('plan');
      const shared = new Set(own.map((v) => v.scale));
      expect(shared.size).toBe(1);
      expect(summary).toContain(scaleWords([...shared][0] as number, units));
      expect(Math.max(...shared)).toBeLessThanOrEqual(buildingScale(units));

      sheets.forEach((sheet, i) => {
        expect(auditSheet(sheet), sheet.id).toEqual([]);
        expect(sheet.titleBlock).toMatchObject({ sheet: i + 1, sheets: sheets.length, size: sheets[0]?.size.name });
        expect(sheet.id).toMatch(/^sheet-\d+-[a-z-]+$/);
        const texts = textsOn(sheet);
        const words = texts.map((t) => t.text).join(' ');
        expect(words).toContain(CAUTION.authority.slice(0, 40));
        for (const { view } of sheet.views) {
          expect(words).toContain(view.title);
          expect(words).toContain(scaleWords(view.scale, units));
        }
        // No text of the paper lies on another, nor on a view.
        const boxes = texts.map(boxOf);
        const views = sheet.views.map((v) => placedBounds(v));
        boxes.forEach((a, k) => {
          for (const v of views) expect(overlap(a, v), `${sheet.id}: ${texts[k]?.text}`).toBe(false);
          for (let j = k + 1; j < boxes.length; j++)
            expect(overlap(a, boxes[j] as Box), `${sheet.id}: ${texts[k]?.text} / ${texts[j]?.text}`).toBe(false);
        });
      });

      expect(missingOn(sheets, house)).toEqual([]);
      expect(own.flatMap((v) => [...clashesOf(v), ...tightLevelsOf(v), ...marksInNamesOf(v)])).toEqual([]);
      const all = sheets.flatMap(textsOn).map((t) => t.text);
      for (const { opening } of house.arches) expect(all).toContain(opening.id);
      for (const dome of house.domes) expect(all).toContain(dome.id);
    },
  );

  it.each(sets)('are not left empty: %s', (_, __, { sheets }) => {
    for (const sheet of sheets.filter((s) => s.views.length > 0)) {
      const space = drawingSpace(sheet.size);
      const taken = sheet.views.reduce((sum, v) => {
        const { min, max } = placedBounds(v);
        return sum + (max[0] - min[0]) * (max[1] - min[1]);
      }, 0);
      expect(taken / ((space.right - space.left) * (space.top - space.bottom)), sheet.id).toBeGreaterThan(0.1);
    }
  });

  it('are the same again', () => {
    for (const [, house, set] of sets.slice(-2)) expect(houseSheets(house, undefined, CORE)).toEqual(set);
  });

  it('use a larger scale for a tiny house, a larger sheet or a smaller scale for a large one', () => {
    const round = (radius: number) =>
      setOutHouse(houseOf({ domes: [domeOf({ radius, rise: radius })], openings: [openingOf()] }));
    const scaleOf = (radius: number) => {
      const { sheets } = houseSheets(round(radius), undefined, CORE);
      return [sheets[0]?.views[0]?.view.scale, sheets[0]?.size.name];
    };
    const large = scaleOf(8e3);
    expect(large[0]).toBe(50);
    expect(large[1]).not.toBe('A3');
    expect(scaleOf(16e3)[0]).toBe(100);
  });

  it('go on at match lines where even the largest sheet is too small: parts share the figure out, cut exactly', () => {
    const far = setOutHouse(
      houseOf({ domes: [domeOf({ radius: 4000 }), domeOf({ id: 'far', at: [300_000, 0], radius: 4000 })] }),
    );
    const { sheets, summary } = houseSheets(far, undefined, { sheet: null, scale: null, sheets: ['plan'] });
    expect(summary).toContain('match lines');
    for (const sheet of sheets) expect(auditSheet(sheet)).toEqual([]);
    const parts = sheets.flatMap((s) => s.views.map((v) => v.view)).filter((v) => v.id.includes('-part-'));
    expect(parts).toHaveLength(2);
    const words = parts.flatMap((v) => v.primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : [])));
    for (const dome of far.domes) expect(words).toContain(dome.id);
    expect(sheets.some((s) => s.views.some((v) => v.view.id === 'plan-key'))).toBe(true);
  });

  it('key plans of a split house leave every figure and letter free of lines', () => {
    const domes = [domeOf({ radius: 3000 }), domeOf({ id: 'east', at: [9000, 0], radius: 3000 })];
    const options = { sheet: 'A3', scale: 10, sheets: ['plan'] } as const;
    const { sheets } = houseSheets(setOutHouse(houseOf({ domes })), undefined, options);
    const key = sheets.flatMap((s) => s.views.map((v) => v.view)).find((v) => v.id === 'plan-key');
    if (!key) throw new Error('no key');
    const letters = key.primitives.flatMap((p) => (p.kind === 'text' && /^[A-Z]+$/.test(p.text) ? [p.text] : []));
    expect(letters).toHaveLength(
      sheets.flatMap((s) => s.views).filter(({ view }) => view.id.includes('-part-')).length,
    );
    expect(key.primitives.some((p) => p.kind === 'dimension')).toBe(true);
    expect(clashesOf(key)).toEqual([]);
  });

  it('sections of a split house tell every level on the key, and draw no line of a level that they don’t tell', () => {
    const domes = [
      domeOf({ radius: 3000 }),
      domeOf({ id: 'east', at: [9000, 0], radius: 2600, stemWall: 900, shape: 'segmental', rise: 2000 }),
    ];
    const house = setOutHouse(houseOf({ domes }));
    const options = { sheet: 'A3', scale: 20, sheets: ['sections'] } as const;
    const views = houseSheets(house, undefined, options).sheets.flatMap((s) => s.views.map((v) => v.view));
    const levelsOf = (view: View) => view.primitives.flatMap((p) => (p.kind === 'level' ? [p] : []));
    const keys = views.filter((v) => v.id.endsWith('-key'));
    expect(keys.length).toBeGreaterThan(0);
    for (const key of keys) {
      expect(clashesOf(key)).toEqual([]);
      const plane = houseSections(house).find((p) => key.id === `section-${p.mark.toLowerCase()}-key`);
      const told = levelsOf(key).map((p) => p.level);
      for (const dome of plane?.domes ?? [])
        for (const z of [house.house.site.ground, 0, dome.springingZ, dome.crownZ, dome.topZ])
          expect(told.some((t) => Math.abs(t - z) < 1)).toBe(true);
    }
    for (const view of views) {
      const marks = levelsOf(view).map((p) => p.at);
      const lines = view.primitives.flatMap((p) =>
        p.kind === 'path' && p.layer === 'dimension' && !p.closed && p.segments.length === 1 ? p.segments : [],
      );
      for (const line of lines)
        if (line.kind === 'line' && Math.abs(line.from[1] - line.to[1]) < 1e-9)
          expect(marks.some((at) => Math.hypot(at[0] - line.to[0], at[1] - line.to[1]) < 1e-6)).toBe(true);
    }
  });

  it('keep to the size and scale that are asked for', () => {
    const [, house] = samples().find(([name]) => name.startsWith('garden-studio')) as ReturnType<
      typeof samples
    >[number];
    const { sheets } = houseSheets(house, undefined, { sheet: 'A2', scale: 20, sheets: ['plan'] });
    expect(new Set(sheets.map((s) => s.size.name))).toEqual(new Set(['A2']));
    expect(sheets.flatMap((s) => s.views.map((v) => v.view.scale))).toContain(20);
    expect(() => houseSheets(house, undefined, { sheet: 'B9', scale: null, sheets: ['cover'] })).toThrow(/B9.*A3/);
  });

  it('are on US sheets at scales of feet and inches where the description is in feet', () => {
    const [, , { sheets, summary }] = sets.find(([name]) => name.startsWith('creek-cabin')) as (typeof sets)[number];
    expect(summary).toMatch(/ARCH|ANSI/);
    expect(sheets[0]?.titleBlock.scale).toMatch(/^\d\/\d+" = 1'-0"$/);
    for (const { view } of sheets.flatMap((s) => s.views)) expect(view.units).toBe('feet-inches');
  });
});
