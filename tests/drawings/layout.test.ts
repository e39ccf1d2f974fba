import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../lib/base/cautions.js';
import { expandDimension } from '../../lib/documents/dimensioning.js';
import type { Primitive, Segment, View } from '../../lib/documents/drawing.js';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { ellipseAt, ellipseTurn, viewBounds } from '../../lib/documents/drawing-bounds.js';
import { boxCorners, type Expansion, type TextBox, textBox } from '../../lib/documents/expansion.js';
import { expandLeader, expandLevel } from '../../lib/documents/marks.js';
import { symbolParts } from '../../lib/documents/placing.js';
import { segmentAt } from '../../lib/documents/segments.js';
import { SIDES } from '../../lib/drawings/elevation.js';
import { houseViews } from '../../lib/drawings/house-views.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { randomClusters, samples, variety } from './houses.js';

interface Written {
  readonly from: number;
  readonly texts: readonly TextBox[];
  readonly lines: readonly (readonly Vec2[])[];
}

const along = (s: Segment): Vec2[] => {
  const n = s.kind === 'line' ? 1 : 40;
  return Array.from({ length: n + 1 }, (_, i) => segmentAt(s, i / n));
};

function writtenBy(p: Primitive, from: number, view: View): Written {
  const marks = (e: Expansion): Written => ({ from, texts: e.texts, lines: e.strokes.map((s) => along(s.segment)) });
  switch (p.kind) {
    case 'text':
      return { from, texts: [textBox(p.text, p.at, p.anchor, p.heightMm * view.scale, p.rotationDeg)], lines: [] };
    case 'dimension':
      return marks(expandDimension(p, view.scale, view.units));
    case 'level':
      return marks(expandLevel(p, view.scale, view.units));
    case 'leader':
      return marks(expandLeader(p, view.scale));
    case 'path':
      return { from, texts: [], lines: p.segments.map(along) };
    case 'circle':
      return {
        from,
        texts: [],
        lines: [
          Array.from(
            { length: 121 },
            (_, i): Vec2 => [
              p.centre[0] + p.radius * Math.cos((i * Math.PI) / 60),
              p.centre[1] + p.radius * Math.sin((i * Math.PI) / 60),
            ],
          ),
        ],
      };
    case 'ellipse':
      return {
        from,
        texts: [],
        lines: [Array.from({ length: 41 }, (_, i) => ellipseAt(p, p.start + (ellipseTurn(p) * i) / 40))],
      };
    case 'hatch':
      return { from, texts: [], lines: p.loops.map((loop) => loop.flatMap(along)) };
    case 'symbol': {
      const parts = symbolParts(p, view.scale).map((part) => writtenBy(part, from, view));
      return { from, texts: parts.flatMap((w) => w.texts), lines: parts.flatMap((w) => w.lines) };
    }
  }
}

const cross = (a: Vec2, b: Vec2, c: Vec2) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
const inside = (p: Vec2, quad: readonly Vec2[]) => quad.every((a, i) => cross(a, quad[(i + 1) % 4] as Vec2, p) > 0);
const crosses = (a: Vec2, b: Vec2, c: Vec2, d: Vec2) =>
  cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0;

/** Whether a chain of points enters a text's box. */
const enters = (line: readonly Vec2[], quad: readonly Vec2[]) =>
  line.some((p) => inside(p, quad)) ||
  line.some((p, i) => i > 0 && quad.some((c, j) => crosses(line[i - 1] as Vec2, p, c, quad[(j + 1) % 4] as Vec2)));

const random = randomClusters(6, 31);

describe('all views', () => {
  it.each([...samples(), ...variety(), ...random])('are sound, fit A3, can be read: %s', (_, house) => {
    const views = houseViews(house);
    expect(views.slice(0, 6).map((v) => v.id)).toEqual(['plan', ...SIDES.map((s) => `elevation-${s}`), 'section-a']);
    // Plan and elevations can be laid beside one another.
    expect(new Set(views.slice(0, 5).map((v) => v.scale)).size).toBe(1);
    expect(new Set(views.slice(5).map((v) => v.scale)).size).toBe(1);
    const wrong: string[] = [];
    for (const view of views) {
      expect(auditView(view)).toEqual([]);
      const { min, max } = viewBounds(view);
      // Drawing space of A3, ISO 5457:1999: 390 × 277.
      expect((max[0] - min[0]) / view.scale).toBeLessThanOrEqual(390);
      expect((max[1] - min[1]) / view.scale).toBeLessThanOrEqual(277);
      const words = view.primitives.map((p) => (p.kind === 'text' ? p.text : '')).join(' ');
      for (const told of [view.title, `1:${view.scale}`, CAUTION.authority]) expect(words).toContain(told);
      // No text lies on another, no line crosses one.
      const items = view.primitives.map((p, i) => writtenBy(p, i, view));
      for (const item of items) {
        for (const text of item.texts) {
          const quad = boxCorners(text);
          for (const other of items) {
            for (const t of other.texts) {
              if (t === text) continue;
              const q = boxCorners(t);
              if (enters([...q, q[0] as Vec2], quad)) wrong.push(`${view.id}: "${text.text}" and "${t.text}"`);
            }
            if (other === item) continue;
            if (other.lines.some((line) => enters(line, quad)))
              wrong.push(`${view.id}: a line of a ${view.primitives[other.from]?.kind} through "${text.text}"`);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});
