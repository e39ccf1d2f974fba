import type { WrittenUnits } from '../../base/measures.js';
import type { Sheet } from '../../documents/sheet.js';
import type { Column, Table } from '../../documents/table.js';
import type { NamedPage } from './chapter-pages.js';

const text = (key: string, label: string): Column => ({ key, label, kind: 'text' });
const count = (key: string, label: string): Column => ({ key, label, kind: 'integer' });

/** The sheets of a set as its cover lists them. */
export const drawingList = (pages: readonly NamedPage[]): Table => ({
  id: 'drawing-list',
  title: 'Drawings',
  columns: [count('sheet', 'sheet'), text('title', 'title'), text('scale', 'scale')],
  rows: pages.map(({ title, scale }, i) => ({ sheet: i + 1, title, scale })),
});

/** Register of a set: each sheet with its file, size, scale, views, revision and date. */
export const registerOf = (sheets: readonly Sheet[], units: WrittenUnits): Table => ({
  id: 'drawing-register',
  title: 'Drawing register',
  columns: [
    count('sheet', 'sheet'),
    text('file', 'file'),
    text('title', 'title'),
    text('views', 'views'),
    text('scale', 'scale'),
    text('size', 'size'),
    text('number', 'project number'),
    text('revision', 'revision'),
    text('date', 'date of issue'),
  ],
  rows: sheets.map(({ id, titleBlock: t, views }) => ({
    sheet: t.sheet,
    file: `drawings/${id}.dxf`,
    title: t.title,
    views: views.map(({ view }) => view.title).join('; '),
    scale: t.scale,
    size: t.size,
    number: t.number,
    revision: t.revision,
    date: t.issued,
  })),
  notes: [
    `Each sheet is a DXF and an SVG of that name and a page of drawings/set.pdf. ${units === 'metric' ? 'Lengths in mm.' : 'Lengths in feet and inches.'} Print at 100 %.`,
  ],
});
