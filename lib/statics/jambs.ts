import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout, passagesOf } from '../setout/house.js';
import type { Pier } from './piers.js';

/** Where the load that an opening, a niche or a passage gathers comes down to the soil. Lengths mm, along the wall's middle. */
export interface JambLoad {
  /** Ids of those whose jambs share it: two where they stand near each other. */
  readonly of: readonly string[];
  /** Half of their widths, whose load comes down there. */
  readonly gathered: number;
  /** Of the footing's length that bears it, of the first. */
  readonly length: number;
  /** Load on the soil there over that of whole wall. */
  readonly times: number;
}

/** How a void's jamb stands: its width along the wall, and the level under which wall goes on below it. */
interface Jamb {
  readonly width: number;
  readonly baseZ: number;
}

/**
 * The jamb that loads the soil most, over whole wall; `null` where there are none. On each side of a void comes down
 * half of what the wall over it would bear. It stands on the jamb, that is the width of the ring, since the courses end
 * a joint short of it, and spreads at 45 degrees to both sides through the wall under it and through the footing, which
 * goes on under the void; the wall's own load is there as well. Where two jambs come so near that these lengths meet,
 * they add up. A barrel's own weight stands on the footing that projects under it and is left out with it. Common
 * practice, no source.
 *
 * @param depth of the footing
 */
export function jambLoad(
  setout: HouseSetout,
  dome: DomeSetout,
  piers: readonly Pier[],
  depth: number,
): JambLoad | null {
  const jambs = new Map<string, Jamb>([
    ...archesOf(setout, dome).map(({ id, ring, baseZ }) => [id, { width: ring, baseZ }] as const),
    ...passagesOf(setout, dome).map(({ id, ring }) => [id, { width: ring, baseZ: 0 }] as const),
  ]);
  const radius = dome.springingRadius + dome.thickness / 2;
  let worst: JambLoad | null = null;
  for (const { between, z, width, besideRad } of piers) {
    const pier = (width / dome.radiusAt(z, dome.thickness / 2)) * radius;
    const sides = between.flatMap((id, side) => {
      const jamb = jambs.get(id);
      if (!jamb) return [];
      const spread = depth + Math.max(0, jamb.baseZ);
      const length = Math.min(jamb.width, pier) + 2 * spread;
      return [{ of: [id], gathered: (besideRad[side] ?? 0) * radius, length, reach: length - spread }];
    });
    const [one, other] = sides.map((s) => ({ ...s, times: 1 + s.gathered / s.length }));
    const cases: JambLoad[] = [one, other].filter((s) => s !== undefined);
    if (one && other && one.reach + other.reach > pier) {
      const gathered = one.gathered + other.gathered;
      cases.push({ of: [...one.of, ...other.of], gathered, length: one.length, times: one.times + other.times - 1 });
    }
    for (const { of, gathered, length, times } of cases)
      if (times > (worst?.times ?? 1)) worst = { of, gathered, length, times };
  }
  return worst;
}
