import type { WrittenUnits } from '../base/measures.js';
import { remembered } from '../base/remembered.js';
import { dimensionLineEnds, expandDimension } from '../documents/dimensioning.js';
import type { Primitive, TextPrimitive, View } from '../documents/drawing.js';
import { type Bounds2, ellipseAt, ellipseTurn, viewBounds } from '../documents/drawing-bounds.js';
import { boxCorners, type Expansion, type TextBox, textBox } from '../documents/expansion.js';
import { expandLeader, expandLevel, expandTag } from '../documents/marks.js';
import { symbolParts } from '../documents/placing.js';
import { segmentAt } from '../documents/segments.js';
import { type Box, circleEdge, type Edge, edgeLength } from '../math/curves.js';
import { hypot } from '../math/elementary.js';
import { DEG, lerp2, type Vec2 } from '../math/vec.js';
import { BoundedSet } from './bounded-set.js';
import { type Bounded, bounded, meet } from './overlap.js';

/** Room that is left free before and after a text, paper mm. */
const AIR = 0.5;

/** Side of the cells in which what is near is looked for, paper mm. */
const CELL = 8;
/** How much a group of second choice counts in itself. */
const DISLIKE = 20;
/** How much worse a crossed text or a doubled dimension line is than an extension line across a dimension line. */
const CLASH = 100;

/** What a primitive takes up on paper: the corners of its texts, and its lines in straight pieces. */
export interface Shapes {
  readonly texts: readonly Bounded[];
  readonly lines: readonly Bounded[];
}

/** Lines of a dimension that others must not cross. */
interface MeasureLines {
  readonly measure: readonly Bounded[];
  readonly extensions: readonly Bounded[];
}

const NO_MEASURE: MeasureLines = { measure: [], extensions: [] };

interface Taken extends Shapes, MeasureLines {}

/** Collects a view's primitives and finds free places for texts and dimensions: none lies on another, no line crosses one. */
export class Layout {
  readonly primitives: Primitive[] = [];
  private readonly texts: BoundedSet;
  private readonly lines: BoundedSet;
  private readonly measures: BoundedSet;
  private readonly extensions: BoundedSet;
  private readonly dimensionLines: BoundedSet;
  /** What was looked at since the last thing was added: it is looked at again in other company, and then added. */
  private readonly looked = new Map<Primitive, Taken>();

  /** `blocked` tells where no text may stand, such as hatched areas. */
  constructor(
    readonly scale: number,
    readonly units: WrittenUnits,
    private readonly blocked: (p: Vec2) => boolean = () => false,
  ) {
    const set = () => new BoundedSet(CELL * scale);
    [this.texts, this.lines, this.measures, this.extensions, this.dimensionLines] = [set(), set(), set(), set(), set()];
  }

  /** Paper millimetres in the model. */
  mm(paper: number): number {
    return paper * this.scale;
  }

  /** Corners of what a level text takes up in the model. */
  cornersOf({ text, at, anchor, heightMm }: TextPrimitive): readonly Vec2[] {
    return boxCorners(textBox(text, at, anchor, this.mm(heightMm)));
  }

  add(...primitives: readonly Primitive[]): void {
    for (const p of primitives) {
      this.primitives.push(p);
      const { texts, lines, measure, extensions } = this.takenBy(p);
      this.texts.add(texts);
      this.lines.add(lines);
      if (p.kind === 'dimension' || p.kind === 'leader') this.dimensionLines.add(lines);
      this.measures.add(measure);
      this.extensions.add(extensions);
    }
    this.looked.clear();
  }

  /**
   * Adds the first of the groups that lies free, else the one that disturbs least. Those of second choice are taken
   * only where all others would cross a text.
   */
  place(groups: Iterable<readonly Primitive[]>, secondChoice: Iterable<readonly Primitive[]> = []): void {
    let best: readonly Primitive[] = [];
    let least = Number.POSITIVE_INFINITY;
    for (const [choices, dislike] of [
      [groups, 0],
      [secondChoice, DISLIKE],
    ] as const) {
      if (least <= dislike) break;
      for (const group of choices) {
        const faults = this.faults(group, least - dislike) + dislike;
        if (faults < least) [best, least] = [group, faults];
        if (least <= dislike) break;
      }
    }
    this.add(...best);
  }

