/** The part of a PDFKit document that the writer uses; lengths are points, y downward. */
export interface PdfDocument {
  readonly outline: PdfOutline;
  on(event: 'data', listener: (chunk: Uint8Array) => void): unknown;
  on(event: 'end', listener: () => void): unknown;
  on(event: 'error', listener: (error: unknown) => void): unknown;
  end(): unknown;
  addPage(options: { size: [number, number]; margin: number }): unknown;
  font(source: Uint8Array): unknown;
  fontSize(points: number): unknown;
  widthOfString(text: string, options: PdfTextOptions): number;
  text(text: string, x: number, y: number, options: PdfTextOptions): unknown;
  save(): unknown;
  restore(): unknown;
  rotate(degrees: number, options: { origin: [number, number] }): unknown;
  lineWidth(points: number): unknown;
  lineJoin(join: 'round'): unknown;
  dash(lengths: number[], options: { phase: number }): unknown;
  undash(): unknown;
  moveTo(x: number, y: number): unknown;
  lineTo(x: number, y: number): unknown;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): unknown;
  closePath(): unknown;
  stroke(): unknown;
  fill(rule: 'even-odd'): unknown;
  clip(rule: 'even-odd'): unknown;
}

export interface PdfTextOptions {
  lineBreak: false;
  baseline: 'alphabetic';
  /** Features by name, on or off; types of PDFKit's callers know only lists of those that are on. */
  features: never;
}

export interface PdfOutline {
  addItem(title: string, options?: { expanded: boolean }): PdfOutline;
}

/** What makes PDF: the class of PDFKit's documents, and the bytes of the drawings' font, DejaVu Sans. */
export interface PdfSource {
  // Its options differ from version to version; those used are all that matters here.
  readonly document: new (
    options: Record<string, unknown>,
  ) => PdfDocument;
  readonly font: Uint8Array;
}
