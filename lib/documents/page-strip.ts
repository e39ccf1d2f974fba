import type { WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/sheet-frame.js';
import type { Block } from './block.js';
import type { PlainPrimitive } from './drawing.js';
import { rectangle, rectangleLoop, words } from './shapes.js';
import { barLength, barParts, barWords } from './template.js';
import { fitText, wrapText } from './text-fit.js';

/** Where a page lies among those that are joined to one template: columns and rows from the upper left, from 0. */
export interface PagePlace {
  readonly columns: number;
  readonly rows: number;
  readonly column: number;
  readonly row: number;
}

/** What a page of a template says at its foot. */
export interface PageWords {
  readonly title: string;
  /** Whose it is, and of what date. */
  readonly project: string;
  readonly caution: string;
}

export const STRIP_HEIGHT = 30;
const PAD = 2;
/** Greatest size of the little plan of all pages. */
const PLAN = { width: 24, height: 15 } as const;

/** Sizes of the small print that are tried, and from line to line in them. */
const SMALL = [1.8, 1.6, 1.4] as const;
const SPACING = 1.45;

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** `B2`: second column, second row; columns past Z go on with AA. */
export function pageName({ column, row }: PagePlace): string {
  const letter = (n: number): string =>
    (n >= LETTERS.length ? letter(Math.floor(n / LETTERS.length) - 1) : '') + LETTERS[n % LETTERS.length];
  return `${letter(column)}${row + 1}`;
}

/** Title, place among the pages, a bar to check the size with; along the foot of a page. */
export function pageStrip(text: PageWords, place: PagePlace, width: number, units: WrittenUnits): Block {
  const barAt = width - PAD - barLength(units);
  const left = barAt - 3 * PAD;
  const alone = place.columns * place.rows === 1;
  const title = fitText(text.title, width - PLAN.width - 4 * PAD, 3.5, 1);
  const where = alone ? texts.onePage : texts.pageOfColumns(pageName(place), place.columns, place.rows);
  const second = fitText(where, width - PLAN.width - 4 * PAD, 2.5, 1);
  const { size, lines } = smallPrint(text, left - PAD);
  return {
    width,
    height: STRIP_HEIGHT,
    primitives: [
      rectangle('form', 0, -STRIP_HEIGHT, width, 0),
      words('form', title.lines[0] as string, [PAD, -PAD - 3.5], title.heightMm),
      words('form', second.lines[0] as string, [PAD, -PAD - 8.5], second.heightMm),
      ...lines.map((line, i) => words('form', line, [PAD, -PAD - 10.5 - SPACING * size * (i + 0.7)], size)),
      ...barParts([barAt, -STRIP_HEIGHT + PAD], units),
      words('form', barWords(units), [barAt, -STRIP_HEIGHT + PAD + 5.5], 2.5),
      ...(alone ? [] : plan(place, width)),
    ],
  };
}

/** The caution is never cut: the words move closer together, and get smaller, until all have room. */
function smallPrint({ project, caution }: PageWords, width: number) {
  const at = (size: number) => ({ size, lines: [project, caution].flatMap((t) => wrapText(t, width, size)) });
  const [tallest, ...smaller] = SMALL;
  let print = at(tallest);
  for (const size of smaller) {
    if (SPACING * print.size * (print.lines.length - 0.3) <= STRIP_HEIGHT - PAD - 11) break;
    print = at(size);
  }
  return print;
}

/** All pages as small boxes, this one filled. */
function plan({ columns, rows, column, row }: PagePlace, width: number): PlainPrimitive[] {
  const side = Math.min(PLAN.width / columns, PLAN.height / rows, 6);
  const [x0, y0] = [width - PAD - columns * side, -PAD];
  const boxes = Array.from({ length: rows * columns }, (_, i) => {
    const [x, y] = [x0 + (i % columns) * side, y0 - Math.floor(i / columns) * side];
    return rectangle('form', x, y - side, x + side, y);
  });
  const [x, y] = [x0 + column * side, y0 - row * side];
  return [
    ...boxes,
    { kind: 'hatch', layer: 'form', pattern: 'solid', loops: [rectangleLoop(x, y - side, x + side, y)] },
  ];
}
