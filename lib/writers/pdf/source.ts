/**
 * The part of a PDFKit document that the writer uses; lengths are points. PDFKit makes the file, its pages, bookmarks and
 * font; what stands on a page comes ready from the writer's pen, by which PDFKit's own text layout is left out.
 */
export interface PdfDocument {
  readonly outline: PdfOutline;
  /** The page at hand, and the fonts that it uses by their names. */
  readonly page: { readonly fonts: Record<string, object> };
  /** The font at hand. */
  readonly _font: PdfFont;
  on(event: 'data', listener: (chunk: Uint8Array) => void): unknown;
  on(event: 'end', listener: () => void): unknown;
  on(event: 'error', listener: (error: unknown) => void): unknown;
  end(): unknown;
  addPage(options: { size: [number, number]; margin: number }): unknown;
  /** Adds operators to the page at hand. */
  addContent(operators: Uint8Array): unknown;
}

/** A font as PDFKit holds it. */
export interface PdfFont {
  /** Its name in the file. */
  readonly id: string;
  /** Thousandths of an em in a unit of the font. */
  readonly scale: number;
  readonly font: OpenFont;
  layout: (text: string) => {
    readonly glyphs: readonly object[];
    readonly positions: readonly object[];
    readonly advanceWidth: number;
  };
  /** Numbers of the letters in the file's font, which takes in those that it lacks yet. */
  encode(text: string): readonly [glyphs: readonly string[], positions: readonly object[]];
  /** The object of the file that a page refers to. */
  ref(): object;
}

/** A font's tables, read. */
export interface OpenFont {
  glyphsForString(text: string): readonly { readonly advanceWidth: number }[];
}

export interface PdfOutline {
  addItem(title: string, options?: { expanded: boolean }): PdfOutline;
}

/** What makes PDF: the class of PDFKit's documents, and the bytes of the drawings' font, DejaVu Sans. */
export interface PdfSource {
  /** `PDFDocument`; its declared types, where a caller has them, leave out some of what it takes. */
  readonly document: new (
    options: never,
  ) => object;
  readonly font: Uint8Array;
}
