import type { LengthUnit } from '../base/units.js';
import type {
  BlockRules,
  Casting,
  Centering,
  Dome,
  DrawingChoice,
  Footing,
  House,
  Material,
  Opening,
  Partition,
  Passage,
  Prices,
  Print,
  Project,
  Room,
  SettingOut,
  Site,
  Slab,
  Tie,
  Wall,
  Warmth,
} from './house.js';
import type { Path } from './problem-list.js';

/** Something of the description and where it stands there. */
export interface Placed<T> {
  readonly path: Path;
  readonly value: T;
}

/**
 * What could be read of a description: a section or entry with problems of its own is missing, so that the
 * rules between sections run on the rest and all problems are told at once.
 */
export interface Draft {
  readonly units: LengthUnit;
  /** Whether `units` is as meant; if not, nothing can be said of the size of bare lengths. */
  readonly unitsKnown: boolean;
  readonly project: Project | undefined;
  readonly site: Site | undefined;
  readonly wall: Wall | undefined;
  readonly blocks: BlockRules | undefined;
  readonly domes: readonly Placed<Dome>[];
  readonly openings: readonly Placed<Opening>[];
  readonly passages: readonly Placed<Passage>[];
  readonly rooms: readonly Placed<Room>[];
  readonly partitions: readonly Placed<Partition>[];
  readonly footing: Footing | null | undefined;
  readonly slab: Slab | null | undefined;
  readonly tie: Tie | 'none' | null;
  readonly material: Material | undefined;
  readonly casting: Casting | undefined;
  readonly settingOut: SettingOut | undefined;
  readonly centering: Centering | undefined;
  readonly warmth: Warmth | undefined;
  readonly drawings: DrawingChoice | undefined;
  readonly print: Print | undefined;
  readonly prices: Prices | undefined;
  /** Every id as written, of sound entries and of others. */
  readonly ids: readonly Placed<string>[];
  /** Every id of a dome as written where it is referred to; empty when the domes' own ids can't be told. */
  readonly references: readonly Placed<string>[];
}

/** The house of a draft without problems. */
export function houseOf(draft: Draft): House {
  return {
    format: 1,
    project: whole(draft.project),
    units: draft.units,
    site: whole(draft.site),
    wall: whole(draft.wall),
    blocks: whole(draft.blocks),
    domes: draft.domes.map((d) => d.value),
    openings: draft.openings.map((o) => o.value),
    passages: draft.passages.map((p) => p.value),
    rooms: draft.rooms.map((r) => r.value),
    partitions: draft.partitions.map((p) => p.value),
    footing: whole(draft.footing),
    slab: whole(draft.slab),
    tie: draft.tie,
    material: whole(draft.material),
    casting: whole(draft.casting),
    settingOut: whole(draft.settingOut),
    centering: whole(draft.centering),
    warmth: whole(draft.warmth),
    drawings: whole(draft.drawings),
    print: whole(draft.print),
    prices: whole(draft.prices),
  };
}

function whole<T>(section: T | undefined): T {
  if (section === undefined) throw new Error('a section was left out of the draft without a problem');
  return section;
}
