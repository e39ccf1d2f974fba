import type { Check, Figure } from '../base/figures.js';
import { figureText } from '../base/reader-units.js';
import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-house.js';
import { formatLength, type LengthUnit } from '../base/units.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import { footThrust } from '../statics/foot-thrust.js';
import type { DomeStatics, Statics } from '../statics/results.js';
import { withoutWindCoefficients } from '../statics/statics.js';
import { numberColumn, ratioColumn, tableUnits, textColumn } from './units.js';

/** One row a dome: what it weighs, where it thrusts, what its tie and footing take. Loads without load factors. */
export function structureTable(setout: HouseSetout, { domes }: Statics): Table {
  const units = tableUnits(setout.house.units);
  const { force, lineForce, pressure, site } = units;
  const maybe = (of: (value: number) => number, value: number | null | undefined) => (value == null ? null : of(value));
  return {
    id: 'structure',
    title: texts.structuralSummary,
    columns: [
      textColumn('dome', texts.dome),
      numberColumn('masonry', texts.masonry, force),
      numberColumn('render', texts.render, force),
      numberColumn('footing', texts.footing, force),
      numberColumn('snow', texts.snow, force),
      numberColumn('turn', texts.hoopsPullBelow, site),
      numberColumn('hoops', texts.hoopTensionUncracked, force),
      textColumn('load', texts.worstLoad),
      ratioColumn('factor', texts.geometricFactor),
      ratioColumn('untied', texts.sameNoTie),
      numberColumn('thrust', texts.leastThrustAtFoot, lineForce),
      numberColumn('closed', texts.ringsClosedAbove, site),
      textColumn('tie', texts.ringTie),
      numberColumn('pull', texts.itsPull, force),
      numberColumn('line', texts.loadOnSoil, lineForce),
      numberColumn('soil', texts.pressureOnSoil, pressure),
    ],
    rows: domes.map((d) => ({
      dome: d.id,
      masonry: force.of(d.weights.masonry),
      render: force.of(d.weights.render),
      footing: force.of(d.weights.footing),
      snow: force.of(d.weights.snow),
      turn: maybe(site.of, d.shell.hoopTurnZ),
      hoops: force.of(d.shell.hoopTension),
      load: d.thrust.loads,
      factor: d.thrust.factor,
      untied: d.untiedFactor,
      thrust: maybe(lineForce.of, footThrust(setout, d)),
      closed: site.of(d.cutZ),
      tie: tieText(d, setout.house.units),
      pull: maybe(force.of, d.pull.all),
      line: maybe(lineForce.of, d.footing?.lineLoad),
      soil: maybe(pressure.of, greatestPressure(d)),
    })),
    notes: [texts.loadsWithoutLoadFactors, texts.pullOfClosedRing, ...notCovered(setout), CAUTION.authority],
  };
}

/** What loads that the site has are judged without. */
function notCovered(setout: HouseSetout): string[] {
  const { site } = setout.house;
  const windless = withoutWindCoefficients(setout);
  const left = [
    ...(site.windKpa && windless.length > 0 ? [texts.windWithoutCoefficients(windless)] : []),
    ...(site.windKpa ? [texts.secondWind(site.combinations)] : []),
    ...(site.windKpa && site.snowKpa ? [texts.driftWithWind] : []),
    ...(site.seismicCoefficient && site.seismicVertical === null ? [texts.uprightEarthquake(site.combinations)] : []),
    ...(site.seismicCoefficient && site.seismicVertical && site.combinations === 'EN 1990'
      ? [texts.uprightEarthquakeAlone]
      : []),
  ];
  return left.length > 0 ? [texts.notCovered(left.join('; '))] : [];
}

/** Under jambs or whole wall. */
function greatestPressure({ footing }: DomeStatics): number | null {
  if (!footing || footing.pressureKpa === null) return null;
  return Math.max(footing.pressureKpa, footing.jambKpa ?? 0);
}

function tieText({ tie }: DomeStatics, units: LengthUnit): string {
  if (!tie) return 'none';
  const { bars, diameter } = tie.tie;
  const where = tie.place === 'footing' ? texts.inFooting : texts.aboveFloor(formatLength(tie.z, units));
  return texts.barsOfTie(bars, formatLength(diameter, units), where, tie.strength);
}

/** Every check of the statics, the worst first: demand against capacity, and what to change. */
export function structuralCheckTable(checks: readonly Check[], units: LengthUnit): Table {
  const told = (figure: Figure | undefined): string =>
    figure ? `${figure.label}: ${figureText(figure.value, figure.unit, units)}` : '';
  const rank = { fails: 0, attention: 1, ok: 2 } as const;
  return {
    id: 'structural-checks',
    title: texts.structuralChecks,
    columns: [
      textColumn('state', texts.state),
      textColumn('check', texts.whatMustHold),
      textColumn('demand', texts.demand),
      textColumn('capacity', texts.capacity),
      ratioColumn('ratio', texts.demandCapacity),
      textColumn('change', texts.whatToChange),
      textColumn('source', texts.source),
    ],
    rows: [...checks]
      .sort((a, b) => rank[a.state] - rank[b.state])
      .map((c) => ({
        state: c.state,
        check: c.statement,
        demand: told(c.demand),
        capacity: told(c.capacity),
        ratio: c.ratio !== undefined && c.ratio < MOST_RATIO ? c.ratio : null,
        change: c.state === 'ok' ? '' : c.advice,
        source: c.source,
      })),
    notes: [texts.attentionMeans, CAUTION.rings, CAUTION.cubes, CAUTION.authority],
  };
}

/** Ratios past this say no more than that nothing holds. */
const MOST_RATIO = 1e6;
