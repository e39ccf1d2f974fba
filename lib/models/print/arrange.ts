import { SAME_POINT } from '../../base/tolerances.js';
import type { Vec2 } from '../../math/vec.js';

/** Something to lie on a bed, mm. */
export interface Footprint {
  readonly id: string;
  readonly size: Vec2;
}

/** Lower left corner of a footprint on a plate counted from 1; turned by a quarter where `turned`. */
export interface Spot {
  readonly id: string;
  readonly plate: number;
  readonly at: Vec2;
  readonly turned: boolean;
}

/** Room between parts on a bed, common practice, no source. */
const GAP = 4;

interface Shelf {
  readonly y: number;
  readonly height: number;
  x: number;
}

/**
 * Parts on as few beds as shelves give, deepest first: each on the first bed with room, in rows from the front. All fit
 * the bed by themselves.
 */
export function arrange(parts: readonly Footprint[], bed: Vec2): Spot[] {
  const plates: Shelf[][] = [];
  const lying = parts.map((part) => {
    const [w, d] = part.size;
    const turned = (d > w && d <= bed[0] && w <= bed[1]) || w > bed[0] || d > bed[1];
    return { id: part.id, turned, size: turned ? ([d, w] as const) : ([w, d] as const) };
  });
  lying.sort((a, b) => b.size[1] - a.size[1]);
  return lying.map(({ id, turned, size: [w, d] }): Spot => {
    for (let plate = 0; ; plate++) {
      const shelves = plates[plate] ?? [];
      plates[plate] = shelves;
      const shelf = shelves.find((s) => s.height >= d && s.x + w <= bed[0] + SAME_POINT) ?? opened(shelves, d, bed);
      if (!shelf || shelf.x + w > bed[0] + SAME_POINT) continue;
      const at: Vec2 = [shelf.x, shelf.y];
      shelf.x += w + GAP;
      return { id, plate: plate + 1, at, turned };
    }
  });
}

function opened(shelves: Shelf[], height: number, bed: Vec2): Shelf | null {
  const last = shelves.at(-1);
  const y = last ? last.y + last.height + GAP : 0;
  if (y + height > bed[1] + SAME_POINT) return null;
  const shelf = { y, height, x: 0 };
  shelves.push(shelf);
  return shelf;
}
