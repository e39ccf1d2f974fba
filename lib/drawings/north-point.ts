import { formatAngle } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { type Block, placeBlock } from '../documents/block.js';
import type { PlainPrimitive } from '../documents/drawing.js';
import { line } from '../documents/segments.js';
import { words } from '../documents/shapes.js';
import { textWidth } from '../documents/text-size.js';
import { hypot } from '../math/elementary.js';
import { alongBearing, DEG, type Vec2 } from '../math/vec.js';
import { TEXT } from './foot-blocks.js';
import type { Layout } from './layout.js';

const RADIUS = 7;
const LETTER = 3.5;
/** From the centre to the middle of the letter, which stands upright beyond the needle's tip. */
const LETTER_AT = RADIUS + 3.5;

const [TOP, LEFT, RIGHT, FOOT]: readonly [Vec2, Vec2, Vec2, Vec2] = [
  [0, RADIUS],
  [-2.6, -5],
  [2.6, -5],
  [0, -3.4],
];

/** The needle, pointing up, in its circle. */
const NEEDLE: readonly PlainPrimitive[] = [
  { kind: 'circle', layer: 'text', centre: [0, 0], radius: RADIUS },
  {
    kind: 'path',
    layer: 'text',
    segments: [line(TOP, LEFT), line(LEFT, FOOT), line(FOOT, RIGHT), line(RIGHT, TOP)],
    closed: true,
  },
  { kind: 'hatch', layer: 'text', pattern: 'solid', loops: [[line(TOP, FOOT), line(FOOT, RIGHT), line(RIGHT, TOP)]] },
];

/** North point: its needle points to true north, project north is up. */
export function northPoint(northDeg: number): Block {
  const tip = alongBearing(northDeg * DEG);
  const notes =
    northDeg === 0
      ? [texts.projectNorth, texts.trueNorthIs]
      : [
          texts.projectNorthIsUp,
          texts.trueNorthAt(
            northDeg > 180
              ? texts.anticlockwiseBy(formatAngle(360 - northDeg))
              : texts.clockwiseBy(formatAngle(northDeg)),
          ),
        ];
  const width = Math.max(2 * (LETTER_AT + LETTER / 2), ...notes.map((note) => textWidth(note, TEXT)));
  const centre: Vec2 = [width / 2, -(LETTER_AT + LETTER / 2)];
  const letter: Vec2 = [centre[0] + LETTER_AT * tip[0], centre[1] + LETTER_AT * tip[1] - LETTER / 2];
  // A letter that stands below leaves no room for the words under the circle.
  const below = centre[1] - Math.max(RADIUS, -LETTER_AT * tip[1] + LETTER / 2) - 2 - TEXT;
  return {
    width,
    height: -below + 4 * (notes.length - 1) + 1,
    primitives: [
      { kind: 'symbol', name: 'north-point', at: centre, rotationDeg: -northDeg, parts: NEEDLE },
      words('text', 'N', letter, LETTER, 'centre'),
      ...notes.map((note, i) => words('text', note, [centre[0], below - 4 * i], TEXT, 'centre')),
    ],
  };
}

const STEP = 5;

/** North point in an empty place near the upper right of what is drawn, else to the right of it. */
export function addNorthPoint(layout: Layout, northDeg: number, corner: Vec2): void {
  const block = northPoint(northDeg);
  const { min, max } = layout.bounds();
  const [width, height] = [layout.mm(block.width), layout.mm(block.height)];
  const clear = ([x, y]: Vec2) => layout.isClear({ min: [x, y - height], max: [x + width, y] });
  // Beside the figure first, then along its edges, always within what is drawn.
  const xs = steps(max[0] - width, min[0], layout.mm(STEP));
  const ys = steps(max[1], min[1] + height, layout.mm(STEP));
  const from: Vec2 = [Math.min(corner[0], max[0] - width), corner[1]];
  const near = (p: Vec2) => hypot(p[0] - from[0], p[1] - from[1]);
  const places = xs.flatMap((x) => ys.map((y): Vec2 => [x, y])).sort((a, b) => near(a) - near(b));
  const place = places.find(clear) ?? [max[0] + layout.mm(2), corner[1]];
  layout.add(...placeBlock(block, place, layout.scale));
}

function steps(from: number, to: number, by: number): number[] {
  return Array.from({ length: Math.max(0, Math.floor((from - to) / by) + 1) }, (_, i) => from - i * by);
}
