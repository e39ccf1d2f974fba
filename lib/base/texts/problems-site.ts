/** What is wrong with site, blocks, mix and pegs and how to mend it. */

export const footingNarrowerThanWall = (width: string, thickness: string): string =>
  `The footing of ${width} is narrower than the wall of ${thickness}.`;
export const makeItAtLeast = 'Make it at least as wide as the wall.';
export const footingFillsDome = (width: string, id: string, limit: string): string =>
  `The footing of ${width} fills the whole dome "${id}"; it must be narrower than ${limit}.`;
export const makeItNarrower = 'Make it narrower.';
export const footingEndsBelowFloor = (depth: string, ground: string): string =>
  `The footing ends ${depth} below the floor, the ground begins ${ground} below it.`;
export const makeItDeeper = 'Make it deeper, so that it stands in the ground.';
export const sidesOfPlotCross = 'The sides of the plot cross or touch, or enclose no area.';
export const listItsCorners = 'List its corners in order round the plot.';
export const tieLiesInFooting = 'The tie lies in the footing, and the house has none.';
export const giveFootingOrWrite = 'Give a footing, or write `level: above openings`.';
export const tieAboveCrown = (level: string, id: string, limit: string): string =>
  `The tie at ${level} lies above the crown of dome "${id}" at ${limit}.`;
export const lowerItOrWrite = 'Lower it, or write `level: above openings`.';
export const withItsFooting = ' with its footing';
export const domeCrossesBoundary = (id: string, withFooting: string, over: string): string =>
  `The dome "${id}"${withFooting} crosses the boundary of the plot by ${over}.`;
export const moveItInward = (over: string): string =>
  `Move it ${over} or more inward, make it smaller, or mend the plot.`;
export const barrelCrossesBoundary = (id: string, withFooting: string): string =>
  `The barrel of "${id}"${withFooting} crosses the boundary of the plot.`;
export const turnOpeningGive = 'Turn the opening, give it a smaller "face", or move its dome.';
export const passageCrossesBoundary = (id: string, withFooting: string): string =>
  `The passage "${id}"${withFooting} crosses the boundary of the plot.`;
export const moveItsDomes = 'Move its domes, or join others.';
export const twoPegsAreApart = (given: string, least: string): string =>
  `The two pegs are ${given} apart; tapes from pegs less than ${least} apart cross too flat.`;
export const setThemFurtherApart = 'Set them further apart, beside the house.';
export const pegStandsInsideDome = (id: string): string =>
  `The peg stands inside dome "${id}", where its wall and slab will be built.`;
export const moveItOutsideHouse = 'Move it outside the house.';
export const giveLowerDensityLess = 'Give a lower density, less water, or more sand.';
export const mixWithoutAnyFoam = (dryMost: string, dryDensity: string): string =>
  `A mix without any foam dries to ${dryMost}, which is less than ${dryDensity}.`;
export const foamAloneHas = (wet: string, density: string): string =>
  `The foam alone has ${wet}: no mix with cement has a wet density of ${density}.`;
export const mixWithoutFoamHas = (wet: string, density: string): string =>
  `Cement, sand and water without any foam have ${wet}: no mix has ${density}.`;
export const giveMoreThanFoamed = (wet: string, say: string, say2: string): string =>
  `Give more than ${wet}; foamed concrete is usually cast at ${say} to ${say2}.`;
export const weighBucketAgain = 'Weigh the bucket again, its own mass taken off, and divide by its volume.';
export const jointRangeRuns = (low: string, high: string): string => `The joint range runs from ${low} to ${high}.`;
export const putThinnerJointFirst = 'Put the thinner joint first, the thicker second.';
export const jointOutsideRange = (joint: string, thinnest: string, thickest: string): string =>
  `The joint of ${joint} lies outside its range ${thinnest} to ${thickest}.`;
export const changeJointOrJoint = 'Change "joint" or "joint-range".';
export const blockToleranceOfEither = (tolerance: string, thickest: string): string =>
  `A block tolerance of ${tolerance} either way uses up the joint range of ${thickest}.`;
export const castToLess = (thickest: string, thinnest: string): string =>
  `Cast to less than ${thickest}, or let "joint-range" reach past ${thinnest}.`;
export const jointTooThick = (joint: string, limit: string): string =>
  `The joint of ${joint} is more than a quarter of the course height or block length (${limit}).`;
export const makeJointsThinner = 'Make joints thinner, or courses higher and blocks longer.';
export const shortestPieceTooLong = (piece: string, half: string): string =>
  `The shortest piece of ${piece} is longer than half a block (${half}).`;
export const giveAtMost = (half: string): string => `Give at most ${half}, or longer blocks.`;
export const leastLapTooLong = (lap: string, half: string): string =>
  `The least lap of ${lap} is longer than half a block (${half}), which no bond can give.`;
