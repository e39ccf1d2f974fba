import type { WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import type { SheetKind } from '../../description/house.js';
import { plotScales, scaleWords, standardScales } from '../../documents/scales.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import type { Draft } from '../draft.js';
import type { HandedOver } from '../handed.js';
import type { Chapter } from './chapter.js';
import type { Chosen } from './choose.js';
import { betterFilled, flowPages } from './flow.js';
import { keyDraft, splitDraft } from './match-lines.js';
import type { Page } from './page.js';
import type { PageMaker } from './page-maker.js';
import { namesOf } from './sheet-names.js';
import type { TextPart } from './text-parts.js';
import { besideOf, type Told, toldOf } from './told.js';

/** A page and what its sheet is called. */
export interface NamedPage {
  readonly kind: SheetKind;
  readonly page: Page;
  readonly title: string;
  /** Part of the sheet's file name. */
  readonly id: string;
  readonly scale: string;
}

/**
 * All pages of a chapter: its views, with tables beside them where there is room, then what is left of tables and texts.
 * Views are shared out evenly, and tables stand together after them, where a sheet would else be left nearly empty.
 */
export function chapterPages(maker: PageMaker, chapter: Chapter, chosen: Chosen, units: WrittenUnits): NamedPage[] {
  const { size, scale } = chosen;
  const told = {
    beside: besideOf(chapter.beside, size),
    own: toldOf(chapter.tables(maker.handed), size),
  };
  const drafts = [...chapter.drafts, ...chapter.late(maker.handed)];
  const usual = groupsOf(maker, chapter, drafts, chosen, units);
  let best = settled(maker, chapter, size, usual, told);
  if (chapter.scales === 'near-house') {
    for (const larger of standardScales(units).filter((s) => s < scale)) {
      const groups = drafts.length > 0 ? grouped(maker, size, drafts, larger) : null;
      // More sheets of views take more sheets in all.
      if (!groups || groups.length > usual.length) continue;
      const pages = settled(maker, chapter, size, groups, told);
      if (pages.length > best.length) continue;
      best = pages;
      break;
    }
  }
  return numbered(
    best.map(({ group, page }) => ({
      kind: chapter.kind,
      page,
      ...(group ? namesOf(chapter, page) : { title: chapter.title, id: chapter.kind }),
      scale: group ? scaleWords(group.scale, units) : '',
    })),
  );
}

/** Pages of views in groups as they are or, where one would be nearly empty, shared out otherwise. */
function settled(
  maker: PageMaker,
  chapter: Chapter,
  size: SheetSize,
  filled: readonly Group[],
  { beside, own }: Pick<Content, 'beside' | 'own'>,
): Arranged[] {
  let best = arranged(maker, chapter, size, { groups: filled, beside, own, offered: [...beside, ...own] });
  if (filled.length === 0 || best.length <= 1) return best;
  const evened = evenedGroups(maker, size, filled);
  const changed = evened.some(({ drafts }, i) => drafts.length !== filled[i]?.drafts.length);
  for (const groups of changed ? [filled, evened] : [filled])
    for (const offered of own.length > 0 ? [[...beside, ...own], beside] : [beside]) {
      const pages = arranged(maker, chapter, size, { groups, beside, own, offered });
      if (betterFilled(pages.map(pageOf), best.map(pageOf))) best = pages;
    }
  return best;
}

/** A page with the views that stand on it; `null` on a sheet of words. */
interface Arranged {
  readonly group: Group | null;
  readonly page: Page;
}

const pageOf = ({ page }: Arranged): Page => page;

interface Content {
  readonly groups: readonly Group[];
  readonly beside: readonly Told[];
  readonly own: readonly Told[];
  /** Those of both that may stand beside views. */
  readonly offered: readonly Told[];
}

function arranged(
  maker: PageMaker,
  chapter: Chapter,
  size: SheetSize,
  { groups, beside, own, offered }: Content,
): Arranged[] {
  let loose = offered;
  const views = groups.map((group) => {
    const page = maker.page(size, group.drafts, group.scale, loose);
    if (!page)
      throw new Error(`the views ${group.drafts.map((d) => d.id).join(', ')} fitted ${size.name} and do no more`);
    loose = loose.filter((told) => !page.tables.includes(told));
    return { group, page };
  });
  const placed = views.flatMap(({ page }) => page.tables);
  const left = own.filter((told) => !placed.includes(told)).flatMap(({ flowing }) => flowing);
  const told = views.length > 0 ? [] : beside.flatMap(({ flowing }) => flowing);
  const texts = [...groups.flatMap((g) => g.notes ?? []), ...chapter.texts];
  const rest = flowPages(size, [...told, ...left, ...texts]).map((page) => ({ group: null, page }));
  return [...views, ...rest];
}

/** Runs of groups at one scale shared out evenly; keys and parts of views that go on at match lines stay as they are. */
function evenedGroups(maker: PageMaker, size: SheetSize, groups: readonly Group[]): readonly Group[] {
  const [first] = groups;
  if (!first || groups.some(({ scale, notes }) => scale !== first.scale || notes)) return groups;
  const drafts = maker.evened(
    size,
    groups.map((g) => g.drafts),
    first.scale,
  );
  return drafts.map((group) => ({ drafts: group, scale: first.scale }));
}

interface Group {
  readonly drafts: readonly Draft[];
  readonly scale: number;
  /** What its sheet has no room to say. */
  readonly notes?: TextPart;
}

function groupsOf(
  maker: PageMaker,
  chapter: Chapter,
  drafts: readonly Draft[],
  chosen: Chosen,
  units: WrittenUnits,
): Group[] {
  const { size, scale } = chosen;
  if (drafts.length === 0) return [];
  if (chapter.scales === 'house')
    return grouped(maker, size, drafts, scale) ?? splitGroups(maker, drafts, chosen, units);
  const smaller = standardScales(units).filter((s) => s > scale);
  const scales = chapter.scales === 'near-house' ? [scale, ...smaller] : chapter.scales;
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
