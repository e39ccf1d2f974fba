/** Wording of the checks of shells, arches' thrust and ties. */

export const shellTheorySource =
  'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, ch. 14 (from memory)';
export const compressionInWall = (id: string): string =>
  `Compression in the wall of dome ${id} stays within its strength.`;
export const greatestCompression = 'greatest compression';
export const membraneForceOverThickness = (combinations: string): string =>
  `membrane force over thickness, or thrust over twice its distance from the nearer face; ${combinations}`;
export const designStrengthOfMasonry = 'design strength of the masonry';
export const masonryStrengthFormula = '0.55 fb^0.7 fm^0.3 / partial factor';
export const masonryStrengthSource =
  'EN 1996-1-1:2005, 3.6.1.2 and Table 3.3 for autoclaved aerated units, by analogy (from memory)';
export const strengthIsTableValue =
  'The strength is a table value: give `material.compressive-strength` from test cubes.';
export const strongerBlocksOrMortar = 'Stronger blocks or mortar, or a thicker wall.';
export const ringsOfDomeBelow = (id: string, hoopTurnZ: string): string =>
  `Rings of dome ${id} below ${hoopTurnZ} are in tension as long as it isn't cracked.`;
export const hoopTensionUnderDead = 'hoop tension under dead load, all rings together';
export const sumOfMembraneHoop = 'sum of the membrane hoop forces along the meridian where they pull';
export const masonryCountsAsWithout =
  'Masonry counts as without tension: it cracks into lunes there, and the thrust of the lunes is what must be held.';
/** Changes of a dome that help, as one may choose among them. */
export const anyOf = (help: { readonly stemWall: boolean; readonly rise: boolean; readonly tie: boolean }): string => {
  const ways = ['a thicker wall'];
  if (help.stemWall) ways.push('a lower stem wall');
  if (help.rise) ways.push('a higher rise');
  if (help.tie) ways.push('a closed ring tie (`tie`) at the springing or over the openings');
  return ways.length < 2 ? ways.join('') : `${ways.slice(0, -1).join(', ')} or ${ways[ways.length - 1]}`;
};
export const withItsTie = ' with its tie';
export const itsTieLeftOut = ', its tie left out because it is no closed hoop,';
export const withoutTie = ' without a tie';
export const noThrustFits = 'No thrust fits into this wall, however thick. ';
export const noThrustFitsAsItIs = 'No thrust fits into it as it is: nothing shows that it stands. ';
export const estimateSinceOpenings =
  'An estimate, since openings or other domes cut its rings: an engineer must confirm it. ';
export const domeKeepsItsThrust = (id: string, held: string): string =>
  `Dome ${id}${held} keeps its thrust well inside shell, stem wall and footing.`;
export const toRaiseIt = (goodShape: string): string => `To raise it: ${goodShape}.`;
export const noneFits = 'none fits';
export const notLimitedOrNone = 'not limited, or none fits';
export const noBedJoint = (id: string): string => `No bed joint of dome ${id} slides under the thrust.`;
export const derivedThrustProgramme = 'derived; thrust programme with |shear| <= friction times compression';
export const closedRingTieTakes = 'A closed ring tie takes the thrust off the lower joints; or a steeper springing.';
export const notEvenJoints = (held: string): string => `Not even joints as rough as 1 hold it. ${held}`;
export const frictionNeeded = 'friction needed';
export const leastGreatestShearOver = 'least greatest shear over compression of all thrusts that fit';
export const frictionCounted = 'friction counted on';
export const asGiven = 'as given';
export const frictionSource = 'the description; 0.4 in EN 1996-1-1:2005, 3.6.2 (from memory)';
export const derived = 'derived';
export const equivalentHorizontalLoadCommon = 'equivalent horizontal load, common practice';
export const driftSource = 'EN 1991-1-3:2003, 5.3.5 case (ii), written for cylinders (from memory)';
export const windSource = 'EN 1991-1-4:2005, 7.2.8 (from memory)';
export const driftSourceAsce = 'ASCE 7-16, 7.6.4 and Figure 7.4-2: downwind sector alone (from memory)';
export const windSourceAsce = 'ASCE 7-16, Figure 27.3-2, case A (from memory)';
export const domeStandsUnder = (id: string, load: string): string =>
  `Dome ${id} stands under ${load} from one side, as an opposite pair of lunes.`;
