import { SAME_POINT } from '../base/tolerances.js';
import { partWay, reachesAxis, standsClear } from './clear.js';
import { type Burden, between, type Pair, type PairSection } from './pair-programme.js';
import type { PressedRing } from './pressed-rings.js';

/** A pair under loads that stay, and what is added to them at each section by the load that grows, once. */
export interface Growing {
  readonly pair: Pair;
  readonly grows: readonly [readonly Burden[], readonly Burden[]];
}

/** What a line of thrust must keep within besides the wall's faces and the tie. */
export interface LineLimits {
  /** Of the masonry, MPa; `null` for no limit. */
  readonly strengthMpa: number | null;
  /** Of the joints; `null` for no limit. */
  readonly friction: number | null;
  /** Closed rings that may press themselves, from the top down. */
  readonly rings: readonly PressedRing[];
  /** Sections nearer to the axis count as this wide: at the crown the lune shrinks to nothing, the masonry doesn't. */
  readonly thickness: number;
}

/** The wall's faces alone: masonry that neither crushes nor slides. */
export const FACES_ALONE: LineLimits = { strengthMpa: null, friction: null, rings: [], thickness: 0 };

/** A joint with what is added above it, and how many rings press above it. */
export interface LoadedJoint {
  readonly section: PairSection;
  readonly more: Burden;
  readonly rings: number;
}

/**
 * Joints of a half, and the one that just doesn't reach beyond the axis. A joint at a ring's height bears what comes from
 * above before the ring has pressed, and after.
 */
export function jointed(
  half: readonly PairSection[],
  grows: readonly Burden[],
  rings: LineLimits['rings'],
): LoadedJoint[] {
  return half.flatMap((section, i) => {
    if (!standsClear(section, 1)) return [];
    const above = half[i - 1];
    const part = above ? reachesAxis(above, section, 1) : null;
    const joints: LoadedJoint[] = [];
    const add = (joint: PairSection, more: Burden) => {
      const beside = [SAME_POINT, -SAME_POINT].map((off) => joint.middle[1] + off);
      const counts = beside.map((at) => rings.filter(({ z }) => at <= z).length);
      for (const count of new Set(counts)) joints.push({ section: joint, more, rings: count });
    };
    if (above && part !== null) {
      const [from, to] = [grows[i - 1] as Burden, grows[i] as Burden];
      const way = (of: keyof Burden) => partWay(from[of], to[of], part);
      add(between(above, section, part), {
        weight: way('weight'),
        moment: way('moment'),
        push: way('push'),
        pushMoment: way('pushMoment'),
      });
    }
    add(section, grows[i] as Burden);
    return joints;
  });
}
