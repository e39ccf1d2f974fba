import * as texts from '../../base/texts/drawing-moulds.js';
import type { Anchor, Segment } from '../../documents/drawing.js';
import { line } from '../../documents/segments.js';
import { words } from '../../documents/shapes.js';
import type { Template, TemplatePiece } from '../../documents/template.js';
import { textWidth } from '../../documents/text-size.js';
import type { LaidHouse } from '../../masonry/block.js';
import { blockCuts } from '../../masonry/cuts.js';
import { cuttersOf } from '../../masonry/lay.js';
import { nameCuts } from '../../masonry/leftovers.js';
import { formNames } from '../../masonry/longer.js';
import type { MasonryPlan } from '../../masonry/plan.js';
import type { Vec2 } from '../../math/vec.js';
import { arcThrough } from '../templates/curves.js';
import { label, outlinePath } from '../templates/parts.js';
import { CUT_SIDES, type CutFigure, type CutLine, type CutSide, chainMiddle, cutFigure } from './cut-lines.js';

/** Names of cuts: height, and the room between two, mm. */
const NAME = 3.5;
const ROOM = 3;

/** One cut's name and how it lies on one side of the block. */
interface Marked {
  readonly name: string;
  readonly figure: CutFigure;
}

/**
 * Where cut blocks are sawn, at full size: the sides of each mould's dry block with the lines of its cuts. Cuts that
 * are alike share a name and a line; a mirrored one is marked with the template turned over.
 */
export function cutTemplates(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): Template[] {
  const { setout } = plan;
  const formOf = formNames(plan);
  const named = nameCuts(blockCuts(setout, laid), ({ block }) => formOf(block) ?? '');
  const cutters = new Map(setout.domes.map((dome) => [dome.id, { dome, all: cuttersOf(setout, dome) }]));
  const seen = new Set<string>();
  const byMould = new Map<string, Marked[]>();
  for (const { cut, name, mould } of named) {
    if (seen.has(name)) continue;
    seen.add(name);
    const at = cutters.get(cut.block.domeId);
    if (!at) continue;
    const place = {
      house: setout,
      dome: at.dome,
      cut,
      cutters: at.all.filter((c) => cut.block.cutBy.includes(c.id)),
    };
    const own = byMould.get(mould) ?? [];
    own.push(...sidesFor((side) => cutFigure(place, side)).map((figure) => ({ name, figure })));
    byMould.set(mould, own);
  }
  return [...byMould].map(([mould, marked]) => ({
    id: `cuts-${mould === '' ? 'without-mould' : mould}`,
    title: mould === '' ? texts.cutsOfCoursesWithout : texts.cutsOf(mould),
    pieces: CUT_SIDES.flatMap((side) =>
      piecesOf(
        mould,
        side,
        marked.filter((m) => m.figure.side === side),
      ),
    ),
  }));
}

/** Both beds tell a cut that goes through both; one that ends within the block's height is marked on the faces too. */
function sidesFor(figureOf: (side: CutSide) => CutFigure): CutFigure[] {
  const beds = [figureOf(texts.lowerBed), figureOf(texts.upperBed)];
  const [low, high] = beds.map((f) => f.lines) as [readonly CutLine[], readonly CutLine[]];
  const whole = beds.every(
    (f) => f.lines.length > 0 && f.lines.every((l) => l.points.length === low[0]?.points.length),
  );
  const through = whole && low.length === high.length;
  const figures = through ? beds : [...beds, figureOf('intrados'), figureOf('extrados')];
  return figures.filter((f) => f.lines.length > 0);
}

/** Lines with room for their names side by side on one outline; as many outlines as that takes. */
function piecesOf(mould: string, side: CutSide, marked: readonly Marked[]): TemplatePiece[] {
  const figures: Marked[][] = [];
  for (const m of marked) {
    const open = figures.find((f) => sameOutline(f[0] as Marked, m) && f.every((other) => !collide(other, m)));
    if (open) open.push(m);
    else figures.push([m]);
  }
  return figures.map((own) => piece(mould, side, own));
}

/** Outlines nearer than this at every corner are one, mm. */
const ALIKE = 0.5;

const sameOutline = (a: Marked, b: Marked): boolean =>
  a.figure.outline.every((p, i) =>
    p.every((x, k) => Math.abs(x - ((b.figure.outline[i] as Vec2)[k] as number)) < ALIKE),
  );

