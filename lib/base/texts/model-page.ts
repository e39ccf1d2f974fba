/** Wording that the page of the model has round its picture. */

export const needsScript = 'This page needs JavaScript, which is switched off here; it fetches nothing.';
export const theModel = 'The model. Arrow keys turn it, plus and minus zoom, Enter chooses the block in the middle.';
export const pointedAt = 'Pointed at';
export const courseByCourse = 'Course by course';
export const oneStepLess = 'one step less';
export const oneStepMore = 'one step more';
export const stepsShown = 'Steps of building shown';
export const drawnApart = 'Drawn apart';
export const howFarApart = 'How far drawn apart, percent';
export const cut = 'Cut';
export const kindOfCut = 'Kind of cut';
export const whole = 'whole';
export const level = 'level';
export const upright = 'upright';
export const place = 'place';
export const showOtherSide = 'show the other side';
export const bearing = 'bearing';
export const findMark = 'Find a mark';
export const mark = 'Mark';
export const find = 'find';
export const colours = 'Colours';
export const colouredBy = 'Coloured by';
export const coloursPressOne = 'Colours; press one to show it alone';
export const openings = 'Openings';
export const lookFrom = 'Look from';
export const north = 'north';
export const east = 'east';
export const south = 'south';
export const west = 'west';
export const above = 'above';
export const asAtFirst = 'as at first';
export const namesOfRooms = 'names of rooms';
export const openingsAndPassages = 'Openings and passages';
export const name = 'name';
export const cautions = 'Cautions';
export const keysAndFingers = 'Keys and fingers';

/** Each key, and what it does; in brackets what fingers or the mouse do for the same. */
export const KEYS: readonly (readonly [key: string, does: string])[] = [
  ['arrows', 'turn (one finger, or drag)'],
  ['shift and arrows', 'shift (two fingers, or drag with the right button)'],
  ['+ and −', 'nearer, farther (two fingers, or the wheel)'],
  ['Enter', 'choose what is in the middle (tap, or click)'],
  [', and .', 'the block before, the block after'],
  ['Page Up, Page Down', 'a step of building more, less'],
  ['Home', 'the first view'],
  ['Escape', 'choose nothing'],
];
