import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDescription } from '../../lib/description/read.js';
import { expandDimension, measureOf } from '../../lib/documents/dimensioning.js';
import { boundsOf } from '../../lib/documents/drawing-bounds.js';
import { middleOf, type TextBox } from '../../lib/documents/expansion.js';
import { arcSweep, extremePoints, segmentAt } from '../../lib/documents/segments.js';
import { auditSheet } from '../../lib/documents/sheet.js';
import { templateView } from '../../lib/documents/template.js';
import { textWidth } from '../../lib/documents/text-size.js';
import { cutTemplates } from '../../lib/drawings/moulds/cut-templates.js';
import { developedBed, headFigure } from '../../lib/drawings/moulds/developed.js';
import { mouldSheets } from '../../lib/drawings/moulds/mould-sheet.js';
import { mouldShapes, mouldTemplates, sharedPieces } from '../../lib/drawings/moulds/mould-templates.js';
import { mouldViews } from '../../lib/drawings/moulds/mould-views.js';
import { faceRibs } from '../../lib/drawings/moulds/ribs.js';
import { centeringTemplates } from '../../lib/drawings/templates/centering.js';
import { meridianTemplates } from '../../lib/drawings/templates/meridian.js';
import { blockCuts } from '../../lib/masonry/cuts.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { nameCuts } from '../../lib/masonry/leftovers.js';
import { formNames, longerForms } from '../../lib/masonry/longer.js';
import { formDimensions, mouldDimensions } from '../../lib/masonry/moulds/dimensions.js';
import { castShape, LINING } from '../../lib/masonry/moulds/shape.js';
import { blockAtHome, shortened } from '../../lib/masonry/placed.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { centresOf } from '../../lib/works/centering.js';
import { templateBoards } from '../../lib/works/meridian-template.js';
import { writeDxf, writeDxfSheet } from '../../lib/writers/dxf.js';
import { readByEzdxf } from '../readers/ezdxf.js';
import { domeOf, houseOf } from '../tools/house.js';

const family = readDescription(readFileSync('samples/family-house.yaml', 'utf8'), 'family-house.yaml');
const plan = planMasonry(setOutHouse(family));
const laid = layBlocks(plan.setout);
const shapes = plan.moulds.moulds.map(({ id, mould }) => ({
  id,
  mould,
  shape: castShape(blockAtHome(mould), family.blocks),
}));
const flat = planMasonry(setOutHouse(houseOf({ domes: [domeOf()], blocks: { ...houseOf().blocks, faces: 'flat' } })));

describe('unrolled beds', () => {
  it('have edges as long as the rings’ analytic arcs, and are as deep as the wall', () => {
    for (const { id, mould, shape } of shapes) {
      const d = mouldDimensions(mould, family.blocks);
      for (const edge of ['lower', 'upper'] as const) {
        const { outline, innerRadius, outerRadius, middles } = developedBed(shape, edge);
        const lengths = [outline[0], outline[2]].map((s) =>
          s?.kind === 'arc' ? s.radius * Math.abs(arcSweep(s)) : Number.NaN,
        );
        expect(lengths[0], `${id} ${edge}`).toBeCloseTo(d.intrados.edges[edge].arc, 6);
        expect(lengths[1], `${id} ${edge}`).toBeCloseTo(d.extrados.edges[edge].arc, 6);
        expect((outerRadius as number) - (innerRadius as number)).toBeCloseTo(d.thickness, 6);
        expect(middles[1][1] - middles[0][1]).toBeCloseTo(d.thickness, 6);
      }
    }
  });

  it('unroll a frustum as the textbook does: r1 = 2.449490, r2 = 2.332381, slant 0.416791 give L1 = 8.717731', () => {
    // A cone's rings lie on circles of radius r × slant / (r1 − r2) when unrolled: derived in every text on sheet metal.
    const [r1, r2, slant] = [2.44949, 2.332381, 0.416791];
    const c = (r1 - r2) / slant;
    expect(r1 / c).toBeCloseTo(8.717731, 3);
    for (const { mould, shape } of shapes) {
      const { r, normal } = mould.parent.at.upper;
      const { innerRadius } = developedBed(shape, 'upper');
      expect(innerRadius).toBeCloseTo((r / normal[0]) * shape.grow, 6);
    }
  });

  it('are the trapezia between the corners where faces are flat, edges as long as the chords', () => {
    const { blocks } = flat.setout.house;
    for (const { mould } of flat.moulds.moulds) {
      const d = mouldDimensions(mould, blocks);
      for (const edge of ['lower', 'upper'] as const) {
        const [a, b, c, e] = developedBed(castShape(blockAtHome(mould), blocks), edge).corners;
        expect(b[0] - a[0]).toBeCloseTo(d.intrados.edges[edge].chord, 6);
        expect(c[0] - e[0]).toBeCloseTo(d.extrados.edges[edge].chord, 6);
      }
    }
  });
});