/** Where a line's name stands: beside its middle, on the side that stays. */
function nameAt({ points, stays }: CutLine): { readonly at: Vec2; readonly anchor: Anchor } {
  const [x, y] = chainMiddle(points);
  if (stays === 'left') return { at: [x - ROOM / 2, y - NAME / 2], anchor: 'right' };
  if (stays === 'right') return { at: [x + ROOM / 2, y - NAME / 2], anchor: 'left' };
  return { at: [x, stays === 'above' ? y + ROOM / 2 : y - ROOM / 2 - NAME], anchor: 'centre' };
}

/** Box of a line's name with a little room: left, right, low, high. */
function nameBox(name: string, l: CutLine): readonly [number, number, number, number] {
  const { at, anchor } = nameAt(l);
  const wide = textWidth(name, NAME);
  const left = anchor === 'left' ? at[0] : anchor === 'right' ? at[0] - wide : at[0] - wide / 2;
  return [left - ROOM / 2, left + wide + ROOM / 2, at[1] - NAME / 2, at[1] + 1.5 * NAME];
}

/** Lines run clear of one another, and of each other's names. */
const collide = (a: Marked, b: Marked): boolean =>
  a.figure.lines.some((p) =>
    b.figure.lines.some((q) => {
      const [one, other] = [nameBox(a.name, p), nameBox(b.name, q)];
      return (
        (one[0] < other[1] && other[0] < one[1] && one[2] < other[3] && other[2] < one[3]) ||
        touches(q.points, one) ||
        touches(p.points, other) ||
        p.points.some((from) =>
          q.points.some((to) => Math.abs(from[0] - to[0]) < CLEAR && Math.abs(from[1] - to[1]) < CLEAR_UP),
        )
      );
    }),
  );

/** Two lines are told apart when they are so far from each other, and this much up and down apart at most, mm. */
const CLEAR = 5;
const CLEAR_UP = 9;

const touches = (
  points: readonly Vec2[],
  [left, right, low, high]: readonly [number, number, number, number],
): boolean =>
  points.slice(1).some((b, i) => {
    const a = points[i] as Vec2;
    return (
      Math.max(a[0], b[0]) > left &&
      Math.min(a[0], b[0]) < right &&
      Math.max(a[1], b[1]) > low &&
      Math.min(a[1], b[1]) < high
    );
  });

function piece(mould: string, side: CutSide, own: readonly Marked[]): TemplatePiece {
  const [lowLeft, low, lowRight, highRight, high, highLeft] = (own[0] as Marked).figure.outline as [
    Vec2,
    Vec2,
    Vec2,
    Vec2,
    Vec2,
    Vec2,
  ];
  const names = own.map((m) => m.name);
  const where = side.endsWith('bed') ? texts.seenFromAboveIntrados(side) : texts.firstHeadLeftLower(side);
  return {
    name: texts.sideWithNames(side, names.join(' ')),
    primitives: [
      outlinePath([
        arcThrough(lowLeft, low, lowRight),
        line(lowRight, highRight),
        arcThrough(highRight, high, highLeft),
        line(highLeft, lowLeft),
      ]),
      ...own.flatMap(({ name, figure }) => figure.lines.flatMap((l) => markedLine(name, l))),
      ...label(
        [`${mould === '' ? 'cuts' : mould}: ${where}.`, texts.firstHeadLeftName],
        [Math.min(lowLeft[0], highLeft[0]), Math.min(lowLeft[1], lowRight[1]) - 6],
        2.5,
      ),
    ],
  };
}

function markedLine(name: string, l: CutLine): TemplatePiece['primitives'] {
  const { points } = l;
  // An arc through every three places; the last two are joined by a line where one is left over.
  const segments: Segment[] = [];
  for (let i = 0; i < points.length - 1; i += 2) {
    const [a, b, c] = [points[i], points[i + 1], points[i + 2]] as [Vec2, Vec2, Vec2 | undefined];
    segments.push(c ? arcThrough(a, b, c) : line(a, b));
  }
  const { at, anchor } = nameAt(l);
  return [{ kind: 'path', layer: 'visible', segments, closed: false }, words('text', name, at, NAME, anchor)];
}
