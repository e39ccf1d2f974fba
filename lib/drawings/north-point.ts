import { formatAngle } from '../base/measures.js';
import type { Primitive, TextPrimitive } from '../documents/drawing.js';
import { lineEdge } from '../math/curves.js';
import { alongBearing, DEG, type Vec2 } from '../math/vec.js';
import type { Layout } from './layout.js';

const RADIUS = 7;

/** North point beside a plan: its needle points to true north, project north is up. */
export function northPoint(layout: Layout, centre: Vec2, northDeg: number): Primitive[] {
  const mm = (paper: number) => layout.mm(paper);
  const tip = alongBearing(northDeg * DEG);
  const side: Vec2 = [tip[1], -tip[0]];
  const at = (along: number, aside: number): Vec2 => [
    centre[0] + mm(along) * tip[0] + mm(aside) * side[0],
    centre[1] + mm(along) * tip[1] + mm(aside) * side[1],
  ];
  const [top, left, right, foot] = [at(RADIUS, 0), at(-5, -2.6), at(-5, 2.6), at(-3.4, 0)];
  const text = (content: string, [x, y]: Vec2, heightMm: number): TextPrimitive => ({
    kind: 'text',
    layer: 'text',
    at: [x, y - mm(heightMm / 2)],
    text: content,
    heightMm,
    anchor: 'centre',
    rotationDeg: 0,
  });
  const below = centre[1] - mm(RADIUS + 6.5);
  const notes =
    northDeg === 0
      ? ['project north is', 'true north']
      : [
          'project north is up,',
          `true north ${northDeg > 180 ? `${formatAngle(360 - northDeg)} anticlockwise` : `${formatAngle(northDeg)} clockwise`}`,
        ];
  return [
    { kind: 'circle', layer: 'text', centre, radius: mm(RADIUS) },
    {
      kind: 'path',
      layer: 'text',
      segments: [lineEdge(top, left), lineEdge(left, foot), lineEdge(foot, right), lineEdge(right, top)],
      closed: true,
    },
    {
      kind: 'hatch',
      layer: 'text',
      pattern: 'solid',
      loops: [[lineEdge(top, foot), lineEdge(foot, right), lineEdge(right, top)]],
    },
    text('N', at(RADIUS + 3.5, 0), 3.5),
    ...notes.map((note, i) => text(note, [centre[0], below - mm(4 * i)], 2.5)),
  ];
}
