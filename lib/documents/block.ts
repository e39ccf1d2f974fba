import { once } from '../base/remembered.js';
import type { Vec2 } from '../math/vec.js';
import type { PaperPrimitive } from './drawing.js';
import { placed } from './placing.js';

/** A piece of paper content: primitives in mm, from its upper left corner at the origin to the right and downward. */
export interface Block {
  readonly width: number;
  readonly height: number;
  readonly primitives: readonly PaperPrimitive[];
}

/** A block whose primitives are made when they are first asked for: many are only tried for their size. */
export function drawnLater(width: number, height: number, draw: () => readonly PaperPrimitive[]): Block {
  const primitives = once(draw);
  return {
    width,
    height,
    get primitives() {
      return primitives();
    },
  };
}

/** The primitives of a block whose upper left corner is given, on paper or, enlarged by the scale, in a model. */
export const placeBlock = (block: Block, corner: Vec2, scale = 1): PaperPrimitive[] =>
  block.primitives.map((p) => placed(p, { turnDeg: 0, scale, offset: corner }));

/** Blocks one under another. */
export function stackBlocks(blocks: readonly Block[], gap: number): Block {
  let y = 0;
  const primitives = blocks.flatMap((block, i) => {
    if (i > 0) y -= gap;
    const own = placeBlock(block, [0, y]);
    y -= block.height;
    return own;
  });
  return { width: Math.max(0, ...blocks.map((b) => b.width)), height: -y, primitives };
}

/** A block drawn larger, its letters with it. */
export const enlargedBlock = (block: Block, factor: number): Block => ({
  width: block.width * factor,
  height: block.height * factor,
  primitives: placeBlock(block, [0, 0], factor).map((p) =>
    p.kind === 'text' ? { ...p, heightMm: p.heightMm * factor } : p,
  ),
});
