import * as texts from '../base/texts/model-scene.js';
import type { Colouring } from '../documents/model-page.js';
import { alongScale, colouringOf, DISTINCT, manyColours, STUFF } from './page-colours.js';
import { type BuiltHouse, stuffOf } from './page-scene.js';

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
  const partColours = kinds.map((kind, i) =>
    kind === 'block'
      ? (STUFF.block as [number, number, number])
      : (DISTINCT[i % DISTINCT.length] as [number, number, number]),
  );
  return [
    colouringOf(
      'as built',
      kinds.map(word),
      kinds.map((kind) => STUFF[kind] as [number, number, number]),
      ofParts,
    ),
    colouringOf('part', kinds.map(word), partColours, ofParts),
    colouringOf(
      'course',
      courses,
      courses.map((_, i) => alongScale(most > 1 ? i / (most - 1) : 0.5)),
      [...blocks.map((b) => texts.courseNumber(b.course)), ...beside],
    ),
    colouringOf('mould', moulds, manyColours(moulds.length), [...mouldNames, ...beside]),
  ];
}
