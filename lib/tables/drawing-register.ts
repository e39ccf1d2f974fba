import type { Sheet } from '../documents/sheet.js';
import type { Table } from '../documents/table.js';
import { countColumn, textColumn } from './units.js';

/** Register of a set: each sheet with its file, views, scale, size, revision and date. */
export const drawingRegister = (sheets: readonly Sheet[]): Table => ({
  id: 'drawing-register',
  title: 'Drawing register',
  columns: [
    countColumn('sheet', 'sheet'),
    textColumn('title', 'title'),
    textColumn('views', 'views'),
    textColumn('scale', 'scale'),
    textColumn('size', 'size'),
    textColumn('number', 'project number'),
    textColumn('revision', 'revision'),
    textColumn('date', 'date of issue'),
    textColumn('file', 'file'),
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
  notes: ['Each sheet is a DXF and an SVG of that name and a page of drawings/set.pdf. Print at 100 %.'],
});
