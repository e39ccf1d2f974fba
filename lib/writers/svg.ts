import * as texts from '../base/texts/writers.js';
import type { View } from '../documents/drawing.js';
import { requireSoundView } from '../documents/drawing-audit.js';
import { viewBounds } from '../documents/drawing-bounds.js';
import { requireSoundSheet, type Sheet, sheetForm, sheetName } from '../documents/sheet.js';
import { escaped } from './markup.js';
import { drawWith } from './pen.js';
import { SvgPen } from './svg/pen.js';
import { number, svgDocument } from './svg/text.js';

/** Paper left free round the view, mm. */
const MARGIN = 5;

export interface SvgOptions {
  /** Says what the picture shows to those who can't see it; the view's title and scale when left out. */
  readonly description?: string;
}

/**
 * A view as an SVG that stands alone: one unit is one millimetre of paper at `1 : scale`, y downward.
 * Arcs stay arcs; texts are texts, held to their laid-out length whatever font the reader has.
 * @throws DocumentError that tells every fault of the view.
 */
export function writeSvg(view: View, options: SvgOptions = {}): Uint8Array {
  requireSoundView(view);
  const { min, max } = viewBounds(view);
  const [width, height] = [0, 1].map((i) => ((max[i] as number) - (min[i] as number)) / view.scale + 2 * MARGIN) as [
    number,
    number,
  ];
  const origin = [MARGIN - min[0] / view.scale, MARGIN - min[1] / view.scale] as const;
  const pen = new SvgPen({ id: view.id, scale: view.scale, origin, height });
  drawWith(pen, view);
  const description = options.description ?? texts.drawnAtScale(view.title, view.scale);
  return svgDocument([width, height], { title: view.title, description }, pen.lines);
}

/**
 * A sheet as an SVG that stands alone, of the sheet's own size, each view in a group of its own.
 * @throws DocumentError that tells every fault of the sheet.
 */
export function writeSvgSheet(sheet: Sheet): Uint8Array {
  requireSoundSheet(sheet);
  const { width, height } = sheet.size;
  const group = (name: string, content: readonly string[]): string[] => [
    `<g data-part="${escaped(name)}">`,
    ...content,
    '</g>',
  ];
  const form = new SvgPen({ id: `${sheet.id}-form`, scale: 1, origin: [0, 0], height });
  drawWith(form, { scale: 1, units: 'metric', primitives: sheetForm(sheet) });
  const views = sheet.views.flatMap(({ view, at }, i) => {
    const pen = new SvgPen({ id: `${sheet.id}-view-${i + 1}`, scale: view.scale, origin: at, height });
    drawWith(pen, view);
    return group(view.id, pen.lines);
  });
  const shown = sheet.views.map(({ view }) => view.title).join(', ');
  const description = texts.sheetOfByMm(
    sheet.titleBlock.sheet,
    sheet.titleBlock.sheets,
    number(width),
    number(height),
    shown || sheet.titleBlock.title,
  );
  return svgDocument([width, height], { title: sheetName(sheet), description }, [
    ...group('form', form.lines),
    ...views,
  ]);
}
