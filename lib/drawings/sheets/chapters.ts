import { plotScales } from '../../documents/scales.js';
import type { HouseSetout } from '../../setout/house.js';
import { elevationDraft, SIDES } from '../elevation.js';
import { footingPlanDraft } from '../footing-plan.js';
import { planDraft } from '../plan.js';
import { roofPlanDraft } from '../roof-plan.js';
import { openingSchedule, settingOutSchedule } from '../schedules.js';
import { sectionDraft } from '../section.js';
import { houseSections } from '../section-plane.js';
import { sitePlanDraft } from '../site-plan.js';
import { writtenUnits } from '../words.js';
import type { Chapter, SheetKind } from './chapter.js';
import { cautionPart, generalNotes, loadTable, materialTable, projectTable } from './cover.js';

const blank = { drafts: [], scales: 'house', tables: () => [], beside: [], texts: [] } as const;

type Made = Omit<Chapter, 'kind'> | null;

/** Each kind of sheet's content; a chapter that is empty for a house has no sheet. Only those that are asked for are made. */
const CHAPTERS: Readonly<Record<SheetKind, (house: HouseSetout) => Made>> = {
  cover: (house) => ({
    ...blank,
    title: 'Cover sheet',
    tables: (handed) => [projectTable(house, handed), loadTable(house), materialTable(house)],
    texts: [generalNotes(house), cautionPart],
  }),
  site(house) {
    const draft = sitePlanDraft(house);
    return draft && { ...blank, title: 'Site plan', drafts: [draft], scales: plotScales(writtenUnits(house.house)) };
  },
  plan: (house) => ({
    ...blank,
    title: 'Floor plan',
    drafts: [planDraft(house)],
    ...(house.footings.length + house.slabs.length > 0
      ? { beside: [settingOutSchedule(house)] }
      : { tables: () => [settingOutSchedule(house)] }),
  }),
  footing(house) {
    const draft = footingPlanDraft(house);
    return (
      draft && { ...blank, title: 'Footing and slab plan', drafts: [draft], tables: () => [settingOutSchedule(house)] }
    );
  },
  roof: (house) => ({ ...blank, title: 'Roof plan', drafts: [roofPlanDraft(house)] }),
  elevations: (house) => ({
    ...blank,
    title: 'Elevations',
    drafts: SIDES.map((side) => elevationDraft(house, side)),
  }),
  sections: (house) => ({
    ...blank,
    title: 'Sections',
    drafts: houseSections(house).map((plane) => sectionDraft(house, plane)),
  }),
  openings: (house) =>
    house.arches.length === 0 ? null : { ...blank, title: 'Opening schedule', tables: () => [openingSchedule(house)] },
  courses: () => null,
  details: () => null,
  structure: () => ({ ...blank, title: 'Structural summary', tables: ({ structure }) => structure }),
  laying: () => ({ ...blank, title: 'Laying table', tables: ({ laying }) => laying }),
};

export const chaptersOf = (house: HouseSetout, kinds: readonly SheetKind[]): Chapter[] =>
  kinds.flatMap((kind) => {
    const made = CHAPTERS[kind](house);
    return made ? [{ ...made, kind }] : [];
  });
