import { arcMiddle, turnOf } from '../../documents/dimension-arcs.js';
import { type DimensionExpansion, dimensionLineEnds, measureOf } from '../../documents/dimensioning.js';
import type { DimensionPrimitive } from '../../documents/drawing.js';
import { atan2 } from '../../math/elementary.js';
import { DEG, type Vec2 } from '../../math/vec.js';
import { entity, safeText } from './entities.js';
import type { DxfObject } from './object.js';
import type { GuardedTags } from './tags.js';

/** Kinds of DIMENSION; each refers to a block of its own (32), set where ours puts the text (128). */
const KIND = { linear: 0, aligned: 0, diameter: 3, radius: 4, angle: 2, arc: 2 } as const;
const OWN_BLOCK = 32;
const TEXT_PLACED = 128;
const MIDDLE_CENTRE = 5;

/** A true dimension: readers measure its points themselves; `block` holds what it looks like, in the same place; `text` stands in for their measure. */
export function dimensionEntity(
  dim: DimensionPrimitive,
  drawn: DimensionExpansion,
  block: string,
  style: string,
  text?: string,
): DxfObject {
  return entity('DIMENSION', 'dimension', (tags) => {
    const prefix = 'prefix' in dim ? dim.prefix : undefined;
    tags.push(100, 'AcDbDimension');
    tags.push(2, block);
    tags.place(10, definition(dim));
    tags.place(11, drawn.middle);
    tags.push(70, KIND[dim.type] + OWN_BLOCK + TEXT_PLACED);
    tags.push(71, MIDDLE_CENTRE);
    // Angles stand in radians here.
    tags.push(42, dim.type === 'angle' || dim.type === 'arc' ? turnOf(dim) : measureOf(dim));
    // Angle brackets stand for the measure.
    tags.push(1, text === undefined ? measured(prefix) : unbracketed(text));
    tags.push(3, style);
    ownTags(tags, dim);
  });
}

const measured = (prefix: string | undefined): string => (prefix === undefined ? '' : `${unbracketed(prefix)}<>`);
const unbracketed = (text: string): string => safeText(text).replaceAll('<>', '< >');

/** The place that group 10 tells: each kind of dimension has its own. */
function definition(dim: DimensionPrimitive): Vec2 {
  switch (dim.type) {
    case 'linear':
    case 'aligned':
      return dimensionLineEnds(dim)[1];
    case 'radius':
      return dim.centre;
    case 'diameter':
      return [2 * dim.centre[0] - dim.on[0], 2 * dim.centre[1] - dim.on[1]];
    case 'angle':
    case 'arc':
      return dim.to;
  }
}

function ownTags(tags: GuardedTags, dim: DimensionPrimitive): void {
  switch (dim.type) {
    case 'linear':
    case 'aligned':
      tags.push(100, 'AcDbAlignedDimension');
      tags.place(13, dim.from);
      tags.place(14, dim.to);
      // An aligned one is written as a linear one along its own direction: readers disagree on the measure of the other kind.
      tags.push(50, dim.type === 'linear' ? dim.angleDeg : headingDeg(dim.from, dim.to));
      tags.push(100, 'AcDbRotatedDimension');
      break;
    case 'radius':
    case 'diameter':
      tags.push(100, dim.type === 'radius' ? 'AcDbRadialDimension' : 'AcDbDiametricDimension');
      tags.place(15, dim.on);
      tags.push(40, 0);
      break;
    case 'angle':
    case 'arc':
      // Two lines from the centre; a point of the arc between them tells which of their angles is meant.
      tags.push(100, 'AcDb2LineAngularDimension');
      tags.place(13, dim.centre);
      tags.place(14, dim.from);
      tags.place(15, dim.centre);
      tags.place(16, arcMiddle(dim));
      break;
  }
}

const headingDeg = (from: Vec2, to: Vec2): number => atan2(to[1] - from[1], to[0] - from[0]) / DEG;
