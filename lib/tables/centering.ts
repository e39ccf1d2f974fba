import { CAUTION } from '../base/cautions.js';
import { figureText } from '../base/reader-units.js';
import type { Table } from '../documents/table.js';
import { DEG } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import type { Calendar } from '../works/calendar.js';
import type { Centre } from '../works/centering.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const STRIKE =
  'Ease the centering down on wedges a little at a time, never by knocking a rib out; nobody stands under it.';

/** Ribs of each centering: how many, how far apart, what to cut. */
export function ribTable(house: HouseSetout, centres: readonly Centre[]): Table {
  const { site } = tableUnits(house.house.units);
  const { lagging } = house.house.centering;
  return {
    id: 'centering-ribs',
    title: 'Centering: ribs',
    columns: [
      textColumn('arch', 'opening or passage'),
      textColumn('head', 'head'),
      numberColumn('width', 'clear width', site),
      numberColumn('springing', 'springing above the floor', site),
      countColumn('ribs', 'ribs'),
      numberColumn('spacing', 'rib spacing, middle to middle', site),
      numberColumn('rib-width', 'rib, width at the springing', site),
      numberColumn('rib-rise', 'rib, crown over the springing', site),
      countColumn('arcs', 'arcs of a rib'),
      numberColumn('radius', 'radius of the curved edge', site),
      numberColumn('chord', 'check: chord of an arc', site),
      numberColumn('arc-rise', 'check: rise over that chord', site),
    ],
    rows: centres.map((c) => ({
      arch: c.id,
      head: c.shape,
      width: site.of(c.width),
      springing: site.of(c.springingZ),
      ribs: c.ribs,
      spacing: site.of(c.spacing),
      'rib-width': site.of(c.ribWidth),
      'rib-rise': site.of(c.ribRise),
      arcs: c.board?.pieces ?? null,
      radius: c.board ? site.of(c.board.radius) : null,
      chord: c.board ? site.of(c.board.chord) : null,
      'arc-rise': c.board ? site.of(c.board.rise) : null,
    })),
    notes: [
      `Ribs are smaller than the opening by the lagging of ${site.of(lagging).toFixed(site.decimals)} ${site.unit}. Under a flat head the lagging lies on level bearers, whose top is that much under the head. A pointed rib has two arcs that meet at its apex.`,
      'Sizes suit the shape; the strength of ribs, wedges and props under the wet arch must be proven by who builds them.',
      STRIKE,
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}

/** The same ribs of bent tube. */
export function tubeTable(house: HouseSetout, centres: readonly Centre[]): Table {
  const { site } = tableUnits(house.house.units);
  return {
    id: 'centering-tubes',
    title: 'Centering: ribs of bent tube',
    columns: [
      textColumn('arch', 'opening or passage'),
      countColumn('tubes', 'tubes to bend'),
      numberColumn('cut', 'cut length', site),
      numberColumn('radius', 'bend radius at the centre line', site),
      degreesColumn('angle', 'bend angle'),
      numberColumn('chord', 'check: chord of the centre line', site),
      numberColumn('rise', 'check: rise of the centre line', site),
    ],
    rows: centres.flatMap(({ id, ribs, tube }) =>
      tube
        ? [
            {
              arch: id,
              tubes: ribs * tube.pieces,
              cut: site.of(tube.length),
              radius: site.of(tube.radius),
              angle: tube.angleRad / DEG,
              chord: site.of(tube.chord),
              rise: site.of(tube.rise),
            },
          ]
        : [],
    ),
    notes: [
      `For tube of ${site.of(house.house.centering.tube).toFixed(site.decimals)} ${site.unit} outside, under the lagging. Add what the bender needs to hold at both ends, bend, check chord and rise, then cut. Flat heads have no tube.`,
      'Thin tube buckles where it is bent too sharply: make one and load it before the others.',
      STRIKE,
      CAUTION.authority,
    ],
  };
}

/** Lagging strips of each centering, from the crown down. */
export function laggingTable(house: HouseSetout, centres: readonly Centre[]): Table {
  const { site } = tableUnits(house.house.units);
  return {
    id: 'lagging',
    title: 'Centering: lagging strips',
    columns: [
      textColumn('arch', 'opening or passage'),
      countColumn('strip', 'strip, from the crown down'),
      countColumn('pieces', 'pieces'),
      numberColumn('length', 'cut length', site),
      numberColumn('width', 'width on the soffit', site),
      numberColumn('across', 'its middle from the middle of the opening', site),
      numberColumn('level', 'its middle above the floor', site),
    ],
    rows: centres.flatMap(({ id, strips }) =>
      strips.map((s) => ({
        arch: id,
        strip: s.number,
        pieces: s.pieces,
        length: site.of(s.length),
        width: site.of(s.width),
        across: site.of(s.at[0]),
        level: site.of(s.at[1]),
      })),
    ),
    notes: [
      'Strips run along the soffit, one left and one right where there are two pieces, and end at the intrados inside: cut that end to the curve of the wall, or let it stand into the room.',
      'Side by side they cover the soffit from springing to springing: plane edges so that they close against each other, and seal what gapes before mix is cast on them.',
      STRIKE,
      CAUTION.rings,
    ],
  };
}

/** Which arches share a form, how many of it to make, when each stands. */
export function formTable(house: HouseSetout, calendar: Calendar, centres: readonly Centre[]): Table {
  const { site } = tableUnits(house.house.units);
  const depths = new Map(centres.map((c) => [c.id, c.depth]));
  return {
    id: 'forms',
    title: 'Centering: forms and their reuse',
    columns: [
      countColumn('order', 'order of casting'),
      textColumn('arch', 'opening or passage'),
      textColumn('form', 'form: head, width × rise'),
      countColumn('forms', 'forms of this kind to make'),
      numberColumn('depth', 'soffit, longest way through', site),
      countColumn('from', 'cast or laid from day'),
      countColumn('cast', 'ring closed on day'),
      countColumn('strike', 'struck on day'),
    ],
    rows: [...calendar.laying.arches]
      .sort((a, b) => a.from - b.from)
      .map((arch, i) => ({
        order: i + 1,
        arch: arch.id,
        form: arch.family.replace(/\d+/g, (mm) => figureText(Number(mm), 'mm', house.house.units)),
        forms: calendar.forms.find((f) => f.family === arch.family)?.forms ?? null,
        depth: site.of(depths.get(arch.id) ?? 0),
        from: arch.from,
        cast: arch.day,
        strike: arch.strikeDay,
      })),
    notes: [
      'Arches of one kind share ribs; the lagging is cut for each, or made for the deepest. A form is free on the day after it was struck.',
      calendar.formsProven
        ? 'No fewer forms close the crown as early: proven by search.'
        : 'Fewer forms may do: the search was cut short.',
      STRIKE,
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}
