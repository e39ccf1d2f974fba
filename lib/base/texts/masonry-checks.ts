/** Wording of the checks of blocks, bond and moulds. */

/** Where a list has nothing in it. */
const none = 'none';

export const theDescription = 'the description';
export const heaviestBlockIsLight = (mark: string): string =>
  `The heaviest block as it is laid, ${mark}, is light enough to lift even when fresh.`;
export const thereAreNoBlocks = 'There are no blocks.';
export const wetMassOfHeaviestBlock = 'wet mass of the heaviest block';
export const wetMassFormula = 'volume / (1 − shrinkage)³ × wet density; wet density by absolute volumes';
export const wetMassSource = 'derived; mix balance after ACI 523.3R';
export const neatCementWater = 'neat cement, water and foam; no sand';
export const heaviestBlockInputs = 'heaviest block';
export const limitFromDescriptionHse =
  'limit from the description; HSE CIS 37 names more than 20 kg lifted by one person as high risk';
export const shortenBlocksLowerCourses =
  'Shorten the blocks, lower the courses, or plan for a hoist and raise `blocks.heaviest`.';
export const crownPlugIsLight = (id: string): string => `The crown plug of dome ${id} is light enough to lift.`;
export const dryMassOfCrown = 'dry mass of the crown plug';
export const volumeDryDensity = 'volume × dry density';
export const derived = 'derived';
export const castPlugInPlace =
  'Cast it in its place on a form, or in pieces, or lift it with a hoist; never by hand over your head.';
export const noPieceBesideOpening = 'No piece beside an opening is shorter than the shortest piece asked for.';
export const shortestPiece = 'shortest piece';
export const longestRunOfPiece = 'longest run of a piece at mid-thickness, least of all pieces';
export const shortestPieceAllowed = 'shortest piece allowed';
export const layThesePieces = (short: readonly string[]): string =>
  `Lay these pieces as one with their neighbour, or move the opening a little: ${short.join(', ') || none}.`;
export const perpendsOfNeighbouringCourses = (id: string): string =>
  `Perpends of neighbouring courses of dome ${id} keep the least lap.`;
export const leastLapFigure = 'least lap';
export const leastDistanceBetweenPerpends = 'least distance between perpends of neighbouring courses at mid-thickness';
export const betweenRingsOfN = 'between rings of n and m equal blocks no lap is longer than π r / lcm(n, m)';
export const leastLapAsked = 'least lap asked for';
export const coursesWithLapsToo = (short: readonly number[]): string =>
  `Courses with laps too short: ${short.join(', ') || none}. Neighbouring rings with different numbers of blocks can't lap everywhere.`;
export const flatBedsOfNeighbouring = 'Flat beds of neighbouring courses stay within the joint between them.';
export const greatestMissOfFlat = (mark: string): string => `greatest miss of a flat bed, course ${mark}`;
export const flatBedFormula = 'r (1 − cos(head angle / 2)) sin(bed angle) at the upper outer edge';
export const joint = 'joint';
export const useBlocksFacesCurved = (over: readonly string[]): string =>
  `Use \`blocks.faces: curved\`, shorter blocks or thicker joints; courses that cross: ${over.join(', ') || none}.`;
export const blocksJointsRingsBarrels =
  'Blocks, joints, rings, barrels and cast pieces fill the masonry envelope: nothing is lost or counted twice.';
export const relativeDifference = 'relative difference';
export const balanceFormula = '|sum of the parts / envelope − 1|';
export const derivedEachPart = 'derived; each part by its own quadrature';
export const greatestDifference = 'greatest difference';
export const constantOfThisProgram = 'a constant of this program';
export const accuracyOfQuadrature = 'accuracy of the quadrature on cut pieces';
export const nothingToChange = 'Nothing to change in the description: report this as a fault of the program.';
export const everyCourseHasMould = 'Every course has a mould whose blocks keep joints, beds and face steps.';
export const coursesThatNoMould = 'courses that no mould fits';
export const jointsAtCorners =
  'joints at corners and middles of edges of both faces within the range, tolerance and shrinkage taken off';
export const mouldsOfOneCourse =
  'moulds of one course laid in another, square to the surface; half of each miss is given to either neighbour';
export const coursesThatMay = 'courses that may have none';
export const everyBlockIsCast = 'every block is cast';
export const nothingToChangeAtAll = 'Nothing to change.';
export const rangeUsedUp = (thinnest: string, tolerance: string): string =>
  `Tolerance and shrinkage use up the joint range: make its thicker end at least ${thinnest}, or \`blocks.tolerance\` at most ${tolerance}.`;
export const perpendsDiffer = 'Perpends differ';
export const withJointPerpendsDiffer = (joint: string): string => `With ${joint} perpends differ`;
export const bedJointsLeaveRange = (joint: string, thinnest: string, thickest: string): string =>
  `Bed joints of ${joint} leave the range when tolerance and shrinkage come off it: give \`blocks.joint\` at least ${thinnest} and at most ${thickest}.`;
export const everyCourse = 'every course';
export const tooMuchBetweenCorners = (differ: string, perpends: string, jointRange: string): string =>
  `${differ} too much between corners in ${perpends}: make the thicker end of \`blocks.joint-range\` at least ${jointRange}.`;
export const changeNumbersIn = (others: string): string =>
  `In ${others}: change the numbers of blocks by \`blocks.length\`.`;
export const noSmallerNumber = 'No smaller number of moulds serves the house in this bond.';
export const moulds = 'moulds';
export const leastCoverOfAll = 'least cover of all courses by moulds of the family';
export const derivedExactSearchEvery = 'derived; exact search, every smaller number refuted';
export const mouldsACourseTapers = (mixed: boolean): string =>
  `${mixed ? 'one or two moulds' : 'one mould'} a course; tapers in steps of half a millimetre`;
