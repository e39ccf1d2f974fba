import { remembered } from '../base/remembered.js';
import type { Primitive } from '../documents/drawing.js';
import type { Edge } from '../math/curves.js';
import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type HouseSetout, passagesOf } from '../setout/house.js';
import { archEdges } from './arch-edges.js';
import type { Prism } from './arch-places.js';
import { baseEdges } from './base-edges.js';
import { domeEdges } from './dome-edges.js';
import { type Feature, seenParts } from './feature.js';
import { jointLines } from './joints.js';
import { inEarlier } from './parts.js';
import { passageEdges } from './passage-edges.js';
import type { LevelSight } from './sight.js';
import { levelSilhouettes } from './silhouettes.js';
import { halfToward } from './space-curve.js';
import { StrokeBook } from './stroke-book.js';
import { valleys } from './valleys.js';

/** Creases of the whole house, whatever the view; found once for all views of a house. */
export const houseEdges = remembered((house: HouseSetout): readonly Feature[] => [
  ...house.domes.flatMap((dome) => domeEdges(dome, prismsOf(house, dome)).map((edge) => left(house, dome, edge))),
  ...house.arches.flatMap(archEdges),
  ...house.passages.flatMap(passageEdges),
  ...valleys(house),
  ...baseEdges(house),
]);

/** An edge of a dome ends where an earlier dome stands: on the floor of that one's room too. */
function left(house: HouseSetout, dome: DomeSetout, edge: Feature): Feature {
  if (earlierThan(house, dome).length === 0) return edge;
  return { ...edge, where: (p) => (edge.where?.(p) ?? true) && !inEarlier(house, dome, p) };
}

/** Joints of each dome's blocks, the same for all views. */
const houseJoints = remembered((house: HouseSetout) =>
  house.domes.map((dome) => jointLines(dome, prismsOf(house, dome))),
);

const prismsOf = (house: HouseSetout, dome: DomeSetout): Prism[] => [
  ...archesOf(house, dome),
  ...passagesOf(house, dome),
];

function facingHalf(feature: Feature, look: Vec2): Feature {
  const { curve, turned } = feature;
  if (curve.kind !== 'circle' || !turned) return feature;
  return { ...feature, curve: halfToward(curve, turned === 'in' ? look : [-look[0], -look[1]]) };
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
  const edges = houseEdges(house).map((f) => facingHalf(f, sight.look));
  const features = [...levelSilhouettes(house, sight.look), ...edges];
  const joints = houseJoints(house).flatMap((lines) => lines[face](sight.look));
  for (const f of features) if (f.kind === 'edge') book.write('visible', seenParts(f, sight));
  for (const f of [...features, ...joints]) if (f.kind === 'joint') book.write('joint', seenParts(f, sight));
  return book.primitives();
}
