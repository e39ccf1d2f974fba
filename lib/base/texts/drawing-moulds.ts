/** Notes on the drawings of moulds and templates. */

export const cutsOfCoursesWithout = 'Cuts of courses without a mould';
export const cutsOf = (mould: string): string => `Cuts of ${mould}`;
export const lowerBed = 'lower bed';
export const upperBed = 'upper bed';
export const seenFromAboveIntrados = (side: string): string => `${side}, seen from above, intrados below`;
export const firstHeadLeftLower = (side: string): string => `${side}, first head left, lower bed below`;
export const sideWithNames = (side: string, names: string): string => `${side} with ${names}`;
export const firstHeadLeftName = 'First head left. A name stands on the part that stays.';
export const mouldTitle = (id: string): string => `Mould ${id}`;
export const mouldDrawingPreliminary = 'Mould drawing, preliminary';
export const lowerEdgeArc = 'lower edge, arc';
export const lowerEdgeChord = 'lower edge, chord';
export const midHeightArc = 'mid-height, arc';
export const midHeightChord = 'mid-height, chord';
export const upperEdgeArc = 'upper edge, arc';
export const upperEdgeChord = 'upper edge, chord';
export const heightAlongFace = 'height along the face';
export const sagittaLowerEdge = 'sagitta, lower edge';
export const sagittaUpperEdge = 'sagitta, upper edge';
export const sagittaUpFace = 'sagitta up the face';
export const innerSizesOfMould = 'Inner sizes of the mould';
export const size = 'size';
export const bedRadii = (edge: string): string => `${edge} bed, radii`;
export const bevelsAndBeds = 'Bevels and beds';
export const what = 'what';
export const value = 'value';
export const betweenBeds = 'between the beds';
export const headAcrossWall = 'head, across the wall';
export const headUpFace = 'head, up the face';
export const ribsEdgeAboveStraight = 'Ribs: edge above the straight back';
export const rib = 'rib';
export const offMiddle = 'off the middle';
export const ribInUnit = (unit: string): string => `rib; ${unit}`;
export const length = 'length';
export const atIntradosAndLower = 'at intrados and lower bed';
export const atIntradosAndUpper = 'at intrados and upper bed';
export const atExtradosAndLower = 'at extrados and lower bed';
export const atExtradosAndUpper = 'at extrados and upper bed';
export const forCoursesShaped = (courses: string, shapedFor: string): string =>
  `For courses ${courses}; shaped for ${shapedFor}.`;
export const forLongerBlocks = (courses: string, places: number, shapedFor: string): string =>
  `For the longer blocks of course ${courses}, each in the place of ${places}; beds and faces of ${shapedFor}.`;
export const fillingTakesOfFresh = (fresh: string): string => `A filling takes ${fresh} of fresh mix.`;
export const innerSizesLarger = (shrinkage: number): string =>
  `Inner sizes, larger than the dry block by ${shrinkage} % shrinkage. Every view is as cast.`;
export const roundedToInchParts =
  'Tables to 1/32", up to 1/64" (0.4 mm) off; views to 1/16"; table "moulds" to 0.001".';
export const roundedToHalfMm = 'To 0.5 mm, up to 0.25 mm off.';
export const roundingIsPartOf = (may: string): string => `That is a part of the ${may} that a block may be off.`;
export const roundingIsMoreThan = (may: string): string =>
  `More than the ${may} that a block may be off: joints may leave their range. Cut by the full-size templates.`;
export const allSidesArePlane = 'All sides are plane. The sagittas say how far the wall misses its curve.';
export const ribsStandSquare = (lining: string): string =>
  `Ribs stand square to the middle of the mould, cut back by the lining of ${lining}. Beds are cones: bend a sheet cut to the unrolled shape.`;
export const partsFloorForms =
  'Parts: floor, forms of intrados and extrados, two bed boards; they part along the edges of the block.';
export const itStandsOnOne = (pack: string): string =>
  `It stands on one head. The other is open, and level when the floor's corners are packed up by ${pack}. Fill, and strike off level with the edges.`;
export const stepWithDraft = (i: number, moves: string, way: string, draftRad: string): string =>
  `${i} ${moves}, ${way} (draft ${draftRad})`;
export const afterTakeOff = (days: number, steps: string): string =>
  `After ${days} ${days === 1 ? 'day' : 'days'} take off, in this order: ${steps}.`;
export const undercutHoldsBlockSee = 'An undercut holds the block: see the report.';
export const nothingHoldsBlock = 'Nothing holds the block on its way.';
export const partOfNames = (what: string, names: string): string => `${what} of ${names}`;
export const bed = (edge: string): string => `${edge} bed`;
export const bedUnrolled = (edge: string): string => `${edge} bed, unrolled`;
export const intradosBelowExtradosAbove = 'intrados below, extrados above';
export const intradosLeftUpperBed = 'intrados left, upper bed above';
export const upInMiddle = 'up, in the middle';
export const upLeftAndRight = 'up, left and right';
export const upInMiddleLeft = 'up, in the middle, left and right';
export const alongAtMidHeight = 'along, at mid-height';
export const ribOf = (face: string, where: string): string => `rib of the ${face} ${where}`;
export const ribWithWay = (face: string, where: string, way: string, names: string): string =>
  `rib, ${face}, ${where}${way === 'up' ? ' (left: below)' : ''}: ${names}`;
export const sectionInMiddle = 'Section in the middle';
export const headTrueShape = 'Head, true shape';
export const lowerBedUnrolled = 'Lower bed, unrolled';
export const upperBedUnrolled = 'Upper bed, unrolled';
export const asItIsCast = 'As it is cast';
export const midHeightSize = 'mid-height ';
export const centeringOf = (names: string): string => `Centering: ${names}`;
export const ribsApart = (id: string, ribs: number, spacing: string): string => `${id}: ${ribs} ribs, ${spacing} apart`;
export const ribOfNames = (names: string): string => `rib of ${names}`;
export const withRadius = (shape: string, radius: string): string => `${shape}, radius ${radius}`;
export const underLagging = (lagging: string): string => `under lagging of ${lagging}`;
export const chainLineCentre = 'chain line: centre of a bent tube';
export const meridianTemplate = (id: string): string => `Meridian template: ${id}`;
export const boardOf = (number: number, count: number, id: string): string => `board ${number} of ${count}, ${id}`;
export const boardOfLowerEnd = (id: string, number: number, count: number): string =>
  `${id}: board ${number} of ${count}, lower end left; marks: lower beds of courses`;
export const intrados = 'Intrados';
export const extrados = 'Extrados';
export const headLabel = 'head';

export const stopNumbers = (numbers: readonly number[]): string => `stop ${numbers.join(', ')}`;
export const stopBoards = 'Stop boards';
export const stopBoardsOf = (shown: number, all: number): string => `Stop boards, ${shown} of ${all}`;
export const dashedStopBoards =
  "Dashed: stop boards short of the form's end, seen from inside, the first head left. A block that will be cut stands on the head it keeps: mark where its board stands along the four edges, pack the floor until the marks are level, fill to them, and lay the board on.";
export const headKept = 'head kept';
export const leftHead = 'left';
export const rightHead = 'right';
export const block = 'block';
export const blockInUnit = (unit: string): string => `block; ${unit}`;
export const intradosLower = 'intrados lower';
export const intradosUpper = 'intrados upper';
export const extradosLower = 'extrados lower';
export const extradosUpper = 'extrados upper';
