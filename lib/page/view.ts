import { type Camera, cameraOn, cornersOf, type EachPoint } from '../documents/camera.js';
import type { PagePayload } from '../documents/page-payload.js';
import { cos, sin } from '../math/elementary.js';
import type { Vec3 } from '../math/vec.js';
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

/** Corners of the boxes round all pieces, drawn apart so far. */
const cornersApart =
  ({ boxes }: Solids, { lift, lifts }: PagePayload, apart: number): EachPoint =>
  (tell) => {
    for (const [piece, box] of boxes.entries()) {
      const [dx, dy, dz] = lifts[lift[piece] as number] as readonly [number, number, number];
      cornersOf(box)((x, y, z) => tell(x + apart * dx, y + apart * dy, z + apart * dz));
    }
  };

/** The box round everything, drawn apart so far. */
export function boxOf(solids: Solids, payload: PagePayload, apart: number): [Vec3, Vec3] {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  cornersApart(
    solids,
    payload,
    apart,
  )((...at) => {
    for (const i of [0, 1, 2] as const) {
      low[i] = Math.min(low[i], at[i]);
      high[i] = Math.max(high[i], at[i]);
    }
  });
  return [low, high];
}

/** From the south-west, raised: as the model is first seen. */
const FIRST = { bearingRad: 3.75, elevationRad: 0.45 } as const;

/** The whole model on a screen of that shape, as it is first seen or from elsewhere. */
export const wholeCamera = (
  solids: Solids,
  payload: PagePayload,
  size: readonly [number, number],
  {
    apart = 0,
    bearingRad = FIRST.bearingRad,
    elevationRad = FIRST.elevationRad,
  }: {
    readonly apart?: number;
    readonly bearingRad?: number;
    readonly elevationRad?: number;
  } = {},
): Camera =>
  cameraOn(
    (tell) => {
      cornersApart(solids, payload, apart)(tell);
      // Room for the names over the roofs.
      for (const { over } of payload.rooms) tell(...over);
    },
    bearingRad,
    elevationRad,
    size,
  );

export const firstView = (solids: Solids, payload: PagePayload, size: readonly [number, number]): View => ({
  camera: wholeCamera(solids, payload, size),
  step: payload.steps.length - 1,
  apart: 0,
  cut: { kind: 'none', share: 0.5, bearingRad: Math.PI, other: false },
  colouring: 0,
  only: null,
  chosen: null,
  opening: null,
  names: true,
});

/** What lies past this distance along this normal is hidden. */
export interface CutPlane {
  readonly normal: Vec3;
  readonly distance: number;
}

/** The plane that a cut stands for; `null` when nothing is cut. */
export function cutPlane({ cut, apart }: View, solids: Solids, payload: PagePayload): CutPlane | null {
  if (cut.kind === 'none') return null;
  const normal: Vec3 = cut.kind === 'level' ? [0, 0, 1] : [sin(cut.bearingRad), cos(cut.bearingRad), 0];
  let [from, to] = [Infinity, -Infinity];
  cornersApart(
    solids,
    payload,
    apart,
  )((x, y, z) => {
    const at = normal[0] * x + normal[1] * y + normal[2] * z;
    from = Math.min(from, at);
    to = Math.max(to, at);
  });
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
