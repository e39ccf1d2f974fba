import type { PdfDocument, PdfFont } from './source.js';

/** A text as it is set: the numbers of its letters in the file's font, four hexadecimal digits each, and its width, ems. */
export interface SetText {
  readonly glyphs: string;
  readonly width: number;
}

/**
 * The font of a document. Texts are set letter by letter, each as wide as its own advance, as drawings are laid out:
 * PDFKit would have the font's tables asked for joins and kerns that are all switched off, and the texts of a set come
 * again and again.
 */
export class PlainFont {
  private readonly known = new Map<string, SetText>();
  private readonly font: PdfFont;

  constructor(private readonly document: PdfDocument) {
    this.font = document._font;
    this.font.layout = (text) => {
      const glyphs = this.font.font.glyphsForString(text);
      return { glyphs, positions: [], advanceWidth: 0 };
    };
  }

  /** The font's name on the page at hand, whose resources it joins. */
  onPage(): string {
    const { id } = this.font;
    this.document.page.fonts[id] ??= this.font.ref();
    return id;
  }

  /** The text, whose letters join those that the file brings with it. */
  set(text: string): SetText {
    const found = this.known.get(text);
    if (found) return found;
    const glyphs = this.font.encode(text)[0].join('');
    let width = 0;
    for (const { advanceWidth } of this.font.font.glyphsForString(text)) width += advanceWidth;
    const made = { glyphs, width: (width * this.font.scale) / 1000 };
    this.known.set(text, made);
    return made;
  }
}
