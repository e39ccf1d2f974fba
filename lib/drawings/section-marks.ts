import type { Primitive } from '../documents/drawing.js';
import { lineEdge } from '../math/curves.js';
import type { Vec2 } from '../math/vec.js';
import type { Layout } from './layout.js';
import type { SectionPlane } from './section-plane.js';

/** Marks at both ends of a section's plane: a wide stroke, an arrow the way the section looks, a letter. */
export function addSectionMarks(plane: SectionPlane, reach: Vec2, layout: Layout): void {
  const { mark, through, right, look } = plane;
  for (const [end, sign] of [
    [reach[1], 1],
    [reach[0], -1],
  ] as const) {
    layout.place(
      Array.from({ length: 24 }, (_, i): Primitive[] => {
        const at = (along: number, aside: number): Vec2 => {
          const x = end + sign * layout.mm(4 + 3 * i + along);
          return [
            through[0] + x * right[0] + layout.mm(aside) * look[0],
            through[1] + x * right[1] + layout.mm(aside) * look[1],
          ];
        };
        const tip = [at(7, 5.5), at(6.2, 3), at(7.8, 3)] as const;
        const letter = at(7, 9);
        return [
          { kind: 'path', layer: 'cut', segments: [lineEdge(at(0, 0), at(7, 0))], closed: false },
          { kind: 'path', layer: 'visible', segments: [lineEdge(at(7, 0), at(7, 3))], closed: false },
          {
            kind: 'hatch',
            layer: 'text',
            pattern: 'solid',
            loops: [[lineEdge(tip[0], tip[1]), lineEdge(tip[1], tip[2]), lineEdge(tip[2], tip[0])]],
          },
          {
            kind: 'text',
            layer: 'text',
            at: [letter[0], letter[1] - layout.mm(1.75)],
            text: mark,
            heightMm: 3.5,
            anchor: 'centre',
            rotationDeg: 0,
          },
        ];
      }),
    );
  }
}
