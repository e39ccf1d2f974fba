import * as texts from '../base/texts/writers.js';
import { DocumentError } from '../documents/document-error.js';
import { oneLine } from '../documents/plain-text.js';
import { requireSoundSheet, type Sheet, sheetForm } from '../documents/sheet.js';
import { ByteText } from './byte-text.js';
import { PlainFont } from './pdf/font.js';
import { PdfPen, POINTS } from './pdf/pen.js';
import type { OpenFont, PdfDocument, PdfSource } from './pdf/source.js';
import { drawWith } from './pen.js';

export type { PdfSource } from './pdf/source.js';

/** What a PDF's properties say. */
export interface PdfInfo {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  /** `2026-05-04`; a file without a date says none. */
  readonly date: string | null;
}

/**
 * Sheets as one PDF, a page to the sheet at its own size: bookmarks to sheets and their views, the font embedded, texts
 * that can be searched. The same sheets give the same bytes, wherever they are written: nothing is compressed, for
 * deflate differs from machine to machine.
 * @throws DocumentError that tells every fault of a sheet, or that the font isn't the drawings' own.
 */
export async function writePdf(sheets: readonly Sheet[], info: PdfInfo, source: PdfSource): Promise<Uint8Array> {
  if (sheets.length === 0) throw new DocumentError('no-sheets', info.title, texts.pdfNeedsAtLeast);
  for (const sheet of sheets) requireSoundSheet(sheet);
  const Document = source.document as new (options: Record<string, unknown>) => PdfDocument;
  const document = new Document({
    autoFirstPage: false,
    compress: false,
    font: openFonts.get(source.font) ?? source.font,
    lang: 'en',
    displayTitle: true,
    info: {
      Title: oneLine(info.title),
      Author: oneLine(info.author),
      Subject: oneLine(info.subject),
      Creator: 'ringcourse',
      CreationDate: new WrittenDate(info.date),
    },
  });
  openFonts.set(source.font, document._font.font);
  const bytes = gathered(document);
  const font = new PlainFont(document);
  for (const sheet of sheets) addSheet(document, font, sheet);
  document.end();
  return bytes;
}

/**
 * Fonts once read serve the files that follow: PDFKit takes one in place of its bytes. It keeps with each glyph the letter
 * that first asked for it; in the drawings' font no two letters share a glyph, so files don't hang on those before them.
 */
const openFonts = new WeakMap<Uint8Array, OpenFont>();

/**
 * What stands for a date: PDFKit would else put the clock's time. It is asked for what a date tells, and written as its
 * text; a date that isn't known is PDF's null, which is as if there were none.
 */
class WrittenDate {
  readonly [Symbol.toStringTag] = 'WrittenDate';
  constructor(private readonly date: string | null) {}
  getTime = (): number => 0;
  toISOString = (): string => this.date ?? '';
  toString = (): string => (this.date === null ? 'null' : `(D:${this.date.replaceAll('-', '')})`);
}

function addSheet(document: PdfDocument, font: PlainFont, sheet: Sheet): void {
  const { width, height } = sheet.size;
  document.addPage({ size: [width * POINTS, height * POINTS], margin: 0 });
  const { title, sheet: number } = sheet.titleBlock;
  const item = document.outline.addItem(oneLine(`${number} ${title}`), { expanded: false });
  if (sheet.views.length > 1) for (const { view } of sheet.views) item.addItem(oneLine(view.title));
  const page = new ByteText();
  const form = { scale: 1, units: 'metric', primitives: sheetForm(sheet) } as const;
  drawWith(new PdfPen(page, font, { scale: 1, origin: [0, 0], height }), form);
  for (const { view, at } of sheet.views)
    drawWith(new PdfPen(page, font, { scale: view.scale, origin: at, height }), view);
  document.addContent(page.written());
}

function gathered(document: PdfDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    document.on('data', (chunk) => chunks.push(chunk));
    document.on('error', reject);
    document.on('end', () => {
      const whole = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0));
      let at = 0;
      for (const chunk of chunks) {
        whole.set(chunk, at);
        at += chunk.length;
      }
      resolve(whole);
    });
  });
}
