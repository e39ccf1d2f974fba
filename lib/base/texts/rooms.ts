/** Wording of the checks of rooms: headroom, light, air, ways out. */

export const roomsAreLargeHigh = 'Rooms are large, high and light enough to live in.';
export const missingInputRooms = 'Missing input: `rooms`, what each dome is used for.';
export const measuredAsOne = (advice: string, sharedWith: string): string =>
  `${advice} Measured as one with ${sharedWith}: no partition that runs up to the wall closes one off, or a room has no \`at\` that says on which side it lies.`;
export const ofPart = (formula: string): string =>
  `${formula}; of the part of the dome alone that partitions close off round the room's \`at\``;
export const roomHasFloor = (id: string): string => `Room ${id} has the floor of a habitable room.`;
export const readFromMemory = 'from memory';
export const leastFloorArea = 'least area (70 ft²)';
export const floorUnderLeastHeight = 'floor under at least 1524 mm (5 ft)';
export const circleOfFinishedIntrados =
  'circle of the finished intrados at that height, less earlier domes and partitions; barrels and passages left out';
export const largerDomeOrHigher = 'A larger dome or a higher stem wall.';
export const roomIsAsWide = (id: string): string => `Room ${id} is as wide as a habitable room in every direction.`;
export const leastRoomWidth = 'least width (7 ft)';
export const widthOfFloorUnder = 'width of the floor under at least 1524 mm (5 ft)';
export const diameterAtThatHeight = 'diameter at that height, less what earlier domes take of it';
export const diameterWithoutPartitions =
  'diameter at that height, less what earlier domes take of it; partitions left out';
export const measureBetweenPartitions = (marks: string): string =>
  `The width is that of the whole dome: partitions (${marks}) aren't looked at. Measure on the floor plan that 7 ft (2134 mm) stay clear between them and the wall.`;
export const largerDomeOrSmaller = 'A larger dome, or a smaller overlap with its neighbour.';
export const roomIsHighEnough = (id: string): string => `Room ${id} is high enough under its dome.`;
export const slopedCeilingRule = 'R305.1, exception for sloped ceilings';
export const halfOfAreaAsked = 'half of the area asked for (70 ft²)';
export const halfOfFloorUnder = 'half of the floor under at least 1524 mm (5 ft)';
export const floorUnderAtLeast = 'floor under at least 2134 mm (7 ft)';
export const circleLessEarlierDomes =
  'circle of the finished intrados at that height, less earlier domes and partitions';
export const enoughForLeastArea =
  'Enough for the least area; read more strictly, half of all floor that counts must be that high.';
export const higherStemWall = 'A higher stem wall or rise.';
export const roomHasGlazingEnough = (id: string): string => `Room ${id} has glazing enough for daylight.`;
export const leastGlazing = '8 % of the floor';
export const shapeInsideFrames = 'shape inside the frames of the windows in its own dome; doors and oculus left out';
export const moreOrLargerWindows =
  'More or larger windows, a glazed door or oculus, or electric light (6 fc, 65 lx, over the room).';
export const roomHasOpeningsEnough = (id: string): string => `Room ${id} has openings enough to air it.`;
export const leastOpenings = '4 % of the floor';
export const openingsToOutside = 'openings to the outside';
export const clearRectanglesOfWindows =
  'clear rectangles of windows, vents and doors in its own dome, all of which must open';
export const moreWindowsThatOpen = 'More or larger windows that open, or a fan.';
export const roomIsHighEnoughForBathroom = (id: string): string =>
  `Room ${id} is high enough for a bathroom somewhere.`;
export const leastHeightAtFixtures = 'least height at fixtures (6 ft 8 in)';
export const highestPoint = 'highest point';
export const crownOfIntradosLess = 'crown of the intrados less its render';
export const higherStemWallOrRise = 'A higher stem wall or rise; fixtures stand where the height is.';
export const roomHasWindow = (id: string): string => `Room ${id} has a window, or needs a fan and electric light.`;
export const leastGlazingHalf = 'least glazing, half of it to open (3 ft²)';
export const shapeInsideFramesOfWindows = 'shape inside the frames of the windows in its own dome';
export const largerWindowOrFan = 'A larger window, or a fan to the outside and electric light.';
export const roomHasWayToEscape = (id: string, escapes: string): string =>
  `Room ${id} has a way to escape: ${escapes}.`;
export const roomHasNoOpening = (id: string): string => `Room ${id} has no opening of its own to escape by.`;
export const escapeRuleFromMemory = (edition: string): string => `${edition}, R310.1 (from memory)`;
export const ifAnybodySleepsThere =
  'If anybody sleeps there, it needs a door to the outside or a window with `use: egress window`.';
export const houseKeepsItsDistance = 'The house keeps its distance from the edge of the plot.';
export const descriptionAndLocalCode = 'the description; the local code governs';
export const andBetween = ' and ';
export const missingInput = (lacking: string): string => `Missing input: ${lacking}.`;
export const leastDistance = 'least distance';
export const distanceOfFinishedWalls = 'distance of the finished walls';
export const leastDistanceOfDomes =
  'least distance of domes and flat faces, render included, from the sides of the plot; footings left out';
export const derived = 'derived';
export const moveHouseMm = (setback: number): string => `Move the house ${setback} mm or more inward.`;
export const readInSecondaryCopy = 'read in a secondary copy';
