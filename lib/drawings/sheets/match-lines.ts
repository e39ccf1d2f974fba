import { axesSize } from '../../base/texts/drawing-plans.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import { ONE_SIZE } from '../../base/tolerances.js';
import type { PlainPrimitive, Primitive } from '../../documents/drawing.js';
import { words } from '../../documents/shapes.js';
import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import { type Box, type LineEdge, lineEdge } from '../../math/curves.js';
import { length2, sub2, type Vec2 } from '../../math/vec.js';
import { brokenLine } from '../broken-line.js';
import { clipTo, inBox } from '../clip.js';
import type { Draft, DraftedView } from '../draft.js';
import type { HandedOver } from '../handed.js';
import { Layout, shapesOf } from '../layout.js';
import { strokesOf } from '../paths.js';
import { CAPTION } from './rows.js';

/** Beside a part on its sheet: frame, labels of match lines, what figures reach out, paper mm. */
const BESIDE = 30;
/** How far a dimension or text may reach over a match line, paper mm. */
const OVER = 4;
const LABEL = 3.5;

interface Part {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly box: Box;
}

/**
 * A view that is larger than a sheet in parts, each as large as a sheet holds: lines and hatches are cut exactly at match
 * lines; dimensions, levels and texts that would cross one stand on the key alone, which is the whole view at the scale that fits.
 */
export function splitDraft(draft: Draft, size: SheetSize, scale: number): Draft[] {
  const space = drawingSpace(size);
  const width = (space.right - space.left - TITLE_BLOCK.width - BESIDE) * scale;
  const height = (space.top - space.bottom - CAPTION - BESIDE) * scale;
  const drawn = once((handed?: HandedOver) => draft.draw(scale, handed));
  const { min, max } = wholeOf(draft, scale);
  const [columns, rows] = [Math.ceil((max[0] - min[0]) / width), Math.ceil((max[1] - min[1]) / height)];
  const [w, h] = [(max[0] - min[0]) / columns, (max[1] - min[1]) / rows];
  const cells = Array.from({ length: rows * columns }, (_, i): Omit<Part, 'name'> => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const [x, y] = [min[0] + column * w, max[1] - (row + 1) * h];
    return { row, column, box: { min: [x, y], max: [x + w, y + h] } };
  });
  const plain = drawn().layout.primitives.filter(isPlain);
  const parts: Part[] = cells
    .filter(({ box }) => plain.some((p) => p.kind !== 'text' && clipTo([p], box).length > 0))
    .map((cell, i) => ({ ...cell, name: nameOf(i) }));
  return parts.map((part) => partDraft(draft, part, parts, drawn));
}

/** Room for dimensions and texts round the figure. */
function wholeOf({ figure }: Draft, scale: number): Box {
  const around = 40 * scale;
  return {
    min: [figure.min[0] - around, figure.min[1] - around],
    max: [figure.max[0] + around, figure.max[1] + around],
  };
}

const isPlain = (p: Primitive): p is PlainPrimitive =>
  p.kind === 'path' || p.kind === 'circle' || p.kind === 'ellipse' || p.kind === 'text' || p.kind === 'hatch';

/** A, B ... Z, AA ... */
const nameOf = (i: number): string =>
  (i < 26 ? '' : nameOf(Math.floor(i / 26) - 1)) + String.fromCharCode(65 + (i % 26));

function partDraft(
  draft: Draft,
  part: Part,
  parts: readonly Part[],
  drawn: (handed?: HandedOver) => DraftedView,
): Draft {
  return {
    id: `${draft.id}-part-${part.name.toLowerCase()}`,
    units: draft.units,
    figure: part.box,
    draw(scale, handed): DraftedView {
      const whole = drawn(handed);
      const layout = new Layout(scale, draft.units);
      const near: Box = {
        min: [part.box.min[0] - OVER * scale, part.box.min[1] - OVER * scale],
        max: [part.box.max[0] + OVER * scale, part.box.max[1] + OVER * scale],
      };
      const held = (p: Primitive) => holds(p, near, scale, draft.units);
      const lost = whole.layout.primitives.flatMap((p) => (p.kind === 'level' && !held(p) ? [p.at] : []));
      for (const p of whole.layout.primitives) {
        // A line of a level says nothing without its mark.
        if (lost.some((at) => leadsTo(p, at))) continue;
        if (isPlain(p) && p.kind !== 'text') layout.add(...clipTo([p], part.box));
        else if (held(p)) layout.add(p);
      }
      layout.add(...matchLines(part, parts, scale));
      const others = parts.length - 1;
      return {
        layout,
        foot: {
          title: texts.partTitle(whole.foot.title, part.name),
          notes: [texts.partOfItGoes(part.name, parts.length, others)],
          general: [],
          patterns: whole.foot.patterns,
          ...(whole.foot.northDeg === undefined ? {} : { northDeg: whole.foot.northDeg }),
        },
      };
    },
  };
}

/** Whether all that a dimension, text or sign takes up lies in a box. */
function holds(p: Primitive, box: Box, scale: number, units: Draft['units']): boolean {
  const { texts, lines } = shapesOf(p, scale, units);
  return [...texts, ...lines].every((shape) => shape.corners.every((corner) => inBox(corner, box)));
}

