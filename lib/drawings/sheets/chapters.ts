import { plotScales } from '../../documents/scales.js';
import type { HouseSetout } from '../../setout/house.js';
import { elevationDraft, SIDES } from '../elevation.js';
import { planDraft } from '../plan.js';
import { domeSchedule, openingSchedule } from '../schedules.js';
import { sectionDraft } from '../section.js';
import { houseSections } from '../section-plane.js';
import { sitePlanDraft } from '../site-plan.js';
import { writtenUnits } from '../words.js';
import type { Chapter, SheetKind } from './chapter.js';
import { cautionPart, generalNotes, loadTable, materialTable, projectTable } from './cover.js';
import type { HandedOver } from './handed.js';

const blank = { drafts: [], scales: 'house', tables: [], texts: [] } as const;

/** Each kind of sheet's content; a chapter that is empty for a house has no sheet. Only those that are asked for are made. */
const CHAPTERS: Readonly<Record<SheetKind, (house: HouseSetout, handed: HandedOver) => Chapter | null>> = {
  cover: (house, handed) => ({
    ...blank,
    kind: 'cover',
    title: 'Cover sheet',
    tables: [projectTable(house, handed), loadTable(house), materialTable(house)],
    texts: [generalNotes(house), cautionPart],
  }),
  site: (house) => {
    const draft = sitePlanDraft(house);
    return (
      draft && {
        ...blank,
        kind: 'site',
        title: 'Site plan',
        drafts: [draft],
        scales: plotScales(writtenUnits(house.house)),
      }
    );
  },
  plan: (house) => ({
    ...blank,
    kind: 'plan',
    title: 'Floor plan',
    drafts: [planDraft(house)],
    tables: [domeSchedule(house)],
  }),
  footing: () => null,
  roof: () => null,
  elevations: (house) => ({
    ...blank,
    kind: 'elevations',
    title: 'Elevations',
    drafts: SIDES.map((side) => elevationDraft(house, side)),
  }),
  sections: (house) => ({
    ...blank,
    kind: 'sections',
    title: 'Sections',
    drafts: houseSections(house).map((plane) => sectionDraft(house, plane)),
  }),
  openings: (house) =>
    house.arches.length === 0
      ? null
      : { ...blank, kind: 'openings', title: 'Opening schedule', tables: [openingSchedule(house)] },
  courses: () => null,
  details: () => null,
  structure: (_, { structure }) =>
    structure.length === 0 ? null : { ...blank, kind: 'structure', title: 'Structural summary', tables: structure },
  laying: (_, { laying }) =>
    laying.length === 0 ? null : { ...blank, kind: 'laying', title: 'Laying table', tables: laying },
};

export const chaptersOf = (house: HouseSetout, handed: HandedOver, kinds: readonly SheetKind[]): Chapter[] =>
  kinds.flatMap((kind) => CHAPTERS[kind](house, handed) ?? []);
