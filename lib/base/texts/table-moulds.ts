/** Titles, columns and notes of the tables of moulds. */

export const lowerEdgeArc = 'lower edge, arc';
export const lowerEdgeChord = 'lower edge, chord';
export const atMidHeightArc = 'at mid-height, arc';
export const atMidHeightChord = 'at mid-height, chord';
export const upperEdgeArc = 'upper edge, arc';
export const upperEdgeChord = 'upper edge, chord';
export const heightAlongFace = 'height along the face';
export const sagittaOfLowerEdge = 'sagitta of the lower edge';
export const sagittaOfUpperEdge = 'sagitta of the upper edge';
export const sagittaUpFace = 'sagitta up the face';
export const angleBetweenBeds = 'angle between the beds';
export const headOffSquareAcross = 'head off square across the wall, wider outside';
export const headOffSquareUp = 'head off square up the face, narrower at the top';
export const moulds = 'Moulds';
export const mould = 'mould';
export const courseShapedFor = 'course that it is shaped for';
export const coursesLaid = 'courses laid with it';
export const blocksLaidWhole = 'blocks laid whole';
export const blocksToBeCut = 'blocks to be cut';
export const longerBlocks = 'longer blocks in its shape';
const FAMILY = 'moulds with beds and faces of any course, heads of any bevel, and tapers in steps of half a millimetre';
const counted = (count: number, mixed: boolean): string =>
  `${count} moulds for this bond${mixed ? ', two of which may share a course' : ''}`;
export const mouldsProvenFewest = (count: number, mixed: boolean): string =>
  `${counted(count, mixed)}: fewer are impossible, by exact search over ${FAMILY}.`;
export const mouldsAtLeastNeeded = (count: number, atLeast: number, mixed: boolean): string =>
  `${counted(count, mixed)}; ${atLeast} at least are needed, of ${FAMILY}. ${mixed ? 'The true number lies between.' : 'The search was cut short.'}`;
export const coursesOfTwoMoulds = (courses: number): string =>
  `Courses laid with two moulds: ${courses}; the table of courses tells which blocks are of which.`;
export const innerSizesToLarger = (cutTo: string, shrinkage: number): string =>
  `Inner sizes, to ${cutTo}, larger than the dry block by its drying shrinkage of ${shrinkage} %.`;
export const bedsStandSquare =
  'Beds stand square to the faces. Every mould is its own mirror image: one serves left and right. Blocks that take in a short neighbour are cast in its shape with the heads moved apart: see the longer moulds.';
export const facesAreFlatSagittas =
  'Faces are flat: the sagittas say how far they miss the curve that the corners lie on.';
export const longerMoulds = 'Longer moulds';
export const bedsAndFaces = 'beds and faces of';
export const courseLaid = 'course laid with it';
export const placesThatBlockTakes = 'places that a block takes';
export const courseOfDome = (domeId: string): string => `course ${domeId}`;
export const pieceBesideOpening =
  'A piece beside an opening that would be too short is one with its neighbour. Such blocks have the beds and faces of their mould with the heads moved apart; where these would leave the bed joints, those of their own course.';
export const sizesAsInTable =
  'Sizes as in the table of moulds: inner ones, larger than the dry block by its drying shrinkage.';
export const thickness = 'thickness';
export const volume = 'fresh mix for one filling';
export const wetMassOfFilling = 'wet mass of a filling';
export const castToStopBoard = 'of them cast to a stop board';
