/** Wording of the checks that need no more than the description, and of the verdict over all. */

export const everyLetterCanBeDrawn = (bad: string): string =>
  `Every letter of the description's texts can be drawn; a box stands for some in ${bad}.`;
export const fontOfDrawings = 'the font of the drawings, DejaVu Sans, letter by letter from left to right';
export const writeTheseTexts = 'Write these texts in Latin, Greek or Cyrillic letters.';
export const footingReachesBelowFrost = 'The footing reaches below frost.';
export const commonPracticeLocalCode = 'common practice, no source; the local code governs';
export const depthOfFootingBelow = 'depth of the footing below ground';
export const footingDepthBelowFloor = 'footing depth below the floor, less the ground level below the floor';
export const derived = 'derived';
export const missingInputSiteFrost = 'Missing input: `site.frost-depth`.';
export const frostDepthBelowGround = 'frost depth below ground';
export const makeFootingDepthLarger = 'Make `footing.depth` larger.';
export const blocks = 'Blocks';
export const willItStand = 'Will it stand';
export const whileItIsBuilt = 'While it is built';
export const toLiveInIt = 'To live in it';
export const castingAndCosts = 'Casting and costs';
export const groundDrawingsModel = 'Ground, drawings, model';
export const blocksCutAndLeft = (blocks: string, cut: number, left: string): string =>
  `${blocks}, ${cut} of them cut; ${left} left to mortar`;
export const provenFewest = 'proven the fewest';
export const atLeastNeeded = (atLeast: number): string => `at least ${atLeast} needed`;
export const bondAndMoulds = (bond: string, count: string, proven: string): string =>
  `${bond} bond; ${count}, ${proven}`;
export const masonryVolume = (envelope: string, blocks: string): string =>
  `masonry ${envelope}, of it blocks ${blocks}`;
export const inCubicFeetAndYards = (feet: string, yards: string): string => `${feet} ft3 (${yards} yd3)`;
