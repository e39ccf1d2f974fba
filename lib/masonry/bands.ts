import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import { turnSigned } from '../math/vec.js';
import { type MeridianSpan, spanPoint } from '../setout/span.js';
import type { Cutter } from './cutter.js';

/** Most blocks and perpends near a cut lie wholly on one side of it: so many bands of a course tell which. */
const BANDS = 8;

/** What of the cutters matters to a part of a ring. */
export interface Meeting {
  /** Those that may take something of it. */
  readonly near: readonly Cutter[];
  /** They take all of it. */
  readonly gone: boolean;
}

/**
 * Tells, for curved bodies that fill a ring's height and depth between two bearings, which cutters can reach them.
 * Walls only lean inward, so each band of the ring lies in a box of radii and heights that its corners give.
 */
export function meetingsOf(
  cutters: readonly Cutter[],
  span: MeridianSpan,
  [from, to]: readonly [number, number],
  thickness: number,
): (bearing: readonly [number, number]) => Meeting {
  const boxes = Array.from({ length: BANDS }, (_, k) => {
    const [low, high] = [from + ((to - from) * k) / BANDS, from + ((to - from) * (k + 1)) / BANDS];
    const [inner, outer] = [span.at(high).r, spanPoint(span, low, thickness)[0]] as const;
    return { radii: [inner, outer], heights: [span.at(low).z, spanPoint(span, high, thickness)[1]] } as const;
  });
  const spreads = cutters.map((cutter) => {
    const bands = boxes.map(({ radii, heights }) => cutter.spreadsIn(radii, heights));
    return {
      cutter,
      least: bands.map(([least]) => least),
      most: Math.max(0, ...bands.map(([, most]) => most).filter((most) => most > 0)),
    };
  });
  return (bearing) => {
    const middle = (bearing[0] + bearing[1]) / 2;
    const half = (bearing[1] - bearing[0]) / 2 + SAME_ANGLE_RAD;
    const off = ({ bearingRad }: Cutter) => Math.abs(turnSigned(middle - bearingRad));
    const met = spreads.filter(({ cutter, most }) => off(cutter) < most + half);
    if (met.length === 0) return FREE;
    return {
      near: met.map(({ cutter }) => cutter),
      gone: boxes.every((_, band) => met.some(({ cutter, least }) => off(cutter) + half < (least[band] as number))),
    };
  };
}

const FREE: Meeting = { near: [], gone: false };
