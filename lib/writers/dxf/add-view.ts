import { dimensionText, expandDimension } from '../../documents/dimensioning.js';
import type { PlainPrimitive, Primitive, SymbolPrimitive, View } from '../../documents/drawing.js';
import type { Expansion } from '../../documents/expansion.js';
import { LAYERS } from '../../documents/layers.js';
import { expandLeader, expandLevel, expandTag } from '../../documents/marks.js';
import { type Placement, placed, placedExpansion, placedPoint } from '../../documents/placing.js';
import type { Vec2 } from '../../math/vec.js';
import { byLayer } from '../pen.js';
import { dimStyleName } from './dim-variables.js';
import { dimensionEntity } from './dimension.js';
import {
  boxEntity,
  circleEntity,
  dotLoop,
  ellipseEntity,
  insertEntity,
  polylineEntity,
  segmentEntity,
  strokeEntity,
  textEntity,
} from './entities.js';
import { fillEntity, hatchEntities } from './hatch.js';
import type { DxfObject } from './object.js';
import type { ViewDrawing } from './view-drawing.js';

/** Where a view lies in a file's model: enlarged, then moved. */
export interface ModelPlace {
  readonly enlarged: number;
  readonly offset: Vec2;
}

/** Puts a view into the model space of a file, layer by layer. */
export function addView(view: View, { enlarged, offset }: ModelPlace, drawing: ViewDrawing): void {
  const place: Placement = { turnDeg: 0, scale: enlarged, offset };
  const scale = view.scale * enlarged;
  const layers = byLayer(view.primitives);
  for (const { name } of LAYERS)
    for (const p of layers.get(name) ?? []) for (const e of entitiesOf(p, view, place, scale, drawing)) drawing.add(e);
}

function entitiesOf(
  p: Primitive,
  view: View,
  place: Placement,
  scale: number,
  drawing: ViewDrawing,
): readonly DxfObject[] {
  const marks = (e: Expansion) => expansionEntities(placedExpansion(e, place));
  switch (p.kind) {
    case 'dimension': {
      const own = expandDimension(p, view.scale, view.units);
      const drawn = { ...placedExpansion(own, place), middle: placedPoint(own.middle, place) };
      const block = drawing.addDimensionBlock(expansionEntities(drawn));
      const style = dimStyleName({ scale, units: view.units, enlarged: place.scale });
      // Not every reader heeds a style's factor, sets R or Ø before a measure, or measures along an arc.
      const straight = p.type === 'linear' || p.type === 'aligned' || p.type === 'angle';
      const text = place.scale === 1 && straight ? undefined : dimensionText(p, view.units);
      return [dimensionEntity(placed(p, place), drawn, block, style, text)];
    }
    case 'tag':
      return marks(expandTag(p, view.scale));
    case 'leader':
      return marks(expandLeader(p, view.scale));
    case 'level':
      return marks(expandLevel(p, view.scale, view.units));
    case 'symbol':
      return [symbolEntity(placed(p, place), scale, drawing)];
    default:
      return plainEntities(placed(p, place), scale);
  }
}

function plainEntities(p: PlainPrimitive, scale: number): DxfObject[] {
  switch (p.kind) {
    case 'path': {
      const [only] = p.segments;
      const alone = only && p.segments.length === 1 && !p.closed;
      return [alone ? segmentEntity(only, p.layer) : polylineEntity(p.segments, p.closed, p.layer)];
    }
    case 'circle':
      return [circleEntity(p.centre, p.radius, p.layer)];
    case 'ellipse':
      return [ellipseEntity(p)];
    case 'text':
      return [textEntity(p, scale)];
    case 'hatch':
      return p.pattern === 'solid' ? [fillEntity(p.loops, p.layer)] : hatchEntities(p.loops, p.pattern, p.layer, scale);
  }
}

/** An insertion of the symbol's block; names that a block can't have lose what it can't have. */
function symbolEntity(p: SymbolPrimitive, scale: number, drawing: ViewDrawing): DxfObject {
  const block = p.name.toUpperCase().replace(/[^A-Z0-9_-]/g, '_');
  const whole: Placement = { turnDeg: 0, scale, offset: [0, 0] };
  drawing.addSymbolBlock(block, () => p.parts.flatMap((part) => plainEntities(placed(part, whole), scale)));
  return insertEntity(block, p.at, p.rotationDeg, 'text');
}

const expansionEntities = (e: Expansion): DxfObject[] => [
  ...e.strokes.map((s) => strokeEntity(s, 'dimension')),
  ...e.dots.map((d) => fillEntity([dotLoop(d)], 'dimension')),
  ...e.texts.map((t) => boxEntity(t, 'dimension')),
];
