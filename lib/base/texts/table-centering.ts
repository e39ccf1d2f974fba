/** Titles, columns and notes of the tables of centering. */

export const easeCenteringDown =
  'Ease the centering down on wedges a little at a time, never by knocking a rib out; nobody stands under it.';
export const centeringRibs = 'Centering: ribs';
export const openingOrPassage = 'opening or passage';
export const head = 'head';
export const clearWidth = 'clear width';
export const springingAboveFloor = 'springing above the floor';
export const ribs = 'ribs';
export const ribSpacingMiddle = 'rib spacing, middle to middle';
export const ribWidthAtSpringing = 'rib, width at the springing';
export const ribCrownOverSpringing = 'rib, crown over the springing';
export const arcsOfRib = 'arcs of a rib';
export const radiusOfCurvedEdge = 'radius of the curved edge';
export const checkChordOfArc = 'check: chord of an arc';
export const checkRiseOver = 'check: rise over that chord';
export const ribsAreSmaller = (lagging: string, unit: string): string =>
  `Ribs are smaller than the opening by the lagging of ${lagging} ${unit}. Under a flat head the lagging lies on level bearers, whose top is that much under the head. A pointed rib has two arcs that meet at its apex.`;
export const sizesSuitShapeStrength =
  'Sizes suit the shape; the strength of ribs, wedges and props under the wet arch must be proven by who builds them.';
export const centeringRibsOfBent = 'Centering: ribs of bent tube';
export const tubesToBend = 'tubes to bend';
export const cutLength = 'cut length';
export const bendRadiusAtCentre = 'bend radius at the centre line';
export const bendAngle = 'bend angle';
export const checkChordOfCentre = 'check: chord of the centre line';
export const checkRiseOfCentre = 'check: rise of the centre line';
export const forTubeOfOutside = (tube: string, unit: string): string =>
  `For tube of ${tube} ${unit} outside, under the lagging. Add what the bender needs to hold at both ends, bend, check chord and rise, then cut. Flat heads have no tube.`;
export const thinTubeBucklesWhere =
  'Thin tube buckles where it is bent too sharply: make one and load it before the others.';
export const centeringLaggingStrips = 'Centering: lagging strips';
export const stripFromCrownDown = 'strip, from the crown down';
export const pieces = 'pieces';
export const widthOnSoffit = 'width on the soffit';
export const itsMiddleFromMiddle = 'its middle from the middle of the opening';
export const itsMiddleAboveFloor = 'its middle above the floor';
export const stripsRunAlongSoffit =
  'Strips run along the soffit, one left and one right where there are two pieces, and end at the intrados inside: cut that end to the curve of the wall, or let it stand into the room.';
export const stripsCoverSoffit =
  'Side by side they cover the soffit from springing to springing: plane edges so that they close against each other, and seal what gapes before mix is cast on them.';
export const centeringFormsAndTheir = 'Centering: forms and their reuse';
export const orderOfCasting = 'order of casting';
export const formHeadWidthRise = 'form: head, width × rise';
export const formsOfThisKind = 'forms of this kind to make';
export const soffitLongestWayThrough = 'soffit, longest way through';
export const castOrLaid = 'cast or laid from day';
export const ringClosedOnDay = 'ring closed on day';
export const struckOnDay = 'struck on day';
export const archesOfOneKind =
  'Arches of one kind share ribs; the lagging is cut for each, or made for the deepest. A form is free on the day after it was struck.';
export const noFewerFormsClose = 'No fewer forms close the crown as early: proven by search.';
export const fewerFormsMayDo = 'Fewer forms may do: the search was cut short.';
