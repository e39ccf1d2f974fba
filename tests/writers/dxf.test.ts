import Handle from 'dxf-writer/src/Handle.js';
import { describe, expect, it } from 'vitest';
import { dimensionText } from '../../lib/documents/dimensioning.js';
import type { DimensionPrimitive, Primitive, View } from '../../lib/documents/drawing.js';
import { viewBounds } from '../../lib/documents/drawing-bounds.js';
import { HATCHES, placeFamily } from '../../lib/documents/hatches.js';
import { dashesOf, LAYERS } from '../../lib/documents/layers.js';
import { GuardedTags } from '../../lib/writers/dxf/tags.js';
import { writeDxf } from '../../lib/writers/dxf.js';
import { demoView } from '../documents/demo-view.js';
import { lintDxf, tagsOf } from '../readers/dxf-lint.js';
import { measureAsRead, readByEzdxf } from '../readers/ezdxf.js';

const viewOf = (...primitives: Primitive[]): View => ({ id: 'v', title: 'V', scale: 50, units: 'metric', primitives });
const isDimension = (p: Primitive): p is DimensionPrimitive => p.kind === 'dimension';
const MILLIMETRES = 4;

describe('writeDxf, read by ezdxf', () => {
  for (const units of ['metric', 'feet-inches'] as const)
    describe(units, () => {
      const view = demoView(units, units === 'metric' ? 50 : 48);
      const bytes = writeDxf(view);
      const read = readByEzdxf(bytes);

      it('passes the audit without errors or repairs, and our own lint', () => {
        expect(read).toMatchObject({ version: 'AC1021', errors: [], fixes: [] });
        expect(lintDxf(bytes)).toEqual([]);
      });

      it('is in millimetres, at 1:1, with extents that hold the view', () => {
        expect(read.units).toBe(MILLIMETRES);
        const { min, max } = viewBounds(view);
        expect(read.extents.flat()).toEqual([...min, ...max].map((x) => expect.closeTo(x, 6)));
        expect(read.dimScale).toEqual([view.scale, view.scale]);
        expect(read.dimTextHeight).toEqual([2.5, 2.5]);
      });

      it('holds every primitive as an entity of its kind', () => {
        const of = (kind: Primitive['kind']): number => view.primitives.filter((p) => p.kind === kind).length;
        const paths = view.primitives.filter((p) => p.kind === 'path');
        const alone = paths.filter((p) => p.segments.length === 1 && !p.closed);
        const arcs = alone.filter((p) => p.segments[0]?.kind === 'arc').length;
        const hatches = view.primitives
          .map((p) => (p.kind !== 'hatch' ? 0 : p.pattern === 'solid' ? 1 : HATCHES[p.pattern].length))
          .reduce((sum, n) => sum + n, 0);
        // A level mark is three lines and two texts; a leader two lines, a dot and a text.
        expect(read.counts).toEqual({
          LWPOLYLINE: paths.length - alone.length,
          // A tag is two arcs, a text, and two lines where it is wide.
          ARC: arcs + 2 * of('tag'),
          LINE: alone.length - arcs + 3 * of('level') + 2 * of('leader') + 2,
          CIRCLE: of('circle'),
          ELLIPSE: of('ellipse'),
          TEXT: of('text') + 2 * of('level') + of('leader') + of('tag'),
          HATCH: hatches + of('leader'),
          DIMENSION: of('dimension'),
        });
      });

      it('has every dimension measured by the reader as by us, with its text in a block of its own', () => {
        const dimensions = view.primitives.filter(isDimension);
        expect(read.dimensions).toHaveLength(dimensions.length);
        dimensions.forEach((dim, i) => {
          const found = read.dimensions[i];
          expect(Math.abs((found?.measurement ?? Number.NaN) - measureAsRead(dim))).toBeLessThan(1e-6);
          expect(found?.texts).toEqual([dimensionText(dim, units)]);
          expect(found?.strokes).toBeGreaterThanOrEqual(2);
          if (dim.type === 'angle' || dim.type === 'arc') {
            // The point that tells which angle is meant lies between the two rays.
            const { arcPoint } = found as { arcPoint: readonly [number, number] };
            const bearing = (p: readonly [number, number]): number =>
              Math.atan2(p[1] - dim.centre[1], p[0] - dim.centre[0]);
            expect(bearing(arcPoint)).toBeGreaterThan(bearing(dim.from));
            expect(bearing(arcPoint)).toBeLessThan(bearing(dim.to));
          }
          expect(found?.style).toBe(units === 'metric' ? 'OBLIQUE-50-MM' : 'OBLIQUE-48-FT');
        });
        expect(read.dimensions[0]?.override).toBe('clear <>');
      });

      it('gives every layer its weight and line type, dashes enlarged by the scale', () => {
        for (const { name, weightMm, line } of LAYERS) {
          const layer = read.layers[name];
          expect(layer?.weight).toBe(Math.round(weightMm * 100));
          const dashes = dashesOf(line, weightMm).map((d) => expect.closeTo(d * view.scale, 9));
          if (line !== 'continuous') expect(read.lineTypes[layer?.lineType ?? '']).toEqual(dashes);
          else expect(layer?.lineType).toBe('Continuous');
        }
      });

      it('spells out the lines of each hatch and keeps the arcs of its loops', () => {
        const hatches = view.primitives.filter((p) => p.kind === 'hatch');
        const parts = hatches.flatMap((hatch) =>
          hatch.pattern === 'solid' ? [] : HATCHES[hatch.pattern].map((part) => ({ hatch, part })),
        );
        for (const [i, { hatch, part }] of parts.entries()) {
          const found = read.hatches[i];
          expect(found).toMatchObject({ solid: 0, layer: 'hatch', paths: hatch.loops.length });
          expect(found?.bulges).toBe(hatch.loops.flat().filter((s) => s.kind === 'arc').length);
          const { families, dxf } = part;
          expect(found?.pattern).toBe(dxf.name);
          expect(found?.lines).toEqual(
            families.map((f) => {
              const { angleDeg, base, step, dashes } = placeFamily(f, view.scale);
              const near = (values: readonly number[]) => values.map((x) => expect.closeTo(x, 6));
              return { angle: angleDeg, base: near(base), offset: near(step), dashes: near(dashes) };
            }),
          );
        }
      });

      it('names each hatch as the reader knows a pattern of the very same lines', () => {
        const hatches = read.hatches.filter((h) => h.solid === 0);
        expect(hatches.length).toBeGreaterThan(Object.keys(HATCHES).length);
        for (const { lines, namedLines } of hatches) {
          expect(lines).toHaveLength(namedLines.length);
          lines.forEach((line, i) => {
            const named = namedLines[i];
            expect(line.angle).toBeCloseTo(named?.angle ?? Number.NaN, 6);
            // The reader's table holds its lengths rounded to about 1e-7.
            for (const key of ['base', 'offset', 'dashes'] as const)
              expect(line[key]).toEqual(named?.[key].map((x) => expect.closeTo(x, 3)));
          });
        }
      });

      it('sets texts in paper heights, at their anchors', () => {
        const title = read.texts.find((t) => t.text.startsWith('Section A–A  Ø 6 m'));
        expect(title).toMatchObject({
          align: 'CENTER',
          at: [0, -1500],
          height: 5 * view.scale,
          rotation: 0,
          layer: 'text',
        });
        expect(read.texts.map((t) => t.text)).toContain(units === 'metric' ? '+3.600' : `+11'-9 3/4"`);
      });
    });

  it('keeps arcs as arcs: half turn, most of a turn, both ways', () => {
    const arc = (start: number, end: number, ccw: boolean): Primitive => ({
      kind: 'path',
      layer: 'visible',
      closed: false,
      segments: [{ kind: 'arc', centre: [10, 20], radius: 500, start, end, ccw }],
    });
    const { arcs } = readByEzdxf(writeDxf(viewOf(arc(0, Math.PI, true), arc(0, Math.PI, false), arc(-1, 4, true))));
    const degrees = [
      [0, 180],
      [180, 0],
      [360 - 180 / Math.PI, 720 / Math.PI],
    ];
    expect(arcs).toEqual(
      degrees.map(([start, end]) => ({
        layer: 'visible',
        radius: 500,
        start: expect.closeTo(start as number, 6),
        end: expect.closeTo(end as number, 6),
      })),
    );
  });

  it('bulges a polyline by the tangent of a quarter of the turn, positive to the left', () => {
    const path: Primitive = {
      kind: 'path',
      layer: 'cut',
      closed: true,
      segments: [
        { kind: 'line', from: [0, 0], to: [200, 0] },
        { kind: 'arc', centre: [100, 0], radius: 100, start: 0, end: Math.PI / 2, ccw: true },
        { kind: 'arc', centre: [100, 200], radius: 100, start: -Math.PI / 2, end: -Math.PI, ccw: false },
        { kind: 'line', from: [0, 200], to: [0, 0] },
      ],
    };
    const [found] = readByEzdxf(writeDxf(viewOf(path))).polylines;
    const quarter = Math.tan(Math.PI / 8);
    expect(found?.closed).toBe(true);
    expect(found?.points).toEqual(
      [
        [0, 0, 0],
        [200, 0, quarter],
        [100, 100, -quarter],
        [0, 200, 0],
      ].map((p) => p.map((x) => expect.closeTo(x, 8))),
    );
  });
});

