/** A trimmed sheet lying level, mm, and what is left free between its edges and the frame of the drawing space. */
export interface SheetSize {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly margins: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  /** Whether fields of 50 mm are named along the frame. */
  readonly zones: boolean;
}

/** ISO 5457:1999: filing edge 20 mm on the left, 10 mm on the other sides; trimmed sizes of ISO 216. */
const ISO_MARGINS = { left: 20, right: 10, top: 10, bottom: 10 } as const;

const iso = (name: string, width: number, height: number): SheetSize => ({
  name,
  width,
  height,
  margins: ISO_MARGINS,
  zones: true,
});

/** Sheets of ISO 5457 that a set may use, smallest first. */
export const ISO_SHEETS: readonly SheetSize[] = [
  iso('A3', 420, 297),
  iso('A2', 594, 420),
  iso('A1', 841, 594),
  iso('A0', 1189, 841),
];

const INCH = 25.4;

/** Margins on US sheets, an inch at the filing edge and half an inch elsewhere: common practice, no source. */
const US_MARGINS = { left: INCH, right: INCH / 2, top: INCH / 2, bottom: INCH / 2 } as const;

const us = (name: string, widthInches: number, heightInches: number): SheetSize => ({
  name,
  width: widthInches * INCH,
  height: heightInches * INCH,
  margins: US_MARGINS,
  zones: false,
});

/** The US sheet that office printers take (ASME Y14.1, size B), then those of building drawings; from memory. */
export const US_SHEETS: readonly SheetSize[] = [
  us('ANSI B', 17, 11),
  us('ARCH C', 24, 18),
  us('ARCH D', 36, 24),
  us('ARCH E', 48, 36),
];

/** What every printer leaves free round a page of a template; common practice, no source. */
const PAGE_MARGIN = 8;

const page = (name: string, width: number, height: number): SheetSize => ({
  name,
  width,
  height,
  margins: { left: PAGE_MARGIN, right: PAGE_MARGIN, top: PAGE_MARGIN, bottom: PAGE_MARGIN },
  zones: false,
});

/** Pages on which templates are printed in parts, small and large: ISO 216, and ASME Y14.1 sizes A and B from memory. */
export const TEMPLATE_PAGES = {
  iso: [page('A4', 210, 297), page('A3', 420, 297)],
  us: [page('ANSI A', 8.5 * INCH, 11 * INCH), page('ANSI B', 17 * INCH, 11 * INCH)],
} as const satisfies Record<string, readonly [SheetSize, SheetSize]>;

/** The same sheet turned by a quarter. */
export const turned = (size: SheetSize): SheetSize => ({ ...size, width: size.height, height: size.width });

/** Box inside the frame, mm from the sheet's lower left corner. */
export const drawingSpace = ({ width, height, margins }: SheetSize) => ({
  left: margins.left,
  right: width - margins.right,
  bottom: margins.bottom,
  top: height - margins.top,
});
