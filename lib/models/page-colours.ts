import * as texts from '../base/texts/model-scene.js';
import type { ColourEntry, Colouring } from '../documents/model-page.js';

type Rgb = ColourEntry['colour'];
type Look = Omit<ColourEntry, 'label'>;

/**
 * Colours that people with any one kind of cone missing tell apart: they differ in lightness or from blue to yellow.
 * Okabe and Ito, Color Universal Design (2008), without black; values from memory.
 */
export const DISTINCT: readonly Rgb[] = [
  [230, 159, 0],
  [86, 180, 233],
  [0, 158, 115],
  [240, 228, 66],
  [0, 114, 178],
  [213, 94, 0],
  [204, 121, 167],
];

/** Of the stuff itself: what the model shows at first; apart as told by people with any one kind of cone missing. */
export const STUFF: Readonly<Record<string, Rgb>> = {
  block: [222, 206, 178],
  arch: [178, 112, 82],
  passage: [130, 70, 78],
  crown: [104, 134, 170],
  skewback: [80, 84, 112],
  ground: [150, 148, 140],
};

/** Ends of the scale along which courses are coloured; lightness alone tells them apart. */
const LOW: Rgb = [22, 52, 96];
const MIDDLE: Rgb = [120, 150, 150];
const HIGH: Rgb = [252, 234, 168];

/** A colour between the scale's ends, `share` from 0 to 1. */
export function alongScale(share: number): Rgb {
  const [from, to, part] = share < 0.5 ? [LOW, MIDDLE, 2 * share] : [MIDDLE, HIGH, 2 * share - 1];
  return mixed(from, to, part);
}

const mixed = (a: Rgb, b: Rgb, part: number): Rgb => {
  const one = (i: 0 | 1 | 2) => Math.round(a[i] + (b[i] - a[i]) * part);
  return [one(0), one(1), one(2)];
};

/**
 * Found by a search over the colours of a screen for the widest least CIEDE2000 difference, as seen with all cones and
 * with any one kind missing, from each other and from the grey beside them.
 */
const MANY: readonly Rgb[] = [
  [34, 136, 119],
  [153, 0, 0],
  [0, 0, 238],
  [255, 153, 0],
  [204, 119, 255],
  [102, 102, 0],
  [170, 255, 170],
  [119, 34, 102],
  [68, 85, 68],
  [119, 85, 187],
  [255, 187, 255],
  [136, 136, 85],
];

/** Looks for a row of any length, each another: colours, then the same with lines across. */
export const manyLooks = (count: number): Look[] =>
  Array.from({ length: count }, (_, k) => ({
    colour: MANY[k % MANY.length] as Rgb,
    hatch: Math.floor(k / MANY.length),
  }));

/** What is no block, where blocks are told apart. */
const BESIDE: ColourEntry = { label: texts.castPartsAndGround, colour: [190, 190, 188] };

/** A colouring of what has a label; the others are grey beside it. */
export function colouringOf(
  name: string,
  labels: readonly string[],
  looks: readonly Look[],
  of: readonly (string | null)[],
): Colouring {
  const entries = labels.map((label, i): ColourEntry => ({ label, ...(looks[i] as Look) }));
  const indexOf = new Map(labels.map((label, i) => [label, i]));
  return {
    name,
    entries: of.includes(null) ? [...entries, BESIDE] : entries,
    of: of.map((label) => (label === null ? entries.length : (indexOf.get(label) as number))),
  };
}
