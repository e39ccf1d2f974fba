import type { WrittenUnits } from '../base/measures.js';
import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import { cos, sin } from '../math/elementary.js';
import { DEG, type Vec2 } from '../math/vec.js';
import type { Anchor, Segment } from './drawing.js';
import { drawableText, textWidth } from './text-size.js';

/** A line or arc of a mark, model mm; its weight is paper mm. */
export interface Stroke {
  readonly segment: Segment;
  readonly weightMm: number;
}

/** One line of text, model mm: `at` is on the baseline, at the anchor; `height` is that of capitals. */
export interface TextBox {
  readonly text: string;
  readonly at: Vec2;
  readonly anchor: Anchor;
  readonly rotationDeg: number;
  readonly height: number;
  readonly width: number;
}

/** A filled round dot, model mm. */
export interface Dot {
  readonly centre: Vec2;
  readonly radius: number;
}

/** What a dimension, leader or level mark consists of when it is drawn: the same for every writer. */
export interface Expansion {
  readonly strokes: readonly Stroke[];
  readonly texts: readonly TextBox[];
  readonly dots: readonly Dot[];
}

/**
 * Makes an expansion once for each mark as long as it is asked for at the same scale, in the same units: the box round a
 * view, its check and every writer ask for the same.
 */
export function expandedOnce<
  P extends object,
  A extends readonly [scale: number, units?: WrittenUnits],
  E extends Expansion,
>(make: (mark: P, ...at: A) => E): (mark: P, ...at: A) => E {
  const known = new WeakMap<P, { readonly at: A; readonly made: E }>();
  return (mark, ...at) => {
    const found = known.get(mark);
    if (found && found.at[0] === at[0] && found.at[1] === at[1]) return found.made;
    const made = make(mark, ...at);
    known.set(mark, { at, made });
    return made;
  };
}

/** A text box of what the drawing's font shows of a text, as wide as that. */
export function textBox(text: string, at: Vec2, anchor: Anchor, height: number, rotationDeg = 0): TextBox {
  const drawn = drawableText(text);
  return { text: drawn, at, anchor, rotationDeg, height, width: textWidth(drawn, height) };
}

/** Middle of a text box, half a capital above the baseline. */
export function middleOf(box: TextBox): Vec2 {
  const along = box.anchor === 'left' ? box.width / 2 : box.anchor === 'right' ? -box.width / 2 : 0;
  return boxPoint(box, along, box.height / 2);
}

/** Corners of a text box, descenders included (0.29 of a capital). */
export function boxCorners(box: TextBox): Vec2[] {
  const left = box.anchor === 'left' ? 0 : box.anchor === 'right' ? -box.width : -box.width / 2;
  const [low, high] = [-0.29 * box.height, box.height];
  return [
    boxPoint(box, left, low),
    boxPoint(box, left + box.width, low),
    boxPoint(box, left + box.width, high),
    boxPoint(box, left, high),
  ];
}

function boxPoint(box: TextBox, along: number, up: number): Vec2 {
  const [c, s] = [cos(box.rotationDeg * DEG), sin(box.rotationDeg * DEG)];
  return [box.at[0] + along * c - up * s, box.at[1] + along * s + up * c];
}

/** The direction in degrees, turned over where needed so that its text reads from the bottom or the right, in (−90, 90]. */
export function readableDeg(angleDeg: number): number {
  const turned = angleDeg - 180 * Math.ceil(angleDeg / 180 - 0.5);
  // A hair off upright still reads from the right, whichever side rounding left it.
  return turned < -90 + SAME_ANGLE_RAD / DEG ? turned + 180 : turned;
}