/** Whether a primitive is the narrow line that ends at a level's mark. */
function leadsTo(p: Primitive, at: Vec2): boolean {
  const last = p.kind === 'path' && p.layer === 'dimension' ? p.segments[p.segments.length - 1] : undefined;
  return last?.kind === 'line' && length2(sub2(last.to, at)) < ONE_SIZE;
}

/** Wide lines along the sides on which the view goes on, with the part that lies there. */
function matchLines({ row, column, box }: Part, parts: readonly Part[], scale: number): Primitive[] {
  const [x0, y0] = box.min;
  const [x1, y1] = box.max;
  const off = 1.5 * scale;
  const sides: readonly (readonly [dr: number, dc: number, from: Vec2, to: Vec2, at: Vec2, turn: number])[] = [
    [-1, 0, [x0, y1], [x1, y1], [(x0 + x1) / 2, y1 + off], 0],
    [1, 0, [x0, y0], [x1, y0], [(x0 + x1) / 2, y0 - off - LABEL * scale], 0],
    [0, -1, [x0, y0], [x0, y1], [x0 - off, (y0 + y1) / 2], 90],
    [0, 1, [x1, y0], [x1, y1], [x1 + off + LABEL * scale, (y0 + y1) / 2], 90],
  ];
  return sides.flatMap(([dr, dc, from, to, at, rotationDeg]): Primitive[] => {
    const next = parts.find((p) => p.row === row + dr && p.column === column + dc);
    if (!next) return [];
    return [
      { kind: 'path', layer: 'ground', segments: [lineEdge(from, to)], closed: false },
      { ...words('text', texts.matchLinePart(next.name), at, LABEL, 'centre'), rotationDeg },
    ];
  });
}

/** The whole view with its parts marked, for the largest of some scales at which it fits. */
export function keyDraft(draft: Draft, size: SheetSize, scale: number): Draft {
  const parts = once(() => splitDraft(draft, size, scale));
  return {
    ...draft,
    id: `${draft.id}-key`,
    draw(at, handed): DraftedView {
      const { layout: whole, foot } = draft.draw(at, handed);
      const layout = new Layout(at, draft.units);
      layout.add(...whole.primitives.filter(onKey));
      const written = layout.primitives.flatMap((p) => shapesOf(p, at, draft.units).texts.map((t) => t.corners));
      for (const side of sidesOf(parts().map((part) => part.figure)))
        layout.add(...strokesOf('overhead', brokenLine(side, written, KEY_GAP * at)));
      for (const { figure, id } of parts()) {
        const name = id.replace(/^.*-part-/, '').toUpperCase();
        layout.place(
          PART_NAMES.flatMap((height) => placesIn(figure, at).map((place) => [words('text', name, place, height)])),
        );
      }
      return {
        layout,
        foot: { ...foot, title: texts.keyTitle(foot.title), notes: [texts.boxesPartsOnSheets] },
      };
    },
  };
}

/** Left free on a side of a part's box before and after a text that stands on it, paper mm. */
const KEY_GAP = 0.5;
/** Heights of a part's name on the key, and steps between the places in its box where it is tried, paper mm. */
const PART_NAMES = [7, 5, 3.5] as const;
const NAME_STEP = 2;

/** Sides of boxes, what two share once. */
function sidesOf(boxes: readonly Box[]): LineEdge[] {
  const sides = boxes.flatMap(({ min: [x0, y0], max: [x1, y1] }) => [
    lineEdge([x0, y0], [x1, y0]),
    lineEdge([x1, y0], [x1, y1]),
    lineEdge([x0, y1], [x1, y1]),
    lineEdge([x0, y0], [x0, y1]),
  ]);
  const named = sides.map((side) => [[side.from, side.to].flat().map(Math.round).join(' '), side] as const);
  return [...new Map(named).values()];
}

/** Places of a name in a box: from its lower left corner up and to the right. */
const placesIn = ({ min, max }: Box, scale: number): Vec2[] => {
  const along = (axis: 0 | 1) =>
    Array.from(
      { length: Math.max(1, Math.floor((max[axis] - min[axis]) / (NAME_STEP * scale)) - 2) },
      (_, i) => min[axis] + (1 + i * NAME_STEP) * scale,
    );
  return along(0).flatMap((x) => along(1).map((y): Vec2 => [x, y]));
};

/** At a key's small scale only outlines, distances and levels are read. */
const onKey = (p: Primitive): boolean =>
  p.kind === 'dimension'
    ? p.type === 'linear' || (p.type === 'aligned' && p.prefix === axesSize)
    : p.kind === 'level' || (isPlain(p) && p.kind !== 'text' && p.layer !== 'axis');

function once<A, T>(make: (arg?: A) => T): (arg?: A) => T {
  let made: { readonly of: A | undefined; readonly value: T } | null = null;
  return (arg) => {
    // What is handed over later than the first look changes texts.
    if (made === null || (arg !== undefined && made.of !== arg)) made = { of: arg, value: make(arg) };
    return made.value;
  };
}
