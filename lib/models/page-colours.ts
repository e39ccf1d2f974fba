import * as texts from '../base/texts/model-scene.js';
import type { ColourEntry, Colouring } from '../documents/model-page.js';

type Rgb = ColourEntry['colour'];

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

/** Of the stuff itself: what the model shows at first. */
export const STUFF: Readonly<Record<string, Rgb>> = {
  block: [222, 206, 178],
  arch: [178, 112, 82],
  passage: [156, 98, 92],
  crown: [110, 124, 142],
  skewback: [136, 140, 152],
  ground: [150, 148, 144],
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

/** Colours for a row of any length: the distinct ones, then paler and darker forms of them. */
export function manyColours(count: number): Rgb[] {
  const forms: ((c: Rgb) => Rgb)[] = [
    (c) => c,
    (c) => mixed(c, [255, 255, 255], 0.55),
    (c) => mixed(c, [0, 0, 0], 0.45),
    (c) => mixed(c, [255, 255, 255], 0.78),
  ];
  return Array.from({ length: count }, (_, k) => {
    const form = forms[Math.floor(k / DISTINCT.length) % forms.length] as (c: Rgb) => Rgb;
    return form(DISTINCT[k % DISTINCT.length] as Rgb);
  });
}

/** What is no block, where blocks are told apart. */
const BESIDE: ColourEntry = { label: texts.castPartsAndGround, colour: [190, 190, 188] };

/** A colouring of what has a label; the others are grey beside it. */
export function colouringOf(
  name: string,
  labels: readonly string[],
  colours: readonly Rgb[],
  of: readonly (string | null)[],
): Colouring {
  const entries = labels.map((label, i) => ({ label, colour: colours[i] as Rgb }));
  const indexOf = new Map(labels.map((label, i) => [label, i]));
  return {
    name,
    entries: of.includes(null) ? [...entries, BESIDE] : entries,
    of: of.map((label) => (label === null ? entries.length : (indexOf.get(label) as number))),
  };
}
