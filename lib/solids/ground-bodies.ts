import { hypot } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import type { FootingSetout, SlabSetout } from '../setout/house.js';
import { groundUnder, OVERRUN } from './arch-bodies.js';
import type { Solid, SolidScope } from './kernel.js';
import { type Outline, outlineOf, rectangle } from './outline.js';

/** A dome's ground: what it stands on, and the facets of its circles. */
export interface Ground {
  readonly dome: DomeSetout;
  readonly barrels: readonly ArchSetout[];
  readonly footing: FootingSetout | null;
  readonly slab: SlabSetout | null;
  readonly segments: number;
}

/** An upright cylinder from `bottom` to `top`. */
export function disc(
  radius: number,
  bottom: number,
  top: number,
  names: { readonly bottom: string; readonly side: string; readonly top: string },
): Outline {
  return outlineOf(
    [names.bottom, [[0, bottom]]],
    [names.side, [[radius, bottom]]],
    [names.top, [[radius, top]]],
    ['axis', [[0, top]]],
  );
}

/** A disc and the rectangles under the barrels, `margin` wider than these, between two levels. */
function plate(
  scope: SolidScope,
  ground: Ground,
  part: 'footing' | 'slab',
  size: { readonly radius: number; readonly margin: number; readonly bottom: number },
): Solid {
  const { dome, barrels, segments } = ground;
  const { radius, margin, bottom } = size;
  const names = { bottom: `${part}-bottom`, side: `${part}-side`, top: part === 'slab' ? 'floor' : 'footing-top' };
  const label = `${dome.id}:${part}`;
  if (barrels.length === 0) return scope.revolve(label, disc(radius, bottom, 0, names), segments, dome.at);
  // Taller than the plate, then cut level once: their tops and bottoms would coincide otherwise.
  const tall = [bottom - OVERRUN, OVERRUN] as const;
  const round = scope.revolve(label, disc(radius, ...tall, names), segments, dome.at);
  const arms = barrels.map((arch) => groundUnder(scope, arch, margin, tall, names.side));
  const level = levelBox(scope, label, ground, [bottom, 0], names);
  return scope.intersect(label, [scope.union(label, [round, ...arms]), level]);
}

/** A box over everything that a dome's house covers in plan, between two levels. */
export function levelBox(
  scope: SolidScope,
  part: string,
  { dome, barrels, footing }: Ground,
  [bottom, top]: Vec2,
  names: { readonly bottom: string; readonly side: string; readonly top: string },
): Solid {
  const margin = footing?.projection ?? 0;
  const reaches = barrels.map((a) => hypot(a.section.width / 2 + a.ring + margin, (a.faceV ?? 0) + margin));
  const far = OVERRUN + Math.max(dome.springingRadius + dome.thickness, footing?.outerRadius ?? 0, ...reaches);
  const frame = { at: dome.at, along: [0, 1], across: [1, 0] } as const;
  return scope.prism(part, rectangle([-far, bottom], [far, top], names), frame, [-far, far], [names.side, names.side]);
}

/** The footing's plate without its inner hole. */
export function footingPlate(scope: SolidScope, ground: Ground): Solid {
  const { footing } = ground;
  if (!footing) throw new Error(`${ground.dome.id}: there is no footing`);
  const { outerRadius, projection, bottomZ } = footing;
  return plate(scope, ground, 'footing', { radius: outerRadius, margin: projection, bottom: bottomZ });
}

export function footingPart(scope: SolidScope, ground: Ground, footing: FootingSetout, whole: Solid): Solid {
  const names = { bottom: 'footing-side', side: 'footing-side', top: 'footing-side' };
  const outline = disc(footing.innerRadius, footing.bottomZ - OVERRUN, OVERRUN, names);
  const part = `${ground.dome.id}:footing`;
  return scope.subtract(part, whole, [scope.revolve(part, outline, ground.segments, ground.dome.at)]);
}

/** Inside the footing's ring, or under walls and barrels where there is no footing. */
export function slabPart(scope: SolidScope, ground: Ground, slab: SlabSetout): Solid {
  const barrels = ground.footing ? [] : ground.barrels;
  return plate(scope, { ...ground, barrels }, 'slab', { radius: slab.radius, margin: 0, bottom: slab.bottomZ });
}