describe('heads and ribs', () => {
  it('a head has its corners as far apart as they are in space, all of them on one plane', () => {
    for (const { id, shape } of shapes) {
      const { corners } = headFigure(shape);
      const space = [shape.at(0, 0, 1), shape.at(1, 0, 1), shape.at(1, 1, 1), shape.at(0, 1, 1)];
      for (const i of [0, 1, 2, 3])
        for (const j of [0, 1, 2, 3]) {
          const [p, q] = [corners[i], corners[j]] as [readonly number[], readonly number[]];
          const [a, b] = [space[i], space[j]] as [readonly number[], readonly number[]];
          const flatFar = Math.hypot((p[0] as number) - (q[0] as number), (p[1] as number) - (q[1] as number));
          const far = Math.hypot(...a.map((x, k) => x - (b[k] as number)));
          expect(flatFar, id).toBeCloseTo(far, 6);
        }
    }
  });

  it('the edge of every rib of a hemisphere is an arc of the sphere’s section by its plane', () => {
    // A plane at distance e from a sphere's centre cuts a circle of radius √(R² − e²).
    for (const { id, shape } of shapes.filter(
      ({ mould: m }) => m.parent.domeId === 'living' && m.parent.course.part === 'shell',
    )) {
      for (const rib of faceRibs(shape)) {
        const sphere = rib.face === 'intrados' ? 3000 * shape.grow - LINING : 3250 * shape.grow + LINING;
        const circle = Math.sqrt(sphere ** 2 - (rib.way === 'up' ? rib.place : 0) ** 2);
        const sagitta = circle - Math.sqrt(circle ** 2 - (rib.length / 2) ** 2);
        expect(Math.abs(rib.rise), `${id} ${rib.face} ${rib.way}`).toBeCloseTo(sagitta, 2);
        expect(Math.sign(rib.rise)).toBe(rib.face === 'intrados' ? 1 : -1);
      }
    }
  });

  it('flat faces need none', () => {
    for (const { mould } of flat.moulds.moulds)
      expect(faceRibs(castShape(blockAtHome(mould), flat.setout.house.blocks))).toEqual([]);
  });
});

describe('template drawings', () => {
  const templates = mouldTemplates(mouldShapes(plan, laid));

  it('ezdxf reads every dimension as our number, and the unrolled edges as the rings’ arcs', () => {
    for (const k of [0, 31]) {
      const template = templates[k];
      const { id, mould } = shapes[k] as (typeof shapes)[number];
      if (!template) throw new Error('the family house has so many moulds');
      const view = templateView(template, 'half-millimetres');
      const read = readByEzdxf(writeDxf(view));
      expect({ errors: read.errors, fixes: read.fixes, units: read.units }).toEqual({
        errors: [],
        fixes: [],
        units: 4,
      });
      const ours = view.primitives.flatMap((p) => (p.kind === 'dimension' ? [measureOf(p)] : []));
      expect(read.dimensions.map((d) => d.measurement)).toEqual(ours.map((m) => expect.closeTo(m, 6)));
      // The bar to check with comes first.
      expect(ours[0]).toBe(100);
      const d = mouldDimensions(mould, family.blocks);
      const arcs = read.polylines.flatMap(({ points }) =>
        points.map((p, i) => arcLength(p, points[(i + 1) % points.length] ?? p)),
      );
      for (const edge of ['lower', 'upper'] as const)
        for (const face of [d.intrados, d.extrados])
          expect(
            arcs.some((a) => Math.abs(a - face.edges[edge].arc) < 1e-3),
            `${id} ${edge}`,
          ).toBe(true);
    }
  });

  it('moulds share what is alike: fewer pieces to print, and none is lost', () => {
    const all = templates.flatMap((t) => t.pieces).length;
    const shared = sharedPieces(mouldShapes(plan, laid));
    expect(shared.length).toBeLessThan(0.9 * all);
    for (const { id } of templates)
      for (const what of ['bed', 'head', 'rib of the intrados along', 'rib of the extrados up'])
        expect(
          shared.some((p) => p.name.includes(what) && p.name.split(' ').includes(id)),
          `${what} of ${id}`,
        ).toBe(true);
  });
});

