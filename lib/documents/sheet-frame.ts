import type { PlainPrimitive } from './drawing.js';
import { rectangle, stroke, words } from './shapes.js';
import { drawingSpace, type SheetSize } from './sheet-size.js';

/** Length of a field, width of the band that names it, and how far centring marks reach into the frame, mm. */
const FIELD = 50;
const BAND = 5;
const MARK = 3;
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/**
 * Frame of the drawing space, and round it on ISO sheets the fields of 50 mm from the axes of symmetry, letters downward
 * and numbers to the right without I and O, and the centring marks: ISO 5457:1999, from memory.
 */
export function sheetFrame(size: SheetSize): PlainPrimitive[] {
  const { left, right, bottom, top } = drawingSpace(size);
  const frame = rectangle('frame', left, bottom, right, top);
  if (!size.zones) return [frame];
  const [outLeft, outRight, outBottom, outTop] = [left - BAND, right + BAND, bottom - BAND, top + BAND];
  const [middleX, middleY] = [size.width / 2, size.height / 2];
  const columns = fields(middleX, left, right);
  const rows = fields(middleY, bottom, top);
  const letterAt = BAND / 2 - 3.5 / 2;
  return [
    frame,
    rectangle('form', outLeft, outBottom, outRight, outTop),
    ...columns
      .slice(1, -1)
      .flatMap((x) => [stroke('form', [x, outBottom], [x, bottom]), stroke('form', [x, top], [x, outTop])]),
    ...rows
      .slice(1, -1)
      .flatMap((y) => [stroke('form', [outLeft, y], [left, y]), stroke('form', [right, y], [outRight, y])]),
    ...between(columns).flatMap((x, i) =>
      [outBottom, top].map((y) => words('form', String(i + 1), [x, y + letterAt], 3.5, 'centre')),
    ),
    ...between(rows)
      .reverse()
      .flatMap((y, i) =>
        [outLeft, right].map((x) => words('form', LETTERS[i] as string, [x + BAND / 2, y - 3.5 / 2], 3.5, 'centre')),
      ),
    stroke('frame', [middleX, outBottom], [middleX, bottom + MARK]),
    stroke('frame', [middleX, outTop], [middleX, top - MARK]),
    stroke('frame', [outLeft, middleY], [left + MARK, middleY]),
    stroke('frame', [outRight, middleY], [right - MARK, middleY]),
  ];
}

/** Bounds of the fields from end to end; what is left over goes to the outermost. */
function fields(middle: number, from: number, to: number): number[] {
  const half = Math.round(middle / FIELD);
  const inner = Array.from({ length: 2 * half - 1 }, (_, i) => middle + (i + 1 - half) * FIELD);
  return [from, ...inner, to];
}

const between = (bounds: readonly number[]): number[] => bounds.slice(1).map((b, i) => (b + (bounds[i] as number)) / 2);
