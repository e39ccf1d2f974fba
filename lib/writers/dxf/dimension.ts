import { arcMiddle, turnOf } from '../../documents/dimension-arcs.js';
import { type DimensionExpansion, dimensionLineEnds, measureOf } from '../../documents/dimensioning.js';
import type { DimensionPrimitive } from '../../documents/drawing.js';
import { atan2 } from '../../math/elementary.js';
import { DEG, type Vec2 } from '../../math/vec.js';
import { entity, safeText } from './entities.js';
import type { DxfObject, Part } from './object.js';
import { point, type Tag } from './tags.js';

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
  const { definition, parts } = geometry(dim);
  const prefix = 'prefix' in dim ? dim.prefix : undefined;
  const common: Tag[] = [
    [2, block],
    ...point(10, definition),
    ...point(11, drawn.middle),
    [70, KIND[dim.type] + OWN_BLOCK + TEXT_PLACED],
    [71, MIDDLE_CENTRE],
    // Angles stand in radians here.
    [42, dim.type === 'angle' || dim.type === 'arc' ? turnOf(dim) : measureOf(dim)],
    // Angle brackets stand for the measure.
    [1, text === undefined ? measured(prefix) : unbracketed(text)],
    [3, style],
  ];
  return entity('DIMENSION', 'dimension', [['AcDbDimension', common], ...parts]);
}

const measured = (prefix: string | undefined): string => (prefix === undefined ? '' : `${unbracketed(prefix)}<>`);
const unbracketed = (text: string): string => safeText(text).replaceAll('<>', '< >');

function geometry(dim: DimensionPrimitive): { definition: Vec2; parts: Part[] } {
  switch (dim.type) {
    case 'linear':
    case 'aligned': {
      // An aligned one is written as a linear one along its own direction: readers disagree on the measure of the other kind.
      const angle = dim.type === 'linear' ? dim.angleDeg : headingDeg(dim.from, dim.to);
      const ends: Tag[] = [...point(13, dim.from), ...point(14, dim.to), [50, angle]];
      const parts: Part[] = [
        ['AcDbAlignedDimension', ends],
        ['AcDbRotatedDimension', []],
      ];
      return { definition: dimensionLineEnds(dim)[1], parts };
    }
    case 'radius':
      return { definition: dim.centre, parts: [['AcDbRadialDimension', [...point(15, dim.on), [40, 0]]]] };
    case 'diameter': {
      const opposite = [2 * dim.centre[0] - dim.on[0], 2 * dim.centre[1] - dim.on[1]] as const;
      return { definition: opposite, parts: [['AcDbDiametricDimension', [...point(15, dim.on), [40, 0]]]] };
    }
    case 'angle':
    case 'arc': {
      // Two lines from the centre; a point of the arc between them tells which of their angles is meant.
      const lines: Tag[] = [
        ...point(13, dim.centre),
        ...point(14, dim.from),
        ...point(15, dim.centre),
        ...point(16, arcMiddle(dim)),
      ];
      return { definition: dim.to, parts: [['AcDb2LineAngularDimension', lines]] };
    }
  }
}

const headingDeg = (from: Vec2, to: Vec2): number => atan2(to[1] - from[1], to[0] - from[0]) / DEG;
