/** Wording of the checks of loads, footing, heads and piers. */

export const resultantInMiddle = 'resultant in the middle of the width that counts, after Meyerhof 1953 (from memory)';
export const soilBearsFooting = (id: string): string => `The soil bears the footing of dome ${id}.`;
export const pressureOnSoil = 'pressure on the soil';
export const soilPressureFormula =
  'line load, dead and snow, gathered by piers, over the width less twice the eccentricity';
export const soilBearsJambs = (id: string, beside: string): string =>
  `The soil bears the footing of dome ${id} under the jambs beside ${beside}.`;
export const pressureUnderJamb = 'pressure on the soil under the jamb';
export const jambFormula =
  'line load, dead and snow, times (1 + half of the openings beside it / length that bears it), over the width less twice the eccentricity; the length is the ring’s width spread at 45° to both sides through footing and wall under it';
export const jambSource = (bearing: string): string => `common practice, no source; ${bearing}`;
export const bearingCapacity = 'bearing capacity';
export const makeFootingWidth = (needed: string): string =>
  `Make \`footing.width\` at least ${needed}, or have the soil investigated.`;
export const noSensibleFootingWidth = (most: string): string =>
  `No sensible width of the footing does, since it would be over ${most}: have the soil investigated; an engineer may found the house on a slab or on better ground further down.`;
export const noFootingWidth =
  'No wider footing helps, since its own weight takes up what the soil bears: have the soil investigated, or make `footing.depth` less where frost allows.';
export const footingDoesNotSlide = (id: string): string => `The footing of dome ${id} doesn't slide outward.`;
export const staticsClosedRingFooting = 'statics; a closed ring footing holds part of it, which is left out';
export const frictionNeeded = 'friction needed';
export const slidingFormula = 'least thrust / load, dead and snow';
export const frictionOnSoil = 'friction on the soil';
export const closedRingTie = 'A closed ring tie in the footing (`tie`) takes the thrust.';
export const plainFootingSource = 'EN 1992-1-1:2004, 12.9.3 (from memory)';
export const footingIsDeepEnough =
  'The footing is deep enough to carry its projection beyond walls and jambs without steel.';
export const depthNeeded = 'depth needed';
export const twiceProjection = 'twice the projection';
export const depth = 'depth';
export const deepenItNarrow = 'Deepen it, narrow it, or have an engineer reinforce it across.';
export const footingIsReinforced = 'The footing is reinforced to span under openings.';
export const steelAreaAtTop = 'steel area at top and bottom each';
export const reinforcedFootingSource = (combinations: string): string =>
  `EN 1992-1-1:2004 (from memory); ${combinations}`;
export const staticsOfBeam = 'statics of a beam on two supports';
export const leastReinforcementOfCode =
  'Least reinforcement of the code governs small footings: an engineer must give bars, links and laps.';
export const dryDensityLiesBetween = (least: number, most: number): string =>
  `The dry density lies between ${least} and ${most} kg/m3, where these formulas hold.`;
export const densityRangeSource = 'BCA 46.042, 1994; ACI 523.3R (both from memory)';
export const changeMaterialDryDensity = 'Change `material.dry-density`: the figures below mean nothing.';
export const strengthOfBlocks = 'The strength of the blocks is known from test cubes.';
export const untilThenValue = 'Until then a value from a table by density stands in its place.';
export const commonPracticeNoSource = 'common practice, no source';
export const missingInputMaterialCompressive = (table: string): string =>
  `Missing input: \`material.compressive-strength\`, the mean of your own test cubes. ${table}`;
export const description = 'the description';
export const giveMaterialCompressiveStrength =
  'Give `material.compressive-strength` as the mean of your own test cubes: more than 0.';
export const weightsThatThrustCarries =
  'The weights that the thrust carries add up to the masonry’s volume, integrated otherwise.';