/** Length of a polyline's segment: its bulge is the tangent of a quarter of its turn. */
function arcLength(a: readonly number[], b: readonly number[]): number {
  const chord = Math.hypot((b[0] as number) - (a[0] as number), (b[1] as number) - (a[1] as number));
  const turn = 4 * Math.atan(a[2] ?? 0);
  return turn === 0 ? chord : (chord * Math.abs(turn)) / (2 * Math.sin(Math.abs(turn) / 2));
}

describe('mould sheets', () => {
  const sheets = mouldSheets(plan, laid);

  const longer = longerForms(plan, laid);

  it('break the line at mid-height where the number of the diagonal stands', () => {
    const faces = sheets.flatMap((s) => s.views.map((v) => v.view).filter((v) => /^(in|ex)trados$/.test(v.id)));
    expect(faces).toHaveLength(2 * sheets.length);
    for (const { primitives, scale, units } of faces) {
      const diagonal = primitives.find((p) => p.kind === 'dimension' && p.type === 'aligned');
      if (diagonal?.kind !== 'dimension') throw new Error('no diagonal');
      const [text] = expandDimension(diagonal, scale, units).texts;
      const [x, y] = middleOf(text as TextBox);
      const turn = ((text as TextBox).rotationDeg * Math.PI) / 180;
      const level = primitives.flatMap((p) => (p.kind === 'path' && p.layer === 'joint' ? p.segments : []));
      expect(level).not.toHaveLength(0);
      for (const s of level) {
        expect(s.kind).toBe('line');
        for (let i = 0; i <= 200; i++) {
          const p = segmentAt(s, i / 200);
          // In the text's own frame: along its line, and square to it.
          const along = (p[0] - x) * Math.cos(turn) + (p[1] - y) * Math.sin(turn);
          const across = (p[1] - y) * Math.cos(turn) - (p[0] - x) * Math.sin(turn);
          const { width, height } = text as TextBox;
          expect(Math.abs(along) < width / 2 && Math.abs(across) < height / 2).toBe(false);
        }
      }
    }
  });

  it('are sound, one for each mould and each longer one, and tell its inner sizes', () => {
    expect(longer.length).toBeGreaterThan(5);
    expect(sheets.map((s) => s.id)).toEqual([...plan.moulds.moulds, ...longer].map((m) => m.id));
    for (const sheet of sheets) expect(auditSheet(sheet), sheet.id).toEqual([]);
    sheets.forEach((sheet, i) => {
      const mould = shapes[i]?.mould;
      const form = longer[i - shapes.length];
      const d = mould
        ? mouldDimensions(mould, family.blocks)
        : formDimensions((form as NonNullable<typeof form>).form, family.blocks);
      const measures = sheet.views.flatMap(({ view }) =>
        view.primitives.flatMap((p) => (p.kind === 'dimension' ? [measureOf(p)] : [])),
      );
      const wanted = [d.intrados, d.extrados].flatMap((f) => [
        f.edges.lower.chord,
        f.edges.middle.chord,
        f.edges.upper.chord,
      ]);
      for (const size of [...wanted, d.thickness])
        expect(
          measures.some((m) => Math.abs(m - size) < 1e-6),
          `${sheet.id} ${size}`,
        ).toBe(true);
      for (const diagonal of [d.intrados.diagonal, d.extrados.diagonal])
        expect(
          measures.some((m) => Math.abs(m - diagonal) < 0.1),
          `${sheet.id} ${diagonal}`,
        ).toBe(true);
      const words = sheet.paper.flatMap((p) => (p.kind === 'text' ? [p.text] : [])).join(' ');
      // Ribs beside the middle stand half-way to the heads, measured at mid-height on the intrados.
      const beside = Number(/±(\d+\.\d)/.exec(words)?.[1]);
      // r sin(a / 2) lies between r sin(a) / 2 and r a / 2; written to half a millimetre.
      const { chord, arc } = d.intrados.edges.middle;
      expect(beside, sheet.id).toBeGreaterThan(chord / 4 - 0.2501);
      expect(beside, sheet.id).toBeLessThan(arc / 4 + 0.2501);
      if (form && form.stops.length > 0) expect(words, sheet.id).toContain('Stop boards');
      for (const told of ['It stands on one head', 'in this order: 1 form of the extrados', 'Nothing holds the block'])
        expect(words, sheet.id).toContain(told);
    });
  });

  it('names stop boards clear of the face and of each other, those alike as one', () => {
    const form = longer.find(({ stops }) => stops.length > 1) as NonNullable<(typeof longer)[number]>;
    const [stop] = form.stops as [(typeof form.stops)[number]];
    const at = (number: number, rad: number, keeps: 'start' | 'end') => ({
      block: { ...stop.block, number },
      keeps,
      placed: shortened(form.form, rad),
    });
    const stops = [
      at(1, 0.04, 'start'),
      at(2, 0.04, 'start'),
      at(3, 0.042, 'start'),
      at(4, 0.05, 'end'),
      at(5, 0, 'end'),
    ];
    for (const scale of [5, 10, 20])
      for (const { primitives } of mouldViews(
        castShape(form.form, family.blocks),
        scale,
        'half-millimetres',
        stops,
      ).slice(0, 2)) {
        const names = primitives.flatMap((p) => (p.kind === 'text' ? [p] : []));
        expect(names.map((p) => p.text)).toEqual(['stop 1, 2', 'stop 3', 'stop 4']);
        expect(primitives.filter((p) => p.kind === 'path' && p.layer === 'hidden')).toHaveLength(3);
        const face = boundsOf(primitives.flatMap((p) => (p.kind === 'path' ? p.segments.flatMap(extremePoints) : [])));
        const boxes = names.map(({ at: [x, y], text, heightMm }): { min: Vec2; max: Vec2 } => ({
          min: [x, y],
          max: [x + textWidth(text, heightMm) * scale, y + heightMm * scale],
        }));
        // Dimension lines stand 7 mm off the face.
        for (const { min, max } of boxes) {
          const off = min[1] > face.max[1] ? max[1] - face.max[1] : face.min[1] - min[1];
          expect(min[1] > face.max[1] || max[1] < face.min[1]).toBe(true);
          expect(off).toBeLessThan(7 * scale);
          expect(min[0]).toBeGreaterThan(face.min[0]);
          expect(max[0]).toBeLessThan(face.max[0]);
        }
        boxes.forEach((a, i) => {
          for (const b of boxes.slice(i + 1))
            expect(
              [0, 1].some(
                (k) => (a.max[k] as number) < (b.min[k] as number) || (b.max[k] as number) < (a.min[k] as number),
              ),
            ).toBe(true);
        });
      }
  });

  it('have notes and tables that cover no other, on narrower sheets in feet too', () => {
    const feet = { ...plan, setout: { ...plan.setout, house: { ...family, units: 'ft' as const } } };
    for (const { id, paper } of [...sheets.slice(-longer.length), ...mouldSheets(feet, laid).slice(-longer.length)]) {
      const texts = paper.flatMap((p) => (p.kind === 'text' ? [p] : []));
      expect(texts.length).toBeGreaterThan(50);
      const boxes = texts.map(({ text, at: [x, y], heightMm, anchor }) => {
        const wide = textWidth(text, heightMm);
        const left = x - wide * { left: 0, centre: 0.5, right: 1 }[anchor];
        return { text, left, right: left + wide, low: y, high: y + heightMm };
      });
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1))
          if (a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high)
            expect.unreachable(`${id}: ${a.text} / ${b.text}`);
      });
    }
  });

  it('ezdxf reads their dimensions as our numbers, written to half a millimetre', () => {
    const sheet = sheets[10];
    if (!sheet) throw new Error('the family house has so many moulds');
    const read = readByEzdxf(writeDxfSheet(sheet));
    expect(read.errors).toEqual([]);
    const ours = sheet.views.flatMap(({ view }) => view.primitives.flatMap((p) => (p.kind === 'dimension' ? [p] : [])));
    expect(read.dimensions.map((d) => d.measurement)).toEqual(ours.map((p) => expect.closeTo(measureOf(p), 6)));
    for (const { texts, measurement } of read.dimensions)
      expect(Math.abs(Number(texts[0]?.replace('mid-height ', '')) - measurement)).toBeLessThan(0.2501);
  });
});

