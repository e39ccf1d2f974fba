/** Titles, names and notes on plans, elevations and sections. */

export const listAnd = (names: string, last: string | undefined): string => `${names} and ${last}`;
export const bearing = (deg: string): string => `bearing ${deg}`;
export const intradosOfRise = (id: string, shape: string, rise: string): string =>
  `Intrados of ${id}: ${shape}, rise ${rise}.`;
export const pastAxisAtSpringing = (past: string): string => `${past} past the axis at the springing`;
export const onAxisBelowSpringing = (below: string): string => `on the axis ${below} below the springing`;
export const onAxisAtSpringing = 'on the axis at the springing';
export const intradosOfRadius = (id: string, shape: string, radius: string, centre: string): string =>
  `Intrados of ${id}: ${shape}, radius ${radius} from a centre ${centre}.`;
export const numberShort = (number: string): string => `no. ${number}`;
export const forClient = (client: string): string => `for ${client}`;
export const drawnBy = (drawnBy: string): string => `drawn by ${drawnBy}`;
export const revision = (revision: string): string => `revision ${revision}`;
export const sizesAreWithoutRender = (renderInside: string, renderOutside: string): string =>
  ` Sizes are without render: ${renderInside} inside, ${renderOutside} outside.`;
export const wallOfCastBlocks = (thickness: string, joint: string, render: string): string =>
  `Wall of cast blocks ${thickness} thick, joints ${joint}.${render}`;
export const ringFootingWide = (width: string, depth: string): string =>
  `Ring footing ${width} wide, its sole ${depth} below finished floor.`;
export const noRingFooting = 'No ring footing.';
export const floorSlabThick = (ring: string, thickness: string): string => `${ring} Floor slab ${thickness} thick.`;
export const noFloorSlab = (ring: string): string => `${ring} No floor slab.`;
export const floorPlan = 'Floor plan';
export const cutAboveFinishedFloor = (height: string): string =>
  `Cut ${height} above finished floor; dashed: floor line and footing hidden by masonry or ground; dashed with two dots: overhead. Bearings clockwise from project north.`;
export const openingsKey = (keys: string): string => `Openings: ${keys}.`;
export const betweenAxes = (distances: string): string => `Between axes: ${distances}.`;
export const swingsAreProposedHung =
  'Swings are proposed, hung on the left seen from outside: doors inward, windows to escape by outward; frames and panes as their makers ask.';
export const clearSize = 'clear ';
export const clearOfWidth = (width: string): string => `, clear ${width}`;
export const ringAtNames = (ring: string, ids: string): string => `${ring} at ${ids}`;
export const atIntradosOutside = (inside: string, outside: string): string =>
  `${inside} at the intrados, ${outside} outside`;
export const widthOfRings = (said: string): string => `Width of rings and jambs: ${said}.`;
export const widthOfCurbs = (curb: string): string => `Width of curbs: ${curb}.`;
export const clearOfPassage = (id: string, width: string): string => `${id}, clear ${width}`;
export const axesSize = 'axes ';
export const fromAxisTo = (id: string, toId: string, between: string): string => `${id} to ${toId} ${between}`;
export const domePlace = (id: string, rooms: string, place: string, radius: string): string =>
  `${id}${rooms} ${place}, R${radius}`;
export const wideHigh = (
  id: string,
  width: string,
  crownZ: string,
  shape: string,
  along: string,
  otherId: string,
): string => `${id} ${width} wide, ${crownZ} high, ${shape}, ${along} from ${otherId}`;
export const domesTheirAxes = (id: string, domes: string): string =>
  `Domes, their axes from that of ${id} and inside radii at the floor: ${domes}.`;
export const passagesClear = (passages: string): string => `Passages, clear: ${passages}.`;
export const east = (size: string): string => `${size} east`;
export const west = (size: string): string => `${size} west`;
export const north = (size: string): string => `${size} north`;
export const south = (size: string): string => `${size} south`;
export const doorByItsMiddle = (width: string, height: string, middle: string): string =>
  `, door ${width} by ${height}, its middle ${middle} from there`;
export const upToDome = 'up to the dome';
export const partitionHigh = (height: string): string => `${height} high`;
export const inThickCentreLine = (
  mark: string,
  id: string,
  thickness: string,
  height: string,
  count: string,
  text: string,
  at: string,
  door: string,
): string =>
  `${mark} in ${id}, ${thickness} thick, ${height}, centre line ${count} long, from ${text} of the axis to ${at}${door}`;
