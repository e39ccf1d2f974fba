import type { House } from '../../description/house.js';

/** Common practice of extruding printers, no source; in widths of the nozzle. */
const GROOVE_WIDTHS = 1.5;
const GROOVE_DEPTHS = 0.75;
const PEG_WIDTHS = 4;
/** A peg's length in its widths: on a leaning wall a longer one needs a larger pad. */
const PEG_LENGTH = 1.25;
/** A joint is engraved where blocks are so many groove widths high and long. */
const GROOVES_APART = 3;
/** Facets come as near to their surface: an edge of a fifth of a line's width doesn't show. */
const FACET_WIDTHS = 0.2;
/** Common practice of extruding printers, no source; model mm. */
const SOCKET_DEEPER = 0.3;
const PLATE = 2;
const MARGIN = 4;
const MARK = 5;

/** What a printer asks of a model, in mm of the house: sizes of the model times its scale. */
export interface PrintSizes {
  /** 50 stands for 1:50. */
  readonly scale: number;
  readonly bed: readonly [number, number, number];
  /** Thinnest wall. */
  readonly thin: number;
  /** Narrowest thing that the nozzle lays. */
  readonly nozzle: number;
  /** Greatest distance between a facet and its surface. */
  readonly surface: number;
  readonly groove: { readonly width: number; readonly depth: number; readonly apart: number };
  /** Across the flats of a peg, its length above the joint, and the room round it and at its end. */
  readonly peg: { readonly across: number; readonly length: number; readonly clearance: number; readonly end: number };
  /** Least thickness of the plate, how far it stands out round the house, height of its letters. */
  readonly plate: { readonly thickness: number; readonly margin: number; readonly mark: number };
}

/** The sizes for a house printed at a scale, its description's own when missing. */
export function printSizes({ print, blocks }: House, scale = print.scale): PrintSizes {
  const { nozzle, thinnest, clearance, bed } = print;
  const width = Math.max(blocks.joint, GROOVE_WIDTHS * nozzle * scale);
  const across = Math.max(thinnest, PEG_WIDTHS * nozzle) * scale;
  return {
    scale,
    bed: [bed[0] * scale, bed[1] * scale, bed[2] * scale],
    thin: thinnest * scale,
    nozzle: nozzle * scale,
    surface: FACET_WIDTHS * nozzle * scale,
    groove: { width, depth: GROOVE_DEPTHS * nozzle * scale, apart: GROOVES_APART * width },
    peg: { across, length: PEG_LENGTH * across, clearance: clearance * scale, end: SOCKET_DEEPER * scale },
    plate: { thickness: Math.max(PLATE, thinnest) * scale, margin: MARGIN * scale, mark: MARK * scale },
  };
}
