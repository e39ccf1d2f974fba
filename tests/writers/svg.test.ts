import { describe, expect, it } from 'vitest';
import type { Primitive, View } from '../../lib/documents/drawing.js';
import { viewBounds } from '../../lib/documents/drawing-bounds.js';
import { writeSvg } from '../../lib/writers/svg.js';
import { demoView } from '../documents/demo-view.js';

const text = (view: View): string => new TextDecoder().decode(writeSvg(view));
const viewOf = (...primitives: Primitive[]): View => ({
  id: 'plan 1',
  title: 'Plan',
  scale: 50,
  units: 'metric',
  primitives,
});

/** Every element closed in turn, nothing but our own elements, attributes quoted. */
function elementsOf(svg: string): string[] {
  const open: string[] = [];
  const names: string[] = [];
  const rest = svg.replace(/<(\/?)([A-Za-z]+)((?:\s[\w:-]+="[^"<]*")*)\s*(\/?)>/g, (_, end, name, __, alone) => {
    if (end) expect(open.pop()).toBe(name);
    else names.push(name);
    if (!end && !alone) open.push(name);
    return '';
  });
  expect(open).toEqual([]);
  expect(rest).not.toMatch(/[<>]/);
  expect(rest).not.toMatch(/&(?!(amp|lt|gt|quot|#39);)/);
  return names;
}

describe('writeSvg', () => {
  it('is well formed and consists of shapes and texts alone', () => {
    for (const units of ['metric', 'feet-inches'] as const) {
      const names = new Set(elementsOf(text(demoView(units))));
      expect([...names].sort()).toEqual(['circle', 'clipPath', 'desc', 'g', 'path', 'svg', 'text', 'title']);
    }
  });

  it('is as large as the view on paper, with a margin of 5 mm', () => {
    const view = demoView();
    const { min, max } = viewBounds(view);
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(text(view)) ?? [];
    expect(Number(width)).toBeCloseTo((max[0] - min[0]) / 50 + 10, 3);
    expect(Number(height)).toBeCloseTo((max[1] - min[1]) / 50 + 10, 3);
  });

  it('draws a millimetre of model as a fiftieth of paper, upward', () => {
    const path: Primitive = {
      kind: 'path',
      layer: 'cut',
      closed: false,
      segments: [{ kind: 'line', from: [100, 100], to: [5100, 2600] }],
    };
    expect(text(viewOf(path))).toContain('<path d="M5 55L105 5"/>');
  });

  it('turns arcs the way they turn on paper, in two halves', () => {
    const arc = (ccw: boolean): Primitive => ({
      kind: 'path',
      layer: 'cut',
      closed: false,
      segments: [{ kind: 'arc', centre: [0, 0], radius: 500, start: 0, end: Math.PI, ccw }],
    });
    expect(text(viewOf(arc(true)))).toContain('<path d="M25 15A10 10 0 0 0 15 5A10 10 0 0 0 5 15"/>');
    expect(text(viewOf(arc(false)))).toContain('<path d="M25 5A10 10 0 0 1 15 15A10 10 0 0 1 5 5"/>');
  });

  it('shows texts of users as texts', () => {
    const nasty = '</text><script>alert(1)</script> & "x" \'y\'\n\u0000';
    const svg = text({
      ...viewOf({
        kind: 'text',
        layer: 'text',
        at: [0, 0],
        text: nasty,
        heightMm: 2.5,
        anchor: 'left',
        rotationDeg: 0,
      }),
      id: '"><script>',
      title: nasty,
    });
    expect(elementsOf(svg)).not.toContain('script');
    expect(svg).toContain('&lt;/text&gt;&lt;script&gt;');
  });

  it('keeps the ids of two views apart, so that one page can hold both', () => {
    const ids = (view: View): string[] => [...text(view).matchAll(/id="([^"]+)"/g)].map((m) => m[1] as string);
    const [a, b] = [ids(demoView()), ids({ ...demoView(), id: 'other' })];
    expect(new Set([...a, ...b]).size).toBe(a.length + b.length);
    expect(a.length).toBeGreaterThan(3);
  });

  it('gives the same bytes again, and refuses an unsound view', () => {
    expect(writeSvg(demoView())).toEqual(writeSvg(demoView()));
    expect(() => writeSvg({ ...demoView(), scale: -1 })).toThrow(/demo: The scale 1 : -1/);
    expect(text(viewOf())).toContain('viewBox="0 0 10 10"');
  });
});
