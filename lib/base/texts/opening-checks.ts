/** Wording of the checks of doors, windows and egress. */

export const rectangleInsideArchLess = (leaf: number): string =>
  `rectangle inside the arch less the frame and ${leaf} mm of leaf`;
export const egressWindowIsLarge = (id: string): string => `Egress window ${id} is large enough to escape by.`;
export const leastClearAreaSill = 'least clear area, sill near the ground (5.0 ft²)';
export const leastClearAreaFull = 'least clear area (5.7 ft²)';
export const clearArea = 'clear area';
export const widerOrHigherOpening = 'A wider or higher opening, a flatter head, or a thinner `frame`.';
export const egressWindowIsWide = (id: string): string => `Egress window ${id} is wide enough to escape by.`;
export const leastClearWidth20 = 'least clear width (20 in)';
export const clearWidth = 'clear width';
export const widerOpeningOrThinner = 'A wider opening or a thinner `frame`.';
export const egressWindowIsHigh = (id: string): string => `Egress window ${id} is high enough to escape by.`;
export const leastClearHeight24 = 'least clear height (24 in)';
export const clearHeight = 'clear height';
export const higherOpeningOrThinner = 'A higher opening or a thinner `frame`.';
export const egressWindowCanBeClimbed = (id: string): string =>
  `Egress window ${id} can be climbed through from the floor.`;
export const highestSill = 'highest sill (44 in)';
export const lowerEdgeOfClear = 'lower edge of the clear opening above the floor';
export const sillAndFrame = 'sill and the frame on it';
export const lowerSill = 'A lower `sill`.';
export const doorIsWide = (id: string): string => `Door ${id} is wide and high enough to be the way out.`;
export const thereIsDoor = 'There is a door to go out by.';
export const leastClearWidthUp = 'least clear width up to 1981 mm (32 in up to 78 in)';
export const clearWidthThere = 'clear width there';
export const widthWhereHeadsPass = (leaf: number): string =>
  `width inside the arch 1981 mm above the floor, less the frame and ${leaf} mm of leaf`;
export const widerOrHigherDoor = 'A wider or higher door: an arched head narrows it where heads pass.';
export const giveAtLeastOne = 'Give at least one opening with `use: door`.';
export const stepDownFromFloor = 'The step down from the floor to the ground at the way out is low.';
export const readFromMemory = 'from memory';
export const mostWhereDoorSwings = 'most, where the door swings over the landing (1 1/2 in)';
export const floorAboveGround = 'floor above the ground';
export const asGivenBySite = 'as given by `site.ground`';
export const enoughUnlessDoorSwings =
  "Enough (7 3/4 in) where the door doesn't swing over the landing; otherwise raise the landing.";
export const landingAtDoor = 'A landing at the door, with steps down from it.';
export const informationCodeInForce = 'information: the code in force where the house stands governs';
export const constantOfCode = 'a constant of the code';
export const derived = 'derived';
