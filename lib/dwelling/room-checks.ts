import type { Check } from '../base/figures.js';
import * as texts from '../base/texts/rooms.js';
import type { Dwelling } from './dwelling.js';
import { held } from './held.js';
import type { RoomSizes } from './rooms.js';
import { AIR_SHARE, BATH_GLAZING, BATH_HEADROOM, clause, EDITION, LEAST_ROOM, LIGHT_SHARE } from './rules.js';

/** Rooms: area, width, headroom, light, air, way of escape. */
export const roomChecks = ({ rooms }: Dwelling): Check[] =>
  rooms.length === 0
    ? [
        {
          id: 'rooms',
          statement: texts.roomsAreLargeHigh,
          state: 'attention',
          source: clause('R303 to R305'),
          advice: texts.missingInputRooms,
        },
      ]
    : rooms.flatMap(checksOf);

function checksOf(sizes: RoomSizes): Check[] {
  switch (sizes.room.use) {
    case 'habitable':
      return [...areaChecks(sizes), ...headroomChecks(sizes), ...lightChecks(sizes), ...escapeCheck(sizes)];
    case 'kitchen':
      return [...headroomChecks(sizes), ...lightChecks(sizes)];
    case 'bath':
      return [...bathChecks(sizes)];
    default:
      return [];
  }
}

/** A floor that several rooms share is measured as one, which proves nothing of each. */
function shared({ sharedWith }: RoomSizes) {
  return sharedWith.length > 0 ? ({ best: 'attention' } as const) : {};
}

const sharing = ({ sharedWith }: RoomSizes, advice: string): string =>
  sharedWith.length > 0 ? texts.measuredAsOne(advice, sharedWith.join(', ')) : advice;

const measured = ({ part }: RoomSizes, formula: string): string => (part ? texts.ofPart(formula) : formula);

function areaChecks(sizes: RoomSizes): Check[] {
  const { room, low, floor, width, partitions } = sizes;
  const parted = partitions.length > 0;
  return [
    held({
      id: `room-area.${room.id}`,
      statement: texts.roomHasFloor(room.id),
      source: clause('R304.1 and R304.3', texts.readFromMemory),
      unit: 'm2',
      wanted: [texts.leastFloorArea, LEAST_ROOM.area],
      found: [texts.floorUnderLeastHeight, low],
      formula: measured(sizes, texts.circleOfFinishedIntrados),
      inputs: { 'whole floor (m2)': floor },
      otherwise: 'fails',
      ...shared(sizes),
      advice: sharing(sizes, texts.largerDomeOrHigher),
    }),
    held({
      id: `room-width.${room.id}`,
      statement: texts.roomIsAsWide(room.id),
      source: clause('R304.2', texts.readFromMemory),
      unit: 'mm',
      wanted: [texts.leastRoomWidth, LEAST_ROOM.width],
      found: [texts.widthOfFloorUnder, width],
      formula: parted ? texts.diameterWithoutPartitions : texts.diameterAtThatHeight,
      otherwise: 'fails',
      ...(parted ? { best: 'attention' } : shared(sizes)),
      advice: sharing(
        sizes,
        width < LEAST_ROOM.width || !parted
          ? texts.largerDomeOrSmaller
          : texts.measureBetweenPartitions(partitions.join(', ')),
      ),
    }),
  ];
}

function headroomChecks(sizes: RoomSizes): Check[] {
  const { room, low, full, highest } = sizes;
  // Of a kitchen no area is asked for, so half of what counts at all is.
  const required = room.use === 'habitable' ? LEAST_ROOM.area : low;
  const strict = full >= low / 2;
  const headroom = held({
    id: `headroom.${room.id}`,
    statement: texts.roomIsHighEnough(room.id),
    source: clause(texts.slopedCeilingRule),
    unit: 'm2',
    wanted: [room.use === 'habitable' ? texts.halfOfAreaAsked : texts.halfOfFloorUnder, required / 2],
    found: [texts.floorUnderAtLeast, full],
    formula: measured(sizes, texts.circleLessEarlierDomes),
    inputs: { 'floor under at least 1524 mm (m2)': low, 'highest point (mm)': highest },
    otherwise: 'fails',
    best: strict && sizes.sharedWith.length === 0 && low > 0 ? 'ok' : 'attention',
    advice: sharing(sizes, full >= required / 2 ? texts.enoughForLeastArea : texts.higherStemWall),
  });
  return [headroom];
}

function lightChecks(sizes: RoomSizes): Check[] {
  const { room, floor, glazing, air } = sizes;
  return [
    held({
      id: `light.${room.id}`,
      statement: texts.roomHasGlazingEnough(room.id),
      source: clause('R303.1'),
      unit: 'm2',
      wanted: [texts.leastGlazing, LIGHT_SHARE * floor],
      found: ['glazing', glazing],
      formula: measured(sizes, texts.shapeInsideFrames),
      inputs: { 'floor (m2)': floor },
      otherwise: 'attention',
      ...shared(sizes),
      advice: sharing(sizes, texts.moreOrLargerWindows),
    }),
    held({
      id: `air.${room.id}`,
      statement: texts.roomHasOpeningsEnough(room.id),
      source: clause('R303.1'),
      unit: 'm2',
      wanted: [texts.leastOpenings, AIR_SHARE * floor],
      found: [texts.openingsToOutside, air],
      formula: measured(sizes, texts.clearRectanglesOfWindows),
      inputs: { 'floor (m2)': floor },
      otherwise: 'attention',
      ...shared(sizes),
      advice: sharing(sizes, texts.moreWindowsThatOpen),
    }),
  ];
}

function bathChecks(sizes: RoomSizes): Check[] {
  const { room, bath, glazing, highest } = sizes;
  return [
    held({
      id: `headroom.${room.id}`,
      statement: texts.roomIsHighEnoughForBathroom(room.id),
      source: clause('R305.1'),
      unit: 'mm',
      wanted: [texts.leastHeightAtFixtures, BATH_HEADROOM],
      found: [texts.highestPoint, highest],
      formula: measured(sizes, texts.crownOfIntradosLess),
      inputs: { 'floor under at least 2032 mm (m2)': bath },
      otherwise: 'fails',
      advice: texts.higherStemWallOrRise,
    }),
    held({
      id: `light.${room.id}`,
      statement: texts.roomHasWindow(room.id),
      source: clause('R303.3', texts.readFromMemory),
      unit: 'm2',
      wanted: [texts.leastGlazingHalf, BATH_GLAZING],
      found: ['glazing', glazing],
      formula: measured(sizes, texts.shapeInsideFramesOfWindows),
      otherwise: 'attention',
      advice: texts.largerWindowOrFan,
    }),
  ];
}

function escapeCheck({ room, escapes }: RoomSizes): Check[] {
  return [
    {
      id: `escape.${room.id}`,
      statement:
        escapes.length > 0 ? texts.roomHasWayToEscape(room.id, escapes.join(', ')) : texts.roomHasNoOpening(room.id),
      state: escapes.length > 0 ? 'ok' : 'attention',
      source: texts.escapeRuleFromMemory(EDITION),
      advice: escapes.length > 0 ? '' : texts.ifAnybodySleepsThere,
    },
  ];
}