export const partitionsWhichCarryNothing = (each: string): string => `Partitions, which carry nothing: ${each}.`;
export const lowerNumberGoesThrough =
  'Where two partitions run into each other, the one with the lower number goes through.';
export const valleyHighest = (top: string): string => `valley, highest ${top}`;
export const roofPlan = 'Roof plan';
export const arrowsShowWayWater =
  'Arrows show the way water runs. Chain lines along barrels and passages: their crowns, which are level. Levels are of the masonry; the outside render lies on it.';
export const valleysBetweenDomes = (fall: string): string =>
  `Valleys between domes, and behind barrels and passages, are lined with flashing and laid to fall at least ${fall} outward in mortar; flat tops of barrels fall ${fall} outward (common practice, no source; see details).`;
export const waterThatLeavesRoof =
  'Water that leaves the roof falls at the foot of the walls: the ground falls away from the house, and a drain lies along the footing (see details).';
export const floorLevel = (id: string, level: string): string => `${id}, floor ${level}`;
export const boundaryOfPlot = 'boundary of the plot';
export const sitePlan = 'Site plan';
export const noSetbackIsGiven = 'No setback is given: the local authority tells the least distance from the boundary.';
export const dashedSetback = (setback: string): string => `Dashed: setback of ${setback} from the boundary.`;
export const distancesAreLevel = (renderOutside: string, ground: string): string =>
  `Distances are level, from the boundary to the outer face of the structure; render of ${renderOutside} takes as much of them. Ground beside the house ${ground}.`;
export const axisOfIsTaped = (id: string | undefined): string =>
  `The axis of ${id} is taped from two sides of the boundary; all other places from it, as on the floor plan.`;
export const plotCoveredByHouse = (plot: string, outline: string, percent: string): string =>
  `Plot ${plot}; covered by the house ${outline}, ${percent} %.`;
export const surveyorConfirmsBoundaryLevels =
  'A surveyor confirms boundary, levels, services and right of way before digging.';
export const axisSize = 'axis ';
export const footingAndSlabPlan = 'Footing and slab plan';
export const cutBelowFinishedFloor = (depth: string, hasFooting: boolean, hasSlab: boolean): string =>
  `Cut ${depth} below finished floor; dashed with two dots: faces of the walls above.${hasFooting ? ' The footing is as wide and as deep under barrels and passages.' : ''}${hasFooting && hasSlab ? ' Within it the slab is cut too, and left without hatching for its figures.' : ''}`;
export const undisturbedGroundDryFree = (hasFooting: boolean): string =>
  `${hasFooting ? 'Trench bottom' : 'Under the slab'}: undisturbed ground, dry, free of roots; blinding before reinforcement. Bars, links and laps of the concrete are the engineer’s.`;
export const underSlabCompactedFree =
  'Under the slab: compacted free-draining fill, a sheet against damp lapped into the damp-proof course (see details). Sleeves for services go in before casting. Common practice, no source.';
export const footingTopSole = (top: string, sole: string): string => `footing: top ${top}, sole ${sole}`;
export const slabTopUnderside = (top: string, underside: string): string => `slab: top ${top}, underside ${underside}`;
export const castBlocks = 'cast blocks';
export const castPiecesRingsJambs = 'cast pieces: rings, jambs, skewback, curb, plug';
export const concreteFootingAndSlab = 'concrete footing and slab';
export const ground = 'ground';
export const levelsAboveFinishedFloor = (units: string): string =>
  `${units !== 'feet-inches' ? 'lengths in mm, levels in m' : 'lengths and levels in feet and inches'}; levels above finished floor`;
export const levelsAboveFinishedFloorSentence = (units: string): string =>
  units !== 'feet-inches'
    ? 'Lengths in mm, levels in m; levels above finished floor.'
    : 'Lengths and levels in feet and inches; levels above finished floor.';
export const scale = (written: string, measureWords: string): string => `Scale ${written}; ${measureWords}`;
export const projectNorth = 'project north is';
export const trueNorthIs = 'true north';
export const projectNorthIsUp = 'project north is up,';
export const anticlockwiseBy = (angle: string): string => `${angle} anticlockwise`;
export const clockwiseBy = (angle: string): string => `${angle} clockwise`;
export const trueNorthAt = (northDeg: string): string => `true north ${northDeg}`;
export const headroomAt = (height: string): string => `headroom ${height}`;
export const lowerThroughout = (low: string, count: number): string =>
  ` ${low} ${count === 1 ? 'is' : 'are'} lower throughout.`;
export const dashedWithTwoDots = (headroom: string, tail: string): string =>
  `Dashed with two dots in each room: headroom of ${headroom} under the finished intrados.${tail}`;