  /** Adds the first of the groups that disturbs nothing, and says whether there was one. */
  placeFree(groups: Iterable<readonly Primitive[]>): boolean {
    for (const group of groups) {
      if (this.faults(group, 1) > 0) continue;
      this.add(...group);
      return true;
    }
    return false;
  }

  /**
   * How much a group would disturb what is there, or itself: a text that is crossed counts most. Once it is `enough`,
   * the rest isn't looked at.
   */
  faults(group: readonly Primitive[], enough = Number.POSITIVE_INFINITY): number {
    let faults = 0;
    const shapes = group.map((p) => this.takenBy(p));
    for (const { texts, lines } of shapes) {
      for (const text of texts) {
        faults += CLASH * (this.texts.count(text) + this.lines.count(text));
        if (faults < enough && (text.corners.some(this.blocked) || this.blocked(middle(text)))) faults += CLASH;
        if (faults >= enough) return faults;
      }
      for (const line of lines) faults += CLASH * this.texts.count(line);
      if (faults >= enough) return faults;
    }
    for (const { measure, extensions } of shapes) {
      for (const line of measure) faults += CLASH * this.measures.count(line) + this.extensions.count(line);
      for (const line of extensions) faults += this.measures.count(line);
      if (faults >= enough) return faults;
    }
    shapes.forEach((one, i) => {
      const kind = group[i]?.kind;
      if (kind === 'path' || kind === 'leader' || kind === 'symbol')
        for (const line of one.lines) faults += CLASH * this.dimensionLines.count(line);
      shapes.forEach((other, j) => {
        if (i === j) return;
        for (const text of one.texts) faults += CLASH * (count(other.lines, text) + count(other.texts, text));
      });
    });
    return faults;
  }

  private takenBy(p: Primitive): Taken {
    let taken = this.looked.get(p);
    if (taken === undefined) {
      taken = { ...shapesOf(p, this.scale, this.units), ...measureLines(p, this.scale) };
      this.looked.set(p, taken);
    }
    return taken;
  }

  /** Whether nothing at all lies in a box. */
  isClear(box: Box): boolean {
    return !this.hasTextIn(box) && this.lines.count(boundedBox(box)) === 0;
  }

  hasTextIn(box: Box): boolean {
    return this.texts.count(boundedBox(box)) > 0;
  }

  bounds(): Bounds2 {
    return viewBounds(this.view('', ''));
  }

  view(id: string, title: string): View {
    return { id, title, scale: this.scale, units: this.units, primitives: this.primitives };
  }
}

const count = (all: readonly Bounded[], one: Bounded): number => {
  let n = 0;
  for (const other of all) if (meet(other, one)) n++;
  return n;
};

const boundedBox = ({ min, max }: Box): Bounded => bounded([min, [max[0], min[1]], max, [min[0], max[1]]]);

const middle = ({ corners }: Bounded): Vec2 => {
  const sum = corners.reduce<Vec2>((s, p) => [s[0] + p[0], s[1] + p[1]], [0, 0]);
  return [sum[0] / corners.length, sum[1] / corners.length];
};

/** Dimension lines and extension lines, a little short at both ends: those that only meet at a terminator don't cross. */
function measureLines(p: Primitive, scale: number): MeasureLines {
  if (p.kind !== 'dimension' || (p.type !== 'linear' && p.type !== 'aligned')) return NO_MEASURE;
  const [a, b] = dimensionLineEnds(p);
  const extensions = [
    [p.from, a],
    [p.to, b],
  ] as const;
  return {
    measure: shortened(a, b, scale),
    extensions: extensions.flatMap(([from, to]) => shortened(from, to, scale)),
  };
}

