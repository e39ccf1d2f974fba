import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-moulds.js';
import type { Segment } from '../../documents/drawing.js';
import { segmentAt } from '../../documents/segments.js';
import type { Template, TemplatePiece, TemplatePrimitive } from '../../documents/template.js';
import { textWidth } from '../../documents/text-size.js';
import type { LaidHouse } from '../../masonry/block.js';
import { castForms } from '../../masonry/forms.js';
import { type CastShape, castShape } from '../../masonry/moulds/shape.js';
import type { MasonryPlan } from '../../masonry/plan.js';
import type { Vec2 } from '../../math/vec.js';
import { curveSegments } from '../templates/curves.js';
import { axisStroke, LABEL, label, measure, outlinePath } from '../templates/parts.js';
import { writtenUnits } from '../words.js';
import { developedBed, headFigure } from './developed.js';
import { type FaceRib, faceRibs } from './ribs.js';

/** A piece of a mould before it is known which moulds share it. */
interface Shape {
  readonly what: string;
  readonly outline: readonly Segment[];
  /** The rest of the piece: its words stand round these names. */
  readonly more: (names: string) => readonly TemplatePrimitive[];
}

/** Pieces are alike when no place of their outlines differs by more, mm. */
const ALIKE = 0.1;

/** How lengths are written in a workshop. */
export const workshopUnits = (plan: Pick<MasonryPlan, 'setout'>): WrittenUnits =>
  writtenUnits(plan.setout.house) === 'metric' ? 'half-millimetres' : 'feet-inches';

/** What has to be cut for one mould. */
export interface MouldShapes {
  readonly id: string;
  readonly shapes: readonly Shape[];
}

/** Of every mould and every form of longer blocks of a house: unrolled beds, a head, ribs of both faces. */
export const mouldShapes = (plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): MouldShapes[] =>
  castForms(plan, laid).map(({ id, block }) => ({ id, shapes: shapesOf(castShape(block, plan.setout.house.blocks)) }));

/** Every mould's pieces at full size. */
export const mouldTemplates = (all: readonly MouldShapes[]): Template[] =>
  all.map(({ id, shapes }) => ({ id, title: texts.mouldTitle(id), pieces: shapes.map((shape) => pieceOf(shape, id)) }));

/** The same pieces, each once for all moulds that share it. */
export function sharedPieces(all: readonly MouldShapes[]): TemplatePiece[] {
  const found = new Map<string, { shape: Shape; names: string[] }>();
  for (const { id, shapes } of all) {
    for (const shape of shapes) {
      const key = keyOf(shape);
      const known = found.get(key) ?? { shape, names: [] };
      if (!known.names.includes(id)) known.names.push(id);
      found.set(key, known);
    }
  }
  return [...found.values()].map(({ shape, names }) => pieceOf(shape, names.join(' ')));
}

const keyOf = ({ what, outline }: Shape): string =>
  [
    // Lower and upper bed of an upright wall are one shape.
    what.replace(/(lower|upper) bed/, 'bed'),
    ...outline
      .flatMap((s) => [segmentAt(s, 0), segmentAt(s, 0.5)])
      .map((p) => p.map((x) => Math.round(x / ALIKE)).join()),
  ].join(' ');

const pieceOf = ({ what, outline, more }: Shape, names: string): TemplatePiece => ({
  name: texts.partOfNames(what, names),
  primitives: [outlinePath(outline), ...more(names)],
});

function shapesOf(shape: CastShape): Shape[] {
  return [bedShape(shape, 'lower'), bedShape(shape, 'upper'), headShape(shape), ...faceRibs(shape).map(ribShape)];
}

/** Dimension lines lie so far inside the outline, mm. */
const INSIDE = 16;
/** Of the centre line, at either edge. */
const STUB = 10;

