import type { House } from './house.js';
import { houseFrom } from './read.js';
import type { Description } from './schema.js';

type Entry<K extends 'domes' | 'openings' | 'passages' | 'rooms'> = NonNullable<Description[K]>[number];

/** Everything of a description but its lists, which are added entry by entry. */
export type HouseSettings = Omit<Description, 'format' | 'domes' | 'openings' | 'passages' | 'rooms'>;

/** A dome without its id: `{ radius: 3, profile: 'hemisphere', 'stem-wall': 0.6 }`. */
export type DomeSettings = Omit<Entry<'domes'>, 'id'>;

/** An opening without its id, dome and use: `{ bearing: 180, width: 1, height: 2.2 }`. */
export type OpeningSettings = Omit<Entry<'openings'>, 'id' | 'in' | 'use'>;

/** A niche, which has a depth. */
export type NicheSettings = OpeningSettings & Required<Pick<Entry<'openings'>, 'depth'>>;

/** A passage without its id and domes: `{ width: 0.9, height: 2.1 }`. */
export type PassageSettings = Omit<Entry<'passages'>, 'id' | 'between'>;

/** A room without its id and dome: `{ use: 'kitchen', name: 'Kitchen' }`. */
export type RoomSettings = Omit<Entry<'rooms'>, 'id' | 'in'>;

/**
 * Puts a description together step by step. Every step gives a new builder and leaves the one before as it was, so that
 * variants branch from a common beginning. Keys, units and defaults are those of the description file
 * (cli/README.md lists them): a bare number is in `units`, a text may carry its own unit (`'150 mm'`).
 */
export class HouseBuilder {
  constructor(
    /** The description so far, as a plain object that can be written to a file as JSON. */
    readonly description: Description,
  ) {}

  #with(more: Partial<Description>): HouseBuilder {
    return new HouseBuilder({ ...this.description, ...more });
  }

  /**
   * Adds a dome. Domes are built in this order: one that overlaps an earlier one abuts it.
   * @param id small letters, digits and hyphens; its name in marks and file names
   */
  dome(id: string, settings: DomeSettings): HouseBuilder {
    return this.#with({ domes: [...this.description.domes, { id, ...settings }] });
  }

  /** Adds a door to the dome `dome`; it reaches the floor. */
  door(id: string, dome: string, settings: Omit<OpeningSettings, 'sill'>): HouseBuilder {
    return this.#opening(id, dome, 'door', settings);
  }

  /** Adds a window; `egress` makes it one to escape by, which is checked as such. */
  window(id: string, dome: string, settings: OpeningSettings, egress = false): HouseBuilder {
    return this.#opening(id, dome, egress ? 'egress window' : 'window', settings);
  }

  /** Adds a small opening for air. */
  vent(id: string, dome: string, settings: OpeningSettings): HouseBuilder {
    return this.#opening(id, dome, 'vent', settings);
  }

  /** Adds a niche, which leaves a wall behind it. */
  niche(id: string, dome: string, settings: NicheSettings): HouseBuilder {
    return this.#opening(id, dome, 'niche', settings);
  }

  #opening(
    id: string,
    dome: string,
    use: NonNullable<Entry<'openings'>['use']>,
    settings: OpeningSettings,
  ): HouseBuilder {
    return this.#with({ openings: [...(this.description.openings ?? []), { id, in: dome, use, ...settings }] });
  }

  /** Adds a vault between two domes. */
  passage(id: string, between: readonly [string, string], settings: PassageSettings): HouseBuilder {
    const entry = { id, between: [...between] as [string, string], ...settings };
    return this.#with({ passages: [...(this.description.passages ?? []), entry] });
  }

  /** Says what a dome is used for. */
  room(id: string, dome: string, settings: RoomSettings = {}): HouseBuilder {
    return this.#with({ rooms: [...(this.description.rooms ?? []), { id, in: dome, ...settings }] });
  }

  /** Puts sections of the description in the place of what they were: `{ site: { snow: '0.8 kPa' } }`. */
  settings(settings: HouseSettings): HouseBuilder {
    return this.#with(settings);
  }

  /**
   * The house: everything checked, defaults filled in, every quantity in one unit.
   * @throws DescriptionError with every problem, each with the path of its key, what is wrong and how to mend it
   */
  house(): House {
    return houseFrom(this.description);
  }
}

/**
 * Begins a description in the language of the library instead of in a file.
 * @param settings units, wall, blocks, site and the other sections; all have defaults
 * @example
 * const house = describeHouse({ units: 'm' })
 *   .dome('hall', { radius: 3, 'stem-wall': 0.6 })
 *   .door('entrance', 'hall', { bearing: 180, width: 1, height: 2.2 })
 *   .house();
 */
export const describeHouse = (settings: HouseSettings = {}): HouseBuilder =>
  new HouseBuilder({ format: 1, ...settings, domes: [] });
