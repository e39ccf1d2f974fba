/** What is wrong with openings, passages and partitions and how to mend it. */

export const headRises = (shape: string, id: string, given: string, needed: string, bound: string): string =>
  `The ${shape} head of "${id}" rises ${given}; it ${needed} (${bound}).`;
export const changeRiseRemove = 'Change the rise, remove it to take its default, or choose another shape.';
export const hasNoRise = 'has no rise';
export const risesHalfItsWidth = 'rises half its width';
export const risesAtMostHalf = 'rises at most half its width';
export const risesAtLeastTwentieth = 'rises at least a twentieth of its width';
export const risesMoreThanHalf = 'rises more than half its width';
export const headRisesTooHigh = (shape: string, id: string, given: string, whole: string): string =>
  `The ${shape} head of "${id}" rises ${given}, more than the whole height of ${whole}.`;
export const giveHeightOrLowerHead = (rise: string): string => `Give a height of at least ${rise}, or a lower head.`;
export const doorHasSill = (id: string, sill: string): string => `The door "${id}" has a sill of ${sill}.`;
export const removeSillOrMake = 'Remove the sill, or make it a window.';
export const sillTooLow = (id: string, given: string, use: string, least: string): string =>
  `The sill of "${id}" lies ${given} above the floor; the sill of a ${use} lies at least ${least} above it.`;
export const raiseSillOrMake = 'Raise the sill, or make it a door.';
export const nicheHasNoDepth = (id: string): string => `The niche "${id}" has no depth.`;
export const addDepth = 'Add "depth".';
export const depthWithoutNiche = (use: string, id: string): string =>
  `The ${use} "${id}" has a depth, but goes through the wall.`;
export const removeDepthOrWrite = 'Remove the depth, or write `use: niche`.';
export const castArchHasNoVoussoirs = (id: string): string =>
  `The arch of "${id}" is cast in one and has no voussoirs.`;
export const writeMadeAsVoussoirs = 'Write `made-as: voussoirs`, or remove their number.';
export const voussoirsMustBeOdd = (id: string, voussoirs: number): string =>
  `The arch of "${id}" has ${voussoirs} voussoirs; only an odd number has a keystone.`;
export const giveOneOf = (voussoirs: number, voussoirs2: number): string => `Give ${voussoirs} or ${voussoirs2}.`;
export const framesLeaveNoOpening = (frame: string, id: string, width: string, height: string): string =>
  `Frames of ${frame} leave no clear opening in "${id}" (${width} by ${height}).`;
export const makeFrameNarrower = 'Make the frame narrower.';
export const nicheTooDeep = (id: string, given: string, leastBack: string, limit: string): string =>
  `The niche "${id}" is ${given} deep; a wall of ${leastBack} must stay behind it, so at most ${limit} is possible.`;
export const makeItShallower = 'Make it shallower, or let its face stand out: `arch: { face: ... }`.';
export const passageFilledByDome = (id: string, domeId: string, otherId: string, distance: string): string =>
  `The passage "${id}" doesn't come out in the room of "${domeId}": "${otherId}" fills it up to ${distance} from its axis.`;
export const setAxesApart = (footRadius: string): string => `Set the two axes ${footRadius} or more apart.`;
export const passageTooNearDome = (gap: string, id: string, where: string, least: string): string =>
  `comes within ${gap} of the dome "${id}" ${where}; at least ${least} must stay between them`;
export const passageRunsIntoDome = (id: string, where: string): string => `runs into the dome "${id}" ${where}`;
export const moveDomeNarrowOrJoin = (id: string, least: string): string =>
  `Move "${id}" ${least} or more away from the passage, make the passage narrower, or join each dome to "${id}" instead.`;
export const passageSentence = (id: string, how: string): string => `The passage "${id}" ${how}.`;
export const passageEndBlocked = (id: string, domeId: string, otherId: string): string =>
  `The passage "${id}" doesn't come out freely in the room of "${domeId}": the dome "${otherId}" stands in front of its end.`;
export const moveDomeAwayFromPassage = (id: string, least: string): string =>
  `Move "${id}" ${least} or more away from the passage, or make the passage narrower.`;
export const partitionTooShort = (id: string, count: string, shortest: string): string =>
  `The partition in "${id}" is ${count} long, less than ${shortest}.`;
export const setItsEndsFurther = 'Set its ends further apart, or remove it.';
export const partitionEndOutsideRoom = (key: string, over: string, id: string, radius: string): string =>
  `The end "${key}" of the partition lies ${over} outside the room of "${id}", whose inside radius is ${radius}.`;
export const moveItTowardsAxis = (over: string, id: string): string =>
  `Move it ${over} or more towards the axis of "${id}".`;
export const partitionEndInsideDome = (key: string, inside: string, id: string, domeId: string): string =>
  `The end "${key}" of the partition lies ${inside} inside the dome "${id}", which stands in the room of "${domeId}".`;
export const moveItAwayFrom = (inside: string, id: string): string => `Move it ${inside} or more away from "${id}".`;
export const roomPlaceOutside = (id: string, domeId: string): string =>
  `The place of the room "${id}" lies outside the finished wall of "${domeId}", or on it.`;
export const roomPlaceInDome = (id: string, earlierId: string, domeId: string): string =>
  `The place of the room "${id}" lies in or at the wall of the dome "${earlierId}", which stands in the room of "${domeId}".`;
export const roomPlaceInPartition = (id: string, mark: string): string =>
  `The place of the room "${id}" lies in the partition ${mark}, or at its face.`;
export const partitionStandsInFront = (what: string, id: string): string =>
  `The partition stands in front of ${what} "${id}".`;
export const moveItAwayOrEndIt = (thickness: string): string =>
  `Move it ${thickness} or more away, or end it beside it.`;
export const theDoor = 'the door';
export const theOpening = (use: string): string => `the ${use}`;
export const thePassage = 'the passage';
export const doorRunsPastPartition = (start: string, end: string, count: string): string =>
  `The door runs from ${start} to ${end} along a partition that is ${count} long.`;
export const giveDoorPlace = (width: string, count: string): string => `Give \`at\` from ${width} to ${count}.`;
export const narrowerDoorOrLonger = 'A narrower door, or a longer partition.';
export const doorIsHigh = (height: string, height2: string): string =>
  `The door is ${height} high in a partition of ${height2}.`;
export const lowerDoorOrHigher = 'A lower door, or a higher partition.';
export const partitionStandsInDoorway = (mark: string, others: string): string =>
  `Partitions in the doorway of ${mark}: ${others} (numbered as they are written, P1 the first).`;
export const moveDoorTo = (most: string | null, least: string | null, others: string): string => {
  const places = [...(most === null ? [] : [`${most} or less`]), ...(least === null ? [] : [`${least} or more`])];
  return `Set \`at\` to ${places.join(', or ')}, or end ${others} beside the door.`;
};
export const narrowerDoorOrEnd = (other: string): string =>
  `No place is left for the door: make it narrower, or end ${other} beside it.`;
