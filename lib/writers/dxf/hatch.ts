import type { HatchPattern, LayerName, Segment } from '../../documents/drawing.js';
import { HATCHES, type HatchPart, placeFamily } from '../../documents/hatches.js';
import { bulgedVertices, entity } from './entities.js';
import type { DxfObject } from './object.js';
import { point, type Tag } from './tags.js';

/** A filled area. */
export const fillEntity = (loops: readonly (readonly Segment[])[], layer: LayerName): DxfObject =>
  areaEntity(loops, layer, 'SOLID', []);

/**
 * A hatched area, an entity for each part of its pattern: bulged polyline loops, and the pattern's lines spelled out in
 * model mm. Some readers take the lines, some draw by name, turn and size: the two agree.
 */
export const hatchEntities = (
  loops: readonly (readonly Segment[])[],
  pattern: Exclude<HatchPattern, 'solid'>,
  layer: LayerName,
  scale: number,
): DxfObject[] => HATCHES[pattern].map((part) => areaEntity(loops, layer, part.dxf.name, patternTags(part, scale)));

function areaEntity(
  loops: readonly (readonly Segment[])[],
  layer: LayerName,
  name: string,
  pattern: readonly Tag[],
): DxfObject {
  const tags: Tag[] = [
    ...point(10, [0, 0]),
    [210, 0],
    [220, 0],
    [230, 1],
    [2, name],
    [70, pattern.length === 0 ? 1 : 0],
    [71, 0],
    [91, loops.length],
    ...loops.flatMap(loopTags),
    // Odd parity: a loop inside another is a hole.
    [75, 0],
    [76, 1],
    ...pattern,
    [98, 0],
  ];
  return entity('HATCH', layer, [['AcDbHatch', tags]]);
}

const EXTERNAL_POLYLINE = 1 + 2;

function loopTags(loop: readonly Segment[]): Tag[] {
  const vertices = bulgedVertices(loop, true);
  return [
    [92, EXTERNAL_POLYLINE],
    [72, 1],
    [73, 1],
    [93, vertices.length],
    ...vertices.flatMap(([[x, y], bulge]): Tag[] => [
      [10, x],
      [20, y],
      [42, bulge],
    ]),
    [97, 0],
  ];
}

function patternTags({ families: onPaper, dxf }: HatchPart, scale: number): Tag[] {
  const families = onPaper.map((f) => placeFamily(f, scale));
  return [
    [52, dxf.turnDeg],
    [41, dxf.size * scale],
    [77, 0],
    [78, families.length],
    ...families.flatMap((f): Tag[] => [
      [53, f.angleDeg],
      [43, f.base[0]],
      [44, f.base[1]],
      [45, f.step[0]],
      [46, f.step[1]],
      [79, f.dashes.length],
      ...f.dashes.map((d): Tag => [49, d]),
    ]),
  ];
}
