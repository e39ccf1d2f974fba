import { alongBearing, dot2, sub2, turnPositive, type Vec2 } from '../../math/vec.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { CORNER, halves, padPlace, SIDES, type StandingPegs, socketDepth, TIP } from './peg-places.js';
import type { PrintSizes } from './sizes.js';
import { type Ring, skinOf } from './skin.js';

/** One floor of a tower: half its width across the flats, where its middle is, and how far it is drawn out from there. */
interface Floor {
  readonly z: number;
  readonly half: number;
  readonly at: Vec2;
  readonly to?: Vec2;
}

/** An upright octagon, or a tower of them; drawn out, a floor has the outline of two octagons and all between. */
function tower(scope: SolidScope, part: string, floors: readonly Floor[]): Solid {
  const bearings = Array.from({ length: SIDES }, (_, k) => turnPositive(((2 * k + 1) * Math.PI) / SIDES));
  const middles = floors.map(({ at, to = at }): Vec2 => [(at[0] + to[0]) / 2, (at[1] + to[1]) / 2]);
  const rings = floors.map(({ z, half, at, to = at }): Ring => {
    const corners = bearings.map(alongBearing).map((out) => {
      const [x, y] = dot2(out, sub2(to, at)) > 0 ? to : at;
      return [x + half * CORNER * out[0], y + half * CORNER * out[1], z] as const;
    });
    return { bearings, corners };
  });
  const [low, high] = [floors[0], floors.at(-1)] as [Floor, Floor];
  const { positions, triangles } = skinOf(rings, middles[0] as Vec2, [low.z, high.z]);
  // The upper end closes over its own middle.
  positions.set([...(middles.at(-1) as Vec2), high.z], 3);
  return scope.solid(part, positions, triangles, () => part);
}

/** Pegs and what carries them, to be added below the level; pads to be added and sockets to be taken above it. */
export type PegBodies = Record<'pegs' | 'pads' | 'sockets', Solid[]>;

/** Makes them for one level of a dome's wall. */
export function standingPegBodies(
  scope: SolidScope,
  dome: DomeSetout,
  { level, at }: StandingPegs,
  sizes: PrintSizes,
  within: Solid,
): PegBodies {
  const { peg, socket, pad } = halves(sizes);
  const { radius, foot, inWall } = padPlace(dome, level, sizes);
  const { peg: size } = sizes;
  const deep = socketDepth(sizes);
  const bodies = at.map((middle) => {
    /** In the middle of the wall beside the peg, where what carries it is rooted. */
    const rootAt = (z: number): Vec2 => {
      const share = Math.max(1, dome.radiusAt(z, dome.thickness / 2) / radius);
      return [dome.at[0] + share * (middle[0] - dome.at[0]), dome.at[1] + share * (middle[1] - dome.at[1])];
    };
    const upright = (part: string, half: number, from: number, to: number) =>
      tower(scope, part, [
        { z: from, half, at: middle },
        { z: to, half, at: middle },
      ]);
    const collar = level - sizes.thin;
    const corbel = tower(scope, 'corbel', [
      { z: foot, half: pad * TIP, at: rootAt(foot) },
      { z: collar, half: pad, at: middle, to: rootAt(collar) },
      { z: level, half: pad, at: middle, to: rootAt(level) },
    ]);
    const chamfer = Math.min(size.across, size.length) / 4;
    return {
      pegs: [
        ...(inWall ? [] : [scope.intersect('corbel', [corbel, within])]),
        tower(scope, 'peg', [
          { z: level - sizes.thin, half: peg, at: middle },
          { z: level + size.length - chamfer, half: peg, at: middle },
          { z: level + size.length, half: peg - chamfer, at: middle },
        ]),
      ],
      pads: inWall ? [] : [scope.intersect('pad', [upright('pad', pad, level, level + deep + sizes.thin), within])],
      sockets: [upright('socket', socket, level - sizes.thin, level + deep)],
    };
  });
  return {
    pegs: bodies.flatMap((b) => b.pegs),
    pads: bodies.flatMap((b) => b.pads),
    sockets: bodies.flatMap((b) => b.sockets),
  };
}
