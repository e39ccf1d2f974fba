import * as texts from '../base/texts/table-house.js';
import type { Sheet } from '../documents/sheet.js';
import type { Table } from '../documents/table.js';
import { countColumn, textColumn } from './units.js';

/** Register of a set: each sheet with its file, views, scale, size, revision and date. */
export const drawingRegister = (sheets: readonly Sheet[]): Table => ({
  id: 'drawing-register',
  title: texts.drawingRegister,
  columns: [
    countColumn('sheet', texts.sheet),
    textColumn('title', texts.title),
    textColumn('views', texts.views),
    textColumn('scale', texts.scale),
    textColumn('size', texts.size),
    textColumn('number', texts.projectNumber),
    textColumn('revision', texts.revision),
    textColumn('date', texts.dateOfIssue),
    textColumn('file', texts.file),
  ],
  rows: sheets.map(({ id, titleBlock: t, views }) => ({
    sheet: t.sheet,
    title: t.title,
    views: views.map(({ view }) => view.title).join('; '),
    scale: t.scale,
    size: t.size,
    number: t.number,
    revision: t.revision,
    date: t.issued,
    file: `drawings/${id}.dxf`,
  })),
  notes: [texts.eachSheetIsDxf],
});
