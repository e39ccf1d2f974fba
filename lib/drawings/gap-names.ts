import { formatAngle } from '../base/measures.js';
import type { TextPrimitive } from '../documents/drawing.js';
import { words } from '../documents/shapes.js';
import { lineEdge } from '../math/curves.js';
import { DEG, type Vec2 } from '../math/vec.js';
import type { Developed, Gap } from './developed.js';
import type { Layout } from './layout.js';
import { leadersOut } from './leaders.js';
import { into, type Sector } from './sector.js';

/** Heights of names, paper mm: the usual one, and ISO 3098's least. */
const NAME = 2.5;
const HEIGHTS = [NAME, 1.8];
/** How far under the courses openings are named that have room neither for a name nor for a line, paper mm. */
const NAMES = 12;

/**
 * The name of what the courses leave open: in it, or where it has no room for words, at the end of a line from it.
 * What stands on the border of two sectors is named in the one that its bearing ends.
 */
export function addGapName(
  developed: Developed,
  gap: Gap,
  sector: Sector,
  put: (r: number, y: number, bearing: number) => Vec2,
  layout: Layout,
): void {
  const bearing = into(gap.bearingRad, sector);
  if (bearing > sector.to || bearing < sector.from + 1e-9) return;
  const { dome } = developed;
  const places = (['stem', 'shell'] as const).flatMap((part) =>
    dome[part].length <= 0
      ? []
      : Array.from({ length: 40 }, (_, i) => developed.at(part, (dome[part].length * (i + 0.5)) / 40)),
  );
  const held = places.filter(({ r, z }) => (gap.clearAt ?? gap.halfAt)(r, z) > 0);
  const middle = held[Math.floor(held.length / 2)];
  if (!middle) return;
  const x = (place: typeof middle) => put(place.r, place.y, bearing)[0];
  const at = (share: number): Vec2 => {
    const place = held[Math.min(held.length - 1, Math.floor(held.length * share))] as typeof middle;
    return [x(place), place.y];
  };
  const named = ([x, y]: Vec2): TextPrimitive[][] =>
    HEIGHTS.flatMap((height) => [
      [words('text', gap.id, [x, y - layout.mm(height / 2)], height, 'centre')],
      [{ ...words('text', gap.id, [x + layout.mm(height / 2), y], height, 'centre'), rotationDeg: 90 }],
    ]);
  const within = [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => named(at(share)));
  if (layout.placeFree(within)) return;
  // A vent has no room for its name: beside the courses' numbers, a line must lead back to it.
  const place = at(0.5);
  const nearRight = bearing - sector.from < sector.to - bearing;
  const leaders = leadersOut(
    { at: place, text: gap.id, first: nearRight ? 0 : Math.PI, longest: 74, inside: () => false, across: true },
    layout,
  );
  if (layout.placeFree(leaders)) return;
  // Nor for a line: it stands under the scale of bearings.
  const [foot] = put(developed.at(dome.courses[0]?.part ?? 'stem', 0).r, 0, bearing);
  layout.add({
    kind: 'path',
    layer: 'axis',
    segments: [lineEdge([foot, -layout.mm(1)], [foot, -layout.mm(4)])],
    closed: false,
  });
  const text = `${gap.id}, ${formatAngle((bearing / DEG) % 360)}`;
  layout.place([0, 4, 8, 12].map((row) => [words('text', text, [foot, -layout.mm(NAMES + row)], NAME, 'centre')]));
}
