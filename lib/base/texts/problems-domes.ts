/** What is wrong with domes and how to mend it. */

export const wallNotThinnerThanRadius = (thick: string, id: string, radius: string): string =>
  `The wall of ${thick} is not thinner than the inside radius of "${id}" (${radius}).`;
export const makeWallThinner = 'Make the wall thinner or the dome wider.';
export const tooManyBlocks = (courseHeight: string, count: string, total: number, mostBlocks: number): string =>
  `Courses of ${courseHeight} with blocks of ${count} would make about ${total} blocks; a house has at most ${mostBlocks}.`;
export const makeCoursesHigher = 'Make courses higher or blocks longer.';
export const hemisphereRise = (id: string, given: string, needed: string): string =>
  `The rise of "${id}" is ${given}; a hemisphere's is its radius, ${needed}.`;
export const removeRiseOrChoose = 'Remove the rise, or choose "segmental", "pointed" or "elliptical".';
export const mustBeLess = 'must be less than its radius';
export const mayBeAtMost = 'may be at most four times its radius';
export const riseTooHigh = (shape: string, id: string, given: string, less: string, limit: string): string =>
  `The rise of the ${shape} dome "${id}" is ${given}; it ${less} (${limit}).`;
export const lowerRiseOrChoose = 'Lower the rise, or choose "pointed" or "elliptical" for a high dome.';
export const mustBeMore = 'must be more than its radius';
export const mustBeAtLeast = 'must be at least a tenth of its radius';
export const raiseRiseOrChoose = 'Raise the rise, or choose "segmental" or "elliptical" for a low dome.';
export const oculusAndCurb = (id: string, given: string, most: string): string =>
  `Oculus and curb of "${id}" reach ${given} from the axis; at most 0.8 of its radius (${most}) is possible.`;
export const makeOculusOrCurb = 'Make oculus or curb smaller.';
export const tooFewBlocksRound = (leastBlocks: number, count: string, id: string, around: string): string =>
  `Less than ${leastBlocks} blocks of ${count} fit round "${id}" (${around} at mid-thickness).`;
export const makeBlocksShorter = 'Make blocks shorter or the dome wider.';
export const stemWallTooLow = (id: string, given: string, half: string): string =>
  `The stem wall of "${id}" is ${given} high, less than half a course (${half}).`;
export const giveNoneOrAtLeast = (half: string): string => `Give 0 or at least ${half}.`;
export const meridianTooShort = (id: string, given: string, hasOculus: boolean, needed: string): string =>
  `The meridian of "${id}" is ${given} long from springing to ${hasOculus ? 'curb' : 'crown'}; two courses take ${needed}.`;
export const makeCoursesLower = 'Make courses lower or the dome larger.';
export const curbOfItsOculus = 'the curb of its oculus';
export const itsCrown = 'its crown';
export const sill = (sill: string): string => `sill ${sill}, `;
export const archSizes = (opening: string, height: string, ring: string): string =>
  `${opening}height ${height}, ring ${ring}`;
export const archTooHigh = (
  arch: string,
  id: string,
  topZ: string,
  sizes: string,
  under: string,
  domeId: string,
  limit: string,
): string =>
  `The ${arch} of "${id}" reaches ${topZ} above the floor (${sizes}); under ${under} the dome "${domeId}" leaves room up to ${limit}.`;
export const lowerByOrMore = (isOpening: boolean, topZ: string): string =>
  `Lower the ${isOpening ? 'opening' : 'passage'} by ${topZ} or more, or make the dome higher.`;
export const archTooWide = (
  arch: string,
  id: string,
  wide: string,
  height: string,
  domeId: string,
  inside: string,
  most: string,
): string =>
  `The ${arch} of "${id}" is ${wide} wide over its ring at ${height} above the floor, where the dome "${domeId}" is ${inside} wide inside; at most 0.9 of that (${most}) is possible.`;
export const makeNarrowerOrLower = (thing: string): string =>
  `Make the ${thing} narrower or lower, or the dome larger.`;
export const twoNames = (id: string, otherId: string): string => `"${id}" and "${otherId}"`;
export const leaveLessThanShortest = (piece: string, height: string): string =>
  `leave less than the shortest piece of ${piece} between them at ${height} above the floor`;
export const archesTooNear = (names: string, left: string): string => `The arches of ${names} ${left}.`;
export const turnOneAway = (turn: string): string => `Turn one ${turn} away from the other, or make them narrower.`;
export const archAndVaultTooNear = (id: string, passageId: string, left: string): string =>
  `The arch of "${id}" and the vault of the passage "${passageId}" ${left}.`;
export const turnAwayFromPassage = (id: string, turn: string): string =>
  `Turn "${id}" ${turn} away from the passage, or make one of them narrower.`;
export const passagesLeaveOnSame = (names: string, id: string): string =>
  `The passages ${names} leave "${id}" on the same line.`;
export const removeOneOfThem = 'Remove one of them, or let it lead to another dome.';
export const vaultsTooNear = (names: string, left: string, id: string): string =>
  `The vaults of the passages ${names} ${left} in "${id}".`;