export const toRaiseSentence = (goodShape: string): string => ` To raise it: ${goodShape}.`;
export const estimateThatLeavesOut = (hasLoad: boolean, factor: string): string =>
  `An estimate that leaves out what the rings carry: an engineer must confirm it.${hasLoad ? ' Case B of the figure is left out: an engineer must look at it too.' : ''}${factor}`;
export const deadLoadAnd = (load: string): string => `dead load and ${load}`;
/** Within what one line of thrust keeps, as far as it is known. */
const limitsOfLine = (strength: boolean, tied: boolean): string => {
  const limits = ['the wall', ...(strength ? ['its strength'] : []), 'the friction of its joints'];
  if (tied) limits.push('the strength of its tie');
  return `${limits.slice(0, -1).join(', ')} and ${limits[limits.length - 1]}`;
};
export const oneLineKeepsWithin = (id: string, load: string, strength: boolean, tied: boolean): string =>
  `One line of thrust of dome ${id} keeps within ${limitsOfLine(strength, tied)} under ${load} from one side in each combination with load factors.`;
export const oneLineSource = (safeTheorem: string): string =>
  `${safeTheorem}; lower bound theorem of plasticity; EN 1996-1-1:2005, 6.1.2 and 6.2 (from memory)`;
export const partAsked = 'part of the load from one side that must be borne';
export const partAskedFormula = 'a constant: all of it, with its load factor';
export const partBorne = 'part of the load from one side that is borne';
export const partBorneFormula =
  'greatest part of it, with its load factor, under which one line of thrust keeps within all these limits at once: no pull across joints, stress up to the design strength, shear up to friction times compression, pull of the tie up to its design strength; two closed rings press where that helps; the least of all combinations';
export const heldBy = { wall: 'the wall and its strength', friction: 'friction', tie: 'the tie' } as const;
export const strengthNotKnown =
  ' The strength of the blocks is not known and left out: give `material.compressive-strength`.';
export const onOneLine = (hasLoad: boolean, more: string): string =>
  `An estimate on an opposite pair of lunes and, where they are closed, two of the rings, openings left out: an engineer must confirm it. Where the line comes near a face a hinge forms there.${hasLoad ? ' Case B of the figure is left out: an engineer must look at it too.' : ''}${more}`;
export const toBearMore = (none: boolean, shape: string, tie: boolean): string =>
  `${none ? ' No line keeps within all that under any part of it.' : ''} To bear more: ${shape}${tie ? ', or more steel in the tie' : ''}; where the strength holds it, stronger blocks as well.`;
export const uprightPartLeftOut = ' An upright part of the earthquake is left out: `site.seismic-vertical` gives it.';
export const soilBearsOneSided = (id: string): string =>
  `The soil bears the footing of dome ${id} under loads from one side.`;
export const pressureOfLine =
  'load at the foot / (width − 2 eccentricity), on the line of thrust that keeps farthest from the faces; without load factors; the greatest of all loads';
export const bearingCapacity = 'bearing capacity';
export const pressureOneSided = 'greatest pressure on the soil';
export const estimateOnWholeLunes =
  'An estimate on whole lunes, beside piers that the openings leave: an engineer must confirm it.';
export const noThrustUnder = (formula: string): string =>
  ` No thrust fits under ${formula}, so nothing tells it there: see the checks of the loads from one side.`;
export const noLineUnder = (formula: string, others: number): string => {
  const more = others === 0 ? '' : ` and ${others} other ${others === 1 ? 'combination' : 'combinations'}`;
  return ` No line of thrust keeps within the other limits under ${formula}${more}, however strong the tie: see the checks of the loads from one side.`;
};
export const widerFooting = 'A wider footing.';
export const shellTheoryHolds = (id: string, cutZ: string): string =>
  `Shell theory holds for dome ${id} only above ${cutZ}, where all rings are closed.`;
export const commonPracticeNoSource = 'common practice, no source';
export const andIntoDomes = (abuts: string): string => ` and into ${abuts}`;
export const belowEngineerMustFollow = (inShell: boolean, count: string): string =>
  `Below, an engineer must follow the forces round ${inShell ? 'the openings in the shell' : 'the openings in the stem wall'}${count}: arch rings, piers, and the steel that closes the rings.`;
