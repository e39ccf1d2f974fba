import type { WrittenUnits } from '../../base/measures.js';
import type { SheetKind } from '../../description/house.js';
import type { Block } from '../../documents/block.js';
import { scaleWords } from '../../documents/scales.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import type { Table } from '../../documents/table.js';
import { splitTable, tableBlock } from '../../documents/table-block.js';
import type { Draft } from '../draft.js';
import type { Chapter } from './chapter.js';
import type { Chosen } from './choose.js';
import { flowPages, tableRoom, textWidthOn } from './flow.js';
import type { Page } from './page.js';
import type { PageMaker } from './page-maker.js';
import { namesOf } from './sheet-names.js';
import { textBlock } from './text-parts.js';

/** A page and what its sheet is called. */
export interface NamedPage {
  readonly kind: SheetKind;
  readonly page: Page;
  readonly title: string;
  /** Part of the sheet's file name. */
  readonly id: string;
  readonly scale: string;
}

/** All pages of a chapter: its views, with tables beside them where there is room, then what is left of tables and texts. */
export function chapterPages(maker: PageMaker, chapter: Chapter, chosen: Chosen, units: WrittenUnits): NamedPage[] {
  const { size } = chosen;
  const beside = tableBlocks(chapter.beside, size);
  let blocks = [
    ...beside,
    ...tableBlocks(chapter.tables(maker.handed), size),
    ...chapter.texts.map((t) => textBlock(t, textWidthOn(size))),
  ];
  const pages: NamedPage[] = [];
  for (const { drafts, scale } of groupsOf(maker, chapter, chosen)) {
    const page = maker.page(size, drafts, scale, blocks);
    if (!page) throw new Error(`the views ${drafts.map((d) => d.id).join(', ')} fitted ${size.name} and do no more`);
    blocks = blocks.filter((b) => !page.tables.includes(b));
    pages.push({ kind: chapter.kind, page, ...namesOf(chapter, page), scale: scaleWords(scale, units) });
  }
  const told = chapter.drafts.length > 0 ? blocks.filter((b) => !beside.includes(b)) : blocks;
  const rest = flowPages(size, told).map(
    (page): NamedPage => ({ kind: chapter.kind, page, title: chapter.title, id: chapter.kind, scale: '' }),
  );
  return numbered([...pages, ...rest]);
}

/** Tables as blocks that fit a sheet, each with its notes under it. */
export function tableBlocks(tables: readonly Table[], size: SheetSize): Block[] {
  const { width, height } = tableRoom(size);
  return tables
    .filter((table) => table.rows.length > 0)
    .flatMap((table) => {
      const parts = splitTable(table, height, width).map((part) => tableBlock(part, width));
      const notes = table.notes ?? [];
      if (notes.length === 0) return parts;
      return [
        ...parts,
        textBlock({ heading: `To ${table.title.toLowerCase()}`, paragraphs: notes }, textWidthOn(size)),
      ];
    });
}

interface Group {
  readonly drafts: readonly Draft[];
  readonly scale: number;
}

function groupsOf(maker: PageMaker, chapter: Chapter, { size, scale }: Chosen): Group[] {
  const drafts = [...chapter.drafts, ...chapter.late(maker.handed)];
  if (drafts.length === 0) return [];
  if (chapter.scales === 'house') return grouped(maker, size, drafts, scale) ?? [];
  // The largest scale at which every view has room by itself.
  for (const each of chapter.scales) {
    const groups = grouped(maker, size, drafts, each);
    if (groups) return groups;
  }
  return [];
}

const grouped = (maker: PageMaker, size: SheetSize, drafts: readonly Draft[], scale: number): Group[] | null =>
  maker.filled(size, drafts, scale)?.map((group) => ({ drafts: group, scale })) ?? null;

/** Pages of one title are told apart by number. */
function numbered(pages: readonly NamedPage[]): NamedPage[] {
  return pages.map((page) => {
    const alike = pages.filter((p) => p.title === page.title);
    if (alike.length === 1) return page;
    return { ...page, title: `${page.title} (${alike.indexOf(page) + 1} of ${alike.length})` };
  });
}
