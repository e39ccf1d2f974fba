import * as texts from '../base/texts/bill.js';
import { type Balance, type BalancePart, PART_NAMES } from '../masonry/balance.js';
import type { LaidHouse } from '../masonry/block.js';
import { pouredVolume } from '../masonry/mass.js';
import { pourOf } from '../masonry/stops.js';
import type { HouseSetout } from '../setout/house.js';
import { partitionsOf } from '../setout/partition.js';
import { partitionArea } from '../setout/partition-face.js';
import { areasOf } from './areas.js';
import type { Calendar } from './calendar.js';
import type { Centre } from './centering.js';
import { groundAreas } from './ground-areas.js';

/** In which unit a quantity is counted; `each` are pieces. */
export type Measure = 'm3' | 'L' | 'm2' | 'kg' | 'm' | 'each';

/** What kind of thing a quantity is made of; one kind is bought or mixed together. */
export type Stuff =
  | 'mix'
  | 'mortar'
  | 'concrete'
  | 'render'
  | 'partitions'
  | 'mesh'
  | 'waterproofing'
  | 'ring steel'
  | 'lagging'
  | 'ribs'
  | 'moulds';

/** One part of the house, net and with what is lost; `null` where it isn't known. */
export interface Quantity {
  readonly part: string;
  readonly stuff: Stuff;
  readonly measure: Measure;
  readonly net: number | null;
  /** Shrunk, cut off, spilt and left over: on top of the net. */
  readonly waste: number;
}

/** Parts that are cast of the blocks' mix, and those that are laid or filled with mortar. */
const MIX_PARTS: readonly BalancePart[] = [
  'skewbacks',
  'plugs',
  'curbs',
  'heads',
  'voussoirs',
  'jambs',
  'spandrels',
  'nicheBacks',
  'passages',
];
/** Those of them that are cast in moulds, larger by the shrinkage; the others shrink in their place. */
const MOULDED: ReadonlySet<BalancePart> = new Set(['skewbacks', 'plugs', 'curbs', 'voussoirs']);
const MORTAR_PARTS: readonly BalancePart[] = [
  'bedJoints',
  'perpends',
  'cutJoints',
  'pieceJoints',
  'slivers',
  'faceFill',
];

/** Steel of closed ring ties, kg, as statics finds it; `null` while it hasn't been found. */
export type RingSteelKg = number | null;

/** What quantities are taken from. */
export interface Taken {
  readonly house: HouseSetout;
  readonly laid: LaidHouse;
  readonly balance: Balance;
  readonly centres: readonly Centre[];
  readonly calendar: Calendar;
  readonly ringSteelKg: RingSteelKg;
}

/** Quantities of the whole house by part, from its real volumes and areas. */
export function quantitiesOf({ house, laid, balance, centres, calendar, ringSteelKg }: Taken): Quantity[] {
  const { waste } = house.house.casting;
  const { wall, footing, slab } = house.house;
  const lost = (part: string, stuff: Stuff, measure: Measure, net: number): Quantity[] =>
    net > 0 ? [{ part, stuff, measure, net, waste: net * waste }] : [];
  const m3 = (mm3: number) => mm3 / 1e9;
  const mixed = (part: BalancePart, volume: number): Quantity[] => {
    const cast = MOULDED.has(part) ? pouredVolume(volume, house.house.blocks) : volume;
    return lost(PART_NAMES[part], 'mix', 'm3', m3(volume)).map((q) => ({
      ...q,
      waste: m3(cast * (1 + waste) - volume),
    }));
  };
  const areas = areasOf(house);
  const inside = (areas.intrados + areas.reveals) / 1e6;
  const outside = (areas.extrados + areas.barrels) / 1e6;
  const ground = groundAreas(house);
  const partitions = partitionsOf(house).reduce((sum, wall) => sum + partitionArea(house, wall), 0);
  const cast = m3(castVolume(house, laid));
  const blocks = m3(balance.blocks);
  return [
    { part: 'blocks', stuff: 'mix', measure: 'm3', net: blocks, waste: cast - blocks + cast * waste },
    ...MIX_PARTS.flatMap((part) => mixed(part, balance[part])),
    ...MORTAR_PARTS.flatMap((part) => lost(PART_NAMES[part], 'mortar', 'm3', m3(balance[part]))),
    ...lost('footing', 'concrete', 'm3', (ground.footing / 1e6) * ((footing?.depth ?? 0) / 1000)),
    ...lost('slab', 'concrete', 'm3', (ground.slab / 1e6) * ((slab?.thickness ?? 0) / 1000)),
    ...lost(texts.renderInsideWithReveals, 'render', 'm3', (inside * wall.renderInside) / 1000),
    ...lost(texts.renderOutsideWithBarrels, 'render', 'm3', (outside * wall.renderOutside) / 1000),
    ...lost(texts.partitionsDoorsLeftOut, 'partitions', 'm2', partitions / 1e6),
    ...lost(texts.meshInOutsideRender, 'mesh', 'm2', wall.renderOutside > 0 ? outside : 0),
    ...lost(texts.waterproofingOutside, 'waterproofing', 'm2', outside),
    {
      part: texts.ringTies,
      stuff: 'ring steel',
      measure: 'kg',
      net: ringSteelKg,
      waste: (ringSteelKg ?? 0) * waste,
    },
    ...formwork(house, centres, calendar),
  ];
}

/** Strips and ribs of as many forms as the calendar keeps, and the copies of moulds. */
function formwork(house: HouseSetout, centres: readonly Centre[], calendar: Calendar): Quantity[] {
  const { waste } = house.house.casting;
  const longest = (ids: readonly string[], by: (c: Centre) => number) =>
    Math.max(0, ...centres.filter((c) => ids.includes(c.id)).map(by));
  const stripMetres = (c: Centre) => c.strips.reduce((sum, s) => sum + (s.pieces * s.length) / 1000, 0);
  const lagging = calendar.forms.reduce((sum, f) => sum + f.forms * longest(f.arches, stripMetres), 0);
  const ribs = calendar.forms.reduce((sum, f) => sum + f.forms * longest(f.arches, (c) => c.ribs), 0);
  const moulds = calendar.moulds.reduce((sum, m) => sum + m.copies, 0);
  return [
    { part: texts.laggingStripsOfCentering, stuff: 'lagging', measure: 'm', net: lagging, waste: lagging * waste },
    { part: texts.ribsOfCentering, stuff: 'ribs', measure: 'each', net: ribs, waste: 0 },
    { part: 'moulds', stuff: 'moulds', measure: 'each', net: moulds, waste: 0 },
  ];
}

/** What is poured for all blocks, before they shrink and are cut, mm³; one that a cut divides is cast once. */
function castVolume(house: HouseSetout, laid: LaidHouse): number {
  const pour = pourOf(house, laid);
  const cast = new Map(laid.blocks.map((block) => [`${block.domeId} ${block.course} ${block.number}`, block]));
  return [...cast.values()].reduce((sum, block) => sum + pour(block), 0);
}
