import { describe, expect, it } from 'vitest';
import { measureOf } from '../../lib/documents/dimensioning.js';
import type { View } from '../../lib/documents/drawing.js';
import { auditSheet, type Sheet } from '../../lib/documents/sheet.js';
import { details } from '../../lib/drawings/details/details.js';
import { tieDetail } from '../../lib/drawings/details/tie.js';
import { wallFoot } from '../../lib/drawings/details/wall-foot.js';
import { NOTHING_HANDED } from '../../lib/drawings/handed.js';
import { nearestOf, plotSides } from '../../lib/drawings/plot.js';
import { houseSections } from '../../lib/drawings/section-plane.js';
import { houseSheets } from '../../lib/drawings/sheets/house-sheets.js';
import { writtenUnits } from '../../lib/drawings/words.js';
import { cross2, length2, lerp2, sub2, type Vec2 } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { expectScaleBars, kindOf, written } from './coverage.js';
import { samples } from './houses.js';

describe('the site plan', () => {
  const plot = [
    [-9000, -8000],
    [9000, -8000],
    [12000, 9000],
    [1000, 5000],
    [-9000, 9000],
  ] as const;
  const { site } = houseOf();
  const house = setOutHouse(
    houseOf({ site: { ...site, plot, setback: 2000, northDeg: 33 }, openings: [openingOf({ bearingDeg: 359.9 })] }),
  );
  const { sheets } = houseSheets(house, undefined, { sheet: null, scale: null, sheets: ['site'] });
  const view = sheets[0]?.views[0]?.view as View;
  const measures = view.primitives.flatMap((p) => (p.kind === 'dimension' ? [measureOf(p)] : []));

  it('measures each side of the plot, and the least distance from it to the house', () => {
    for (const side of plotSides(plot)) {
      expect(measures.some((m) => Math.abs(m - length2(sub2(side.to, side.from))) < 1e-6)).toBe(true);
      const { distance, house: face } = nearestOf(house, side);
      expect(measures.some((m) => Math.abs(m - distance) < 1e-6)).toBe(true);
      // No place of the outer wall is nearer: sampled all round.
      for (let i = 0; i < 720; i++) {
        const turn = (i * Math.PI) / 360;
        const p = [3250 * Math.cos(turn), 3250 * Math.sin(turn)] as const;
        const along = sub2(side.to, side.from);
        const t = Math.min(
          1,
          Math.max(0, ((p[0] - side.from[0]) * along[0] + (p[1] - side.from[1]) * along[1]) / length2(along) ** 2),
        );
        const gap = Math.hypot(p[0] - side.from[0] - t * along[0], p[1] - side.from[1] - t * along[1]);
        expect(gap).toBeGreaterThan(distance - 1e-6);
      }
      expect(face).toHaveLength(2);
    }
  });
});

describe('a table with notes', () => {
  const table = {
    id: 'moulds',
    title: 'Moulds',
    columns: [{ key: 'a', label: 'mould', kind: 'text' as const }],
    notes: ['Inner sizes.'],
  };
  const only = { sheet: null, scale: null, sheets: ['courses' as const] };
  const setout = setOutHouse(houseOf({ domes: [domeOf({ radius: 1500 })] }));
  const sheetsWith = (rows: readonly { readonly a: string }[]) =>
    houseSheets(setout, { ...NOTHING_HANDED, moulds: [{ ...table, rows }] }, only).sheets;
  const told = (sheet: Sheet) => sheet.paper.flatMap((p) => (p.kind === 'text' ? [p.text] : []));

  it('stands beside views, its notes under it', () => {
    const sheets = sheetsWith([{ a: 'M1' }]);
    expect(sheets).toHaveLength(1);
    const [sheet] = sheets as [Sheet];
    expect(sheet.views.length).toBeGreaterThan(0);
    expect(told(sheet).filter((t) => /^(Moulds|M1|Moulds: notes|Inner sizes\.)$/.test(t))).toEqual([
      'Moulds',
      'M1',
      'Moulds: notes',
      'Inner sizes.',
    ]);
    expect(auditSheet(sheet)).toEqual([]);
  });

  it('has a sheet of its own with them where it is too large for that', () => {
    const [views, ...words] = sheetsWith(Array(60).fill({ a: 'M1 of many words '.repeat(8) })) as [Sheet, Sheet];
    expect(told(views)).not.toContain('Moulds');
    expect(told(views)).not.toContain('Moulds: notes');
    expect(words.flatMap(told).filter((t) => t.startsWith('Moulds'))).toEqual([
      'Moulds (1 of 2)',
      'Moulds (2 of 2)',
      'Moulds: notes',
    ]);
  });
});

