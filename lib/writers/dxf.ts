import Handle from 'dxf-writer/src/Handle.js';
import type { View } from '../documents/drawing.js';
import { requireSoundView } from '../documents/drawing-audit.js';
import { viewBounds } from '../documents/drawing-bounds.js';
import { requireSoundSheet, type Sheet, sheetForm } from '../documents/sheet.js';
import { addView, type ModelPlace } from './dxf/add-view.js';
import { type DrawingFrame, ViewDrawing } from './dxf/view-drawing.js';

/**
 * A view as DXF (AC1021, UTF-8): model space at 1:1 in millimetres; texts, dashes and marks are sized for `1 : scale`.
 * Arcs stay arcs, dimensions are true dimensions with their geometry block, symbols are blocks. The same view gives
 * the same bytes.
 * @throws DocumentError that tells every fault of the view.
 */
export function writeDxf(view: View): Uint8Array {
  requireSoundView(view);
  const { scale, units } = view;
  const frame: DrawingFrame = { scale, writings: [{ scale, units, enlarged: 1 }], bounds: viewBounds(view) };
  return fileOf(frame, (drawing) => addView(view, { enlarged: 1, offset: [0, 0] }, drawing));
}

/**
 * A sheet as DXF, all of it in model space in millimetres, to be plotted at the scale of its first view: that view lies
 * at 1:1 in its own coordinates, the others of its scale beside it, frame and words round them. A view at another scale
 * is enlarged to keep its place; its dimensions still tell true measures.
 * @throws DocumentError that tells every fault of the sheet.
 */
export function writeDxfSheet(sheet: Sheet): Uint8Array {
  requireSoundSheet(sheet);
  const [first] = sheet.views;
  const scale = first?.view.scale ?? 1;
  const units = first?.view.units ?? 'metric';
  const [x, y] = first?.at ?? [0, 0];
  const paper: ModelPlace = { enlarged: scale, offset: [-x * scale, -y * scale] };
  const places = sheet.views.map(({ view, at }) => ({
    view,
    place: {
      enlarged: scale / view.scale,
      offset: [(at[0] - x) * scale, (at[1] - y) * scale],
    } satisfies ModelPlace,
  }));
  const corner = [paper.offset[0] + sheet.size.width * scale, paper.offset[1] + sheet.size.height * scale] as const;
  const frame: DrawingFrame = {
    scale,
    writings: [
      { scale, units, enlarged: 1 },
      ...places.map(({ view, place }) => ({ scale, units: view.units, enlarged: place.enlarged })),
    ],
    bounds: { min: paper.offset, max: corner },
  };
  return fileOf(frame, (drawing) => {
    const form: View = { id: sheet.id, title: '', scale: 1, units, primitives: sheetForm(sheet) };
    addView(form, paper, drawing);
    for (const { view, place } of places) addView(view, place, drawing);
  });
}

function fileOf(frame: DrawingFrame, fill: (drawing: ViewDrawing) => void): Uint8Array {
  // The library counts handles for the whole process; each file begins its own count.
  const seed = Handle.seed;
  Handle.seed = 0;
  try {
    const drawing = new ViewDrawing(frame);
    fill(drawing);
    return drawing.written();
  } finally {
    Handle.seed = seed;
  }
}
