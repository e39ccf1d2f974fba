import { expandDimension } from '../../lib/documents/dimensioning.js';
import type { Primitive, Segment, View } from '../../lib/documents/drawing.js';
import { ellipseAt, ellipseTurn } from '../../lib/documents/drawing-bounds.js';
import { boxCorners, type Expansion, type TextBox, textBox } from '../../lib/documents/expansion.js';
import { expandLeader, expandLevel, expandTag } from '../../lib/documents/marks.js';
import { symbolParts } from '../../lib/documents/placing.js';
import { segmentAt } from '../../lib/documents/segments.js';
import type { Vec2 } from '../../lib/math/vec.js';

interface Written {
  readonly from: number;
  readonly texts: readonly TextBox[];
  readonly lines: readonly (readonly Vec2[])[];
}

const along = (s: Segment): Vec2[] => {
  // A chord's sagitta must not take a near miss for a crossing.
  const n = s.kind === 'line' ? 1 : 240;
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
    case 'tag':
      return marks(expandTag(p, view.scale));
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

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

function boxOf(points: readonly Vec2[]): Box {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
  return { x0, x1, y0, y1 };
}
const apart = (a: Box, b: Box) => a.x1 < b.x0 || b.x1 < a.x0 || a.y1 < b.y0 || b.y1 < a.y0;

/**
 * Pairs of a view's level marks that stand so near that one reads as going on in the other: less than 0.7 mm of paper
 * between them up or down, or 1.8 mm across where they overlap in height.
 */
export function tightLevelsOf(view: View): string[] {
  const marks = view.primitives.flatMap((p) => {
    if (p.kind !== 'level') return [];
    const { texts } = expandLevel(p, view.scale, view.units);
    return [{ name: `${p.label} ${p.level}`, box: boxOf(texts.flatMap(boxCorners)) }];
  });
  const [up, across] = [0.7 * view.scale, 1.8 * view.scale];
  const grown = ({ x0, x1, y0, y1 }: Box): Box => ({ x0: x0 - across, x1: x1 + across, y0: y0 - up, y1: y1 + up });
  return marks.flatMap((a, i) =>
    marks.slice(i + 1).flatMap((b) => (apart(grown(a.box), b.box) ? [] : [`${view.id}: ${a.name} / ${b.name}`])),
  );
}

/** Marks of sections of which something, or the room between them and their letters, lies on a name or a note. */
export function marksInNamesOf(view: View): string[] {
  const texts = view.primitives.flatMap((p, i) =>
    p.kind !== 'text' && p.kind !== 'leader'
      ? []
      : writtenBy(p, i, view).texts.map((t) => ({ text: t.text, box: boxOf(boxCorners(t)) })),
  );
  return view.primitives.flatMap((p, i) => {
    if (p.kind !== 'symbol' || !p.name.startsWith('section-mark')) return [];
    const letter = view.primitives[i + 1];
    if (letter?.kind !== 'text') return [`${view.id}: a mark without its letter`];
    const own = writtenBy(letter, i + 1, view).texts.flatMap(boxCorners);
    const whole = boxOf([...writtenBy(p, i, view).lines.flat(), ...own]);
    return texts.flatMap(({ text, box }) =>
      text === letter.text || apart(whole, box) ? [] : [`${view.id}: the mark ${letter.text} in "${text}"`],
    );
  });
}

/** Texts of a view that lie on another, or that a line of something else runs through; told in words. */
export function clashesOf(view: View): string[] {
  const items = view.primitives.map((p, i) => writtenBy(p, i, view));
  const lines = items.flatMap((item) => item.lines.map((line) => ({ item, line, box: boxOf(line) })));
  const texts = items.flatMap((item) =>
    item.texts.map((text) => {
      const quad = boxCorners(text);
      return { item, text, quad, box: boxOf(quad) };
    }),
  );
  return texts.flatMap((one) => [
    ...texts
      .filter((other) => other !== one && !apart(other.box, one.box))
      .filter((other) => enters([...other.quad, other.quad[0] as Vec2], one.quad))
      .map((other) => `${view.id}: "${one.text.text}" and "${other.text.text}"`),
    ...lines
      .filter((other) => other.item !== one.item && !apart(other.box, one.box) && enters(other.line, one.quad))
      .map(({ item }) => `${view.id}: a line of a ${view.primitives[item.from]?.kind} through "${one.text.text}"`),
  ]);
}