describe('the detail of a wall’s foot', () => {
  it.each(samples())('draws the ground no further than to what stands in it: %s', (_, { house }) => {
    const setout = setOutHouse(house);
    const [draft] = details(setout).large.filter((d) => d.id === 'detail-wall-foot');
    const { primitives } = (draft as NonNullable<typeof draft>).draw(10).layout;
    const falling = primitives
      .flatMap((p) => (p.kind === 'path' && p.layer === 'visible' ? p.segments : []))
      .filter((s) => s.kind === 'line' && Math.abs((s.to[1] - s.from[1]) / (s.to[0] - s.from[0]) + 1 / 20) < 1e-9);
    expect(falling).toHaveLength(1);
    const [dome] = setout.domes;
    const edge = setout.footings.find((f) => f.domeId === dome?.id)?.outerRadius ?? 0;
    for (const s of falling)
      if (s.kind === 'line') expect(Math.min(s.from[0], s.to[0])).toBeGreaterThanOrEqual(edge - 1e-6);
  });

  it('shows the drain’s trench down to its bottom, with a footing and without one', () => {
    for (const footing of [houseOf().footing, null]) {
      const slab = { thickness: 200 };
      const house = setOutHouse(houseOf({ footing, slab, site: { ...houseOf().site, ground: -120 } }));
      const drawn = wallFoot(house)?.draw(10).layout.primitives ?? [];
      const pipe = drawn.find((p) => p.kind === 'circle');
      if (pipe?.kind !== 'circle') throw new Error('no pipe');
      const bottoms = drawn.flatMap((p) =>
        p.kind === 'path' && p.layer === 'hidden'
          ? p.segments.filter((s) => s.kind === 'line' && Math.max(s.from[1], s.to[1]) < pipe.centre[1] - pipe.radius)
          : [],
      );
      expect(bottoms).toHaveLength(1);
    }
  });
});

describe('the trench of the drain', () => {
  // A trench deeper than a sole takes its soil's support away unless it keeps off it by the slope of 45 degrees at which
  // load spreads in the ground: common practice, no source.
  it.each([
    ['a usual footing', houseOf()],
    ['a shallow footing', houseOf({ footing: { width: 500, depth: 250 } })],
    ['a deep footing', houseOf({ footing: { width: 500, depth: 900 } })],
    ['a footing that hardly reaches the ground', houseOf({ site: { ...houseOf().site, ground: -390 } })],
    ['a raft', houseOf({ footing: null, slab: { thickness: 200 } })],
  ])('keeps as far off as it goes below what the house stands on: %s', (_, description) => {
    const house = setOutHouse(description);
    const drawn = wallFoot(house)?.draw(10).layout.primitives ?? [];
    const trench = drawn
      .flatMap((p) => (p.kind === 'path' && p.layer === 'hidden' ? p.segments : []))
      .flatMap((s) => (s.kind === 'line' ? [s.from, s.to] : []));
    const bottom = Math.min(...trench.map((p) => p[1]));
    const near = Math.min(...trench.map((p) => p[0]));
    const [footing, slab] = [house.footings[0], house.slabs[0]];
    const edge = footing?.outerRadius ?? slab?.radius ?? 0;
    const sole = footing?.bottomZ ?? slab?.bottomZ ?? 0;
    expect(near - edge).toBeGreaterThanOrEqual(Math.max(20, sole - bottom) - 1e-6);
    // The whole of it is shown.
    const pipe = drawn.find((p) => p.kind === 'circle');
    expect(pipe?.kind === 'circle' && Math.max(...trench.map((p) => p[0])) > pipe.centre[0] + pipe.radius).toBe(true);
  });
});

describe('details of a house on a raft', () => {
  it('tell of no footing, and of no joint between slab and wall', () => {
    const openings = [openingOf()];
    const told = (footing: ReturnType<typeof houseOf>['footing']) => {
      const slab = { thickness: 200 };
      const { sheets } = houseSheets(setOutHouse(houseOf({ footing, slab, openings })), undefined, {
        sheet: null,
        scale: null,
        sheets: ['details'],
      });
      return written(sheets, 'details').replaceAll('\n', ' ');
    };
    expect(told(houseOf().footing)).toMatch(
      /down to the footing.*compressible filler|compressible filler.*down to the footing/,
    );
    expect(told(null)).toContain('down to the slab');
    expect(told(null)).not.toMatch(/compressible filler|to the footing/);
  });
});

