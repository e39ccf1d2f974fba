/** Titles, columns and notes of the tables of rooms, openings, structure and drawings. */

export const informationByPartly = (edition: string): string =>
  `Information by ${edition}, partly from memory; the code in force where the house stands governs.`;
export const rooms = 'Rooms';
export const room = 'room';
export const nameWord = 'name';
export const dome = 'dome';
export const use = 'use';
export const floor = 'floor';
export const floorUnder5Ft = 'floor under 1524 mm (5 ft) or more';
export const floorUnder6Ft8 = 'under 2032 mm (6 ft 8 in) or more';
export const floorUnder7Ft = 'under 2134 mm (7 ft) or more';
export const leastWidthUnder5Ft = 'least width under 1524 mm (5 ft) or more';
export const highestPoint = 'highest point';
export const leastGlazingColumn = '8 % of the floor';
export const glazing = 'glazing';
export const leastOpeningsColumn = '4 % of the floor';
export const openingsForAir = 'openings for air';
export const waysToEscape = 'ways to escape';
export const noRoomsAreDescribed = 'No rooms are described.';
export const roomIsItsWhole =
  'A room is its whole dome to the finished faces or, where it has a place, the part that partitions close off round that, without the floor they stand on; its least width leaves them out; rooms that nothing parts are measured as one.';
export const barrelsAndPassagesAdd = 'Barrels and passages add no floor here; the oculus adds no glazing.';
export const clearWidth = 'clear width';
export const clearHeight = 'clear height';
export const lowerEdgeAboveFloor = 'lower edge above the floor';
export const clearArea = 'clear area';
export const toLiveInIt = 'To live in it';
export const what = 'what';
export const askedFor = 'asked for';
export const inThisHouse = 'in this house';
export const unit = 'unit';
export const state = 'state';
export const rule = 'rule';
export const clearRectangleInsideArch = 'Clear: the rectangle inside the arch less frame and leaf.';
export const openings = 'Openings';
export const opening = 'opening';
export const bearing = 'bearing';
export const widthBetweenJambs = 'width between jambs';
export const heightSillToCrown = 'height, sill to crown';
export const sillAboveFloor = 'sill above floor';
export const head = 'head';
export const riseOfHead = 'rise of the head';
export const springingAboveFloor = 'springing above floor';
export const ringAndJambsThickness = 'ring and jambs, thickness';
export const flatFaceFromAxis = 'flat face from the axis';
export const ringMade = 'ring made as';
export const depthOfNiche = 'depth of niche';
export const wallLeftBehindNiche = 'wall left behind niche';
export const voussoirsCount = (voussoirs: number | null): string => `${voussoirs} voussoirs`;
export const ringWithoutFlatFace = 'A ring without a flat face follows the extrados.';
export const structuralSummary = 'Structural summary';
export const masonry = 'masonry';
export const render = 'render';
export const footing = 'footing';
export const snow = 'snow';
export const hoopsPullBelow = 'hoops pull below';
export const hoopTensionUncracked = 'hoop tension, uncracked';
export const worstLoad = 'worst load';
export const geometricFactor = 'geometric factor';
export const sameNoTie = 'the same, no tie';
export const leastThrustAtFoot = 'least thrust at the foot';
export const ringsClosedAbove = 'rings closed above';
export const ringTie = 'ring tie';
export const itsPull = 'its pull';
export const loadOnSoil = 'load on the soil';
export const pressureOnSoil = 'greatest pressure on the soil';
export const loadsWithoutLoadFactors =
  'Loads without load factors. Geometric factor: thickness of the wall over what the line of thrust needs to fit; 2 is asked for (Heyman, The Stone Skeleton, 1995, from memory), under 1 no thrust fits. Least thrust: outward, along the middle of the wall or footing; empty where none fits.';
export const pullOfClosedRing =
  'Pull: of a closed ring where the tie lies; without one, over all openings. The greatest design pull, with load factors, stands among the checks.';
export const notCovered = (what: string): string =>
  `Not covered, for an engineer to judge: ${what}. Domes are held against loads from one side as pairs of lunes alone, openings left out.`;
export const secondWind = (combinations: string): string =>
  combinations === 'ASCE 7'
    ? 'wind by case B of ASCE 7-16, Figure 27.3-2, and pressure inside'
    : 'wind across openings, and pressure inside';
export const windWithoutCoefficients = (ids: readonly string[]): string =>
  `all wind on ${ids.join(', ')} for want of \`site.wind-coefficients\``;
export const driftWithWind = 'drifted snow together with wind';
export const uprightEarthquake = (combinations: string): string =>
  combinations === 'ASCE 7'
    ? 'the upright part of an earthquake (Ev of ASCE 7-16, 12.4.2.2) for want of `site.seismic-vertical`'
    : 'the upright part of an earthquake (EN 1998-1, 4.3.3.5.2) for want of `site.seismic-vertical`';
export const uprightEarthquakeAlone =
  'the whole upright part of an earthquake with a part of the horizontal one (EN 1998-1, 4.3.3.5.2)';
export const inFooting = 'in the footing';
export const aboveFloor = (height: string): string => `${height} above the floor`;
export const barsOfTie = (bars: number, diameter: string, where: string, strength: number): string =>
  `${bars} ${bars === 1 ? 'bar' : 'bars'} of ${diameter}, ${where}${strength > 0 ? '' : ': NO CLOSED HOOP'}`;
export const structuralChecks = 'Structural checks';
export const whatMustHold = 'what must hold';
export const demand = 'demand';
export const capacity = 'capacity';
export const demandCapacity = 'demand / capacity';
export const whatToChange = 'what to change';
export const source = 'source';
export const attentionMeans =
  '`attention`: an engineer must look, an input lacks, or the figure is an estimate. No state is a promise that the house stands.';
export const drawingRegister = 'Drawing register';
export const sheet = 'sheet';
export const title = 'title';
export const views = 'views';
export const scale = 'scale';
export const size = 'size';
export const projectNumber = 'project number';
export const revision = 'revision';
export const dateOfIssue = 'date of issue';
export const file = 'file';
export const eachSheetIsDxf =
  'Each sheet is a DXF and an SVG of that name and a page of drawings/set.pdf. Print at 100 %.';
export const castInOne = 'cast';
