/** Titles, columns and notes of the tables of setting out. */

export const measureLevelWithOne =
  'Measure level, with one tape pulled alike; a check that misses by more than 5 mm or 1/4 in tells of a slip: measure again before digging.';
export const pegs = 'Pegs';
export const peg = 'peg';
export const eastOfOrigin = 'east of the origin';
export const northOfOrigin = 'north of the origin';
export const tapeFromPeg = 'tape from peg A';
export const tapeFromPegB = 'tape from peg B';
export const sideLooking = 'side, looking from A to B';
export const tapesCross = 'tapes cross at';
export const checkTo = 'check to';
export const checkDistance = 'check distance';
export const secondCheck = 'second check to';
export const secondCheckDistance = 'second check distance';
export const eastAndNorth =
  'East and north are of the plan, where north is project north. Drive pegs A and B first and check the distance between them; then each peg where its two tapes meet.';
export const domesMarkLies =
  'A dome’s mark lies on the inside circle of its wall, due project north of its axis: bearings are taped from it.';
export const tapesThatCrossFlatter =
  'Tapes that cross flatter than 30 or wider than 150 degrees place a peg badly along the line between: lean on its checks.';
export const pegsPlacedByProgram =
  'Pegs A and B were placed by the program, clear of the footings; `setting-out.pegs` moves them.';
export const circlesOnGround = 'Circles on the ground';
export const dome = 'dome';
export const circle = 'circle';
export const radiusFromAxis = 'radius from the axis';
export const levelOfWhatItSets = 'level of what it sets';
export const checkRightAcross = 'check: right across';
export const checkChordOfQuarter = 'check: chord of a quarter';
export const levelsAreAboveFinished =
  'Levels are above the finished floor. The trench also goes under barrels and passages: see the plan.';
export const supportSidesOfTrench = 'Support the sides of a trench, and keep its edge free of loads.';
export const bearingsByChord = 'Bearings by chord';
export const placeOnInsideCircle = 'place on the inside circle';
export const bearingFromProjectNorth = 'bearing from project north';
export const wayRoundFromMark = 'way round from the mark';
export const chordFromMark = 'chord from the mark';
export const checkChordFromOpposite = 'check: chord from opposite the mark';
export const leftAndRightFromInside =
  'Left and right are seen from inside looking out. Between the two jambs the tape must read the clear width.';
export const radiusPole = 'Radius pole';
export const sets = 'sets';
export const course = 'course';
export const pivotAboveFloor = 'pivot above the floor';
export const pivotBeyondAxisAway = 'pivot beyond the axis, away from the block';
export const polePivotToIntrados = 'pole, pivot to intrados lower edge';
export const poleRisesFromLevel = 'pole rises from level';
export const edgeAboveSpringing = 'edge above the springing';
export const edgeAboveFloor = 'edge above the floor';
export const ringRadiusAtEdge = 'ring radius at the edge';
export const headPlateRises = 'head plate rises from level';
export const headPlateLengthAlong = 'head plate, length along the bed';
export const upperInnerEdgeAbove = 'upper inner edge above the floor';
export const upperInnerEdge = 'upper inner edge from the axis';
export const checkFootOfAxis = 'check: foot of the axis to the edge';
export const edgeIsLowerInner =
  'The edge is the lower inner edge of the blocks, over their bed joint. The head plate lies in the prolongation of the pole, its upper face on the line through the pivot: the bed of the block rests on it while the ring is open.';
export const checkEachSetting =
  'Check each setting with a tape from the foot of the axis on the finished floor, before the first block of a ring; more than 3 mm or 1/8 in off tells of a slip.';
export const noPoleReachesShell = (id: string): string =>
  `${id}: no pole reaches the shell; the table of the meridian template sets its courses.`;
export const mastEndsAtSpringing = (id: string): string =>
  `${id}: the mast ends at the springing; on it turns an arm that carries the pivot, always on the side away from the block.`;
export const poleTurnsOnAxis = (id: string): string =>
  `${id}: the pole turns on the axis itself; the mast ends at the pivot.`;
export const noTemplateIsNeeded = 'No template is needed: a radius pole reaches every course of this house.';
export const meridianTemplateOrdinates = 'Meridian template, ordinates';
export const setsCourse = 'sets course';
export const heightAboveSpringing = 'height above the springing';
export const ordinateFromAxis = 'ordinate from the axis';
export const alongEdgeFromSpringing = 'along the edge from the springing';
export const bedBattenRises = 'bed batten rises from level';
export const checkStraightFromPoint = 'check: straight from the point before';
export const workingEdgeTouchesIntrados =
  'The working edge touches the intrados. Ordinates are from the axis: take off half the mast where boards are fixed to its face. Points without a course only draw the curve.';
export const hangTemplatePlumb =
  'Hang the template plumb and turn it once round with nothing laid: its edge must pass every jamb alike.';
export const meridianTemplateBoards = 'Meridian template, boards to cut';
export const boardFromSpringingUp = 'board, from the springing up';
export const cutLengthAlongChord = 'cut length along the chord';
export const leastWidthOfBoard = 'least width of the board';
export const curveOverChord = 'curve over the chord at a quarter';
export const curveOverChordAtMiddle = 'curve over the chord at the middle';
export const curveOverChordAtThree = 'curve over the chord at three quarters';
export const lowerEndCut = 'lower end cut, from the chord';
export const upperEndCut = 'upper end cut, from the chord';
export const joinBoardsWithSecond =
  'Join the boards with a second layer whose joints are staggered. Bend a strip through the three marks and both ends to draw the curve; then check the ordinates.';
