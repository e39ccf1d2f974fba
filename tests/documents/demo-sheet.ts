import { placeBlock } from '../../lib/documents/block.js';
import { rectangle, words } from '../../lib/documents/shapes.js';
import type { Sheet } from '../../lib/documents/sheet.js';
import { ISO_SHEETS, type SheetSize } from '../../lib/documents/sheet-size.js';
import { tableBlock } from '../../lib/documents/table-block.js';
import type { TitleBlock } from '../../lib/documents/title-block.js';
import { demoView } from './demo-view.js';

export const DEMO_TITLES: TitleBlock = {
  project: 'Demonstration house',
  address: '1 Example Row',
  title: 'All kinds of marks',
  documentType: 'General arrangement drawing, preliminary',
  owner: 'nobody in particular',
  creator: 'drawing office',
  approvedBy: '',
  number: 'DH-001',
  issued: '2026-05-04',
  revision: 'A',
  scale: '1:50, 1:100',
  size: 'A2',
  sheet: 1,
  sheets: 2,
  caution: 'Preliminary. Not a design. To be confirmed by a licensed engineer and the local building authority.',
};

/** A sheet with two views at two scales, a bar of 100 mm, a symbol and a table; invented, to test the writers. */
export function demoSheet(titles: Partial<TitleBlock> = {}, size: SheetSize = ISO_SHEETS[1] as SheetSize): Sheet {
  const table = {
    id: 'demo',
    title: 'A table',
    columns: [
      { key: 'name', label: 'name of it', kind: 'text' as const },
      { key: 'n', label: 'how many', kind: 'integer' as const },
    ],
    rows: [
      { name: 'short', n: 3 },
      { name: 'a longer name', n: 12345 },
      { name: 'nothing', n: null },
    ],
  };
  return {
    id: 'sheet-1-demo',
    size,
    views: [
      { view: demoView('metric', 50), at: [150, 250] },
      { view: { ...demoView('metric', 100), id: 'small', title: 'The same, smaller' }, at: [420, 280] },
    ],
    paper: [
      rectangle('cut', 40, 40, 140, 45),
      words('text', 'exactly 100 mm', [40, 48], 3.5),
      {
        kind: 'symbol',
        name: 'flag',
        at: [200, 60],
        rotationDeg: 30,
        parts: [
          rectangle('visible', 0, 0, 12, 6),
          { kind: 'hatch', layer: 'text', pattern: 'solid', loops: [rectangle('text', 0, 0, 6, 6).segments] },
          words('text', 'N', [9, 1.5], 3.5, 'centre'),
        ],
      },
      ...placeBlock(tableBlock(table), [260, 90]),
    ],
    titleBlock: { ...DEMO_TITLES, size: size.name, ...titles },
  };
}