function shortened(a: Vec2, b: Vec2, scale: number): Bounded[] {
  const length = hypot(b[0] - a[0], b[1] - a[1]);
  const off = AIR * scale;
  if (length <= 2 * off) return [];
  return [bounded([lerp2(a, b, off / length), lerp2(b, a, off / length)])];
}

type Outlined = Extract<Primitive, { kind: 'path' | 'hatch' | 'circle' | 'ellipse' }>;

/** Figures are laid out at several scales, and their lines are the same in all of them. */
const linesOf = remembered((p: Outlined): readonly Bounded[] => {
  switch (p.kind) {
    case 'path':
      return p.segments.flatMap(pieces);
    case 'hatch':
      return p.loops.flatMap((loop) => loop.flatMap(pieces));
    case 'circle':
      return pieces(circleEdge(p.centre, p.radius));
    case 'ellipse': {
      const turn = ellipseTurn(p);
      return broken(24, (t) => ellipseAt(p, p.start + t * turn));
    }
  }
});

/** What a primitive takes up, model mm. Hatch lines count for nothing, their outlines for lines. */
export function shapesOf(p: Primitive, scale: number, units: WrittenUnits): Shapes {
  switch (p.kind) {
    case 'path':
    case 'hatch':
    case 'circle':
    case 'ellipse':
      return { texts: [], lines: linesOf(p) };
    case 'text':
      return {
        texts: [airy(textBox(p.text, p.at, p.anchor, p.heightMm * scale, p.rotationDeg), scale)],
        lines: [],
      };
    case 'symbol': {
      const shapes = symbolParts(p, scale).map((part) => shapesOf(part, scale, units));
      return { texts: shapes.flatMap((s) => s.texts), lines: shapes.flatMap((s) => s.lines) };
    }
    case 'dimension':
      return expanded(expandDimension(p, scale, units), scale);
    case 'level':
      return levelShapes(expandLevel(p, scale, units), scale);
    case 'tag':
      return expanded(expandTag(p, scale), scale);
    case 'leader':
      return expanded(expandLeader(p, scale), scale);
  }
}

const expanded = (e: Expansion, scale: number): Shapes => ({
  texts: e.texts.map((t) => airy(t, scale)),
  lines: e.strokes.flatMap((s) => pieces(s.segment)),
});

/** A level mark is one box, for a line along its shelf would be taken for its own. */
function levelShapes(e: Expansion, scale: number): Shapes {
  const { texts, lines } = expanded(e, scale);
  const all = texts.flatMap((t) => t.corners);
  const [xs, ys] = [all.map((p) => p[0]), all.map((p) => p[1])];
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)];
  const [y0, y1] = [Math.min(...ys), Math.max(...ys)];
  return {
    texts: [
      bounded([
        [x0, y0],
        [x1, y0],
        [x1, y1],
        [x0, y1],
      ]),
    ],
    lines,
  };
}

/** Corners of a text with air before and after it. */
function airy(box: TextBox, scale: number): Bounded {
  const [a, b, c, d] = boxCorners(box) as [Vec2, Vec2, Vec2, Vec2];
  const more = (AIR * scale) / box.width;
  return bounded([lerp2(a, b, -more), lerp2(a, b, 1 + more), lerp2(d, c, 1 + more), lerp2(d, c, -more)]);
}

/** Turn of an arc's chord; its sagitta doesn't matter beside a text's height. */
const CHORD_RAD = 5 * DEG;

function pieces(e: Edge): Bounded[] {
  if (e.kind === 'line') return [bounded([e.from, e.to])];
  const n = Math.max(1, Math.ceil(edgeLength(e) / (e.radius * CHORD_RAD)));
  return broken(n, (t) => segmentAt(e, t));
}

function broken(n: number, at: (t: number) => Vec2): Bounded[] {
  return Array.from({ length: n }, (_, i) => bounded([at(i / n), at((i + 1) / n)]));
}
