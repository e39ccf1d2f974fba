import { COMMON, type Command, type CommonArguments, FILE, SET } from '../command.js';
import { EXIT, fileTrouble, UsageError } from '../exit.js';
import { writeWhole } from '../folder/whole.js';
import { readInput } from '../input.js';
import { PICTURE_COLOURS, parseQuantity, picturing, reading } from '../library.js';
import { printJson } from '../print/json.js';
import { didYouMean } from '../suggest.js';
import * as texts from '../texts/look.js';
import { tools } from '../tools.js';

interface Arguments extends CommonArguments {
  file: string;
  output: string;
  from: string;
  above: string;
  width: string;
  height: string;
  colours: string;
  cut: string | undefined;
  level: string | undefined;
  set: string[] | undefined;
}

const DEG = Math.PI / 180;
const MOST_PIXELS = 8000;

/** A number in a range, as written after an option. */
function numberIn(name: string, written: string, [low, high]: readonly [number, number], whole = false): number {
  const value = written.trim() === '' ? Number.NaN : Number(written);
  if (value >= low && value <= high && (!whole || Number.isInteger(value))) return value;
  const kind = whole ? texts.wholeNumber : texts.aNumber;
  throw new UsageError(texts.optionCannotBe(name, JSON.stringify(written)), texts.giveFrom(kind, low, high));
}

export const picture: Command<Arguments> = {
  examples: [
    ['picture house.yaml -o house.png', texts.fromSouthWestLittle],
    ['picture house.yaml -o rooms.png --level 1.2 --above 60', texts.intoRooms],
    ['picture house.yaml -o blocks.png --colours mould --cut 90', texts.halfOfItColour],
  ],
  names: FILE,
  options: {
    output: {
      alias: 'o',
      type: 'string',
      demandOption: true,
      requiresArg: true,
      describe: texts.pictureNameThatEnds,
    },
    from: { type: 'string', default: '215', requiresArg: true, describe: texts.bearingOfViewerDegrees },
    above: { type: 'string', default: '28', requiresArg: true, describe: texts.howFarAboveLevel },
    width: { type: 'string', default: '1400', requiresArg: true, describe: texts.pixelsAcross },
    height: { type: 'string', default: '1000', requiresArg: true, describe: texts.pixelsDown },
    colours: {
      type: 'string',
      default: PICTURE_COLOURS[0],
      requiresArg: true,
      describe: texts.whatColoursTell(PICTURE_COLOURS.join(', ')),
    },
    cut: {
      type: 'string',
      requiresArg: true,
      describe: texts.takeAwayHalf,
    },
    level: { type: 'string', requiresArg: true, describe: texts.takeAwayAllAbove },
    ...SET,
    ...COMMON,
  },
  run: async (given, terminal) => {
    const { file, output, colours, cut, level, json, set = [] } = given;
    if (!/\.png$/i.test(output))
      throw new UsageError(texts.pictureIsPng(JSON.stringify(output)), texts.giveNameThatEnds);
    if (cut !== undefined && level !== undefined) throw new UsageError(texts.cutAndLevel, texts.pictureHasOneCut);
    const told = PICTURE_COLOURS.find((name) => name === colours);
    if (told === undefined)
      throw new UsageError(
        texts.coloursKnowNot(JSON.stringify(colours)),
        didYouMean(colours, PICTURE_COLOURS, texts.itKnows(PICTURE_COLOURS.join(', '))),
      );
    const options = {
      bearingRad: numberIn('from', given.from, [-360, 360]) * DEG,
      elevationRad: numberIn('above', given.above, [-89, 89]) * DEG,
      width: numberIn('width', given.width, [16, MOST_PIXELS], true),
      height: numberIn('height', given.height, [16, MOST_PIXELS], true),
      colours: told,
    };
    const cutRad = cut === undefined ? null : numberIn('cut', cut, [-360, 360]) * DEG;
    const input = readInput(file);
    const [{ readDescription }, { housePicture }] = await Promise.all([reading(), picturing()]);
    const house = readDescription(input.text, input.name, { set });
    const [x, y] = house.domes[0]?.at ?? [0, 0];
    terminal.note('drawing');
    const bytes = await housePicture(house, tools, {
      ...options,
      cut: cutRad !== null ? uprightCut(cutRad, x, y) : level !== undefined ? levelCut(level, house.units) : null,
    });
    try {
      // A picture is drawn anew as often as the house changes: it takes the place of the one before.
      writeWhole(output, bytes, true);
    } catch (error) {
      throw fileTrouble(texts.cannotBeWritten(output), error);
    }
    if (json) printJson(terminal, { written: output });
    else terminal.out(texts.wrote(output));
    return EXIT.fine;
  },
};

function uprightCut(rad: number, x: number, y: number) {
  const normal = [Math.sin(rad), Math.cos(rad), 0] as const;
  return { normal, distance: normal[0] * x + normal[1] * y };
}

function levelCut(written: string, unit: string) {
  const read = parseQuantity(written, 'length', unit);
  if ('fault' in read)
    throw new UsageError(texts.levelCannotBe(JSON.stringify(written), read.fault.message), read.fault.mend);
  return { normal: [0, 0, 1] as const, distance: read.value };
}
