import type { PagePayload } from '../documents/page-payload.js';
import { cos, sin } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
import { type Camera, cameraOn } from './camera.js';
import type { Solids } from './solids.js';

export type CutKind = 'none' | 'level' | 'upright';

/** All that the reader has chosen. */
export interface View {
  readonly camera: Camera;
  readonly step: number;
  /** 0 together, 1 fully apart. */
  readonly apart: number;
  /** Place of the cut between its ends, 0 to 1, and for an upright one its bearing. */
  readonly cut: {
    readonly kind: CutKind;
    readonly share: number;
    readonly bearingRad: number;
    readonly other: boolean;
  };
  readonly colouring: number;
  /** The one entry of the colouring that is shown in colour; `null`: all. */
  readonly only: number | null;
  readonly chosen: number | null;
  readonly opening: number | null;
  readonly names: boolean;
}

/** Radius round the middle within which everything lies, together and apart. */
export function reachOf(
  { low, high }: Solids,
  { lifts }: PagePayload,
): { readonly near: number; readonly far: number } {
  const length = (v: readonly number[]) => Math.sqrt(v.reduce((sum, x) => sum + x * x, 0));
  const near = length([0, 1, 2].map((i) => ((high[i] as number) - (low[i] as number)) / 2));
  return { near, far: near + Math.max(0, ...lifts.map(length)) };
}

export const middleOf = ({ low, high }: Solids): Vec3 => [
  (low[0] + high[0]) / 2,
  (low[1] + high[1]) / 2,
  (low[2] + high[2]) / 2,
];

/** From the south-west, raised: as the model is first seen. */
const FIRST = { bearingRad: 3.75, elevationRad: 0.45 } as const;

export const firstCamera = (solids: Solids, payload: PagePayload): Camera =>
  cameraOn(middleOf(solids), reachOf(solids, payload).near, FIRST.bearingRad, FIRST.elevationRad);

export const firstView = (solids: Solids, payload: PagePayload): View => ({
  camera: firstCamera(solids, payload),
  step: payload.steps.length - 1,
  apart: 0,
  cut: { kind: 'none', share: 0.5, bearingRad: Math.PI, other: false },
  colouring: 0,
  only: null,
  chosen: null,
  opening: null,
  names: true,
});

/** The plane that a cut stands for; what lies past it is hidden. `null` when nothing is cut. */
export function cutPlane(
  { cut, apart }: View,
  solids: Solids,
  { lifts }: PagePayload,
): { readonly normal: Vec3; readonly distance: number } | null {
  if (cut.kind === 'none') return null;
  const normal: Vec3 = cut.kind === 'level' ? [0, 0, 1] : [sin(cut.bearingRad), cos(cut.bearingRad), 0];
  const along = (p: readonly number[]) => normal[0] * (p[0] ?? 0) + normal[1] * (p[1] ?? 0) + normal[2] * (p[2] ?? 0);
  const { low, high } = solids;
  const corners = [0, 1, 2, 3, 4, 5, 6, 7].map((k) =>
    along([k & 1 ? high[0] : low[0], k & 2 ? high[1] : low[1], k & 4 ? high[2] : low[2]]),
  );
  const moves = lifts.map((l) => apart * along(l));
  const from = Math.min(...corners) + Math.min(0, ...moves);
  const to = Math.max(...corners) + Math.max(0, ...moves);
  const distance = from + (to - from) * cut.share;
  const side = cut.other ? -1 : 1;
  return { normal: [side * normal[0], side * normal[1], side * normal[2]], distance: side * distance };
}

/** Marks that begin as asked, or hold it where none does; a mark alone where it is written out. */
export function findMarks(names: readonly string[], asked: string): number[] {
  const want = asked.trim().toLowerCase();
  if (want === '') return [];
  const low = names.map((n) => n.toLowerCase());
  const exact = low.indexOf(want);
  if (exact >= 0) return [exact];
  const all = low.flatMap((n, i) => (n.startsWith(want) ? [i] : []));
  return all.length > 0 ? all : low.flatMap((n, i) => (n.includes(want) ? [i] : []));
}
