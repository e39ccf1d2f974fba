import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import type { SheetKind } from '../../description/house.js';
import { type Block, placeBlock, stackBlocks } from '../../documents/block.js';
import { plotScales, scaleWords, standardScales } from '../../documents/scales.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import type { Table } from '../../documents/table.js';
import type { Draft } from '../draft.js';
import type { HandedOver } from '../handed.js';
import type { Chapter } from './chapter.js';
import type { Chosen } from './choose.js';
import { type Flowing, flowPages, GAP, LONGEST, NARROWEST, tableBlocks } from './flow.js';
import { keyDraft, splitDraft } from './match-lines.js';
import type { Page } from './page.js';
import type { PageMaker } from './page-maker.js';
import { namesOf } from './sheet-names.js';
import { type TextPart, textBlock } from './text-parts.js';

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
  const beside = chapter.beside.filter((table) => table.rows.length > 0).flatMap((table) => tableBlocks(table, size));
  const own = toldOf(chapter.tables(maker.handed), size);
  const groups = groupsOf(maker, chapter, chosen, units);
  const texts = [...groups.flatMap((g) => g.notes ?? []), ...chapter.texts];
  // Parts of one table follow each other; only whole tables, with their notes, stand beside views.
  let loose = [...beside, ...own.flatMap(({ whole }) => (whole ? [whole] : []))];
  const pages: NamedPage[] = [];
  for (const { drafts, scale } of groups) {
    const page = maker.page(size, drafts, scale, loose);
    if (!page) throw new Error(`the views ${drafts.map((d) => d.id).join(', ')} fitted ${size.name} and do no more`);
    loose = loose.filter((b) => !page.tables.includes(b));
    pages.push({ kind: chapter.kind, page, ...namesOf(chapter, page), scale: scaleWords(scale, units) });
  }
  const left = own.filter(({ whole }) => !whole || loose.includes(whole)).flatMap(({ flowing }) => flowing);
  const told = pages.length > 0 ? [] : beside;
  const rest = flowPages(size, [...told, ...left, ...texts]).map(
    (page): NamedPage => ({ kind: chapter.kind, page, title: chapter.title, id: chapter.kind, scale: '' }),
  );
  return numbered([...pages, ...rest]);
}

/** A table and the notes to it. */
interface Told {
  readonly flowing: readonly Flowing[];
  /** All of them, where the table fits a sheet: they may stand beside views. */
  readonly whole: Block | null;
}

const toldOf = (tables: readonly Table[], size: SheetSize): Told[] =>
  tables
    .filter((table) => table.rows.length > 0)
    .map((table): Told => {
      const { notes = [] } = table;
      const after = notes.length > 0 ? [{ heading: texts.notes(table.title), paragraphs: notes }] : [];
      const [part, ...others] = tableBlocks(table, size);
      const whole = part && others.length === 0 ? withNotes(part, after) : null;
      return { flowing: [table, ...after], whole };
    });

/** A table and under it its notes: as wide as it where lines stay readable, in two columns where both have room. */
function withNotes(table: Block, notes: readonly TextPart[]): Block {
  const two = table.width >= 2 * NARROWEST + GAP;
  const width = Math.max(NARROWEST, Math.min(LONGEST, two ? (table.width - GAP) / 2 : table.width));
  return stackBlocks([table, ...notes.map((part) => (two ? inTwoColumns(part, width) : textBlock(part, width)))], GAP);
}

/** A text in two columns, broken between the paragraphs where it takes the least height. */
function inTwoColumns({ heading, paragraphs }: TextPart, width: number): Block {
  const breaks = paragraphs.map((_, i): readonly [Block, Block] => [
    textBlock({ heading, paragraphs: paragraphs.slice(0, i + 1) }, width),
    textBlock({ heading: '', paragraphs: paragraphs.slice(i + 1) }, width),
  ]);
  const heights = breaks.map(([left, right]) => Math.max(left.height, right.height));
  const height = Math.min(...heights);
  const [left, right] = breaks[heights.indexOf(height)] as readonly [Block, Block];
  const primitives = [...left.primitives, ...placeBlock(right, [width + GAP, 0])];
  return { width: 2 * width + GAP, height, primitives };
}

interface Group {
  readonly drafts: readonly Draft[];
  readonly scale: number;
  /** What its sheet has no room to say. */
  readonly notes?: TextPart;
}

function groupsOf(maker: PageMaker, chapter: Chapter, chosen: Chosen, units: WrittenUnits): Group[] {
  const { size, scale } = chosen;
  const drafts = [...chapter.drafts, ...chapter.late(maker.handed)];
  if (drafts.length === 0) return [];
  if (chapter.scales === 'house')
    return grouped(maker, size, drafts, scale) ?? splitGroups(maker, drafts, chosen, units);
  const smaller = standardScales(units).filter((s) => s > scale);
  const scales = chapter.scales === 'at-most-house' ? [scale, ...smaller] : chapter.scales;
  // The largest scale at which every view has room by itself.
  for (const each of scales) {
    const groups = grouped(maker, size, drafts, each);
    if (groups) return groups;
  }
  const least = scales.at(-1);
  if (least === undefined) throw new RangeError(`no scale is given for the sheets of kind ${chapter.kind}`);
  return splitGroups(maker, drafts, { ...chosen, scale: least }, units);
}

/** Views that are too large in parts, each after its key; the others as they are. */
function splitGroups(
  maker: PageMaker,
  drafts: readonly Draft[],
  { size, scale }: Chosen,
  units: WrittenUnits,
): Group[] {
  return drafts.flatMap((draft): Group[] => {
    if (maker.fits(size, draft, scale)) return [{ drafts: [draft], scale }];
    const key = keyDraft(draft, size, scale);
    const scales = [...standardScales(units), ...plotScales(units)].filter((s) => s > scale);
    const whole = scales.find((s) => maker.fits(size, key, s));
    const parts = splitDraft(draft, size, scale);
    return [
      ...(whole === undefined ? [] : [{ drafts: [key], scale: whole, notes: notesOf(draft, scale, maker.handed) }]),
      ...parts.map((part) => ({ drafts: [part], scale })),
    ];
  });
}

function notesOf(draft: Draft, scale: number, handed: HandedOver): TextPart {
  const { foot } = draft.draw(scale, handed);
  return { heading: texts.notes(foot.title), paragraphs: [...foot.notes, ...foot.general] };
}

const grouped = (maker: PageMaker, size: SheetSize, drafts: readonly Draft[], scale: number): Group[] | null =>
  maker.filled(size, drafts, scale)?.map((group) => ({ drafts: group, scale })) ?? null;

/** Pages of one title are told apart by number. */
function numbered(pages: readonly NamedPage[]): NamedPage[] {
  return pages.map((page) => {
    const alike = pages.filter((p) => p.title === page.title);
    if (alike.length === 1) return page;
    return { ...page, title: texts.titlePageOf(page.title, alike.indexOf(page) + 1, alike.length) };
  });
}
