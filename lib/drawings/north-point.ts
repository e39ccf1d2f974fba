import { formatAngle } from '../base/measures.js';
import type { Primitive, TextPrimitive } from '../documents/drawing.js';
import { lineEdge } from '../math/curves.js';
import { hypot } from '../math/elementary.js';
import { alongBearing, DEG, type Vec2 } from '../math/vec.js';
import type { Layout } from './layout.js';

const RADIUS = 7;

/** Half width of needle and notes, and how far they reach over and under the circle's middle, paper mm. */
const REACH = { aside: 22, up: 16, down: 21 } as const;
const STEP = 5;

/** North point in an empty place near the upper right of what is drawn, else to the right of it. */
export function addNorthPoint(layout: Layout, northDeg: number, corner: Vec2): void {
  const mm = (paper: number) => layout.mm(paper);
  const { min, max } = layout.bounds();
  const clear = ([x, y]: Vec2) =>
    layout.isClear([
      [x - mm(REACH.aside), y - mm(REACH.down)],
      [x + mm(REACH.aside), y - mm(REACH.down)],
      [x + mm(REACH.aside), y + mm(REACH.up)],
      [x - mm(REACH.aside), y + mm(REACH.up)],
    ]);
  // Beside the figure first, then along its edges, always within what is drawn.
  const xs = steps(max[0] - mm(REACH.aside), min[0] + mm(REACH.aside), mm(STEP));
  const ys = steps(max[1] - mm(REACH.up), min[1] + mm(REACH.down), mm(STEP));
  const from = Math.min(corner[0] + mm(14), max[0] - mm(REACH.aside));
  const near = (p: Vec2) => hypot(p[0] - from, p[1] - (corner[1] - mm(6)));
  const places = xs.flatMap((x) => ys.map((y): Vec2 => [x, y])).sort((a, b) => near(a) - near(b));
  const place = places.find(clear) ?? [max[0] + mm(REACH.aside + 2), corner[1] - mm(6)];
  layout.add(...northPoint(layout, place, northDeg));
}

function steps(from: number, to: number, by: number): number[] {
  return Array.from({ length: Math.max(0, Math.floor((from - to) / by) + 1) }, (_, i) => from - i * by);
}

/** North point beside a plan: its needle points to true north, project north is up. */
function northPoint(layout: Layout, centre: Vec2, northDeg: number): Primitive[] {
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
