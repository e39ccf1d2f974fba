import type { Check, CheckState } from '../base/figures.js';
import type { HouseSetout } from '../setout/house.js';
import { areaOf, LEAF } from './clear.js';
import type { Dwelling, OpeningSizes } from './dwelling.js';
import { held } from './held.js';
import { clause, EGRESS_DOOR, ESCAPE, LANDING } from './rules.js';

const CLEAR = `rectangle inside the arch less the frame and ${LEAF} mm of leaf`;

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
      statement: `Egress window ${id} is large enough to escape by.`,
      source: clause('R310.2.1'),
      unit: 'm2',
      wanted: grade
        ? ['least clear area, sill near the ground (5.0 ft²)', ESCAPE.gradeArea]
        : ['least clear area (5.7 ft²)', ESCAPE.area],
      found: ['clear area', areaOf(clear)],
      inputs: { 'frame (mm)': frame, 'clear width (mm)': clear.width, 'clear height (mm)': clear.height },
      advice: 'A wider or higher opening, a flatter head, or a thinner `frame`.',
    }),
    held({
      ...base,
      id: `egress-width.${id}`,
      statement: `Egress window ${id} is wide enough to escape by.`,
      source: clause('R310.2.2'),
      unit: 'mm',
      wanted: ['least clear width (20 in)', ESCAPE.width],
      found: ['clear width', clear.width],
      advice: 'A wider opening or a thinner `frame`.',
    }),
    held({
      ...base,
      id: `egress-height.${id}`,
      statement: `Egress window ${id} is high enough to escape by.`,
      source: clause('R310.2.2'),
      unit: 'mm',
      wanted: ['least clear height (24 in)', ESCAPE.height],
      found: ['clear height', clear.height],
      advice: 'A higher opening or a thinner `frame`.',
    }),
    held({
      ...base,
      id: `egress-sill.${id}`,
      statement: `Egress window ${id} can be climbed through from the floor.`,
      source: clause('R310.2.3'),
      unit: 'mm',
      most: true,
      wanted: ['highest sill (44 in)', ESCAPE.sill],
      found: ['lower edge of the clear opening above the floor', clear.sill],
      formula: 'sill and the frame on it',
      advice: 'A lower `sill`.',
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
    statement: best ? `Door ${best.id} is wide and high enough to be the way out.` : 'There is a door to go out by.',
    source: clause('R311.2'),
    unit: 'mm',
    wanted: ['least clear width up to 1981 mm (32 in up to 78 in)', EGRESS_DOOR.width],
    found: ['clear width there', best?.atDoorHeight ?? 0],
    formula: `width inside the arch 1981 mm above the floor, less the frame and ${LEAF} mm of leaf`,
    inputs: best
      ? {
          'frame (mm)': best.frame,
          'greatest clear rectangle (mm × mm)': `${best.clear.width.toFixed(0)} × ${best.clear.height.toFixed(0)}`,
        }
      : {},
    otherwise,
    advice: best
      ? 'A wider or higher door: an arched head narrows it where heads pass.'
      : 'Give at least one opening with `use: door`.',
  });
  return best ? [door, stepCheck(house.site.ground)] : [door];
}

function stepCheck(ground: number): Check {
  const step = Math.max(0, -ground);
  return held({
    id: 'egress-step',
    statement: 'The step down from the floor to the ground at the way out is low.',
    source: clause('R311.3.1', 'from memory'),
    unit: 'mm',
    most: true,
    wanted: ['most, where the door swings over the landing (1 1/2 in)', LANDING.most],
    found: ['floor above the ground', step],
    formula: 'as given by `site.ground`',
    otherwise: 'attention',
    advice:
      step <= LANDING.notSwung
        ? "Enough (7 3/4 in) where the door doesn't swing over the landing; otherwise raise the landing."
        : 'A landing at the door, with steps down from it.',
  });
}
