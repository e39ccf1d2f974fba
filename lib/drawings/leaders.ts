import type { LeaderPrimitive } from '../documents/drawing.js';
import { boxCorners } from '../documents/expansion.js';
import { expandLeader } from '../documents/marks.js';
import { cos, sin } from '../math/elementary.js';
import { add2, lerp2, type Vec2 } from '../math/vec.js';
import { TEXT } from './foot-blocks.js';
import type { Layout } from './layout.js';

/** Directions of leaders that are tried, and their lengths, paper mm. */
const TURNS = 24;
const LENGTHS = [7, 10, 14, 18, 23, 29, 36, 44, 53, 63, 74] as const;

export interface LeaderSpec {
  /** The place that is told of. */
  readonly at: Vec2;
  readonly text: string;
  /** Direction that is tried first, radians counter-clockwise from east. */
  readonly first: number;
  /** Longest leader, paper mm. */
  readonly longest: number;
  /** Where neither text may stand. */
  readonly inside: (p: Vec2) => boolean;
  /** Whether the line may cross the house. */
  readonly across: boolean;
}

/** Leaders from a place to a text outside the house, the shortest first. */
export function* leadersOut(spec: LeaderSpec, layout: Layout): Generator<[LeaderPrimitive]> {
  const { at, text, first, longest, inside, across } = spec;
  for (const length of LENGTHS) {
    if (length > longest) return;
    for (let i = 0; i < TURNS; i++) {
      const turn = first + ((i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * 2 * Math.PI) / TURNS;
      const bend = add2(at, [layout.mm(length) * cos(turn), layout.mm(length) * sin(turn)]);
      const side = cos(turn) >= 0 ? 'right' : 'left';
      const leader: LeaderPrimitive = { kind: 'leader', at, bend, text, heightMm: TEXT, side };
      if (!across && [0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 1].some((t) => inside(lerp2(at, bend, t)))) continue;
      const corners = expandLeader(leader, layout.scale).texts.flatMap(boxCorners);
      if (!corners.some(inside)) yield [leader];
    }
  }
}

/** A note that must stand somewhere: outside the house, or within it where no place outside lies free within reach. */
export function placeNote(spec: LeaderSpec, layout: Layout): void {
  const outside = [...leadersOut(spec, layout)];
  const anywhere = () => leadersOut({ ...spec, inside: () => false, across: true }, layout);
  if (layout.placeFree(outside) || layout.placeFree(anywhere())) return;
  layout.place(outside.length > 0 ? outside : anywhere());
}
