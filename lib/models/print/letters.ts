import { hypot } from '../../math/elementary.js';
import { add2, scale2, sub2, type Vec2 } from '../../math/vec.js';
import { type Outline, outlineOf } from '../../solids/outline.js';

/** Letters of strokes, four units wide and six high, lower left at the origin. */
const STROKES: Readonly<Record<string, readonly (readonly Vec2[])[]>> = {
  '0': [
    [
      [0, 0],
      [4, 0],
      [4, 6],
      [0, 6],
      [0, 0],
    ],
  ],
  '1': [
    [
      [1, 4.5],
      [2.5, 6],
      [2.5, 0],
    ],
  ],
  '2': [
    [
      [0, 6],
      [4, 6],
      [4, 3],
      [0, 3],
      [0, 0],
      [4, 0],
    ],
  ],
  '3': [
    [
      [0, 6],
      [4, 6],
      [4, 0],
      [0, 0],
    ],
    [
      [1, 3],
      [4, 3],
    ],
  ],
  '4': [
    [
      [0, 6],
      [0, 2.5],
      [4, 2.5],
    ],
    [
      [3, 6],
      [3, 0],
    ],
  ],
  '5': [
    [
      [4, 6],
      [0, 6],
      [0, 3],
      [4, 3],
      [4, 0],
      [0, 0],
    ],
  ],
  '6': [
    [
      [4, 6],
      [0, 6],
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ],
  ],
  '7': [
    [
      [0, 6],
      [4, 6],
      [1.5, 0],
    ],
  ],
  '8': [
    [
      [0, 0],
      [4, 0],
      [4, 6],
      [0, 6],
      [0, 0],
    ],
    [
      [0, 3],
      [4, 3],
    ],
  ],
  '9': [
    [
      [0, 0],
      [4, 0],
      [4, 6],
      [0, 6],
      [0, 3],
      [4, 3],
    ],
  ],
  ':': [
    [
      [2, 1.2],
      [2, 1.3],
    ],
    [
      [2, 4.2],
      [2, 4.3],
    ],
  ],
  '.': [
    [
      [2, 0],
      [2, 0.1],
    ],
  ],
  N: [
    [
      [0, 0],
      [0, 6],
      [4, 0],
      [4, 6],
    ],
  ],
  m: [
    [
      [0, 0],
      [0, 4],
      [4, 4],
      [4, 0],
    ],
    [
      [2, 4],
      [2, 0],
    ],
  ],
  f: [
    [
      [1, 0],
      [1, 6],
      [3.5, 6],
    ],
    [
      [0, 3.5],
      [3, 3.5],
    ],
  ],
  t: [
    [
      [2, 6],
      [2, 0],
      [4, 0],
    ],
    [
      [0.5, 4],
      [3.5, 4],
    ],
  ],
  ' ': [],
};
const WIDE = 4;
const HIGH = 6;
const GAP = 2;

/** Width of a line of text of the given letter height. */
export const textWidth = (text: string, height: number): number => ((text.length * (WIDE + GAP) - GAP) * height) / HIGH;

/** The strokes of a line of text as rectangles in plan, `width` wide, lower left at `at`. */
export function textStrokes(text: string, at: Vec2, height: number, width: number): Outline[] {
  const unit = height / HIGH;
  return [...text].flatMap((letter, i) =>
    (STROKES[letter] ?? []).flatMap((line) =>
      line.slice(1).map((to, k) => {
        const place = (p: Vec2): Vec2 => add2(at, scale2([p[0] + i * (WIDE + GAP), p[1]], unit));
        return strokeBetween(place(line[k] as Vec2), place(to), width);
      }),
    ),
  );
}

/** A stroke in plan with square ends half its width past its two points. */
export function strokeBetween(from: Vec2, to: Vec2, width: number): Outline {
  const away = sub2(to, from);
  const along = scale2(away, width / 2 / hypot(...away));
  const aside: Vec2 = [-along[1], along[0]];
  const [a, b] = [sub2(from, along), add2(to, along)];
  return outlineOf(['mark', [sub2(a, aside), sub2(b, aside), add2(b, aside), add2(a, aside)]]);
}
