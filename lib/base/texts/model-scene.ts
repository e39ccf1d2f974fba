/** Names of parts, colours and openings in the model to turn. */

export const drawnBy = 'drawn by';
export const courseOf = (domeId: string, course: number, count: number | undefined): string =>
  `${domeId}, course ${course} of ${count}`;
export const andBetween = ' and ';
export const theGround = 'the ground';
export const blocks = 'blocks';
export const arches = 'arches';
export const passages = 'passages';
export const crownPieces = 'crown pieces';
export const skewbacks = 'skewbacks';
export const footingAndSlab = 'footing and slab';
export const noMouldFits = 'no mould fits';
export const courseNumber = (i: number): string => `course ${i}`;
export const castPartsAndGround = 'cast parts and ground';
export const madeAs = 'made as';
export const voussoirsCount = (voussoirs: number | null): string => `${voussoirs} voussoirs`;
export const ringJambsAndBarrel = 'ring, jambs and barrel of an opening';
export const vaultBetweenTwoDomes = 'vault between two domes';
export const castPieceAtCrown = 'cast piece at the crown';
export const castRingUnderFirst = 'cast ring under the first sloping bed';
export const onGround = 'on the ground';
export const noneFits = 'none fits';
export const courseOfDome = (course: number, count: number): string => `${course} of ${count}`;
export const cutAtNames = (cutBy: string): string => `cut at ${cutBy}`;
export const castInOne = 'cast';
export const wholeBlock = 'whole';
export const number = 'number';
export const revision = 'revision';
export const date = 'date';
export const address = 'address';
export const client = 'client';
export const undated = 'undated';
export const what = 'what';
export const ring = 'ring';
export const depth = 'depth';