/** Titles of the elevations, as seen from each side. */
export const ELEVATIONS = {
  north: 'North elevation',
  east: 'East elevation',
  south: 'South elevation',
  west: 'West elevation',
} as const;
export const topOfMasonry = 'top of masonry';
export const finishedFloor = 'finished floor';
export const sill = 'sill';
export const head = 'head';
export const footingSize = 'footing ';
export const ringSize = 'ring ';
export const slabSize = 'slab ';
export const edgeOfOculus = 'edge of oculus';
export const crownIntrados = 'crown, intrados';
export const springing = 'springing';
export const topOfCutInside = 'top of cut, inside';
export const topOfCutOutside = 'top of cut, outside';
export const curbSize = 'curb ';
export const curbInsideSize = 'curb, inside ';
export const sectionTitle = (mark: string): string => `Section ${mark}-${mark}`;
export const throughOfToBearing = (single: boolean, names: string, bearingDeg: string): string =>
  `Through the ${single ? 'axis' : 'axes'} of ${names}, to bearing ${bearingDeg} at the right.`;
export const itPassesBeside = (id: string, off: string): string => `It passes ${id} ${off} beside its axis.`;
export const ofMould = (mould: string): string => ` of ${mould}`;
export const noRoomFor = (numbers: string): string => `; no room: ${numbers}`;
export const rangeTo = (first: number, last: number): string => `${first} to ${last}`;
export const bearingsTo = (id: string, from: string, to: string): string => `${id}, bearings ${from} to ${to}`;
export const coursesUnrolledSeen =
  'Courses unrolled, seen from outside: bearings run from right to left. Lengths along each course and up the wall are true in the middle of its thickness; lines are the middles of joints.';
export const numberInBlock =
  'A number in a block is the last part of its mark: dome-course-number. Beside each course: its number, how many blocks its full ring has, their mould (of two, a star marks blocks of the second), and which blocks have no room for their number, counted on from their neighbours. An opening too small for its name has it at the end of a line, or below at its bearing.';
export const bedsPerpendsSizes = (joint: string): string =>
  `Beds ${joint}; perpends, sizes and angles of each course stand in the tables.`;
export const insideFrameSize = 'inside frame ';
export const clearHeight = 'clear height';
export const nicheDeep = (depth: string): string => `, niche ${depth} deep`;
export const ringCastInOne = 'ring cast in one';
export const ringOfVoussoirs = (voussoirs: number | null): string => `ring of ${voussoirs} voussoirs`;
export const flushWithWall = 'flush with the wall';
export const flatFaceBeyondWall = (distance: string): string => `flat face ${distance} beyond the wall`;
export const headWide = (ids: string, shape: string, made: string, ring: string, face: string, depth: string): string =>
  `${ids}: ${shape} head, ${made} ${ring} wide, ${face}${depth}.`;
export const nichesAreSeen = 'Niches are seen from inside, square to their bearing; sizes are of the structure.';
export const netClearIs =
  'Net clear in the table of openings: the greatest rectangle inside the frame and past the leaf as it opens.';
export const openingsAreSeen = 'Openings are seen from outside, square to their bearing; sizes are of the structure.';
export const calendarInWorkingDays = 'Casting and laying calendar, working days';
export const castingDays =
  'Casting: days on which a mould is filled. Centering: from the day an arch is cast to the day it is struck.';
export const layingAndCrownDays = (last: number): string =>
  `Laying and crown: days of laying and closing, the last of them day ${last}.`;
export const calendarTitle = 'Casting and laying calendar';
export const ringsClosedAbove = 'rings closed above';
export const ringTie = 'ring tie';
export const lineOfThrustDome = (id: string): string => `Line of thrust, dome ${id}`;
export const noThrustFits = (loads: string): string => `No thrust fits into this wall at any thickness under ${loads}.`;
export const noThrustFitsIntoWall = 'no thrust fits into the wall as it is, the line leaves it';
export const leastThrustAtFoot = (least: string): string => `least thrust at the foot ${least} per radian`;
export const thrustCaption = (loads: string, factor: string, foot: string): string =>
  `Line of thrust that keeps farthest from the faces, ${loads}, without load factors: geometric factor ${factor} (2 asked for), ${foot}.`;
export const ringTieCircleBars = (bars: number, diameter: string, strength: number): string =>
  `Ring tie (circle): ${bars} ${bars === 1 ? 'bar' : 'bars'} of ${diameter}${strength > 0 ? '' : '; NO CLOSED HOOP, it holds nothing'}.`;
export const noRingTie = 'No ring tie.';