export const boundOfMixedCourses =
  'The true number lies between the two: the bound asks of a mixed course only that each of its moulds fits some of its places.';
export const mouldsNeededAtLeast = 'moulds needed at least';
export const coursesOf = 'courses of which no two share a mould, or numbers of moulds refuted';
export const tableOfBondsTells = 'The table of bonds tells what fewer moulds would cost.';
export const searchWasCutShort =
  'The search was cut short: the true number lies between the two. A narrower choice of lengths ends it sooner.';
export const noLineOfPerpends = 'No line of perpends passes three courses.';
export const perpendsInLine = 'perpends in line with two courses below';
export const perpendsNearerThanThickest =
  'perpends nearer than the thickest dry joint to one below that is itself so near to one below it';
export const linesAllowed = 'lines allowed';
export const noneAllowed = 'none';
export const commonPracticeNoSource = 'common practice, no source';
export const useBlocksBondBanded = 'Use `blocks.bond: banded`, or another `blocks.length`.';
export const blocksAreAsLong = (length: string): string => `Blocks are ${length} long with their joint, as asked for.`;
export const wetMassOfLengthAsked = 'wet mass of a block of the length asked for';
export const wetMassOfShare = 'wet mass of the ring × length ÷ its circumference at mid-thickness';
export const blocksAreShorter = (
  courses: number,
  shortest: string,
  longest: string,
  length: string,
  heaviest: string,
): string =>
  `Such blocks would be too heavy: those of ${courses} ${courses === 1 ? 'course' : 'courses'} are ${shortest === longest ? shortest : `${shortest} to ${longest}`} long. Ask for \`blocks.length\` of at most ${length}, lower the courses, or plan for a hoist and raise \`blocks.heaviest\` to ${heaviest}.`;
export const piecesBesideOpenings = 'Pieces beside openings that are too short are laid as one with their neighbours.';
export const whatShortestLacks = 'what the shortest lacks';
export const shortestPieceLongestRun = 'shortest piece − longest run at mid-thickness, with the thickest perpend';
export const whatPieceMayLack = 'what a piece may lack';
export const pierHasNoNeighbour = (count: string): string => `a pier of ${count} between two cuts has no neighbour`;
export const wouldWeighTooMuch = (count: string, togetherKg: string, heaviestKg: string): string =>
  `${count} would weigh ${togetherKg} with its neighbour, more than ${heaviestKg}`;
export const courseBecause = (domeId: string, reasons: string): string => `Course ${domeId}: ${reasons}.`;
export const perpendsStayNearJoint = 'Perpends stay near the joint drawn, as masonry specifications ask.';
export const thickestPerpendWithBlock = 'thickest perpend, with block tolerance';
export const thickestPerpendOfDry =
  'thickest perpend of dry blocks + tolerance; thinnest − tolerance − shrinkage × length';
export const thickestHeadJoint = 'thickest head joint';
export const headJointFormula = 'joint + 3/8 in; thinnest: joint − 1/4 in';
export const tms602SiteTolerances = 'TMS 602, site tolerances of head joints, from memory';
export const forWallsOfManufactured = 'for walls of manufactured units; the local code governs';
export const tms602FromMemory = 'TMS 602, from memory';
export const narrowBlocksJointRange =
  'Narrow `blocks.joint-range` or cast to a closer tolerance; more moulds are needed then.';
export const stopBoard =
  'A longer block that is cut is cast from the head that it keeps to a stop board just past its cut; the table of cuts tells where along each edge the board stands. The other head is not needed then, and the form is as long as the longest of its blocks.';
export const longerBlocksAreLight = (id: string): string =>
  `Longer blocks, ${id} the heaviest, are light enough to lift out of their forms before they are cut.`;
export const wetMassOfHeaviest = 'wet mass of the heaviest longer block';
export const volumeOfFormWet = 'volume of the form × wet density';
export const formFilledFromHead = 'filled as far as the stop board of the longest';
export const hoistTakesTheseBlocks = (heavy: string, lighter: string): string =>
  `A hoist takes these blocks out of their forms: ${heavy}. ${lighter}`;
export const voussoirOfOpening = (id: string): string => `voussoir of opening ${id}`;
export const giveItArchVoussoirs = (count: number): string =>
  `Give it \`arch.voussoirs: ${count}\` or more, a thinner ring, or a hoist.`;
export const segmentOfSkewbackRing = 'segment of a skewback ring or curb';
export const liftItWithHoist = 'Lift it with a hoist, or cast it in its place.';
export const heaviestIsLightEnough = (what: string, mark: string): string =>
  `The heaviest ${what}, ${mark}, is light enough to lift freshly demoulded.`;
export const wetMassOfHeaviestPiece = (what: string): string => `wet mass of the heaviest ${what}`;
export const wetMassOfPieceFormula = 'volume / (1 − shrinkage)³ × wet density';
export const blocks = 'blocks';
export const bedJoints = 'bed joints';
export const perpends = 'perpends';
export const jointsAtArchesPassages = 'joints at arches, passages and earlier domes';
export const remnantsLeftToMortar = 'remnants left to mortar';
export const makeUpOfFaces = 'make-up of faces';
export const skewbackRings = 'skewback rings';
export const crownPlugs = 'crown plugs';
export const curbs = 'curbs';
export const archRingsAndBarrels = 'arch rings and barrels over the springing, cast';
export const voussoirsAndTheirSkewbacks = 'voussoirs and their skewbacks';
export const jointsBetweenVoussoirs = 'joints between voussoirs and between segments of rings';
export const jambs = 'jambs';
export const spandrels = 'spandrels';
export const nicheBacks = 'niche backs';
export const passages = 'passages';
