import * as texts from '../base/texts/model-scene.js';
import { formatQuantity } from '../base/units.js';
import type { Mesh } from '../documents/mesh.js';
import { type Facts, IN_PLACE, type Instance, type Scene } from '../documents/scene.js';
import type { LaidBlock } from '../masonry/block.js';
import { type BlockDimensions, blockDimensions } from '../masonry/dimensions.js';
import { longerFormId } from '../masonry/longer.js';
import { freshKg, massKg } from '../masonry/mass.js';
import { formIn, formKey } from '../masonry/placed.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { blockShapes } from '../solids/block-shapes.js';
import { STUFF } from './page-colours.js';
import { type Wording, wordingOf } from './page-openings.js';

/** What the model of a house is made from. */
export interface BuiltHouse {
  readonly setout: HouseSetout;
  readonly blocks: readonly LaidBlock[];
  /** Solids of the blocks, in their order. */
  readonly solids: readonly Mesh[];
  /** Solids of the parts, as `houseSolids` names them. */
  readonly parts: readonly Mesh[];
  readonly mouldOf: (block: LaidBlock) => string | null;
}

/** What stands for itself in the model: parts that blocks don't make. */
export const isCastPart = ({ name }: Mesh): boolean => !/:(shell|stem-wall)$/.test(name);

/** `footing` and `slab`, `arch`, `passage`, `skewback`, or `crown` for plug and curb. */
export function stuffOf(part: string): string {
  if (part === 'footing' || part === 'slab') return 'ground';
  const [first = '', last = ''] = part.split(':');
  if (first === 'arch' || first === 'passage') return first;
  return last === 'skewback' ? last : 'crown';
}

/**
 * The house at full size as what is cast and laid: blocks, each once, then the parts that blocks don't make. Blocks
 * are named by their marks; facts are worded in the reader's units.
 */
export function builtScene(built: BuiltHouse): Scene {
  const { setout, blocks, solids, parts } = built;
  const names = Object.keys(STUFF);
  const materials = names.map((name) => ({ name, colour: STUFF[name] as (typeof STUFF)[string] }));
  const domes = new Map(setout.domes.map((d) => [d.id, d]));
  const shapes = blockShapes(
    setout,
    blocks,
    solids,
    (block) => longerFormId(domes.get(block.domeId) as DomeSetout, block) ?? built.mouldOf(block),
  );
  const cast = parts.filter(isCastPart);
  const factsOf = blockFacts(built);
  const nodes: Instance[] = [
    ...blocks.map((block, k): Instance => {
      const { mesh, place } = shapes.uses[k] as (typeof shapes.uses)[number];
      return { kind: 'instance', name: block.mark, mesh, place, material: 0, facts: factsOf(block) };
    }),
    ...cast.map(
      ({ name }, k): Instance => ({
        kind: 'instance',
        name: name.replace(':', ' '),
        mesh: shapes.meshes.length + k,
        place: IN_PLACE,
        material: names.indexOf(stuffOf(name)),
        facts: { what: WORDS[stuffOf(name)] ?? '' },
      }),
    ),
  ];
  return { title: setout.house.project.title, facts: {}, materials, meshes: [...shapes.meshes, ...cast], nodes };
}

const WORDS: Readonly<Record<string, string>> = {
  arch: texts.ringJambsAndBarrel,
  passage: texts.vaultBetweenTwoDomes,
  crown: texts.castPieceAtCrown,
  skewback: texts.castRingUnderFirst,
  ground: texts.onGround,
};

function blockFacts({ setout, mouldOf }: BuiltHouse): (block: LaidBlock) => Facts {
  const { house } = setout;
  const { units, material } = house;
  const say = wordingOf(units);
  const domes = new Map(setout.domes.map((d) => [d.id, d]));
  const known = new Map<string, Facts>();
  const sizesOf = (dome: DomeSetout, block: LaidBlock): Facts => {
    const key = `${dome.id} ${block.course} ${formKey(formIn(dome.courses[block.course - 1] as Course, block.number))}`;
    const sizes = known.get(key) ?? sizeFacts(blockDimensions(setout, dome, block), say);
    known.set(key, sizes);
    return sizes;
  };
  const mass = (kg: number) => formatQuantity(kg, 'mass', units);
  return (block) => {
    const dome = domes.get(block.domeId) as DomeSetout;
    return {
      mould: longerFormId(dome, block) ?? mouldOf(block) ?? texts.noneFits,
      dome: dome.id,
      course: texts.courseOfDome(block.course, dome.courses.length),
      state: block.cutBy.length > 0 ? texts.cutAtNames(block.cutBy.join(', ')) : texts.wholeBlock,
      'dry mass': mass(massKg(block.volume, material.dryDensity)),
      'wet mass': mass(freshKg(block.volume, house)),
      ...sizesOf(dome, block),
    };
  };
}

/** Of the dry block, before any cut. */
const sizeFacts = (d: BlockDimensions, say: Wording): Facts => ({
  'inside, lower edge': say(d.intradosLower.arc),
  'inside, upper edge': say(d.intradosUpper.arc),
  'outside, lower edge': say(d.extradosLower.arc),
  'outside, upper edge': say(d.extradosUpper.arc),
  'height inside': say(d.intradosHeight),
  'height outside': say(d.extradosHeight),
  thickness: say(d.thickness),
});
