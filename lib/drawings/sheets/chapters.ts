import * as texts from '../../base/texts/drawing-sheets.js';
import type { SheetKind } from '../../description/house.js';
import { closeScales, courseScales, detailScales, partScales, plotScales } from '../../documents/scales.js';
import type { HouseSetout } from '../../setout/house.js';
import { coursesView } from '../courses-view.js';
import { details } from '../details/details.js';
import { tieDetail } from '../details/tie.js';
import { elevationDraft, SIDES } from '../elevation.js';
import { footingPlanDraft } from '../footing-plan.js';
import { openingTypes } from '../opening-types.js';
import { openingView } from '../opening-view.js';
import { planDraft } from '../plan.js';
import { roofPlanDraft } from '../roof-plan.js';
import { openingSchedule, settingOutSchedule } from '../schedules.js';
import { sectionDraft } from '../section.js';
import { houseSections } from '../section-plane.js';
import { HALVES } from '../sector.js';
import { sitePlanDraft } from '../site-plan.js';
import { thrustDrafts } from '../thrust-section.js';
import { writtenUnits } from '../words.js';
import type { Chapter } from './chapter.js';
import { cautionPart, generalNotes, loadTable, materialTable, projectTable } from './cover.js';

const blank = { drafts: [], late: () => [], scales: 'house', tables: () => [], beside: [], texts: [] } as const;

type Made = Omit<Chapter, 'kind'>;

/** Each kind of sheet's content; a chapter that is empty for a house has no sheet. Only those that are asked for are made. */
const CHAPTERS: Readonly<
  Record<SheetKind, (house: HouseSetout, kinds: readonly SheetKind[]) => Made | readonly Made[] | null>
> = {
  cover: (house) => ({
    ...blank,
    title: texts.coverSheet,
    tables: (handed) => [projectTable(house, handed), loadTable(house), materialTable(house)],
    texts: [generalNotes(house), cautionPart],
  }),
  site(house) {
    const draft = sitePlanDraft(house);
    return draft && { ...blank, title: texts.sitePlan, drafts: [draft], scales: plotScales(writtenUnits(house.house)) };
  },
  plan: (house, kinds) => ({
    ...blank,
    title: texts.floorPlan,
    drafts: [planDraft(house)],
    // The plan of the footing tells it too, where there is one.
    ...(kinds.includes('footing') && house.footings.length + house.slabs.length > 0
      ? { beside: [settingOutSchedule(house)] }
      : { tables: () => [settingOutSchedule(house)] }),
  }),
  footing(house) {
    const draft = footingPlanDraft(house);
    return (
      draft && { ...blank, title: texts.footingAndSlabPlan, drafts: [draft], tables: () => [settingOutSchedule(house)] }
    );
  },
  roof: (house) => ({ ...blank, title: texts.roofPlan, drafts: [roofPlanDraft(house)] }),
  elevations: (house) => ({
    ...blank,
    title: texts.elevations,
    drafts: SIDES.map((side) => elevationDraft(house, side)),
  }),
  sections: (house) => ({
    ...blank,
    title: texts.sections,
    drafts: houseSections(house).map((plane) => sectionDraft(house, plane)),
  }),
  openings: (house) =>
    house.arches.length === 0
      ? null
      : {
          ...blank,
          title: texts.openingSchedule,
          drafts: openingTypes(house).map((type) => openingView(house, type)),
          scales: partScales(writtenUnits(house.house)),
          tables: ({ clears }) => [openingSchedule(house, clears)],
        },
  courses: (house) => ({
    ...blank,
    title: texts.blockAndMouldSchedule,
    drafts: house.domes.flatMap((dome) => HALVES.map((half) => coursesView(house, dome, half))),
    scales: courseScales(writtenUnits(house.house)),
    tables: ({ moulds }) => moulds,
  }),
  details(house) {
    const { large, small } = details(house);
    const units = writtenUnits(house.house);
    return [
      { ...blank, title: texts.detailsOfWallOpenings, drafts: large, scales: detailScales(units) },
      {
        ...blank,
        title: texts.detailsOfCrown,
        drafts: small,
        late: ({ ties }) => tieDetail(house, ties) ?? [],
        scales: closeScales(units),
      },
    ];
  },
  structure: (house) => ({
    ...blank,
    title: texts.structuralSummary,
    scales: 'near-house',
    late: ({ statics }) => (statics ? thrustDrafts(house, statics) : []),
    tables: ({ structure }) => structure,
  }),
  laying: () => ({ ...blank, title: texts.layingTable, tables: ({ laying }) => laying }),
};

export const chaptersOf = (house: HouseSetout, kinds: readonly SheetKind[]): Chapter[] =>
  kinds.flatMap((kind) => {
    const made = CHAPTERS[kind](house, kinds) ?? [];
    return [made].flat().map((chapter) => ({ ...chapter, kind }));
  });
