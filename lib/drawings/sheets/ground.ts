import { drawingSpace, type SheetSize } from '../../documents/sheet-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import { GAP } from './free-room.js';
import { type Area, widthOf } from './rows.js';

/** Room inside the frame that nothing enters, paper mm. */
const PAD = 6;

/** The longest a line of text may be before it is hard to read, paper mm. */
export const LONGEST = 150;

/** The narrowest column of text that is tried where wider ones take more sheets, paper mm. */
export const NARROWEST = 105;

/** What is free for words on a sheet. */
export interface Ground {
  readonly name: string;
  readonly inner: Area;
  /** The title block and the room round it. */
  readonly form: Area;
  readonly whole: Area;
  /** How many times larger than usual letters are; all lengths of a ground are divided by that. */
  readonly letters: number;
}

/** @param depth how much of the room is used from the top, 0 to 1 */
export function groundOf(size: SheetSize, letters = 1, depth = 1): Ground {
  const space = drawingSpace(size);
  const top = space.top - PAD;
  const height = depth * (top - space.bottom - PAD);
  const inner = { left: space.left + PAD, right: space.right - PAD, bottom: top - height, top };
  const form = {
    left: space.right - TITLE_BLOCK.width - PAD,
    right: space.right,
    bottom: space.bottom,
    top: space.bottom + TITLE_BLOCK.height + PAD,
  };
  const divided = (a: Area): Area => ({
    left: a.left / letters,
    right: a.right / letters,
    bottom: a.bottom / letters,
    top: a.top / letters,
  });
  return { name: size.name, inner: divided(inner), form: divided(form), whole: divided(space), letters };
}

/** Width of columns of text: as few as keep lines readable. */
export function textWidthOn({ inner }: Ground): number {
  const room = widthOf(inner);
  const columns = Math.ceil((room + GAP) / (LONGEST + GAP));
  return (room + GAP) / columns - GAP;
}

/** What a table may measure to stand on a sheet of its own. */
export const tableRoom = ({ inner, form }: Ground): { readonly width: number; readonly height: number } => ({
  width: widthOf(inner),
  height: inner.top - Math.max(inner.bottom, form.top),
});
