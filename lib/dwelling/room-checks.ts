import type { Check } from '../base/figures.js';
import type { Dwelling, RoomSizes } from './dwelling.js';
import { held } from './held.js';
import { AIR_SHARE, BATH_GLAZING, BATH_HEADROOM, clause, EDITION, LEAST_ROOM, LIGHT_SHARE } from './rules.js';

/** Rooms: area, width, headroom, light, air, way of escape. */
export const roomChecks = ({ rooms }: Dwelling): Check[] =>
  rooms.length === 0
    ? [
        {
          id: 'rooms',
          statement: 'Rooms are large, high and light enough to live in.',
          state: 'attention',
          source: clause('R303 to R305'),
          advice: 'Missing input: `rooms`, what each dome is used for.',
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

/** A dome that several rooms share is measured as one, which proves nothing of each. */
function shared({ sharedWith }: RoomSizes) {
  return sharedWith.length > 0 ? ({ best: 'attention' } as const) : {};
}

const sharing = ({ sharedWith }: RoomSizes, advice: string): string =>
  sharedWith.length > 0 ? `${advice} Measured as one with ${sharedWith.join(', ')} in the same dome.` : advice;

function areaChecks(sizes: RoomSizes): Check[] {
  const { room, low, floor, width } = sizes;
  return [
    held({
      id: `room-area.${room.id}`,
      statement: `Room ${room.id} has the floor of a habitable room.`,
      source: clause('R304.1 and R304.3', 'from memory'),
      unit: 'm2',
      wanted: ['least area (70 ft²)', LEAST_ROOM.area],
      found: ['floor under at least 1524 mm (5 ft)', low],
      formula: 'circle of the finished intrados at that height, less earlier domes; barrels and passages left out',
      inputs: { 'whole floor (m2)': floor },
      otherwise: 'fails',
      ...shared(sizes),
      advice: sharing(sizes, 'A larger dome or a higher stem wall.'),
    }),
    held({
      id: `room-width.${room.id}`,
      statement: `Room ${room.id} is as wide as a habitable room in every direction.`,
      source: clause('R304.2', 'from memory'),
      unit: 'mm',
      wanted: ['least width (7 ft)', LEAST_ROOM.width],
      found: ['width of the floor under at least 1524 mm (5 ft)', width],
      formula: 'diameter at that height, less what earlier domes take of it',
      otherwise: 'fails',
      ...shared(sizes),
      advice: sharing(sizes, 'A larger dome, or a smaller overlap with its neighbour.'),
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
    statement: `Room ${room.id} is high enough under its dome.`,
    source: clause('R305.1, exception for sloped ceilings'),
    unit: 'm2',
    wanted: [
      room.use === 'habitable' ? 'half of the area asked for (70 ft²)' : 'half of the floor under 1524 mm (5 ft)',
      required / 2,
    ],
    found: ['floor under at least 2134 mm (7 ft)', full],
    formula: 'circle of the finished intrados at that height, less earlier domes',
    inputs: { 'floor under 1524 mm (m2)': low, 'highest point (mm)': highest },
    otherwise: 'fails',
    best: strict && sizes.sharedWith.length === 0 && low > 0 ? 'ok' : 'attention',
    advice: sharing(
      sizes,
      full >= required / 2
        ? 'Enough for the least area; read more strictly, half of all floor that counts must be that high.'
        : 'A higher stem wall or rise.',
    ),
  });
  return [headroom];
}

function lightChecks(sizes: RoomSizes): Check[] {
  const { room, floor, glazing, air } = sizes;
  return [
    held({
      id: `light.${room.id}`,
      statement: `Room ${room.id} has glazing enough for daylight.`,
      source: clause('R303.1'),
      unit: 'm2',
      wanted: ['8 % of the floor', LIGHT_SHARE * floor],
      found: ['glazing', glazing],
      formula: 'shape inside the frames of the windows in its own dome; doors and oculus left out',
      inputs: { 'floor (m2)': floor },
      otherwise: 'attention',
      ...shared(sizes),
      advice: sharing(
        sizes,
        'More or larger windows, a glazed door or oculus, or electric light (6 fc, 65 lx, over the room).',
      ),
    }),
    held({
      id: `air.${room.id}`,
      statement: `Room ${room.id} has openings enough to air it.`,
      source: clause('R303.1'),
      unit: 'm2',
      wanted: ['4 % of the floor', AIR_SHARE * floor],
      found: ['openings to the outside', air],
      formula: 'clear rectangles of windows, vents and doors in its own dome, all of which must open',
      inputs: { 'floor (m2)': floor },
      otherwise: 'attention',
      ...shared(sizes),
      advice: sharing(sizes, 'More or larger windows that open, or a fan.'),
    }),
  ];
}

function bathChecks(sizes: RoomSizes): Check[] {
  const { room, bath, glazing, highest } = sizes;
  return [
    held({
      id: `headroom.${room.id}`,
      statement: `Room ${room.id} is high enough for a bathroom somewhere.`,
      source: clause('R305.1'),
      unit: 'mm',
      wanted: ['least height at fixtures (6 ft 8 in)', BATH_HEADROOM],
      found: ['highest point', highest],
      formula: 'crown of the intrados less its render',
      inputs: { 'floor under at least 2032 mm (m2)': bath },
      otherwise: 'fails',
      advice: 'A higher stem wall or rise; fixtures stand where the height is.',
    }),
    held({
      id: `light.${room.id}`,
      statement: `Room ${room.id} has a window, or needs a fan and electric light.`,
      source: clause('R303.3', 'from memory'),
      unit: 'm2',
      wanted: ['least glazing, half of it to open (3 ft²)', BATH_GLAZING],
      found: ['glazing', glazing],
      formula: 'shape inside the frames of the windows in its own dome',
      otherwise: 'attention',
      advice: 'A larger window, or a fan to the outside and electric light.',
    }),
  ];
}

function escapeCheck({ room, escapes }: RoomSizes): Check[] {
  return [
    {
      id: `escape.${room.id}`,
      statement:
        escapes.length > 0
          ? `Room ${room.id} has a way to escape: ${escapes.join(', ')}.`
          : `Room ${room.id} has no opening of its own to escape by.`,
      state: escapes.length > 0 ? 'ok' : 'attention',
      source: `${EDITION}, R310.1 (from memory)`,
      advice:
        escapes.length > 0
          ? ''
          : 'If anybody sleeps there, it needs a door to the outside or a window with `use: egress window`.',
    },
  ];
}
