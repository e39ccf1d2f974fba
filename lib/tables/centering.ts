import { figureText } from '../base/reader-units.js';
import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-centering.js';
import type { Table } from '../documents/table.js';
import { DEG } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import type { Calendar } from '../works/calendar.js';
import type { Centre } from '../works/centering.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const STRIKE = texts.easeCenteringDown;

/** Ribs of each centering: how many, how far apart, what to cut. */
export function ribTable(house: HouseSetout, centres: readonly Centre[]): Table {
  const { site } = tableUnits(house.house.units);
  const { lagging } = house.house.centering;
  return {
    id: 'centering-ribs',
    title: texts.centeringRibs,
    columns: [
      textColumn('arch', texts.openingOrPassage),
      textColumn('head', texts.head),
      numberColumn('width', texts.clearWidth, site),
      numberColumn('springing', texts.springingAboveFloor, site),
      countColumn('ribs', texts.ribs),
      numberColumn('spacing', texts.ribSpacingMiddle, site),
      numberColumn('rib-width', texts.ribWidthAtSpringing, site),
      numberColumn('rib-rise', texts.ribCrownOverSpringing, site),
      countColumn('arcs', texts.arcsOfRib),
      numberColumn('radius', texts.radiusOfCurvedEdge, site),
      numberColumn('chord', texts.checkChordOfArc, site),
      numberColumn('arc-rise', texts.checkRiseOver, site),
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
      texts.ribsAreSmaller(site.of(lagging).toFixed(site.decimals), site.unit),
      texts.sizesSuitShapeStrength,
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
    title: texts.centeringRibsOfBent,
    columns: [
      textColumn('arch', texts.openingOrPassage),
      countColumn('tubes', texts.tubesToBend),
      numberColumn('cut', texts.cutLength, site),
      numberColumn('radius', texts.bendRadiusAtCentre, site),
      degreesColumn('angle', texts.bendAngle),
      numberColumn('chord', texts.checkChordOfCentre, site),
      numberColumn('rise', texts.checkRiseOfCentre, site),
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
      texts.forTubeOfOutside(site.of(house.house.centering.tube).toFixed(site.decimals), site.unit),
      texts.thinTubeBucklesWhere,
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
    title: texts.centeringLaggingStrips,
    columns: [
      textColumn('arch', texts.openingOrPassage),
      countColumn('strip', texts.stripFromCrownDown),
      countColumn('pieces', texts.pieces),
      numberColumn('length', texts.cutLength, site),
      numberColumn('width', texts.widthOnSoffit, site),
      numberColumn('across', texts.itsMiddleFromMiddle, site),
      numberColumn('level', texts.itsMiddleAboveFloor, site),
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
    notes: [texts.stripsRunAlongSoffit, texts.stripsCoverSoffit, STRIKE, CAUTION.rings],
  };
}

/** Which arches share a form, how many of it to make, when each stands. */
export function formTable(house: HouseSetout, calendar: Calendar, centres: readonly Centre[]): Table {
  const { site } = tableUnits(house.house.units);
  const depths = new Map(centres.map((c) => [c.id, c.depth]));
  return {
    id: 'forms',
    title: texts.centeringFormsAndTheir,
    columns: [
      countColumn('order', texts.orderOfCasting),
      textColumn('arch', texts.openingOrPassage),
      textColumn('form', texts.formHeadWidthRise),
      countColumn('forms', texts.formsOfThisKind),
      numberColumn('depth', texts.soffitLongestWayThrough, site),
      countColumn('from', texts.castOrLaid),
      countColumn('cast', texts.ringClosedOnDay),
      countColumn('strike', texts.struckOnDay),
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
      texts.archesOfOneKind,
      calendar.formsProven ? texts.noFewerFormsClose : texts.fewerFormsMayDo,
      STRIKE,
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}
