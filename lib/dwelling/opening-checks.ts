import type { Check, CheckState } from '../base/figures.js';
import * as texts from '../base/texts/opening-checks.js';
import type { HouseSetout } from '../setout/house.js';
import { areaOf, LEAF } from './clear.js';
import type { Dwelling } from './dwelling.js';
import { held } from './held.js';
import type { OpeningSizes } from './opening-sizes.js';
import { clause, EGRESS_DOOR, ESCAPE, LANDING } from './rules.js';

const CLEAR = texts.rectangleInsideArchLess(LEAF);

/** Egress windows, the egress door and its landing. */
export const openingChecks = (setout: HouseSetout, dwelling: Dwelling): Check[] => [
  ...dwelling.openings.filter((o) => o.use === 'egress window').flatMap((o) => escapeChecks(setout, o)),
  ...doorChecks(setout, dwelling),
];

function escapeChecks({ house }: HouseSetout, { id, clear, frame }: OpeningSizes): Check[] {
  const base = { formula: CLEAR, inputs: { 'frame (mm)': frame }, otherwise: 'fails' } as const;
  const grade = clear.sill - house.site.ground <= ESCAPE.sill;
  return [
    held({
      ...base,
      id: `egress-area.${id}`,
      statement: texts.egressWindowIsLarge(id),
      source: clause('R310.2.1'),
      unit: 'm2',
      wanted: grade ? [texts.leastClearAreaSill, ESCAPE.gradeArea] : [texts.leastClearAreaFull, ESCAPE.area],
      found: [texts.clearArea, areaOf(clear)],
      inputs: { 'frame (mm)': frame, 'clear width (mm)': clear.width, 'clear height (mm)': clear.height },
      advice: texts.widerOrHigherOpening,
    }),
    held({
      ...base,
      id: `egress-width.${id}`,
      statement: texts.egressWindowIsWide(id),
      source: clause('R310.2.2'),
      unit: 'mm',
      wanted: [texts.leastClearWidth20, ESCAPE.width],
      found: [texts.clearWidth, clear.width],
      advice: texts.widerOpeningOrThinner,
    }),
    held({
      ...base,
      id: `egress-height.${id}`,
      statement: texts.egressWindowIsHigh(id),
      source: clause('R310.2.2'),
      unit: 'mm',
      wanted: [texts.leastClearHeight24, ESCAPE.height],
      found: [texts.clearHeight, clear.height],
      advice: texts.higherOpeningOrThinner,
    }),
    held({
      ...base,
      id: `egress-sill.${id}`,
      statement: texts.egressWindowCanBeClimbed(id),
      source: clause('R310.2.3'),
      unit: 'mm',
      most: true,
      wanted: [texts.highestSill, ESCAPE.sill],
      found: [texts.lowerEdgeOfClear, clear.sill],
      formula: texts.sillAndFrame,
      advice: texts.lowerSill,
    }),
  ];
}

function doorChecks({ house }: HouseSetout, { openings, rooms }: Dwelling): Check[] {
  // A house that nobody lives in isn't held to a dwelling's rule.
  const lived = rooms.some(({ room }) => room.use === 'habitable' || room.use === 'kitchen');
  const otherwise: CheckState = lived ? 'fails' : 'attention';
  const doors = openings.filter((o) => o.use === 'door');
  const best = doors.reduce<OpeningSizes | undefined>(
    (a, b) => (a === undefined || b.atDoorHeight > a.atDoorHeight ? b : a),
    undefined,
  );
  const door = held({
    id: 'egress-door',
    statement: best ? texts.doorIsWide(best.id) : texts.thereIsDoor,
    source: clause('R311.2'),
    unit: 'mm',
    wanted: [texts.leastClearWidthUp, EGRESS_DOOR.width],
    found: [texts.clearWidthThere, best?.atDoorHeight ?? 0],
    formula: texts.widthWhereHeadsPass(LEAF),
    inputs: best
      ? {
          'frame (mm)': best.frame,
          'greatest clear rectangle (mm × mm)': `${best.clear.width.toFixed(0)} × ${best.clear.height.toFixed(0)}`,
        }
      : {},
    otherwise,
    advice: best ? texts.widerOrHigherDoor : texts.giveAtLeastOne,
  });
  return best ? [door, stepCheck(house.site.ground)] : [door];
}

function stepCheck(ground: number): Check {
  const step = Math.max(0, -ground);
  return held({
    id: 'egress-step',
    statement: texts.stepDownFromFloor,
    source: clause('R311.3.1', texts.readFromMemory),
    unit: 'mm',
    most: true,
    wanted: [texts.mostWhereDoorSwings, LANDING.most],
    found: [texts.floorAboveGround, step],
    formula: texts.asGivenBySite,
    otherwise: 'attention',
    advice: step <= LANDING.notSwung ? texts.enoughUnlessDoorSwings : texts.landingAtDoor,
  });
}