describe('the detail of an abutment', () => {
  it.each(samples().filter(([name]) => /family-house|courtyard-ring/.test(name)))(
    'draws its flashing as far up both shells as the note says: %s',
    (_, { house }) => {
      const [draft] = details(setOutHouse(house)).large.filter((d) => d.id.startsWith('detail-valley-'));
      const { primitives } = (draft as NonNullable<typeof draft>).draw(10).layout;
      const lengths = primitives
        .flatMap((p) => (p.kind === 'path' && p.layer === 'ground' && p.segments.length > 8 ? [p.segments] : []))
        .flatMap((segments) => {
          const lines = segments.flatMap((s) => (s.kind === 'line' ? [s] : []));
          const gutter = lines.findIndex((s) => Math.abs(s.from[1] - s.to[1]) < 1e-6);
          const sum = (part: typeof lines) => part.reduce((l, s) => l + length2(sub2(s.to, s.from)), 0);
          return [sum(lines.slice(0, gutter)), sum(lines.slice(gutter + 1))];
        });
      expect(lengths).toHaveLength(2);
      for (const length of lengths) expect(length).toBeCloseTo(200, 3);
    },
  );
});

describe('the detail of a ring tie', () => {
  it.each(samples().filter(([name]) => /pointed-hall|garden-studio/.test(name)))(
    'has its beds cut out round the bars, and no joint drawn through: %s',
    (_, { house }) => {
      const setout = setOutHouse(house);
      const dome = setout.domes[0] as NonNullable<(typeof setout.domes)[number]>;
      const [draft] = tieDetail(setout, { [dome.id]: dome.springingZ + 1200 }) ?? [];
      const { primitives } = (draft as NonNullable<typeof draft>).draw(5).layout;
      const bars = primitives.flatMap((p) => (p.kind === 'circle' && p.layer === 'cut' ? [p] : []));
      expect(bars.length).toBe((house.tie as { readonly bars: number }).bars);
      const groove = primitives.flatMap((p) =>
        p.kind === 'path' && p.closed && p.layer === 'visible' && p.segments.length === 4 ? [p] : [],
      );
      expect(groove).toHaveLength(1);
      const sides = (groove[0]?.segments ?? []).flatMap((e) => (e.kind === 'line' ? [e] : []));
      const inside = (p: Vec2) =>
        Math.min(...sides.map((e) => cross2(sub2(e.to, e.from), sub2(p, e.from)) / length2(sub2(e.to, e.from))));
      // Cover of 30 mm round each bar: common practice, no source.
      for (const { centre, radius } of bars) expect(inside(centre) - radius).toBeGreaterThan(30 - 1e-6);
      const joints = primitives.flatMap((p) => (p.kind === 'path' && p.layer === 'joint' ? p.segments : []));
      for (const e of joints)
        if (e.kind === 'line')
          for (const t of [0.1, 0.3, 0.5, 0.7, 0.9]) expect(inside(lerp2(e.from, e.to, t))).toBeLessThan(1);
    },
  );
});

