import * as texts from '../base/texts/model-scene.js';
import type { ColourEntry, Colouring } from '../documents/model-page.js';
import { alongScale, colouringOf, DISTINCT, manyLooks, STUFF } from './page-colours.js';
import { type BuiltHouse, stuffOf } from './page-scene.js';

type Rgb = ColourEntry['colour'];

/** The colourings of a house's pieces: as the stuff looks, by part, by course, by mould. */
export function colouringsOf({ setout, blocks, mouldOf }: BuiltHouse, cast: readonly string[]): Colouring[] {
  const kinds = ['block', ...new Set(cast.map(stuffOf))];
  const kindWords: Readonly<Record<string, string>> = {
    block: texts.blocks,
    arch: texts.arches,
    passage: texts.passages,
    crown: texts.crownPieces,
    skewback: texts.skewbacks,
    ground: texts.footingAndSlab,
  };
  const word = (kind: string) => kindWords[kind] ?? kind;
  const ofParts = [...blocks.map(() => word('block')), ...cast.map((name) => word(stuffOf(name)))];
  const beside = cast.map(() => null);
  const mouldNames = blocks.map((b) => mouldOf(b) ?? texts.noMouldFits);
  const moulds = [...new Set(mouldNames)];
  const most = Math.max(...setout.domes.map((d) => d.courses.length));
  const courses = Array.from({ length: most }, (_, i) => texts.courseNumber(i + 1));
  const partColours = kinds.map((kind, i) => ({
    colour: (kind === 'block' ? STUFF.block : DISTINCT[i % DISTINCT.length]) as Rgb,
  }));
  return [
    colouringOf(
      'as built',
      kinds.map(word),
      kinds.map((kind) => ({ colour: STUFF[kind] as Rgb })),
      ofParts,
    ),
    colouringOf('part', kinds.map(word), partColours, ofParts),
    colouringOf(
      'course',
      courses,
      courses.map((_, i) => ({ colour: alongScale(most > 1 ? i / (most - 1) : 0.5) })),
      [...blocks.map((b) => texts.courseNumber(b.course)), ...beside],
    ),
    colouringOf('mould', moulds, manyLooks(moulds.length), [...mouldNames, ...beside]),
  ];
}