export const tieOfDome = (id: string): string => `The tie of dome ${id} is a closed hoop that takes its thrust.`;
export const noBedOfShell =
  'No bed of the shell above the openings is left for it: lower the openings, or lay it in the footing (`tie.level: footing`).';
export const itWouldRunThrough = (crosses: string): string =>
  `It would run through ${crosses}: lay it above them (\`tie.level: above openings\`) or in the footing.`;
export const steelAreaNeeded = 'steel area needed';
export const tieFormula = (combinations: string): string =>
  `pull / (yield strength / 1.15); pull the greater of the least thrust of lunes and the membrane's thrust, times the radius; ${combinations}`;
export const tieSource = (safeTheorem: string, combinations: string): string =>
  `${safeTheorem}; EN 1992-1-1:2004, 2.4.2.4 (from memory); ${combinations}`;
export const domeHasRingTie = (id: string): string => `Dome ${id} has a ring tie, or does without.`;
export const missingInputTieClosed =
  'Missing input: `tie`, a closed hoop of steel; or write `tie: none` if piers and footing alone take the thrust.';
export const somethingTakesThrust = (id: string): string =>
  `Footing, piers or buttresses take the thrust of dome ${id}, which has no tie.`;
export const leastThrustAtFoot = 'least thrust at the foot';
export const footThrustFormula = 'least thrust over the radius of the middle of footing or wall, without load factors';
export const buttressesTakeIt =
  'An engineer must show what holds it: the ground before the footing, or buttresses, each the thrust of the length of wall between their middles. Or a closed ring tie (`tie`), which takes it all.';
export const steelArea = 'steel area';
export const noThrustFitsIntoWall =
  'No thrust fits into the wall above it, so nothing tells its pull: change the wall first.';
export const tieHoldsOneSided = (id: string): string =>
  `The tie of dome ${id} holds what loads from one side ask of it.`;
export const tieStrength = 'pull of the steel at its design strength';
export const tieStrengthFormula = 'bars π d² / 4 · yield strength / 1.15';
export const steelSource = 'EN 1992-1-1:2004, 2.4.2.4 (from memory)';
export const pullOneSided = 'pull under loads from one side';
const pullOfPair =
  'the greater of two, times the radius, of one line of thrust that keeps within wall, strength and friction: above the tie alone, the least thrust there of the half that pushes more; down to the foot, the least pull with which it fits; the greatest of all combinations with load factors';
export const pullOneSidedFormula = pullOfPair;
export const pullOneSidedArea = `pull / (yield strength / 1.15); pull ${pullOfPair}`;
export const pullIsEstimate =
  'An estimate on whole lunes; with the tie over openings, what is left of the wall below must bear the load’s own push: an engineer must confirm it.';
const barsOf = (bars: number, diameter: string): string => `${bars} ${bars === 1 ? 'bar' : 'bars'} of ${diameter}`;
export const takeAtLeastBars = (bars: number, diameter: string): string => `Take at least ${barsOf(bars, diameter)}.`;
export const barsOfTieLap = (id: string): string => `The bars of the tie of dome ${id} lap far enough.`;
export const lapSource = 'EN 1992-1-1:2004, 8.4 and 8.7 (from memory)';
export const missingInput = (lacks: string): string => `Missing input: ${lacks}.`;
export const lapNeeded = 'lap needed';
export const lapFormula = '1.5 (d / 4) (yield strength / 1.15) / bond strength, at least 15 d and 200 mm';
export const lap = 'lap';
export const description = 'the description';
export const lapFurtherTakeThinner = 'Lap further, take thinner bars, or weld or couple them.';
export const missingInputNamed = (input: string): string => `Missing input: \`${input}\`.`;
export const noThrustFitsSoNothing =
  'No thrust fits into the wall, so nothing tells where the load stands: change the wall first.';
export const safeTheoremSource =
  'Heyman, The stone skeleton, International Journal of Solids and Structures 2, 1966 (from memory)';
export const factorFormula =
  'thickness over the thickness that a thrust in equilibrium with the loads needs to fit; loads without load factors';
export const geometricFactorAsked = 'geometric factor asked for';
export const soundFactorFormula = 'a constant: the thrust stays in the middle half';
export const soundFactorSource = 'Heyman, The Stone Skeleton, 1995 (from memory)';
export const geometricFactor = 'geometric factor';