describe('templates of cuts', () => {
  const templates = cutTemplates(plan, laid);

  it('cuts that are alike share one; every name has one, and its line begins where the table says', () => {
    const formOf = formNames(plan);
    const named = nameCuts(blockCuts(plan.setout, laid), ({ block }) => formOf(block) ?? '');
    const names = new Set(named.map((n) => n.name));
    expect(names.size).toBeLessThan(named.length);
    const told = templates.flatMap((t) => t.pieces.flatMap((p) => (p.name.split(' with ')[1] ?? '').split(' ')));
    expect(new Set(told)).toEqual(names);
    // On each side of the block a name stands once.
    for (const t of templates)
      for (const side of ['lower bed', 'upper bed', 'intrados', 'extrados']) {
        const own = t.pieces
          .filter((p) => p.name.startsWith(side))
          .flatMap((p) => (p.name.split(' with ')[1] ?? '').split(' '));
        expect(new Set(own).size, `${t.id} ${side}`).toBe(own.length);
      }
    let held = 0;
    for (const { cut, name, mirrored } of named) {
      if (mirrored || cut.keeps !== 'start') continue;
      const piece = templates
        .flatMap((t) => t.pieces)
        .find((p) => p.name.startsWith('lower bed with') && p.name.split(' ').includes(name));
      const outline = piece?.primitives[0];
      if (!piece || outline?.kind !== 'path' || !(cut.left.innerLower > 0) || !(cut.left.outerLower > 0)) continue;
      const inner = outline.segments[0];
      if (inner?.kind !== 'arc') continue;
      // From the left corner along the inner edge by the length of the table.
      const from = inner.start + (inner.ccw ? 1 : -1) * (cut.left.innerLower / inner.radius);
      const wanted = [
        inner.centre[0] + inner.radius * Math.cos(from),
        inner.centre[1] + inner.radius * Math.sin(from),
      ] as const;
      const near = piece.primitives.some((p) => {
        if (p.kind !== 'path' || p.layer !== 'visible') return false;
        const [x, y] = segmentAt(p.segments[0] as (typeof p.segments)[number], 0);
        return Math.hypot(x - wanted[0], y - wanted[1]) < 0.3;
      });
      expect(near, `${name} of ${cut.block.mark}`).toBe(true);
      held++;
    }
    expect(held).toBeGreaterThan(30);
  });
});

