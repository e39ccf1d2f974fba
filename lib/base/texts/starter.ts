/** Questions for a first description, and the comments in it. */

export const didYouMean = (near: string): string => `Did you mean ${near}? `;
export const itIsOne = (near: string, choices: string): string => `${near}It is one of ${choices}.`;
export const unitsOfLengthsM = 'Units of lengths, m or ft';
export const insideRadiusOfDome = (units: string): string => `Inside radius of the dome at the springing, in ${units}`;
export const itIsLength = (least: string, most: string): string => `It is a length from ${least} to ${most}.`;
export const shapeOfDome = (profileShapes: string): string => `Shape of the dome: ${profileShapes}`;
export const howManyWindows = (mostWindows: number): string => `How many windows, 0 to ${mostWindows}`;
export const itIsWholeNumber = (mostWindows: number): string => `It is a whole number from 0 to ${mostWindows}.`;
export const roundOpeningInCrown = 'A round opening in the crown, yes or no';

export const faceOfArch = 'how far its flat face stands out; flush follows the dome';
export const dateOfSheets = 'printed on every sheet; "undated" without it';
export const trueNorth = "bearing of true north, clockwise from the plan's up";
export const outsideGround = 'outside ground, below the finished floor';
export const structuralWall = 'structural, without render';
export const insideRadius = 'inside, at the springing';
export const stemWall = 'upright wall under the springing';
export const toCrownOfHead = 'to the crown of the head';
export const otherHeads = 'or segmental, pointed, flat';
export const orNone = 'or none';
export const fromTestCubes = 'from your own test cubes';
export const houseOfCastBlocks = (metric: boolean): string =>
  `A house of cast blocks. Lengths without a unit are in ${metric ? 'metres' : 'feet'}; any may carry its own: 150 mm, 6'-10", 3/8 in.`;
export const everyKeyLeftOut =
  'Every key left out takes its default. `ringcourse check` tells what does not fit, and how to mend it.';
export const shapesWithRise = (shapes: string, rise: string): string =>
  `${shapes}; with a rise: { shape: pointed, rise: ${rise} }`;
export const bearingsAreDegrees = "Bearings are degrees clockwise from the plan's up, seen from the dome's axis.";
export const scaleModel = (scale: string): string => `scale model, ${scale}`;
export const projectTitle = "Potter's room";
export const drawnBy = 'drawing office';
