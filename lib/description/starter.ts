import { parseNumber, parseQuantity } from '../base/quantities.js';
import { nearest } from '../base/suggest.js';
import * as texts from '../base/texts/starter.js';
import { formatLength } from '../base/units.js';
import type { ProfileShape } from './house.js';
import { PROFILE_SHAPES } from './schema/domes.js';

/** What a first description is made from. */
export interface StarterAnswers {
  readonly units: 'm' | 'ft';
  /** Inside, at the springing; mm. */
  readonly radius: number;
  readonly profile: ProfileShape;
  /** 0 to 3. */
  readonly windows: number;
  readonly oculus: boolean;
}

/** Answers where none is given. */
export const STARTER: StarterAnswers = { units: 'm', radius: 2500, profile: 'hemisphere', windows: 1, oculus: true };

const RADIUS: readonly [number, number] = [1800, 6000];
const MOST_WINDOWS = 3;

/** One question whose answer a first description needs. */
export interface StarterQuestion {
  readonly key: keyof StarterAnswers;
  readonly question: (units: StarterAnswers['units']) => string;
  /** The answer where none is given, as text. */
  readonly standard: (units: StarterAnswers['units']) => string;
  /** What an answer means, or what is wrong with it. */
  readonly read: (answer: string, units: StarterAnswers['units']) => { value: unknown } | { wrong: string };
}

const choice = (choices: readonly string[]) => (answer: string) => {
  const near = nearest(answer, choices);
  return near !== null && choices.includes(answer.toLowerCase())
    ? { value: answer.toLowerCase() }
    : { wrong: texts.itIsOne(near === null ? '' : texts.didYouMean(near), choices.join(', ')) };
};

/** The questions in the order to ask them. */
export const STARTER_QUESTIONS: readonly StarterQuestion[] = [
  {
    key: 'units',
    question: () => texts.unitsOfLengthsM,
    standard: () => STARTER.units,
    read: choice(['m', 'ft']),
  },
  {
    key: 'radius',
    question: (units) => texts.insideRadiusOfDome(units),
    standard: (units) => (units === 'm' ? '2.5' : '8'),
    read: (answer, units) => {
      const found = parseQuantity(answer, 'length', units);
      const [least, most] = RADIUS;
      if ('value' in found && found.value >= least && found.value <= most) return { value: found.value };
      return { wrong: texts.itIsLength(formatLength(least, units), formatLength(most, units)) };
    },
  },
  {
    key: 'profile',
    question: () => texts.shapeOfDome(PROFILE_SHAPES.join(', ')),
    standard: () => STARTER.profile,
    read: choice(PROFILE_SHAPES),
  },
  {
    key: 'windows',
    question: () => texts.howManyWindows(MOST_WINDOWS),
    standard: () => String(STARTER.windows),
    read: (answer) => {
      const count = parseNumber(answer);
      if (count !== null && Number.isInteger(count) && count >= 0 && count <= MOST_WINDOWS) return { value: count };
      return { wrong: texts.itIsWholeNumber(MOST_WINDOWS) };
    },
  },
  {
    key: 'oculus',
    question: () => texts.roundOpeningInCrown,
    standard: () => (STARTER.oculus ? 'yes' : 'no'),
    read: (answer) => {
      const found = choice(['yes', 'no'])(answer);
      return 'value' in found ? { value: found.value === 'yes' } : found;
    },
  },
];

/** Rise over radius where the description says nothing of it. */
const RISE: Readonly<Record<ProfileShape, number>> = {
  hemisphere: 1,
  segmental: 0.5,
  pointed: Math.sqrt(3),
  catenary: 1,
  elliptical: 0.75,
};

/** High enough that a door stands under the dome wherever it begins; mm, in quarters of a metre or in 10 inches. */
function stemWall({ units, profile, radius }: StarterAnswers): number {
  const step = units === 'm' ? 250 : 254;
  return Math.max(2, Math.ceil((3000 - RISE[profile] * radius) / step)) * step;
}

