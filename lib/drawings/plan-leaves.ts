import * as texts from '../base/texts/drawing-plans.js';
import type { Primitive } from '../documents/drawing.js';
import { arcEdge, lineEdge } from '../math/curves.js';
import { atan2, square } from '../math/elementary.js';
import { sub2, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import { fromArchFrame } from './arch-places.js';

/** Thickness of a leaf as it is drawn, and how far behind the face frames stand, mm: common practice, no source. */
const LEAF = 45;
const SET_BACK = 60;

/**
 * What closes openings, in plan: doors with their swing, windows as a frame with its pane. Doors swing in, between the
 * parallel jambs, so that a step outside stays clear of them; windows to escape by swing out. Niches and vents stay open.
 */
export const leaves = (house: HouseSetout): Primitive[] => house.arches.flatMap(leafOf);

/** What a plan says of them, where it has any. */
export function leafWords(house: HouseSetout): string[] {
  const swinging = house.arches.filter((a) => a.opening.use === 'door' || a.opening.use === 'egress window');
  return swinging.length === 0 ? [] : [texts.swingsAreProposedHung];
}

function leafOf(arch: ArchSetout): Primitive[] {
  const { opening, clear } = arch;
  if (clear.kind !== 'through') return [];
  const half = opening.width / 2 - opening.frame;
  const v = placeOf(arch);
  if (!(half > 0)) return [];
  switch (opening.use) {
    case 'door':
      return [...frame(arch, v), ...swing(arch, half, v - LEAF, -1)];
    case 'egress window':
      return [...frame(arch, v), ...pane(arch, half, v), ...swing(arch, half, v, 1)];
    case 'window':
      return [...frame(arch, v), ...pane(arch, half, v)];
    default:
      return [];
  }
}

/** Distance from the axis of the frame's outer side: behind the flat face, or behind the wall's face at the jambs. */
function placeOf({ dome, faceV, section }: ArchSetout): number {
  const outer = dome.springingRadius + dome.thickness;
  const face = faceV ?? Math.sqrt(outer * outer - square(section.width / 2));
  return face - SET_BACK;
}

const path = (corners: readonly Vec2[], closed: boolean): Primitive => ({
  kind: 'path',
  layer: 'visible',
  segments: [...corners.slice(1), ...(closed ? corners.slice(0, 1) : [])].map((to, i) =>
    lineEdge(corners[i] as Vec2, to),
  ),
  closed,
});

/** The frame's posts at both jambs. */
function frame(arch: ArchSetout, v: number): Primitive[] {
  const { width, frame: face } = arch.opening;
  if (!(face > 0)) return [];
  const at = (u: number, w: number) => fromArchFrame(arch, u, w);
  return [1, -1].map((side) => {
    const [a, b] = [(side * width) / 2, side * (width / 2 - face)];
    return path([at(a, v), at(b, v), at(b, v - LEAF), at(a, v - LEAF)], true);
  });
}

const pane = (arch: ArchSetout, half: number, v: number): Primitive[] => [
  path([fromArchFrame(arch, -half, v - LEAF / 2), fromArchFrame(arch, half, v - LEAF / 2)], false),
];

/** A leaf opened square, and the quarter circle of its free edge. It hangs on the left as one comes in. */
function swing(arch: ArchSetout, half: number, v: number, way: 1 | -1): Primitive[] {
  const at = (u: number, w: number) => fromArchFrame(arch, u, w);
  // Seen from outside, the left is the side of u > 0.
  const hinge = at(half, v);
  const shut = at(-half, v);
  const open = at(half, v + way * 2 * half);
  const angle = (p: Vec2) => {
    const [x, y] = sub2(p, hinge);
    return atan2(y, x);
  };
  const start = angle(shut);
  let turn = angle(open) - start;
  if (turn > Math.PI) turn -= 2 * Math.PI;
  if (turn < -Math.PI) turn += 2 * Math.PI;
  const thick = at(half - LEAF, v);
  const tip = at(half - LEAF, v + way * 2 * half);
  return [
    path([hinge, open, tip, thick], true),
    { kind: 'path', layer: 'joint', segments: [arcEdge(hinge, 2 * half, start, start + turn)], closed: false },
  ];
}
