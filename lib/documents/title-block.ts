import * as texts from '../base/texts/sheet-frame.js';
import type { PlainPrimitive } from './drawing.js';
import { rectangle, stroke, words } from './shapes.js';
import { fitText } from './text-fit.js';

/** What a title block says: the fields of ISO 7200:2004 (from memory) by their meaning; an empty one stays blank. */
export interface TitleBlock {
  /** What the drawing is a part of, and where that stands. */
  readonly project: string;
  readonly address: string;
  /** Title of the sheet. */
  readonly title: string;
  readonly documentType: string;
  readonly owner: string;
  readonly creator: string;
  /** Blank until somebody has signed. */
  readonly approvedBy: string;
  readonly number: string;
  readonly issued: string;
  readonly revision: string;
  readonly scale: string;
  readonly size: string;
  readonly sheet: number;
  readonly sheets: number;
  /** What the reader must be told before all else. */
  readonly caution: string;
}

/** At most 180 mm wide, at the lower right (ISO 7200); narrower here, so that a column of its width suits A3. */
export const TITLE_BLOCK = { width: 150, height: 64 } as const;

interface Field {
  readonly label: string;
  readonly text: string;
  /** Share of the row's width. */
  readonly share: number;
  readonly tallest: number;
  readonly lines?: number;
}

/** Lines and words of a title block whose lower right corner is given, paper mm. The layout is our own. */
export function titleBlockForm(block: TitleBlock, right: number, bottom: number): PlainPrimitive[] {
  const { width, height } = TITLE_BLOCK;
  const left = right - width;
  const rows: readonly (readonly [height: number, fields: readonly Field[]])[] = [
    [11, [{ label: '', text: block.caution, share: 1, tallest: 2.5, lines: 2 }]],
    [
      16,
      [
        { label: texts.project, text: block.project, share: 0.62, tallest: 5, lines: 2 },
        { label: texts.address, text: block.address, share: 0.38, tallest: 2.5, lines: 3 },
      ],
    ],
    [
      14,
      [
        { label: texts.title, text: block.title, share: 0.62, tallest: 5, lines: 2 },
        { label: texts.documentType, text: block.documentType, share: 0.38, tallest: 2.5, lines: 2 },
      ],
    ],
    [
      11.5,
      [
        { label: texts.legalOwner, text: block.owner, share: 0.38, tallest: 2.5, lines: 2 },
        { label: texts.createdBy, text: block.creator, share: 0.32, tallest: 2.5, lines: 2 },
        { label: texts.approvedBy, text: block.approvedBy, share: 0.3, tallest: 2.5, lines: 2 },
      ],
    ],
    [
      11.5,
      [
        { label: texts.number, text: block.number, share: 0.22, tallest: 3.5 },
        { label: texts.dateOfIssue, text: block.issued, share: 0.18, tallest: 2.5 },
        { label: texts.rev, text: block.revision, share: 0.09, tallest: 3.5 },
        { label: texts.scale, text: block.scale, share: 0.22, tallest: 3.5 },
        { label: texts.size, text: block.size, share: 0.12, tallest: 3.5 },
        { label: texts.sheet, text: texts.sheetOfSheets(block.sheet, block.sheets), share: 0.17, tallest: 3.5 },
      ],
    ],
  ];
  const form: PlainPrimitive[] = [rectangle('frame', left, bottom, right, bottom + height)];
  let top = bottom + height;
  for (const [rowHeight, fields] of rows) {
    const base = top - rowHeight;
    let x = left;
    for (const field of fields) {
      const end = x + field.share * width;
      form.push(...fieldWords(field, x, base, end, top));
      if (end < right - 1) form.push(stroke('form', [end, base], [end, top]));
      x = end;
    }
    if (base > bottom + 1) form.push(stroke('form', [left, base], [right, base]));
    top = base;
  }
  return form;
}

const PAD = 1.5;
const LABEL = 1.8;

/** A small label at the top of a field and its text under it, as large as it fits. */
function fieldWords(field: Field, left: number, bottom: number, right: number, top: number): PlainPrimitive[] {
  const label = field.label === '' ? 0 : LABEL + 1;
  const room = top - bottom - label - 2 * PAD;
  const most = field.lines ?? 1;
  const width = right - left - 2 * PAD;
  let fitted = fitText(field.text, width, field.tallest, most);
  // More lines of lower letters are lower in all, until they fit the field.
  while (blockHeight(fitted.lines.length, fitted.heightMm) > room && fitted.heightMm > LABEL)
    fitted = fitText(field.text, width, fitted.heightMm - 0.1, most);
  const step = lineStep(fitted.heightMm);
  const first =
    top - PAD - label - fitted.heightMm - Math.max(0, (room - blockHeight(fitted.lines.length, fitted.heightMm)) / 2);
  return [
    ...(field.label === '' ? [] : [words('form', field.label, [left + PAD, top - PAD - LABEL], LABEL)]),
    ...(field.text.trim() === ''
      ? []
      : fitted.lines.map((text, i) => words('form', text, [left + PAD, first - i * step], fitted.heightMm))),
  ];
}

/** From a line to the next: 1.5 times the height of capitals or more (ISO 3098, from memory). */
const lineStep = (height: number): number => 1.55 * height;
/** Height of lines of text without the last one's descenders. */
const blockHeight = (lines: number, height: number): number => height + (lines - 1) * lineStep(height);