const BEARINGS = [75, 285, 0];

/** A commented description to begin from: a potter's one-room house. */
export function starterDescription(answers: Partial<StarterAnswers> = {}): string {
  const all = { ...STARTER, ...answers };
  const metric = all.units === 'm';
  /** A length as its user would write it; feet and inches in quotes, since a quote of YAML begins so. */
  const at = (metres: string, feet: string) => (metric ? metres : `"${feet.replaceAll('"', '\\"')}"`);
  const mm = (value: number) =>
    metric ? String(Number((value / 1000).toFixed(3))) : at('', formatLength(value, 'ft'));
  const window = (bearing: number, i: number) => `  - id: window${i === 0 ? '' : `-${i + 1}`}
    in: room
    bearing: ${bearing}
    use: window
    width: ${at('1.10', `3'-6"`)}
    height: ${at('1.00', `3'-3"`)}
    sill: ${at('0.90', `3'-0"`)}
    head: { shape: segmental, rise: ${at('0.25', `10"`)} }
    arch: { face: ${at('0.20', `8"`)} }      # ${texts.faceOfArch}
`;
  return `# ${texts.houseOfCastBlocks(metric)}
# ${texts.everyKeyLeftOut}
format: 1
units: ${all.units}

project:
  title: ${texts.projectTitle}
  number: KLN-001
  drawn-by: ${texts.drawnBy}
  # date: 2026-05-04          # ${texts.dateOfSheets}

site:
  north: 0                    # ${texts.trueNorth}
  ground: ${at('-0.15', '-6"')}               # ${texts.outsideGround}
  # snow: ${metric ? '0.8 kPa' : '16 psf'}
  # bearing-capacity: ${metric ? '100 kPa' : '2000 psf'}

wall:
  thickness: ${at('0.25', '10"')}             # ${texts.structuralWall}

blocks:
  course-height: ${at('0.25', '10"')}
  length: ${at('0.40', '16"')}
  joint: ${metric ? '10 mm' : '3/8 in'}

domes:
  - id: room
    radius: ${mm(all.radius)}               # ${texts.insideRadius}
    profile: ${all.profile}       # ${texts.shapesWithRise(PROFILE_SHAPES.join(', '), metric ? '3.2' : '10')}
    stem-wall: ${mm(stemWall(all))}            # ${texts.stemWall}
${all.oculus ? `    oculus: { radius: ${at('0.30', '12"')}, curb: ${at('0.15', '6"')} }\n` : ''}
# ${texts.bearingsAreDegrees}
openings:
  - id: door
    in: room
    bearing: 180
    use: door
    width: ${at('1.0', `3'-4"`)}
    height: ${at('2.40', `7'-10"`)}              # ${texts.toCrownOfHead}
    head: semicircular        # ${texts.otherHeads}
${BEARINGS.slice(0, all.windows).map(window).join('')}  - id: shelf
    in: room
    bearing: 130
    use: niche
    width: ${at('0.60', `2'-0"`)}
    height: ${at('0.70', `2'-4"`)}
    sill: ${at('1.00', `3'-4"`)}
    depth: ${at('0.15', '6"')}

rooms:
  - { id: studio, in: room, use: habitable }

footing: { width: ${at('0.50', `1'-8"`)}, depth: ${at('0.40', `1'-4"`)} }   # ${texts.orNone}
slab: { thickness: ${at('0.10', '4"')} }               # ${texts.orNone}

material:
  dry-density: ${metric ? '600 kg/m3' : '37.5 lb/ft3'}
  water-cement: 0.5
  # compressive-strength: ${metric ? '1 MPa' : '145 psi'}          # ${texts.fromTestCubes}

print: { scale: ${metric ? 50 : 48} }                     # ${texts.scaleModel(metric ? '1:50' : '1/4" = 1\'-0"')}
`;
}