describe('notes point at what they tell of', () => {
  const shallow = samples().filter(([name]) => /round-workshop|low-store|garden-studio/.test(name));
  it.each(shallow)('courses beside and above a barrel: %s', (_, { house }) => {
    const setout = setOutHouse(house);
    const { sheets } = houseSheets(setout, undefined, { sheet: null, scale: null, sheets: ['details'] });
    const [dome] = setout.domes;
    const notes = sheets
      .flatMap((s) => s.views.map((v) => v.view))
      .filter((v) => /^detail-(head|springing)-/.test(v.id))
      .map((view) => {
        const arch = setout.arches.find((a) => view.id.endsWith(`-${a.id}`));
        const note = view.primitives.find((p) => p.kind === 'leader' && p.text.startsWith('courses '));
        if (!dome || !arch || note?.kind !== 'leader') throw new Error(`no note on ${view.id}`);
        const [u, z] = note.at;
        const head = view.id.startsWith('detail-head');
        const along = head ? 0 : dome.radiusAt(Math.min(arch.section.springingZ, dome.crownZ), dome.thickness / 2);
        return { r: Math.hypot(u, along), z, left: head ? dome.radiusAt(arch.section.crownZ) - 250 : 0, u };
      });
    expect(notes).toHaveLength(2);
    for (const { r, z, left, u } of notes) {
      expect(r).toBeGreaterThan(dome?.radiusAt(z) as number);
      expect(r).toBeLessThan(dome?.outerRadiusAt(z) as number);
      expect(u).toBeGreaterThan(left);
    }
  });

  it.each(samples().filter(([name]) => /garden-studio|round-workshop|chain-chapel/.test(name)))(
    'no line to a note on the roof runs through a bubble of the grid: %s',
    (_, { house }) => {
      const { sheets } = houseSheets(setOutHouse(house), undefined, { sheet: null, scale: null, sheets: ['roof'] });
      const view = sheets[0]?.views[0]?.view as View;
      const bubbles = view.primitives.flatMap((p) => (p.kind === 'circle' && p.layer === 'axis' ? [p] : []));
      expect(bubbles.length).toBeGreaterThan(0);
      for (const p of view.primitives) {
        if (p.kind !== 'leader') continue;
        for (const t of [0, 0.25, 0.5, 0.75, 1]) {
          const at = [p.at[0] + t * (p.bend[0] - p.at[0]), p.at[1] + t * (p.bend[1] - p.at[1])] as const;
          for (const { centre, radius } of bubbles)
            expect(length2(sub2(at, centre)), p.text).toBeGreaterThan(radius * 0.999);
        }
      }
    },
  );
});

describe('the plan of a raft', () => {
  it('measures how wide it is under a barrel, and how far it projects there beyond the round', () => {
    const house = setOutHouse(houseOf({ footing: null, openings: [openingOf({ bearingDeg: 30 })] }));
    const { sheets } = houseSheets(house, undefined, { sheet: null, scale: null, sheets: ['footing'] });
    const [arch] = house.arches;
    const radius = house.slabs[0]?.radius as number;
    const measures = sheets
      .flatMap((s) => s.views.flatMap((v) => v.view.primitives))
      .flatMap((p) => (p.kind === 'dimension' ? [measureOf(p)] : []));
    const half = (arch?.section.width as number) / 2 + (arch?.ring as number);
    const projection = (arch?.faceV as number) - Math.sqrt(radius ** 2 - half ** 2);
    for (const size of [2 * half, projection])
      expect(
        measures.some((m) => Math.abs(m - size) < 1e-6),
        `${size}`,
      ).toBe(true);
  });
});

describe('the detail of a curb', () => {
  it.each(samples().filter(([, { domes }]) => domes.some((d) => d.curb)))(
    'is open where the oculus is: %s',
    (_, setout) => {
      const curb = setout.domes.find((d) => d.curb)?.curb as NonNullable<(typeof setout.domes)[number]['curb']>;
      const [draft] = details(setout).small.filter((d) => d.id.startsWith('detail-curb-'));
      const { primitives } = (draft as NonNullable<typeof draft>).draw(5).layout;
      // Nothing but the skylight, over the curb, stands nearer to the axis than the curb's inner face.
      const within = primitives
        .flatMap((p) => (p.kind === 'path' && p.layer === 'visible' ? p.segments : []))
        .flatMap((s) => (s.kind === 'line' ? [s.from, s.to] : []))
        .filter(([x, z]) => x < curb.clearRadius - 1e-6 && z < curb.topZ);
      expect(within).toEqual([]);
    },
  );

  it('draws its flashing as one stroke, up the curb and on over the render, at every scale it is drawn at', () => {
    const oculus = { radius: 350, curb: 150, upstand: 100 };
    const house = setOutHouse(houseOf({ domes: [domeOf({ oculus })] }));
    for (const scale of [10, 5, 10]) {
      const detail = details(house).small.find((d) => d.id.startsWith('detail-curb'));
      const drawn = detail?.draw(scale).layout.primitives ?? [];
      const flashing = drawn.flatMap((p) => (p.kind === 'path' && p.layer === 'ground' ? [p] : []))[0];
      const [first, ...rest] = flashing?.segments ?? [];
      expect(first?.kind).toBe('line');
      // Down the curb, then outward and never back.
      let x = Number.NEGATIVE_INFINITY;
      for (const s of rest) {
        if (s.kind !== 'line') throw new Error('an arc');
        expect(s.to[0]).toBeGreaterThan(Math.max(x, s.from[0]) - 1e-9);
        expect(length2(sub2(s.to, s.from))).toBeLessThan(60);
        x = s.to[0];
      }
    }
  });
});

