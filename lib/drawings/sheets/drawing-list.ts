import * as texts from '../../base/texts/drawing-sheets.js';
import type { Column, Table } from '../../documents/table.js';
import type { NamedPage } from './chapter-pages.js';

const text = (key: string, label: string): Column => ({ key, label, kind: 'text' });
const count = (key: string, label: string): Column => ({ key, label, kind: 'integer' });

/** The sheets of a set as its cover lists them. */
export const drawingList = (pages: readonly NamedPage[]): Table => ({
  id: 'drawing-list',
  title: texts.drawings,
  columns: [count('sheet', 'sheet'), text('title', 'title'), text('scale', 'scale')],
  rows: pages.map(({ title, scale }, i) => ({ sheet: i + 1, title, scale })),
});
