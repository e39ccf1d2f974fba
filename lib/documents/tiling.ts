import type { WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/sheet-frame.js';
import { PAPER_POINT } from '../base/tolerances.js';
import type { Vec2 } from '../math/vec.js';
import { clipPath } from './clip.js';
import { expandDimension } from './dimensioning.js';
import type { PathPrimitive, PlainPrimitive, Primitive, TextPrimitive, View } from './drawing.js';
import { type Bounds2, boundsOf, chainBounds } from './drawing-bounds.js';
import { boxCorners, middleOf, textBox } from './expansion.js';
import { type PageWords, pageName, pageStrip, STRIP_HEIGHT } from './page-strip.js';
import { placed } from './placing.js';
import { line } from './segments.js';
import { stroke } from './shapes.js';
import type { Sheet } from './sheet.js';
import { drawingSpace, type SheetSize, turned } from './sheet-size.js';
import { pieceBounds, type TemplatePiece, type TemplatePrimitive } from './template.js';

/** Neighbouring pages share a band so wide, mm, with the line on which they are joined in its middle. */
const OVERLAP = 12;
/** Cross and circle of a register mark, mm. */
const MARK = { arm: 4.5, radius: 2.5 } as const;
/** Marks at the ends of a joining line lie so far inside the figure's box. */
const END = 8;
/** Left free round a figure within its pages. */
const PAD = 3;

/** The room for figures on a page, from its lower left corner. */
function roomOf(size: SheetSize): Bounds2 {
  const { left, right, bottom, top } = drawingSpace(size);
  return { min: [left, bottom + STRIP_HEIGHT], max: [right, top] };
}

interface Grid {
  readonly size: SheetSize;
  readonly columns: number;
  readonly rows: number;
  /** Size of one page's window on the figure, and from window to window. */
  readonly window: Vec2;
  readonly step: Vec2;
}

/** Pages that a figure takes, upright or level, whichever are fewer. */
function gridFor(size: SheetSize, width: number, height: number): Grid {
  const grids = [size, turned(size)].map((s): Grid => {
    const { min, max } = roomOf(s);
    const window: Vec2 = [max[0] - min[0], max[1] - min[1]];
    const step: Vec2 = [window[0] - OVERLAP, window[1] - OVERLAP];
    const pages = (length: number, i: 0 | 1) => Math.max(1, Math.ceil((length + 2 * PAD - OVERLAP) / step[i]));
    return { size: s, columns: pages(width, 0), rows: pages(height, 1), window, step };
  });
  const [upright, level] = grids as [Grid, Grid];
  return level.columns * level.rows < upright.columns * upright.rows ? level : upright;
}

/** A figure as it is or turned by a quarter, whichever takes fewer pages. */
function bestWay(piece: TemplatePiece, page: SheetSize, units: WrittenUnits) {
  const box = pieceBounds(piece, units);
  const [width, height] = [box.max[0] - box.min[0], box.max[1] - box.min[1]];
  const [straight, across] = [gridFor(page, width, height), gridFor(page, height, width)];
  if (across.columns * across.rows >= straight.columns * straight.rows) return { piece, box, grid: straight };
  const turnedBox: Bounds2 = { min: [-box.max[1], box.min[0]], max: [-box.min[1], box.max[0]] };
  return { piece: quarterTurned(piece), box: turnedBox, grid: across };
}

const quarterTurned = (piece: TemplatePiece): TemplatePiece => ({
  ...piece,
  primitives: piece.primitives.map((p) => placed(p, { turnDeg: 90, scale: 1, offset: [0, 0] })),
});

/**
 * A figure at full size on as many pages as it needs, row by row from the upper left. Neighbours share a band; register
 * marks lie on the joining line in its middle, each on every page that shows its place.
 */
export function tilePiece(given: TemplatePiece, page: SheetSize, words: PageWords, units: WrittenUnits): Sheet[] {
  const { piece, box, grid } = bestWay(given, page, units);
  const { columns, rows, window, step, size } = grid;
  const span: Vec2 = [columns * step[0] + OVERLAP, rows * step[1] + OVERLAP];
  const start: Vec2 = [(box.min[0] + box.max[0] - span[0]) / 2, (box.min[1] + box.max[1] - span[1]) / 2];
  const plain = piece.primitives.flatMap((p) => plainOf(p, units));
  const windows = Array.from({ length: rows * columns }, (_, i): Bounds2 => {
    const min: Vec2 = [start[0] + (i % columns) * step[0], start[1] + (rows - 1 - Math.floor(i / columns)) * step[1]];
    // A hair inside the frame, so that rounding leaves nothing outside.
    return {
      min: [min[0] + PAPER_POINT, min[1] + PAPER_POINT],
      max: [min[0] + window[0] - PAPER_POINT, min[1] + window[1] - PAPER_POINT],
    };
  });
  const letters = plain.filter((p) => p.kind === 'text').map((t) => ({ t, on: pageOfText(t, windows) }));
  const paths = [...plain.filter((p) => p.kind === 'path'), ...registerSigns(grid, start, span)].map((path) => ({
    path,
    box: chainBounds(path.segments),
  }));
  const room = roomOf(size);
  return windows.map((own, i) => {
    const place = { columns, rows, column: i % columns, row: Math.floor(i / columns) };
    const name = columns * rows === 1 ? piece.name : texts.pageAt(piece.name, pageName(place));
    const primitives: Primitive[] = [
      ...paths.flatMap(({ path, box }) => (apart(box, own) ? [] : clipPath(path, own))),
      ...letters.filter(({ on }) => on === i).map(({ t }) => nudged(t, own)),
    ];
    const view: View = { id: `page-${i + 1}`, title: name, scale: 1, units, primitives };
    const at: Vec2 = [room.min[0] - own.min[0] + PAPER_POINT, room.min[1] - own.min[1] + PAPER_POINT];
    return pageSheet(
      name,
      size,
      [{ view, at }],
      pageStrip({ ...words, title: titleOf(words, piece.name) }, place, window[0], units),
    );
  });
}

/** Figures that have room together on one page, in their order; the others are left for pages of their own. */
export function packPieces(
  pieces: readonly TemplatePiece[],
  page: SheetSize,
  words: PageWords,
  units: WrittenUnits,
): Sheet[] {
  const sheets: Sheet[] = [];
  let open: { piece: TemplatePiece; at: Vec2 }[] = [];
  const room = roomOf(page);
  const [wide, high] = [room.max[0] - room.min[0], room.max[1] - room.min[1]];
  let [x, y, row] = [0, 0, 0];
  const close = (): void => {
    if (open.length === 0) return;
    const names = open.map((o) => o.piece.name).join('; ');
    const primitives = open.flatMap(({ piece, at }) =>
      piece.primitives.flatMap((p) => plainOf(p, units)).map((p) => placed(p, { turnDeg: 0, scale: 1, offset: at })),
    );
    const strip = pageStrip({ ...words, title: titleOf(words, names) }, ALONE, wide, units);
    const view: View = { id: 'page', title: names, scale: 1, units, primitives };
    sheets.push(pageSheet(names, page, [{ view, at: room.min }], strip));
    [open, x, y, row] = [[], 0, 0, 0];
  };
  for (const piece of pieces) {
    const { min, max } = pieceBounds(piece, units);
    const [w, h] = [max[0] - min[0] + 2 * PAD, max[1] - min[1] + 2 * PAD];
    if (w > wide || h > high) {
      close();
      sheets.push(...tilePiece(piece, page, words, units));
      continue;
    }
    if (x > 0 && x + w > wide) [x, y, row] = [0, y + row, 0];
    if (y + h > high) close();
    open.push({ piece, at: [x + PAD - min[0], high - y - PAD - max[1]] });
    x += w;
    row = Math.max(row, h);
  }
  close();
  return sheets;
}

/** A title that the figure's name doesn't already say. */
const titleOf = ({ title }: PageWords, name: string): string => (title === '' ? name : `${title}: ${name}`);

const ALONE = { columns: 1, rows: 1, column: 0, row: 0 } as const;

const pageSheet = (title: string, size: SheetSize, views: Sheet['views'], strip: Sheet['strip']): Sheet => ({
  id: 'page',
  size,
  views,
  paper: [],
  titleBlock: { ...NO_BLOCK, title },
  ...(strip && { strip }),
});

/** A page's words stand in its strip; of the title block only title and number are told, in the list of pages. */
const NO_BLOCK = {
  project: '',
  address: '',
  documentType: '',
  owner: '',
  creator: '',
  approvedBy: '',
  number: '',
  issued: '',
  revision: '',
  scale: '',
  size: '',
  sheet: 1,
  sheets: 1,
  caution: '',
} as const;

/** Pages in the order in which they are printed. */
export const numbered = (sheets: readonly Sheet[]): Sheet[] =>
  sheets.map((sheet, i) => ({
    ...sheet,
    id: `page-${i + 1}`,
    titleBlock: { ...sheet.titleBlock, sheet: i + 1, sheets: sheets.length },
  }));

/** What can be parted between pages: lines, arcs and texts. */
function plainOf(p: TemplatePrimitive, units: WrittenUnits): (PathPrimitive | TextPrimitive)[] {
  if (p.kind === 'path' || p.kind === 'text') return [p];
  if (p.kind === 'circle') return [circlePath(p)];
  const { strokes, texts } = expandDimension(p, 1, units);
  return [
    ...strokes.map(
      ({ segment }): PathPrimitive => ({ kind: 'path', layer: 'dimension', segments: [segment], closed: false }),
    ),
    ...texts.map(
      ({ text, at, anchor, rotationDeg, height }): TextPrimitive => ({
        kind: 'text',
        layer: 'dimension',
        at,
        text,
        heightMm: height,
        anchor,
        rotationDeg,
      }),
    ),
  ];
}

function circlePath({ layer, centre, radius }: Extract<PlainPrimitive, { kind: 'circle' }>): PathPrimitive {
  const half = (start: number) => ({ kind: 'arc', centre, radius, start, end: start + Math.PI, ccw: true }) as const;
  return { kind: 'path', layer, segments: [half(0), half(Math.PI)], closed: true };
}

/** Boxes so far apart that nothing of one shows in the other, however it is rounded. */
const apart = (a: Bounds2, b: Bounds2): boolean =>
  a.min[0] > b.max[0] + PAPER_POINT ||
  a.max[0] < b.min[0] - PAPER_POINT ||
  a.min[1] > b.max[1] + PAPER_POINT ||
  a.max[1] < b.min[1] - PAPER_POINT;

/** The page that shows all of a text, else the one that shows its middle. */
function pageOfText(t: TextPrimitive, windows: readonly Bounds2[]): number {
  const box = textBox(t.text, t.at, t.anchor, t.heightMm, t.rotationDeg);
  const corners = boxCorners(box);
  const whole = windows.findIndex((w) => corners.every((c) => within(c, w)));
  return whole >= 0 ? whole : windows.findIndex((w) => within(middleOf(box), w));
}

/** A text moved so far that all of it lies on its page. */
function nudged(t: TextPrimitive, own: Bounds2): TextPrimitive {
  const { min, max } = boundsOf(boxCorners(textBox(t.text, t.at, t.anchor, t.heightMm, t.rotationDeg)));
  const shift = ([0, 1] as const).map((i) => Math.max(0, own.min[i] - min[i]) - Math.max(0, max[i] - own.max[i]));
  return { ...t, at: [t.at[0] + (shift[0] as number), t.at[1] + (shift[1] as number)] };
}

const within = ([x, y]: Vec2, { min, max }: Bounds2): boolean =>
  x >= min[0] && x <= max[0] && y >= min[1] && y <= max[1];

/** Joining lines between pages, and register marks where they cross and at their ends. */
function registerSigns({ columns, rows, step }: Grid, start: Vec2, span: Vec2): PathPrimitive[] {
  const lines = (count: number, i: 0 | 1) =>
    Array.from({ length: count - 1 }, (_, k) => start[i] + (k + 1) * step[i] + OVERLAP / 2);
  const [xs, ys] = [lines(columns, 0), lines(rows, 1)];
  const ends = (i: 0 | 1) => [start[i] + END, start[i] + span[i] - END];
  const marks = new Map<string, Vec2>();
  for (const x of xs) for (const y of [...ys, ...ends(1)]) marks.set(`${x} ${y}`, [x, y]);
  for (const y of ys) for (const x of ends(0)) marks.set(`${x} ${y}`, [x, y]);
  return [
    ...xs.map((x) => stroke('axis', [x, start[1]], [x, start[1] + span[1]])),
    ...ys.map((y) => stroke('axis', [start[0], y], [start[0] + span[0], y])),
    ...[...marks.values()].flatMap(registerMark),
  ];
}

const registerMark = ([x, y]: Vec2): PathPrimitive[] => [
  { kind: 'path', layer: 'visible', segments: [line([x - MARK.arm, y], [x + MARK.arm, y])], closed: false },
  { kind: 'path', layer: 'visible', segments: [line([x, y - MARK.arm], [x, y + MARK.arm])], closed: false },
  circlePath({ kind: 'circle', layer: 'visible', centre: [x, y], radius: MARK.radius }),
];