describe('templates of centering and of meridians', () => {
  it('a rib has the width, rise and radius of the table, and one serves all arches of its kind', () => {
    const templates = centeringTemplates(plan.setout);
    const centres = centresOf(plan.setout).filter((c) => c.board);
    for (const centre of centres) {
      const own = templates.filter((t) => t.title.split(' ').includes(centre.id));
      expect(own, centre.id).toHaveLength(1);
      const [piece] = own[0]?.pieces ?? [];
      const measures = piece?.primitives.flatMap((p) => (p.kind === 'dimension' ? [measureOf(p)] : [])) ?? [];
      expect(measures[0]).toBeCloseTo(centre.ribWidth, 6);
      expect(measures[1]).toBeCloseTo(centre.ribRise, 6);
      if (centre.board?.pieces === 2) expect(measures[2]).toBeCloseTo(centre.board.chord, 6);
      const [edge, tube] =
        piece?.primitives.flatMap((p) => (p.kind === 'path' && p.segments.some((s) => s.kind === 'arc') ? [p] : [])) ??
        [];
      const lengths = [edge, tube].map((path) =>
        path?.segments.reduce((sum, s) => sum + (s.kind === 'arc' ? s.radius * Math.abs(arcSweep(s)) : 0), 0),
      );
      expect(lengths[0]).toBeCloseTo((centre.board?.length ?? 0) * (centre.board?.pieces ?? 0), 6);
      expect(lengths[1]).toBeCloseTo((centre.tube?.length ?? 0) * (centre.tube?.pieces ?? 0), 6);
    }
  });

  it('the boards of a meridian template touch the intrados and have the offsets of the cut list', () => {
    const templates = meridianTemplates(plan.setout);
    expect(templates.map((t) => t.id)).toEqual(['meridian-kitchen', 'meridian-bath']);
    for (const { id, pieces } of templates) {
      const dome = plan.setout.domes.find((d) => `meridian-${d.id}` === id);
      if (!dome) throw new Error(`no dome for ${id}`);
      const boards = templateBoards(dome, family.settingOut.board);
      expect(pieces).toHaveLength(boards.length);
      boards.forEach((board, i) => {
        const measures = pieces[i]?.primitives.flatMap((p) => (p.kind === 'dimension' ? [measureOf(p)] : []));
        expect(measures).toEqual([board.chord, ...board.offsets].map((m) => expect.closeTo(m, 6)));
        const edge = pieces[i]?.primitives[0];
        if (edge?.kind !== 'path') throw new Error('the outline comes first');
        for (const [k, offset] of board.offsets.entries()) {
          // Arcs stand for the edge: where they pass the quarters they stand out as the list says.
          const x = (board.chord * (k + 1)) / 4;
          const near = edge.segments
            .slice(0, 8)
            .flatMap((s) => Array.from({ length: 101 }, (_, t) => segmentAt(s, t / 100)))
            .reduce((a, b) => (Math.abs(b[0] - x) < Math.abs(a[0] - x) ? b : a));
          expect(Math.abs(near[1] - offset)).toBeLessThan(0.5);
        }
      });
    }
  });
});
