import type { Primitive } from '../documents/drawing.js';
import type { Edge } from '../math/curves.js';
import { archesOf, type HouseSetout } from '../setout/house.js';
import { archEdges } from './arch-edges.js';
import { baseEdges } from './base-edges.js';
import { domeEdges } from './dome-edges.js';
import { type Feature, seenParts } from './feature.js';
import { jointLines } from './joints.js';
import type { LevelSight } from './sight.js';
import { levelSilhouettes } from './silhouettes.js';
import { StrokeBook } from './stroke-book.js';

/** Creases of the whole house, whatever the view. */
export function houseEdges(house: HouseSetout): Feature[] {
  return [
    ...house.domes.flatMap((dome) => domeEdges(dome, archesOf(house, dome))),
    ...house.arches.flatMap(archEdges),
    ...baseEdges(house),
  ];
}

/** What a level look sees: edges, silhouettes and joints, hidden ones removed; nothing on lines that are `taken`. */
export function levelFigure(
  house: HouseSetout,
  sight: LevelSight,
  face: 'outside' | 'inside',
  taken: readonly Edge[],
): Primitive[] {
  const book = new StrokeBook();
  book.take(taken);
  const features = [...levelSilhouettes(house, sight.look), ...houseEdges(house)];
  const joints = house.domes.flatMap((dome) => jointLines(dome, archesOf(house, dome))[face](sight.look));
  for (const f of features) if (f.kind === 'edge') book.write('visible', seenParts(f, sight));
  for (const f of [...features, ...joints]) if (f.kind === 'joint') book.write('joint', seenParts(f, sight));
  return book.primitives();
}
