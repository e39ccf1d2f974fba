/** The part of a PDFKit document that the writer uses; lengths are points, y downward. */
export interface PdfDocument {
  readonly outline: PdfOutline;
  /** The font at hand; not a part of PDFKit's declared interface, so it may be missing. */
  readonly _font?: PdfFont;
  on(event: 'data', listener: (chunk: Uint8Array) => void): unknown;
  on(event: 'end', listener: () => void): unknown;
  on(event: 'error', listener: (error: unknown) => void): unknown;
  end(): unknown;
  addPage(options: { size: [number, number]; margin: number }): unknown;
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

/** A font as PDFKit holds it. */
export interface PdfFont {
  layout?: (text: string, features: object | undefined, onlyWidth?: boolean) => object;
  /** Thousandths of an em in a unit of the font. */
  readonly scale?: number;
  readonly font?: { glyphsForString?: (text: string) => readonly { readonly advanceWidth: number }[] };
}

export interface PdfTextOptions {
  lineBreak: false;
  baseline: 'alphabetic';
  /** Features of the font by name, on or off. */
  features: Record<string, boolean>;
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
