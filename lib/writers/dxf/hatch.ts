import type { HatchPattern, LayerName, Segment } from '../../documents/drawing.js';
import { HATCHES, type HatchPart, placeFamily } from '../../documents/hatches.js';
import { bulgedVertices, entity, vertexTags } from './entities.js';
import type { Content, DxfObject } from './object.js';
import type { GuardedTags } from './tags.js';

/** A filled area. */
export const fillEntity = (loops: readonly (readonly Segment[])[], layer: LayerName): DxfObject =>
  areaEntity(loops, layer, 'SOLID', null);

/**
 * A hatched area, an entity for each part of its pattern: bulged polyline loops, and the pattern's lines spelled out in
 * model mm. Some readers take the lines, some draw by name, turn and size: the two agree.
 */
export const hatchEntities = (
  loops: readonly (readonly Segment[])[],
  pattern: Exclude<HatchPattern, 'solid'>,
  layer: LayerName,
  scale: number,
): DxfObject[] =>
  HATCHES[pattern].map((part) => areaEntity(loops, layer, part.dxf.name, (tags) => patternTags(tags, part, scale)));

function areaEntity(
  loops: readonly (readonly Segment[])[],
  layer: LayerName,
  name: string,
  pattern: Content | null,
): DxfObject {
  return entity('HATCH', layer, (tags) => {
    tags.push(100, 'AcDbHatch');
    tags.place(10, [0, 0]);
    tags.push(210, 0);
    tags.push(220, 0);
    tags.push(230, 1);
    tags.push(2, name);
    tags.push(70, pattern ? 0 : 1);
    tags.push(71, 0);
    tags.push(91, loops.length);
    for (const loop of loops) loopTags(tags, loop);
    // Odd parity: a loop inside another is a hole.
    tags.push(75, 0);
    tags.push(76, 1);
    pattern?.(tags);
    tags.push(98, 0);
  });
}

const EXTERNAL_POLYLINE = 1 + 2;

function loopTags(tags: GuardedTags, loop: readonly Segment[]): void {
  const vertices = bulgedVertices(loop, true);
  tags.push(92, EXTERNAL_POLYLINE);
  tags.push(72, 1);
  tags.push(73, 1);
  tags.push(93, vertices.length);
  vertexTags(tags, vertices);
  tags.push(97, 0);
}

function patternTags(tags: GuardedTags, { families, dxf }: HatchPart, scale: number): void {
  tags.push(52, dxf.turnDeg);
  tags.push(41, dxf.size * scale);
  tags.push(77, 0);
  tags.push(78, families.length);
  for (const onPaper of families) {
    const { angleDeg, base, step, dashes } = placeFamily(onPaper, scale);
    tags.push(53, angleDeg);
    tags.push(43, base[0]);
    tags.push(44, base[1]);
    tags.push(45, step[0]);
    tags.push(46, step[1]);
    tags.push(79, dashes.length);
    for (const d of dashes) tags.push(49, d);
  }
}
