import { CAUTION } from '../../base/cautions.js';
import { DescriptionError } from '../../base/problems.js';
import { formatLength } from '../../base/units.js';
import type { ProblemCode } from '../../description/codes.js';
import type { Project } from '../../description/house.js';
import type { Block } from '../../documents/block.js';
import { scaleWords, standardScales } from '../../documents/scales.js';
import type { Sheet } from '../../documents/sheet.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import { splitTable, tableBlock } from '../../documents/table-block.js';
import type { HouseSetout } from '../../setout/house.js';
import { SIDES } from '../elevation.js';
import { domeSchedule, openingSchedule } from '../schedules.js';
import { writtenUnits } from '../words.js';
import { choosePlan, sheetSizes } from './choose.js';
import { Drafts, LEAST_BESIDE } from './drafts.js';
import { highestTable, type Page, tablePage } from './page.js';

/** What a set was drawn on and how large, for a line of summary. */
export interface SheetSet {
  readonly sheets: readonly Sheet[];
  readonly summary: string;
}

/**
 * A house's plan, elevations, section and schedules on sheets that take the least paper at a scale good for building;
 * plan and elevations share it.
 * @throws DescriptionError when even the largest sheet is too small at the least scale.
 */
export function houseSheets(house: HouseSetout): SheetSet {
  const units = writtenUnits(house.house);
  const set = new Drafts(house);
  const plan = choosePlan(set);
  if (!plan) throw tooLarge(house);
  const { size, groups } = plan;

  let tables: readonly Block[] = [openingSchedule(house), domeSchedule(house)]
    .filter((table) => table.rows.length > 0)
    .flatMap((table) => splitTable(table, highestTable(size)))
    .map(tableBlock);
  const pages: { page: Page; title: string; id: string; scale: string }[] = groups.map((group) => {
    const page = set.page(size, group, tables) as Page;
    tables = tables.filter((t) => !page.tables.includes(t));
    const scales = [...new Set(page.views.map(({ view }) => scaleWords(view.scale, units)))];
    return { page, ...namesOf(page), scale: scales.join(', ') };
  });
  while (tables.length > 0) {
    const { page, left } = tablePage(size, tables);
    tables = left;
    pages.push({ page, title: 'Schedules', id: 'schedules', scale: '' });
  }

  const sheets = pages.map(({ page, title, id, scale }, i): Sheet => {
    const n = i + 1;
    return {
      id: `sheet-${n}-${id}`,
      size,
      views: page.views,
      paper: page.paper,
      titleBlock: titleBlockOf(house.house.project, title, { scale, size: size.name, sheet: n, sheets: pages.length }),
    };
  });
  const apart = [...new Set(groups.map((g) => g.scale))].filter((scale) => scale !== plan.scale);
  const sections =
    apart.length === 0 ? '' : `, sections at ${apart.map((scale) => scaleWords(scale, units)).join(', ')}`;
  return {
    sheets,
    summary: `${sheets.length} ${sheets.length === 1 ? 'sheet' : 'sheets'} of ${size.name}; plan and elevations at ${scaleWords(plan.scale, units)}${sections}`,
  };
}

/** Title and file name of a sheet after its views; elevations are told together, and so are sections. */
function namesOf({ views }: Page): { title: string; id: string } {
  const ids = views.map(({ view }) => view.id);
  const sides = SIDES.filter((side) => ids.includes(`elevation-${side}`));
  const sections = views.filter(({ view }) => view.id.startsWith('section-'));
  const marks = sections.map(({ view }) => view.title.replace(/^Section /, ''));
  const letters = sections.map(({ view }) => view.id.replace(/^section-/, ''));
  const all = sides.length === SIDES.length;
  const title = [
    ...(ids.includes('plan') ? ['floor plan'] : []),
    ...(sides.length === 0 ? [] : [all ? 'elevations' : `${sides.join(' and ')} ${plural('elevation', sides)}`]),
    ...(marks.length === 0 ? [] : [`${plural('section', marks)} ${range(marks, ' to ')}`]),
  ].join(', ');
  const id = [
    ...(ids.includes('plan') ? ['plan'] : []),
    ...(sides.length === 0 ? [] : [all ? 'elevations' : `${plural('elevation', sides)}-${sides.join('-')}`]),
    ...(letters.length === 0 ? [] : [`${plural('section', letters)}-${range(letters, '-')}`]),
  ].join('-');
  return { title: `${title[0]?.toUpperCase()}${title.slice(1)}`, id };
}

const plural = (noun: string, of: readonly string[]): string => (of.length === 1 ? noun : `${noun}s`);

/** The first and the last of some that follow one another. */
const range = (names: readonly string[], between: string): string =>
  names.length === 1 ? (names[0] as string) : `${names[0]}${between}${names[names.length - 1]}`;

function titleBlockOf(
  project: Project,
  title: string,
  rest: { readonly scale: string; readonly size: string; readonly sheet: number; readonly sheets: number },
): Sheet['titleBlock'] {
  return {
    project: project.title,
    address: project.address,
    title,
    documentType: 'General arrangement drawing, preliminary',
    owner: project.client,
    creator: project.drawnBy,
    approvedBy: '',
    number: project.number,
    issued: project.date ?? 'undated',
    revision: project.revision,
    caution: CAUTION.authority,
    ...rest,
  };
}

function tooLarge(house: HouseSetout): DescriptionError {
  const units = house.house.units;
  const sizes = sheetSizes(writtenUnits(house.house));
  const least = standardScales(writtenUnits(house.house)).at(-1) as number;
  const size = sizes[sizes.length - 1] as SheetSize;
  const [width, height] = [size.width, size.height].map((mm) => formatLength((mm - 2 * LEAST_BESIDE) * least, units));
  return new DescriptionError([
    {
      code: 'drawing-too-large' satisfies ProblemCode,
      path: 'domes',
      message: `The house is too large to draw: at ${scaleWords(least, writtenUnits(house.house))}, the least scale for a building, it doesn't fit ${size.name}, the largest sheet, which takes about ${width} by ${height}.`,
      mend: 'Describe it as several houses, each with the domes of one part.',
    },
  ]);
}
