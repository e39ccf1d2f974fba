import type { Check } from '../../base/figures.js';
import { LEAST_DEPTH } from '../../base/tolerances.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { combinationSource, designEffect, designFormula } from '../loads.js';
import type { Pier } from '../piers.js';
import type { DomeStatics, Statics } from '../results.js';
import type { ThrustPoint } from '../thrust.js';
import { computed, factorCheck, missing, NO_THRUST, ratioOf } from './judge.js';

/** Checks of what is left of a dome's wall between its voids. */
export function pierChecks(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, statics: Statics): Check[] {
  if (found.piers.length === 0) return [];
  return [stressCheck(setout, dome, found, statics), ...archCheck(found, statics, setout.house.units)];
}

const nameOf = ({ between: [one, next], z }: Pier, units: LengthUnit): string =>
  `${one === next ? `beside ${one}` : `between ${one} and ${next}`}, ${formatLength(z, units)} above the floor`;

/** Where the thrust crosses the wall at a height, 0 inside to 1 outside. */
function placeAt(line: readonly ThrustPoint[], z: number): number {
  const below = line.find((p) => p.z <= z) ?? line[line.length - 1];
  return below ? Math.min(1, Math.max(0, below.place)) : 0.5;
}

function stressCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, { strength }: Statics): Check {
  const { units } = setout.house;
  const { combinations } = setout.house.site;
  const id = `piers.${dome.id}`;
  if (found.thrust.factor < 1) {
    return {
      id,
      statement: `The piers of dome ${dome.id} bear what they gather.`,
      state: 'attention',
      source: 'statics',
      advice: NO_THRUST,
    };
  }
  const stressOf = (pier: Pier): number => {
    const place = placeAt(found.thrust.line, pier.z);
    const depth = 2 * Math.max(LEAST_DEPTH, Math.min(place, 1 - place)) * dome.thickness;
    return (1000 * designEffect(combinations, pier.dead, pier.snow)) / (Math.max(1, pier.width) * depth);
  };
  const worst = found.piers.reduce((a, b) => (stressOf(b) > stressOf(a) ? b : a));
  const narrowest = found.piers.reduce((a, b) => (b.width < a.width ? b : a));
  const stress = stressOf(worst);
  const statement = `The piers of dome ${dome.id} bear what they gather; the worst stands ${nameOf(worst, units)}.`;
  const formula = `load of its own width and half of each void beside it, over its width and twice the thrust's distance from the nearer face; ${designFormula(combinations)}`;
  const demand = computed(`${id}.stress`, 'compression', stress, 'MPa', formula, combinationSource(combinations), {
    'width (mm)': worst.width,
    'gathered width (mm)': worst.gathered,
    'load, dead and snow (kN)': worst.dead + worst.snow,
    'least pier': nameOf(narrowest, units),
    'its width (mm)': narrowest.width,
  });
  if (!strength) return missing(id, statement, 'material.compressive-strength', 'statics', { demand });
  const holds = stress <= strength.designMpa;
  return {
    id,
    statement,
    state: holds ? (strength.from === 'table' ? 'attention' : 'ok') : 'fails',
    demand,
    capacity: computed(
      `${id}.strength`,
      'design strength of the masonry',
      strength.designMpa,
      'MPa',
      '0.55 fb^0.7 fm^0.3 / partial factor',
      'EN 1996-1-1:2005, 3.6.1.2 and Table 3.3, by analogy (from memory)',
      { 'block strength fb (MPa)': strength.blockMpa, 'fb from': strength.from },
    ),
    ratio: ratioOf(stress, strength.designMpa),
    source: 'statics; the load follows the meridians down to the openings and then the piers',
    advice: holds
      ? 'The strength is a table value: give `material.compressive-strength` from test cubes.'
      : 'Wider piers, stronger blocks, or a tie that brings the thrust to the middle of the wall.',
  };
}

/** Arch thrust into the pier beside it, the neighbour's relief left out. */
function archCheck(found: DomeStatics, { heads }: Statics, units: LengthUnit): Check[] {
  const cases = found.piers.flatMap((pier) =>
    pier.between.flatMap((voidId) => {
      const head = heads.find((h) => h.id === voidId);
      const thrust = head?.arch?.least;
      const lever = (head?.springingZ ?? 0) - pier.z;
      const load = pier.dead + pier.snow;
      if (!head || !thrust || lever <= 0 || load <= 0) return [];
      return [{ pier, head, thrust, lever, load, factor: (pier.width / 2) * (load / (thrust * lever)) }];
    }),
  );
  if (cases.length === 0) return [];
  const worst = cases.reduce((a, b) => (b.factor < a.factor ? b : a));
  const check = factorCheck(
    {
      id: `pier-thrust.${found.id}`,
      statement: `The arches of dome ${found.id} don't push over the piers beside them; the worst is ${worst.head.id} on the pier ${nameOf(worst.pier, units)}.`,
      advice: 'A wider pier, a higher rise of the head, or a tie at its springing.',
    },
    Math.min(100, worst.factor),
    {
      'least thrust of the arch (kN)': worst.thrust,
      'its height over the pier’s foot (mm)': worst.lever,
      'load of the pier (kN)': worst.load,
      'width of the pier (mm)': worst.pier.width,
    },
  );
  const { capacity } = check;
  return [
    {
      ...check,
      source: 'statics of a block on its edge',
      ...(capacity
        ? { capacity: { ...capacity, formula: 'half width / (thrust · height / load)', source: 'statics' } }
        : {}),
    },
  ];
}
