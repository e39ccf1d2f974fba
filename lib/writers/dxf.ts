import Handle from 'dxf-writer/src/Handle.js';
import { expandDimension } from '../documents/dimensioning.js';
import type { LayerName, Primitive, View } from '../documents/drawing.js';
import { requireSoundView } from '../documents/drawing-audit.js';
import { type Expansion, textBox } from '../documents/expansion.js';
import { LAYERS } from '../documents/layers.js';
import { expandLeader, expandLevel } from '../documents/marks.js';
import { dimensionEntity } from './dxf/dimension.js';
import {
  circleEntity,
  dotLoop,
  ellipseEntity,
  polylineEntity,
  segmentEntity,
  strokeEntity,
  textEntity,
} from './dxf/entities.js';
import { hatchEntity } from './dxf/hatch.js';
import type { DxfObject } from './dxf/object.js';
import { ViewDrawing } from './dxf/view-drawing.js';

/**
 * A view as DXF (AC1021, UTF-8): model space at 1:1 in millimetres; texts, dashes and marks are sized for `1 : scale`.
 * Arcs stay arcs, dimensions are true dimensions with their geometry block. The same view gives the same bytes.
 * @throws DocumentError that tells every fault of the view.
 */
export function writeDxf(view: View): Uint8Array {
  requireSoundView(view);
  // The library counts handles for the whole process; each file begins its own count.
  const seed = Handle.seed;
  Handle.seed = 0;
  try {
    const drawing = new ViewDrawing(view);
    for (const { name } of LAYERS)
      for (const p of view.primitives) if (layerOf(p) === name) addPrimitive(p, view, drawing);
    return new TextEncoder().encode(drawing.toDxfString());
  } finally {
    Handle.seed = seed;
  }
}

const layerOf = (p: Primitive): LayerName => ('layer' in p ? p.layer : 'dimension');

function addPrimitive(p: Primitive, view: View, drawing: ViewDrawing): void {
  switch (p.kind) {
    case 'path': {
      const [only] = p.segments;
      const alone = only && p.segments.length === 1 && !p.closed;
      drawing.add(alone ? segmentEntity(only, p.layer) : polylineEntity(p.segments, p.closed, p.layer));
      return;
    }
    case 'circle':
      drawing.add(circleEntity(p.centre, p.radius, p.layer));
      return;
    case 'ellipse':
      drawing.add(ellipseEntity(p));
      return;
    case 'text':
      drawing.add(textEntity(textBox(p.text, p.at, p.anchor, p.heightMm * view.scale, p.rotationDeg), p.layer));
      return;
    case 'hatch':
      drawing.add(hatchEntity(p.loops, p.pattern, p.layer, view.scale));
      return;
    case 'dimension': {
      const drawn = expandDimension(p, view.scale, view.units);
      const block = drawing.addDimensionBlock(expansionEntities(drawn, view.scale));
      drawing.add(dimensionEntity(p, drawn, block, drawing.dimStyle));
      return;
    }
    case 'leader':
      for (const e of expansionEntities(expandLeader(p, view.scale), view.scale)) drawing.add(e);
      return;
    case 'level':
      for (const e of expansionEntities(expandLevel(p, view.scale, view.units), view.scale)) drawing.add(e);
      return;
  }
}

const expansionEntities = (e: Expansion, scale: number): DxfObject[] => [
  ...e.strokes.map((s) => strokeEntity(s, 'dimension')),
  ...e.dots.map((d) => hatchEntity([dotLoop(d)], 'solid', 'dimension', scale)),
  ...e.texts.map((t) => textEntity(t, 'dimension')),
];
