/** Titles, columns and notes of the tables of courses and their laying. */

export const stemWallPart = 'stem wall';
export const noneFits = 'none fits';
export const courses = 'Courses';
export const dome = 'dome';
export const course = 'course';
export const part = 'part';
export const blocksRoundFullRing = 'blocks round the full ring';
export const wholeBlocks = 'whole blocks';
export const cutBlocks = 'cut blocks';
export const longerBlocksWithShort = 'longer blocks, with a short neighbour';
export const mould = 'mould';
export const mouldOrTwo = 'mould, or first and second';
export const twoMoulds = (first: string, second: string): string => `${first} and ${second}`;
export const secondMouldNumbers = 'numbers of the blocks of the second mould';
export const secondBlockAndJointAngle = 'block of the second mould and joint, angle';
export const blocksAsNumbered =
  'Where a course has two moulds, its blocks lie as numbered, those of the second mould spread evenly; in the middle of the heads all its perpends are as thick as told.';
export const thinnestPerpend = 'thinnest perpend';
export const perpendToLay = 'perpend to lay, in the middle of the heads';
export const thickestPerpend = 'thickest perpend';
export const bedReaches = 'bed reaches into its joint by';
export const bedStaysBack = 'bed stays back from its joint by';
export const faceOffSurface = 'face off the surface by';
export const bedAngleFromLevel = 'bed angle from level';
export const radiusToLowerInner = 'radius to the lower inner edge';
export const levelOfLowerInner = 'level of the lower inner edge';
export const radiusToLowerOuter = 'radius to the lower outer edge';
export const levelOfLowerOuter = 'level of the lower outer edge';
export const levelOfUpperInner = 'level of the upper inner edge';
export const heightOfBlocksAlong = 'height of the blocks along the intrados';
export const bearingOfFirstPerpend = 'bearing of the first perpend';
export const blockAndJointAngle = 'block and joint, angle';
export const leastLapOnCourse = 'least lap on the course below';
export const leastLapOfBest = 'least lap of the best start';
export const lapsTooShort = 'laps too short';
export const shortestPieceBesideCut = 'shortest piece beside a cut';
export const levelsAreAboveFinished =
  "Levels are above the finished floor, radii from the dome's axis, bearings clockwise from project north.";
export const perpendsAreThose =
  'Perpends are those of dry blocks of the size cast, over corners and middles of edges of both faces; a block off its size or laid before it has shrunk changes them within the joint range.';
export const perpendsOfRing = 'The perpends of a ring are all alike: none is left over to make it up.';
export const ofThemSecondMould = 'of them from the second mould, by number';
export const staysByItself = 'stays by itself';
export const hangWeightOnEach = 'hang a weight on each block';
export const propEachBlock = 'PROP each block, or a form';
export const centeringUnderCourse = 'CENTERING under the course';
export const layingCourses = 'Laying the courses';
export const blocks = 'blocks';
export const bedLeansInward = 'bed leans inward';
export const freshBlock = 'a fresh block';
export const holdIt = 'hold it';
export const weightToHang = 'weight to hang on each';
export const weightsAtOnce = 'weights at once';
export const until = 'until';
export const heaviestBlockDry = 'heaviest block, dry';
export const heaviestBlockFreshlyDemoulded = 'heaviest block, freshly demoulded, before it is cut';
export const lift = 'lift';
export const nothingIsTakenAway =
  'Nothing is taken away before what stands under "until" has happened. Lay a ring from one side round without a break, close it the same day, wedge the last block.';
export const weightsRopeFromBlocks = (friction: number, hangingFactor: number, ropeFriction: number): string =>
  `Weights: rope from the block's upper outer edge over the finished courses, the weight hanging free beside the wall, hung before the block is let go. Friction of the bed ${friction}, ${hangingFactor} times what statics asks, friction of the rope ${ropeFriction} lost; air-dry blocks: moist ones are heavier, and so must the weight be.`;
export const closedRingCarriesItself =
  "A closed ring carries itself. Courses that openings break can't close: their centering stays until the first closed ring above is closed and the arches are struck.";
export const liftRecommended = (layingLift: string, highRiskKg: string): string =>
  `Lift: ${layingLift} is what NIOSH 94-110 recommends for one person who sets two blocks a minute at chest height for two hours; over ${highRiskKg} is high risk (HSE CIS 37). Blocks are laid dry; fresh is a block as it leaves its form.`;
export const andBetween = ' and ';
export const staysItsPierTips = 'stays; its pier tips';
export const itsRingIsClosed = 'its ring is closed';
export const crownOrCurb = 'the crown or curb is set';
export const courseIsClosed = (closedAbove: number): string => `course ${closedAbove} is closed`;
export const andStruck = (above: string, brokenBy: string): string => `${above}, and struck: ${brokenBy}`;
export const hoistOrSmallerBlocks = 'hoist, or smaller blocks';
export const twoPeopleOrFew = 'two people, or few at a time';
export const onePerson = 'one person';
export const hoistWhileMoist = (dry: string): string => `fresh: hoist; dry: ${dry}`;
export const bonds = 'Bonds';
export const bond = 'bond';
export const asDescribed = 'as described';
export const thinnestJoint = 'thinnest joint';
export const thickestJoint = 'thickest joint';
export const moulds = 'moulds';
export const mouldsNeededAtLeast = 'moulds needed at least';
export const coursesThatNoMould = 'courses that no mould fits';
export const blocksToCast = 'blocks to cast';
export const blocksToCut = 'blocks to cut';
export const cutOff = 'cut off';
export const leastLap = 'least lap';
export const perpendsInLineThrough = 'perpends in line through three courses';
export const blockToleranceAndDrying =
  'Block tolerance and drying shrinkage are taken off each range before moulds are sought, and beds and face steps are held.';
export const betweenCoursesOfN =
  'Between courses of n and m equal blocks no start laps more than π r / lcm(n, m) everywhere: laps are kept where numbers of blocks are, and lost where moulds are shared.';
export const mouldsInACourse = 'moulds in a course';
export const withTwoMoulds =
  'With two moulds in a course, `blocks.moulds-in-course: 2`, their blocks are spread evenly among each other: places are then unequal, and laps less regular.';
export const blocksCutsAndWaste =
  'Blocks, cuts and waste are counted by the longest runs of pieces at mid-thickness; laps over whole rings.';
export const shellPart = 'shell';
export const slides = 'slides';
export const tips = 'tips';
export const stays = 'stays';