export const relativeDifference = 'relative difference';
export const weightBalanceFormula = '|lunes / level slices − 1|';
export const greatestDifference = 'greatest difference';
export const constantOfThisProgram = 'a constant of this program';
export const accuracyOfBothQuadratures = 'accuracy of both quadratures';
export const derived = 'derived';
export const nothingToChange = 'Nothing to change in the description: report this as a fault of the program.';
export const checkedUnderSnow = 'The domes are checked under snow.';
export const checkedUnderWind = 'The domes are checked under wind.';
export const missingInputSiteWind = (unknown: string): string =>
  `Missing input: \`site.wind-coefficients\`, read by an engineer from the standard's figure, for ${unknown}: the one set known here is that of a hemisphere on the ground.`;
export const checkedUnderEarthquake = 'The domes are checked under earthquake.';
export const blocksHaveShrunkBefore = 'Blocks have shrunk before they are laid.';
export const shorteningOfRing = (id: string): string => `shortening of the ring of dome ${id} by drying`;
export const dryingShrinkageTimesCircumference = 'drying shrinkage times the circumference at mid-thickness';
export const joint = 'joint';
export const layNoBlockBefore =
  'Lay no block before it is dry: what still shrinks in the wall opens as cracks through rings and over openings.';
export const archRingOfKeeps = (kind: string, id: string): string =>
  `The arch ring of ${kind} ${id} keeps its thrust inside under the wall and dome above it.`;
export const thickerRingOrHigher = 'A thicker ring, or a higher rise of the head.';
export const noneFits = 'none fits';
export const notLimitedOrNone = 'not limited, or none fits';
export const allThatComesDown = (more: string): string =>
  `all that comes down the wall over its whole width, dead and snow${more === 'niche' ? ', on the depth of the niche alone' : ''}`;
export const betweenItsDomesVault = (id: string): string =>
  `Between its domes the vault of passage ${id} stands on its own walls.`;
export const estimateThatLeavesOut =
  'An estimate that leaves out the domes at both ends, which hold short walls: an engineer must confirm it. Thicker walls (`ring`) or a steeper head raise it.';
export const flatHead = (kind: string, id: string): string => `The flat head of ${kind} ${id} is a reinforced lintel.`;
export const bendingMoment = 'bending moment';
export const statics = 'statics';
export const steelArea = 'steel area in its lower face';
export const castItOfReinforced =
  'Cast it of reinforced concrete, not of block mix; an engineer must design bars, links and bearings.';
export const besideOne = (one: string): string => `beside ${one}`;
export const betweenAnd = (one: string, next: string): string => `between ${one} and ${next}`;
export const aboveFloor = (where: string, height: string): string => `${where}, ${height} above the floor`;
export const piersBear = (id: string): string => `The piers of dome ${id} bear what they gather.`;
export const piersBearWorst = (id: string, worst: string): string =>
  `The piers of dome ${id} bear what they gather; the worst stands ${worst}.`;
export const pierFormula = (combinations: string): string =>
  `load of its own width and half of each void beside it, over its width and twice the thrust's distance from the nearer face; ${combinations}`;
export const compression = 'compression';
export const designStrengthOfMasonry = 'design strength of the masonry';
export const masonryStrengthFormula = '0.55 fb^0.7 fm^0.3 / partial factor';
export const masonryStrengthSource = 'EN 1996-1-1:2005, 3.6.1.2 and Table 3.3, by analogy (from memory)';
export const staticsLoadFollowsMeridians =
  'statics; the load follows the meridians down to the openings and then the piers';
export const strengthIsTableValue =
  'The strength is a table value: give `material.compressive-strength` from test cubes.';
export const widerPiersStrongerBlocks =
  'Wider piers, stronger blocks, or a tie that brings the thrust to the middle of the wall.';
export const archesDoNotPushOver = (id: string, otherId: string, pier: string): string =>
  `The arches of dome ${id} don't push over the piers beside them; the worst is ${otherId} on the pier ${pier}.`;
export const widerPierHigherRise = 'A wider pier, a higher rise of the head, or a tie at its springing.';
export const staticsOfBlock = 'statics of a block on its edge';
export const pierTiltFormula = 'half width / (thrust · height / load)';