describe('writeDxf', () => {
  it('gives the same bytes twice, and after another drawing, and leaves the count of handles as it was', () => {
    Handle.seed = 777;
    const first = writeDxf(demoView());
    writeDxf(demoView('feet-inches', 20));
    expect(writeDxf(demoView())).toEqual(first);
    expect(Handle.seed).toBe(777);
    expect(() => writeDxf({ ...demoView(), scale: Number.NaN })).toThrow();
    expect(Handle.seed).toBe(777);
  });

  it('lets no text bring in an entity, a code or a control character', () => {
    const nasty = [
      '0\nLINE\n8\n0',
      'a\r\n  0\r\nEOF',
      'tab\tbell\u0007',
      '%%uunder%%d',
      '\\U+00D8 \\M+1',
      '^J^M',
      '</text><script>',
      '\u2028\ud800',
      '',
    ];
    const texts = nasty.map(
      (text, i): Primitive => ({
        kind: 'text',
        layer: 'text',
        at: [0, i * 300],
        text,
        heightMm: 2.5,
        anchor: 'left',
        rotationDeg: 0,
      }),
    );
    const level: Primitive = { kind: 'level', at: [0, 0], level: 0, side: 'left', label: nasty[0] as string };
    const bytes = writeDxf(viewOf(...texts, level));
    const read = readByEzdxf(bytes);
    expect(lintDxf(bytes)).toEqual([]);
    expect(read.errors).toEqual([]);
    expect(read.counts).toEqual({ TEXT: nasty.length + 2, LINE: 3 });
    expect(read.texts.map((t) => t.text).slice(2, 10)).toEqual([
      '0 LINE 8 0',
      'a    0  EOF',
      'tab bell ',
      '% %uunder% %d',
      '\\ U+00D8 \\ M+1',
      '^J^M',
      '</text><script>',
      '  ',
    ]);
  });

  it('cleans the prefix of a dimension, too', () => {
    const dim: Primitive = {
      kind: 'dimension',
      type: 'linear',
      from: [0, 0],
      to: [9, 0],
      angleDeg: 0,
      line: [0, 1],
      prefix: 'a\n0\nLINE <>',
    };
    const bytes = writeDxf(viewOf(dim));
    const read = readByEzdxf(bytes);
    expect(read.counts).toEqual({ DIMENSION: 1 });
    expect(read.dimensions[0]?.override).toBe('a 0 LINE < ><>');
    expect(lintDxf(bytes)).toEqual([]);
  });

  it('refuses an unsound view, telling all that is wrong', () => {
    const bad: Primitive = { kind: 'circle', layer: 'cut', centre: [Number.NaN, 0], radius: 1 };
    expect(() => writeDxf(viewOf(bad, { ...bad, centre: [0, 0], radius: 0 }))).toThrow(
      /v: The circle 0 has a centre.*The circle 1 has no radius/,
    );
  });

  it('writes an empty view as a sound file', () => {
    const bytes = writeDxf(viewOf());
    expect(readByEzdxf(bytes)).toMatchObject({ errors: [], fixes: [], counts: {} });
    expect(lintDxf(bytes)).toEqual([]);
  });
});

