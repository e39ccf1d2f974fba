/** Titles of sheets, notes on the cover, and what joins sheets. */

export const notes = (title: string): string => `${title}: notes`;
export const titlePageOf = (title: string, page: number, count: number): string => `${title} (${page} of ${count})`;
export const coverSheet = 'Cover sheet';
export const sitePlan = 'Site plan';
export const floorPlan = 'Floor plan';
export const footingAndSlabPlan = 'Footing and slab plan';
export const roofPlan = 'Roof plan';
export const elevations = 'Elevations';
export const sections = 'Sections';
export const openingSchedule = 'Opening schedule';
export const blockAndMouldSchedule = 'Block and mould schedule';
export const detailsOfWallOpenings = 'Details of wall, openings and roof';
export const detailsOfCrown = 'Details of crown and tie';
export const structuralSummary = 'Structural summary';
export const layingTable = 'Laying table';
export const houseIsLarger = (sheet: string, scale: string): string =>
  `the house is larger than ${sheet} at ${scale} and goes on at match lines`;
export const asAsked = 'as asked for';
export const largestStandardScale = 'the largest standard scale at which every view fits the sheet that is asked for';
export const smallestSheetThatHolds = 'the smallest sheet that holds every view at the scale that is asked for';
export const smallestSheetThatHoldsEvery = (buildingScale: string): string =>
  `the smallest sheet that holds every view at ${buildingScale}, and the largest standard scale that fits it`;
export const noUsualSheetHolds = (sheet: string): string =>
  `no usual sheet holds every view at a larger standard scale; ${sheet} does`;
export const what = 'what';
export const value = 'value';
export const notGiven = 'not given: to be set by the engineer';
export const drawnBy = 'drawn by';
export const heightAboveGround = 'height above ground';
export const netFloorAllRooms = 'net floor, all rooms';
export const finishedFloorAboveGround = 'finished floor above ground';
export const designLoadsAndGround = 'Design loads and ground';
export const snowOnGround = 'snow on the ground';
export const windPressure = 'wind pressure';
export const windCoefficients = 'wind coefficients';
export const horizontalEarthquakePart = 'horizontal earthquake, part of the weight';
export const uprightEarthquakePart = 'upright earthquake, part of the dead load';
export const combinedBy = 'combined by';
export const soilMayCarry = 'soil may carry';
export const frictionOfFooting = 'friction of footing on soil';
export const frostDepthBelowGround = 'frost depth below ground';
export const blocksCastCellularConcrete = 'blocks, cast cellular concrete';
export const dryDensity = (dryDensity: string): string => `dry density ${dryDensity}`;
export const strengthOfBlocks = 'strength of blocks on cubes';
export const notGivenTestCubes = 'not given: test cubes before building';
export const meanStrength = (compressiveStrengthMpa: string): string => `mean ${compressiveStrengthMpa}`;
export const waterToCementSand = 'water to cement; sand to cement';
export const coursesJoints = (thickness: string, courseHeight: string, joint: string): string =>
  `${thickness}, courses ${courseHeight}, joints ${joint}`;
export const strengthDensity = (mortarStrengthMpa: string, mortarDensity: string): string =>
  `strength ${mortarStrengthMpa}, density ${mortarDensity}`;
export const insideOutsideDensity = (renderInside: string, renderOutside: string, renderDensity: string): string =>
  `${renderInside} inside, ${renderOutside} outside, density ${renderDensity}`;
export const concreteRingWideBelow = (width: string, depth: string): string =>
  `concrete ring ${width} wide, ${depth} below floor`;
export const floorSlab = 'floor slab';
export const concreteSlab = (thickness: string): string => `concrete ${thickness}`;
export const ringTie = 'ring tie';
export const notDescribed = 'not described';
export const lapLength = (lap: string): string => `, lap ${lap}`;
export const closedHoopOfBars = (bars: number, diameter: string, yieldMpa: string, lap: string): string =>
  `closed hoop of ${bars} bars ${diameter}, yield ${yieldMpa}${lap}`;
export const generalNotes = 'General notes';
export const figuredDimensionsGovernOver =
  'Figured dimensions govern over scaled ones. They are of the structure, without render, unless a note says otherwise; levels are from the finished floor.';
