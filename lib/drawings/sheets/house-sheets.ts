import * as texts from '../../base/texts/drawing-sheets.js';
import type { DrawingChoice } from '../../description/house.js';
import { SHEET_KINDS } from '../../description/schema/drawings.js';
import { scaleWords } from '../../documents/scales.js';
import type { Sheet } from '../../documents/sheet.js';
import type { HouseSetout } from '../../setout/house.js';
import { type HandedOver, NOTHING_HANDED } from '../handed.js';
import { writtenUnits } from '../words.js';
import type { Chapter } from './chapter.js';
import { chapterPages, type NamedPage } from './chapter-pages.js';
import { chaptersOf } from './chapters.js';
import { chooseSize } from './choose.js';
import { drawingList } from './drawing-list.js';
import { askedOf } from './options.js';
import { PageMaker } from './page-maker.js';
import { titleBlockOf } from './title.js';

/** What a set was drawn on and how large, for a line of summary. */
export interface SheetSet {
  readonly sheets: readonly Sheet[];
  readonly summary: string;
}

/**
 * A house's permit set: cover, plans, elevations, sections, schedules, details, tables, each on sheets of one size.
 * Plans, elevations and sections share one scale. What other stages found comes in as `handed`; sheets that show
 * nothing else are left out without it.
 * @param options which sheets, on what size, how large; what is `null` is chosen
 * @throws RangeError when no sheet has the size's name.
 */
export const houseSheets = (
  house: HouseSetout,
  handed: HandedOver = NOTHING_HANDED,
  options: DrawingChoice = house.house.drawings,
): SheetSet => beginSheets(house, options)(handed);

/** The same in two steps: views are begun at once, and laid out on sheets when other stages' results are known. */
export function beginSheets(
  house: HouseSetout,
  options: DrawingChoice = house.house.drawings,
): (handed: HandedOver) => SheetSet {
  const wanted = SHEET_KINDS.filter((kind) => options.sheets?.includes(kind) ?? true);
  const chapters = chaptersOf(house, wanted);
  return (handed) => sheetsOf(house, chapters, options, handed);
}

function sheetsOf(
  house: HouseSetout,
  chapters: readonly Chapter[],
  options: DrawingChoice,
  handed: HandedOver,
): SheetSet {
  const units = writtenUnits(house.house);
  const maker = new PageMaker(units, handed);
  const shared = chapters.filter((c) => c.scales === 'house').flatMap((c) => c.drafts);
  const chosen = chooseSize(maker, shared, units, askedOf(options));
  const [covers, others] = [chapters.filter((c) => c.kind === 'cover'), chapters.filter((c) => c.kind !== 'cover')];
  const body = others.flatMap((chapter) => chapterPages(maker, chapter, chosen, units));

  const drawn = shared.length > 0 ? texts.plansElevationsAndSections(scaleWords(chosen.scale, units)) : '';
  const choice = texts.sizeAndScale(chosen.size.name, drawn, chosen.because);

  // The cover lists itself: as many pages as it turns out to take.
  const cover = (pages: readonly NamedPage[]): NamedPage[] =>
    covers.flatMap((chapter) =>
      chapterPages(
        maker,
        {
          ...chapter,
          tables: (h) => [drawingList([...pages, ...body]), ...chapter.tables(h)],
          texts: chapter.texts.map((t, i) =>
            i > 0 ? t : { ...t, paragraphs: [...t.paragraphs, texts.sheetsOf(choice)] },
          ),
        },
        chosen,
        units,
      ),
    );
  let front = cover([]);
  for (let i = 0, listed = 0; i < 5 && listed !== front.length; i++) {
    listed = front.length;
    front = cover(front);
  }

  const pages = [...front, ...body];
  const sheets = pages.map(({ page, title, id, scale }, i): Sheet => {
    const n = i + 1;
    return {
      id: `sheet-${String(n).padStart(String(pages.length).length, '0')}-${id}`,
      size: chosen.size,
      views: page.views,
      paper: page.paper,
      titleBlock: titleBlockOf(house.house.project, title, {
        scale,
        size: chosen.size.name,
        sheet: n,
        sheets: pages.length,
      }),
    };
  });
  return {
    sheets,
    summary: texts.scaleNote(sheets.length, choice),
  };
}