describe('the detail of a crown plug', () => {
  it('shows the axis that its radii run from, under no other line, and render on both sides of it', () => {
    const setout = setOutHouse(
      houseOf({ domes: [domeOf()], wall: { thickness: 250, renderInside: 15, renderOutside: 20 } }),
    );
    const draft = details(setout).small.find((d) => d.id.startsWith('detail-plug-'));
    const { primitives } = (draft as NonNullable<typeof draft>).draw(5).layout;
    const lines = (layer: string) =>
      primitives
        .flatMap((p) => (p.kind === 'path' && p.layer === layer ? p.segments : []))
        .flatMap((s) => (s.kind === 'line' ? [[s.from, s.to] as const] : []));
    const [from, to] = lines('axis')[0] ?? [];
    const { crownZ, topZ } = setout.domes[0] as (typeof setout.domes)[number];
    expect([from?.[0], to?.[0]]).toEqual([0, 0]);
    expect(from?.[1]).toBeLessThan(crownZ - 20);
    expect(to?.[1]).toBeGreaterThan(topZ + 20);
    for (const d of primitives)
      if (d.kind === 'dimension' && d.type === 'linear' && d.angleDeg === 0)
        expect(d.from[1]).toBeGreaterThan(topZ + 20);
    for (const z of [crownZ - 15, topZ + 20])
      for (const side of [-1, 1])
        expect(lines('visible').some(([a, b]) => side * (a[0] + b[0]) > 20 && Math.abs(a[1] - z) < 3)).toBe(true);
  });
});

describe('bad input', () => {
  it('no plane of sixteen domes in rows is cut twice', () => {
    const domes = Array.from({ length: 16 }, (_, i) =>
      domeOf({ id: `dome-${i}`, at: [(i % 4) * 5000, Math.floor(i / 4) * 5000], radius: 1500 }),
    );
    const planes = houseSections(setOutHouse(houseOf({ domes })));
    const passed = planes.map((p) =>
      p.domes
        .map((d) => d.id)
        .sort()
        .join(' '),
    );
    expect(new Set(passed).size).toBe(planes.length);
    expect(new Set(passed.join(' ').split(' ')).size).toBe(16);
  });

  it('words of 200 letters are broken in tables that they would make wider than the sheet', () => {
    const title = 'W'.repeat(200);
    const project = { ...houseOf().project, title, client: title, address: title, drawnBy: title };
    const { sheets } = houseSheets(setOutHouse(houseOf({ project })), undefined, {
      sheet: 'A3',
      scale: null,
      sheets: ['cover'],
    });
    for (const sheet of sheets) expect(auditSheet(sheet)).toEqual([]);
    expect(written(sheets, 'cover').replaceAll('\n', '')).toContain(title);
  });

  it.each([
    ['no plot, no rooms, no openings', houseOf()],
    ['an opening at bearing 359.9', houseOf({ openings: [openingOf({ bearingDeg: 359.9 })] })],
    ['no footing, no slab', houseOf({ footing: null, slab: null })],
    [
      'sixteen domes',
      houseOf({
        domes: Array.from({ length: 16 }, (_, i) =>
          domeOf({ id: `dome-${i}`, at: [(i % 4) * 5000, Math.floor(i / 4) * 5000], radius: 1500 }),
        ),
      }),
    ],
  ])('%s has a sound set', (_, house) => {
    const only = house.domes.length > 1 ? (['cover', 'plan', 'footing', 'openings', 'details'] as const) : null;
    const { sheets } = houseSheets(setOutHouse(house), undefined, { sheet: null, scale: null, sheets: only });
    for (const sheet of sheets) expect(auditSheet(sheet), sheet.id).toEqual([]);
    expectScaleBars(sheets, writtenUnits(house));
    expect(sheets.map(kindOf)).not.toContain('site');
    expect(sheets.map(kindOf).includes('openings')).toBe(house.openings.length > 0);
    expect(sheets.map(kindOf).includes('footing')).toBe(house.footing !== null);
  });
});
