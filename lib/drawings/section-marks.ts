import type { PlainPrimitive, Primitive } from '../documents/drawing.js';
import { words } from '../documents/shapes.js';
import { type Box, boxOf, lineEdge } from '../math/curves.js';
import { atan2 } from '../math/elementary.js';
import { DEG, type Vec2 } from '../math/vec.js';
import type { Layout } from './layout.js';
import type { SectionPlane } from './section-plane.js';

const LETTER = 3.5;
/** How many places are tried outward from what is cut; a cluster's other domes and their notes may lie in the way. */
const PLACES = 60;

/** A wide stroke out along the plane, an arrow the way the section looks; mirrored at the plane's other end. */
function sectionMark(sign: 1 | -1): PlainPrimitive[] {
  const at = (along: number, aside: number): Vec2 => [sign * along, aside];
  const [tip, left, right] = [at(7, 5.5), at(6.2, 3), at(7.8, 3)];
  return [
    { kind: 'path', layer: 'cut', segments: [lineEdge(at(0, 0), at(7, 0))], closed: false },
    { kind: 'path', layer: 'visible', segments: [lineEdge(at(7, 0), at(7, 3))], closed: false },
    {
      kind: 'hatch',
      layer: 'text',
      pattern: 'solid',
      loops: [[lineEdge(tip, left), lineEdge(left, right), lineEdge(right, tip)]],
    },
  ];
}

/** Marks at both ends of a section's plane, each with the section's letter. */
export function addSectionMarks(plane: SectionPlane, reach: Vec2, layout: Layout): void {
  const { mark, through, right, look } = plane;
  const rotationDeg = atan2(right[1], right[0]) / DEG;
  for (const [end, sign, name] of [
    [reach[1], 1, 'section-mark-right'],
    [reach[0], -1, 'section-mark-left'],
  ] as const) {
    const parts = sectionMark(sign);
    const tries = Array.from({ length: PLACES }, (_, i): { group: Primitive[]; box: Box } => {
      const at = (along: number, aside: number): Vec2 => {
        const x = end + sign * layout.mm(4 + 3 * i + along);
        return [
          through[0] + x * right[0] + layout.mm(aside) * look[0],
          through[1] + x * right[1] + layout.mm(aside) * look[1],
        ];
      };
      const letter = at(7, 9);
      return {
        group: [
          { kind: 'symbol', name, at: at(0, 0), rotationDeg, parts },
          words('text', mark, [letter[0], letter[1] - layout.mm(LETTER / 2)], LETTER, 'centre'),
        ],
        box: boxOf([at(-1, -1), at(8.5, -1), at(8.5, 9 + LETTER), at(-1, 9)]),
      };
    });
    // Between the lines of a name a mark would be free, and read as one of them.
    if (!layout.placeFree(tries.filter(({ box }) => !layout.hasTextIn(box)).map(({ group }) => group)))
      layout.place(tries.map(({ group }) => group));
  }
}