describe('GuardedTags', () => {
  it('lets no wild value through', () => {
    const push = (code: number, value: string | number) => () => new GuardedTags().push(code, value);
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, '5', undefined as unknown as number])
      expect(push(10, bad)).toThrow(/Group 10 .* finite number/);
    for (const bad of [1.5, Number.NaN, '1']) expect(push(70, bad)).toThrow(/Group 70 .* whole number/);
    for (const bad of ['a\nb', '\u0000', 5, undefined as unknown as string])
      expect(push(1, bad)).toThrow(/Group 1 .* text on one line/);
    for (const bad of ['', 'xyz', '1 2']) expect(push(330, bad)).toThrow(/Group 330 .* handle/);
  });

  it('writes numbers without exponents or negative zeros', () => {
    const tags = new GuardedTags();
    for (const x of [1e-7, -1e-12, 6000, -0.5, 1234567.125]) tags.push(10, x);
    expect(
      new TextDecoder()
        .decode(tags.written())
        .split('\n')
        .filter((_, i) => i % 2 === 1),
    ).toEqual(['0.0000001', '0.0', '6000.0', '-0.5', '1234567.125']);
  });
});

describe('lintDxf', () => {
  const text = new TextDecoder().decode(writeDxf(demoView()));
  const lint = (changed: string): string[] => lintDxf(new TextEncoder().encode(changed));

  it('finds what the reader lets pass', () => {
    expect(lint(text)).toEqual([]);
    expect(lint(text.replace('\n40\n50.0\n', '\n40\nNaN\n'))[0]).toMatch(/group 40 is "NaN"/);
    expect(lint(text.replace('\n8\ncut\n', '\n8\nnowhere\n'))[0]).toMatch(/Layer nowhere/);
    expect(lint(text.replace('\n6\nDASHDOT\n', '\n6\nWAVES\n'))[0]).toMatch(/Line type WAVES/);
    expect(lint(text.replace(/\n330\n\w+\n/, '\n330\nFFFF\n'))[0]).toMatch(/refers to FFFF/);
    expect(lint(text.replace(/(LINE\n5\n)\w+\n/, (_, head) => `${head}1\n`)).join()).toMatch(/used twice/);
    expect(() => tagsOf(new TextEncoder().encode(text.slice(0, -1)))).toThrow(/line end/);
  });
});