function bedShape(shape: CastShape, edge: 'lower' | 'upper'): Shape {
  const bed = developedBed(shape, edge);
  const [innerLeft, innerRight, outerRight, outerLeft] = bed.corners;
  const [inner, outer] = bed.middles;
  const low = Math.max(innerLeft[1], inner[1]) + INSIDE;
  const high = Math.min(outerLeft[1], outer[1]) - INSIDE;
  return {
    what: texts.bed(edge),
    outline: bed.outline,
    more: (names) => [
      axisStroke(inner, [inner[0], inner[1] + STUB]),
      axisStroke(outer, [outer[0], outer[1] - STUB]),
      measure(0, innerLeft, innerRight, [0, low]),
      measure(0, outerLeft, outerRight, [0, high]),
      measure(90, inner, outer, [INSIDE, 0]),
      ...label(wrapped([texts.bedUnrolled(edge), names, texts.intradosBelowExtradosAbove], 0.4 * outerRight[0] * 2), [
        0.9 * innerLeft[0],
        (low + high) / 2 + 2 * LABEL,
      ]),
    ],
  };
}

function headShape(shape: CastShape): Shape {
  const head = headFigure(shape);
  const [lowerInner, upperInner, upperOuter, lowerOuter] = head.corners;
  const left = Math.max(lowerInner[0], upperInner[0], head.at(0.5, 0)[0]) + INSIDE;
  const right = Math.min(lowerOuter[0], upperOuter[0]) - INSIDE;
  const low = Math.max(lowerInner[1], lowerOuter[1]) + INSIDE;
  const high = Math.min(upperInner[1], upperOuter[1]) - INSIDE;
  return {
    what: 'head',
    outline: head.outline,
    more: (names) => [
      measure(90, lowerInner, upperInner, [left, 0]),
      measure(90, lowerOuter, upperOuter, [right, 0]),
      measure(0, lowerInner, lowerOuter, [0, low]),
      measure(0, upperInner, upperOuter, [0, high]),
      ...label(wrapped([texts.headLabel, names, texts.intradosLeftUpperBed], right - left - 2 * INSIDE), [
        left + INSIDE / 2,
        (low + high) / 2 + 3 * LABEL,
      ]),
    ],
  };
}

const UP_PLACES = { 1: texts.upInMiddle, 2: texts.upLeftAndRight, 3: texts.upInMiddleLeft } as const;

function ribShape(rib: FaceRib): Shape {
  const { length, face, way } = rib;
  const at = (share: number): Vec2 => rib.edge(share);
  const edge = curveSegments(at, 2);
  const [start, middle, end] = [at(0), at(0.5), at(1)];
  const where = way === 'along' ? texts.alongAtMidHeight : UP_PLACES[rib.pieces];
  const what = texts.ribOf(face, where);
  const upright = (p: Vec2, x: number) => measure(90, [p[0], 0], p, [x, 0]);
  return {
    what,
    outline: [
      ...edge,
      { kind: 'line', from: end, to: [length, 0] },
      { kind: 'line', from: [length, 0], to: [0, 0] },
      { kind: 'line', from: [0, 0], to: start },
    ],
    more: (names) => [
      measure(0, [0, 0], [length, 0], [0, 4]),
      upright(start, 8),
      upright(middle, length / 2),
      upright(end, length - 8),
      ...label(
        wrapped([texts.ribWithWay(face, where, way, names)], length / 2 - 22, 2.5).slice(0, 5),
        [14, Math.min(start[1], end[1], middle[1]) - 6],
        2.5,
      ),
    ],
  };
}

/** Words have room on the narrowest page on which a template is printed in parts, mm. */
const WIDEST = 170;

/** Lines broken at spaces to a width. */
function wrapped(lines: readonly string[], most: number, height = LABEL): string[] {
  const width = Math.min(most, WIDEST);
  return lines.flatMap((text) => {
    const broken: string[] = [];
    for (const word of text.split(' ')) {
      const last = broken[broken.length - 1];
      if (last !== undefined && textWidth(`${last} ${word}`, height) <= width)
        broken[broken.length - 1] = `${last} ${word}`;
      else broken.push(word);
    }
    return broken;
  });
}