export const bearingsAreClockwise =
  'Bearings are clockwise from project north, which is up on every plan; the north point tells true north.';
export const marksOpeningsPassages =
  'Marks: openings, passages and rooms by their names; a block by dome, course (1 the lowest) and number (clockwise from bearing 0); sections by letters.';
export const setOutEachDome = (count: number): string =>
  `Set out each dome from its axis: see the floor plan for centres and radii${count > 0 ? ', names and net floors of rooms' : ''}. Check diagonals and distances between axes before digging.`;
export const detailsFollowCommonPractice =
  'Details follow the common practice of masonry and shell building, which has no single source; local code and licensed practice govern where they ask for more.';
export const coursesAreLaidRing =
  'Courses are laid ring by ring; what holds each course until its ring is closed stands on the laying sheet. Centering stays until its arch has its strength.';
export const whereDrawingAndTable = 'Where a drawing and a table differ, ask before building.';
export const cautions = 'Cautions';
export const scaleText = (scale: string): string => `Scale ${scale}`;
export const plansElevationsAndSections = (scale: string): string => `; plans, elevations and sections at ${scale}`;
export const sizeAndScale = (size: string, drawn: string, because: string): string => `${size}${drawn}: ${because}`;
export const scaleNote = (count: number, choice: string): string =>
  `${count} ${count === 1 ? 'sheet' : 'sheets'} of ${choice}`;
export const sheetsOf = (choice: string): string => `Sheets of ${choice}.`;
export const partTitle = (title: string, part: string): string => `${title}, part ${part}`;
export const partOfItGoes = (part: string, parts: number, others: number): string =>
  `Part ${part} of ${parts}; it goes on at the match lines on ${others === 1 ? 'the other part' : 'the other parts'}. What crosses a match line is measured on the key.`;
export const matchLinePart = (part: string): string => `match line: part ${part}`;
export const keyTitle = (title: string): string => `${title}, key`;
export const boxesPartsOnSheets = 'Boxes: the parts on the sheets that follow.';
export const generalArrangementDrawingPreliminary = 'General arrangement drawing, preliminary';
export const drawings = 'Drawings';
/** Some of the four elevations on one sheet. */
export const someElevations = (sides: readonly ('north' | 'east' | 'south' | 'west')[]): string => {
  const all = sides.join(' and ');
  return `${all.slice(0, 1).toUpperCase()}${all.slice(1)} elevations`;
};
/** Sections on one sheet, each named by a letter. */
export const sectionsFromTo = (first: string, last: string): string => `Sections ${first}-${first} to ${last}-${last}`;
export const openings = 'Openings';
export const clearWidth = 'clear width';
export const clearHeight = 'clear height';
export const levelOfSill = 'level of sill';
export const riseOfHead = 'rise of head';
export const ringAndJambs = 'ring and jambs';
export const ringMade = 'ring made as';
export const flatFaceBeyondWall = 'flat face beyond wall';
export const depthOfNiche = 'depth of niche';
export const netClearWidth = 'net clear width';
export const netClearHeight = 'net clear height';
export const netClearArea = 'net clear area';
export const voussoirs = (voussoirs: number | null): string => `${voussoirs} voussoirs`;
export const settingOutOfDomes = 'Setting out of domes';
export const insideRadius = 'inside radius';
export const outsideRadius = 'outside radius';
export const footingInsideRadius = 'footing, inside radius';
export const footingOutsideRadius = 'footing, outside radius';
export const stemWall = 'stem wall';
export const levelOfTop = 'level of top';
export const castInOne = 'cast';
export const flush = 'flush';
export const typeColumn = 'type';
export const opening = 'opening';
export const inColumn = 'in';
export const use = 'use';
export const bearing = 'bearing';
export const head = 'head';
export const frame = 'frame';
export const height = 'height';
export const project = 'project';
export const number = 'number';
export const address = 'address';
export const client = 'client';
export const date = 'date';
export const revision = 'revision';
export const domes = 'domes';
export const openingsCount = 'openings';
export const passages = 'passages';
export const wall = 'wall';
export const mortar = 'mortar';
export const render = 'render';
export const footing = 'footing';
export const undated = 'undated';
export const none = 'none';
export const projectTitle = 'Project';
export const materialsTitle = 'Materials';