export const narrowOrMoveApart = (turn: string, id: string): string =>
  `Make them narrower, move the domes that they lead to ${turn} apart as seen from "${id}", or remove one.`;
export const setTheirAxes = (apart: string): string => `Set their axes ${apart} or more apart to keep a gap`;
export const orApartToAbut = (gap: string, deepest: string, abutting: string): string =>
  `${gap}, or ${deepest} to ${abutting} apart to let them abut.`;
export const inSamePlace = 'in the same place';
export const onlyApart = (distance: string): string => `only ${distance} apart`;
export const axesInOnePlace = (id: string, otherId: string, where: string): string =>
  `The axes of "${id}" and "${otherId}" stand ${where}.`;
export const giveEachDomeItsPlace = (pair: string): string =>
  `Give each dome its own "at" (east and north of its axis). ${pair}`;
export const domeWithinDome = (id: string, otherId: string, distance: string, radius: string): string =>
  `The dome "${id}" stands wholly within "${otherId}": its axis is ${distance} from that of "${otherId}", which is ${radius} in radius outside.`;
export const coversAxis = (id: string, radius: string, otherId: string, distance: string): string =>
  `the outside of "${id}", ${radius} from its axis, covers the axis of "${otherId}", which is ${distance} away`;
export const comesTooNear = (id: string, hasOculus: boolean, otherId: string, where: string): string =>
  `"${id}" comes too near to ${hasOculus ? 'the curb' : 'the crown plug'} of "${otherId}" ${where}`;
export const domesOverlapTooDeeply = (id: string, otherId: string, why: string): string =>
  `The domes "${id}" and "${otherId}" overlap too deeply: ${why}.`;
export const gapTooNarrow = (gap: string): string => `only ${gap} of air between them, too little to point and render`;
export const overlapTooThin = (overlap: string): string =>
  `an overlap of only ${overlap}, which leaves thin shells instead of blocks`;
export const wallsNearlyTouch = (id: string, otherId: string, how: string): string =>
  `The walls of "${id}" and "${otherId}" nearly touch: there is ${how}.`;
export const tooLittleWallStands = (id: string, left: number, names: string): string =>
  `Of the wall of "${id}" only ${left} % stands on the ground; the rest gives way to ${names}. At least a quarter must stand.`;
export const moveFurtherFromThem = (id: string): string =>
  `Move "${id}" further from them, make it larger, or list it before one of them.`;
export const meetInsideAndPart = (id: string, otherId: string, laterId: string, where: string): string =>
  `"${id}" and "${otherId}" meet inside "${laterId}" and part its room in two ${where}.`;
export const moveAwayFromLine = (id: string): string =>
  `Move "${id}" away from the line between them, or move them apart.`;
export const narrowItOrMoveApart = (id: string, otherId: string): string =>
  `Make it narrower, or set "${id}" and "${otherId}" further apart.`;
export const turnNarrowOrMoveApart = (deg: string, way: string, id: string, otherId: string): string =>
  `Turn it ${deg} or more ${way}, make it narrower, or set "${id}" and "${otherId}" further apart.`;
export const archTooNearDome = (
  what: string,
  id: string,
  gap: string,
  domeId: string,
  where: string,
  least: string,
): string =>
  `The ${what} of "${id}" comes within ${gap} of the dome "${domeId}" ${where}; a piece of wall with its joint, ${least}, must stay between them.`;
export const archRunsIntoDome = (what: string, id: string, domeId: string, where: string): string =>
  `The ${what} of "${id}" runs into the dome "${domeId}" ${where}.`;
export const standsInWay = (what: string, use: string, id: string, reach: string): string =>
  `${what} stands in the way of the ${use} "${id}": ${reach} in front of it must stay free.`;
export const domeNamed = (id: string): string => `The dome "${id}"`;
export const barrelNamed = (id: string): string => `The barrel of "${id}"`;
export const turnOneOfThem = 'Turn one of them, or set their domes further apart.';
export const passageNamed = (id: string): string => `The passage "${id}"`;
export const turnOpeningOrMove = 'Turn the opening, or move its dome away from the passage.';
export const atLeast = (least: string): string => `at least ${least}`;
export const barrelsMeet = (id: string, otherId: string, least: string): string =>
  `The barrels of "${id}" and "${otherId}" meet outside their domes, or leave less than ${least} between them.`;
export const turnOneUntilFree = (room: string): string =>
  `Turn one of them until ${room} stays free, or give it a smaller "face".`;
export const barrelMeetsPassage = (id: string, passageId: string, least: string): string =>
  `The barrel of "${id}" meets the passage "${passageId}", or leaves less than ${least} beside it.`;
export const turnItUntilFree = (room: string): string =>
  `Turn it until ${room} stays free, or give it a smaller "face".`;
export const passagesCross = (id: string, otherId: string, least: string): string =>
  `The passages "${id}" and "${otherId}" cross, or leave less than ${least} between them.`;
export const joinOtherDomes = 'Join other domes, or put a dome where they cross.';
