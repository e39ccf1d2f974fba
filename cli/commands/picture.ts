import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { COMMON, type Command, type CommonArguments, FILE, SET } from '../command.js';
import { EXIT, fileTrouble, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { PICTURE_COLOURS, parseQuantity, picturing, reading } from '../library.js';
import { printJson } from '../print/json.js';
import { didYouMean } from '../suggest.js';
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
  const kind = whole ? 'a whole number' : 'a number';
  throw new UsageError(`--${name} can't be ${JSON.stringify(written)}.`, `Give ${kind} from ${low} to ${high}.`);
}

export const picture: Command<Arguments> = {
  examples: [
    ['picture house.yaml -o house.png', 'from the south-west, a little from above'],
    ['picture house.yaml -o rooms.png --level 1.2 --above 60', 'into the rooms'],
    ['picture house.yaml -o blocks.png --colours mould --cut 90', 'half of it, a colour for each mould'],
  ],
  names: FILE,
  options: {
    output: {
      alias: 'o',
      type: 'string',
      demandOption: true,
      requiresArg: true,
      describe: 'The picture; a name that ends in .png',
    },
    from: { type: 'string', default: '215', requiresArg: true, describe: 'Bearing of the viewer, degrees' },
    above: { type: 'string', default: '28', requiresArg: true, describe: 'How far above level the viewer is, degrees' },
    width: { type: 'string', default: '1400', requiresArg: true, describe: 'Pixels across' },
    height: { type: 'string', default: '1000', requiresArg: true, describe: 'Pixels down' },
    colours: {
      type: 'string',
      default: PICTURE_COLOURS[0],
      requiresArg: true,
      describe: `What colours tell: ${PICTURE_COLOURS.join(', ')}`,
    },
    cut: {
      type: 'string',
      requiresArg: true,
      describe: 'Take away the half on this bearing from the first dome, degrees',
    },
    level: { type: 'string', requiresArg: true, describe: 'Take away all above this height over the floor' },
    ...SET,
    ...COMMON,
  },
  run: async (given, terminal) => {
    const { file, output, colours, cut, level, json, set = [] } = given;
    if (!/\.png$/i.test(output))
      throw new UsageError(
        `The picture is a PNG, and ${JSON.stringify(output)} is not named so.`,
        'Give a name that ends in .png.',
      );
    if (cut !== undefined && level !== undefined)
      throw new UsageError('--cut and --level are both given.', 'A picture has one cut: leave one of them out.');
    const told = PICTURE_COLOURS.find((name) => name === colours);
    if (told === undefined)
      throw new UsageError(
        `--colours doesn't know ${JSON.stringify(colours)}.`,
        didYouMean(colours, PICTURE_COLOURS, `It knows: ${PICTURE_COLOURS.join(', ')}.`),
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
    writeWhole(output, bytes);
    if (json) printJson(terminal, { written: output });
    else terminal.out(`Wrote ${output}`);
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
    throw new UsageError(`--level can't be ${JSON.stringify(written)}: it ${read.fault.message}`, read.fault.mend);
  return { normal: [0, 0, 1] as const, distance: read.value };
}

/** The file as a whole, or none: a picture of that name stays until the new one is there. */
function writeWhole(name: string, bytes: Uint8Array): void {
  const beside = `${name}.new`;
  try {
    writeFileSync(beside, bytes);
    renameSync(beside, name);
  } catch (error) {
    rmSync(beside, { force: true });
    throw fileTrouble(`${name} can't be written`, error);
  }
}
