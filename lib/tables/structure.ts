import { CAUTION } from '../base/cautions.js';
import type { Check, Figure } from '../base/figures.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import type { DomeStatics, Statics } from '../statics/results.js';
import { numberColumn, ratioColumn, tableUnits, textColumn } from './units.js';

/** One row a dome: what it weighs, where it thrusts, what its tie and footing take. Loads without load factors. */
export function structureTable(setout: HouseSetout, { domes }: Statics): Table {
  const units = tableUnits(setout.house.units);
  const { force, lineForce, pressure, site } = units;
  const maybe = (of: (value: number) => number, value: number | null | undefined) => (value == null ? null : of(value));
  return {
    id: 'structure',
    title: 'Structural summary',
    columns: [
      textColumn('dome', 'dome'),
      numberColumn('masonry', 'masonry', force),
      numberColumn('render', 'render', force),
      numberColumn('footing', 'footing', force),
      numberColumn('snow', 'snow', force),
      numberColumn('turn', 'hoops pull below', site),
      numberColumn('hoops', 'hoop tension, uncracked', force),
      textColumn('load', 'worst load'),
      ratioColumn('factor', 'geometric factor'),
      ratioColumn('untied', 'the same, no tie'),
      numberColumn('thrust', 'least thrust at the foot', lineForce),
      numberColumn('closed', 'rings closed above', site),
      textColumn('tie', 'ring tie'),
      numberColumn('pull', 'its pull', force),
      numberColumn('line', 'load on the soil', lineForce),
      numberColumn('soil', 'pressure on the soil', pressure),
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
      tie: tieText(d),
      pull: maybe(force.of, d.pull.all),
      line: maybe(lineForce.of, d.footing?.lineLoad),
      soil: maybe(pressure.of, d.footing?.pressureKpa),
    })),
    notes: [
      'Loads without load factors. Geometric factor: thickness of the wall over what the line of thrust needs to fit; 2 is asked for (Heyman, The Stone Skeleton, 1995, from memory), under 1 no thrust fits. Least thrust: outward, along the middle of the wall or footing; empty where none fits.',
      'Pull: of a closed ring where the tie lies; without one, over all openings. The greatest design pull, with load factors, stands among the checks.',
      CAUTION.authority,
    ],
  };
}

/** Least thrust at the foot, kN/m along the middle of the footing or wall. */
function footThrust(setout: HouseSetout, { id, thrust, footing }: DomeStatics): number | null {
  const dome = setout.domes.find((d) => d.id === id);
  if (footing || thrust.least === null || !dome) return footing?.thrust ?? null;
  return (thrust.least * 1000) / (dome.springingRadius + dome.thickness / 2);
}

function tieText({ tie }: DomeStatics): string {
  if (!tie) return 'none';
  const { bars, diameter } = tie.tie;
  const where = tie.place === 'footing' ? 'in the footing' : `${(tie.z / 1000).toFixed(2)} m above the floor`;
  return `${bars} bars of ${diameter} mm, ${where}${tie.strength > 0 ? '' : ': NO CLOSED HOOP'}`;
}

/** Every check of the statics, the worst first: demand against capacity, and what to change. */
export function structuralCheckTable(checks: readonly Check[]): Table {
  const rank = { fails: 0, attention: 1, ok: 2 } as const;
  return {
    id: 'structural-checks',
    title: 'Structural checks',
    columns: [
      textColumn('state', 'state'),
      textColumn('check', 'what must hold'),
      textColumn('demand', 'demand'),
      textColumn('capacity', 'capacity'),
      ratioColumn('ratio', 'demand / capacity'),
      textColumn('change', 'what to change'),
      textColumn('source', 'source'),
    ],
    rows: [...checks]
      .sort((a, b) => rank[a.state] - rank[b.state])
      .map((c) => ({
        state: c.state,
        check: c.statement,
        demand: figureText(c.demand),
        capacity: figureText(c.capacity),
        ratio: c.ratio !== undefined && c.ratio < MOST_RATIO ? c.ratio : null,
        change: c.state === 'ok' ? '' : c.advice,
        source: c.source,
      })),
    notes: [
      '`attention`: an engineer must look, an input lacks, or the figure is an estimate. No state is a promise that the house stands.',
      CAUTION.rings,
      CAUTION.cubes,
      CAUTION.authority,
    ],
  };
}

/** Ratios past this say no more than that nothing holds. */
const MOST_RATIO = 1e6;

const figureText = (figure: Figure | undefined): string =>
  figure
    ? `${figure.label}: ${Number(figure.value.toPrecision(3))}${figure.unit === '1' ? '' : ` ${figure.unit}`}`
    : '';
