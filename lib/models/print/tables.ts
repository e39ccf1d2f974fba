import type { Column, Table } from '../../documents/table.js';
import { filamentFigure } from './filament.js';
import type { HeightCut } from './height-cuts.js';
import type { PrintPlan } from './plan.js';
import type { PrintModel } from './print-model.js';

const text = (key: string, label: string): Column => ({ key, label, kind: 'text' });
const number = (key: string, label: string, unit: string, decimals: number): Column => ({
  key,
  label,
  kind: 'number',
  unit,
  decimals,
});

/** Filament of all parts, mm³. */
export const filamentOf = ({ parts }: PrintModel): number => parts.reduce((sum, p) => sum + p.count * p.filament, 0);

/** Every printed part: how many, on which plate, how large, how much filament, whether it wants support. */
export function partTable(model: PrintModel): Table {
  const { parts, places, plan, plates } = model;
  const { print } = plan.setout.house;
  const figure = filamentFigure(filamentOf(model), print.nozzle, print.scale);
  const platesOf = (part: number) =>
    [...new Set(places.filter((place) => place.part === part).map((place) => place.plate))].sort((a, b) => a - b);
  return {
    id: 'parts',
    title: `Parts of the model at 1:${print.scale}`,
    columns: [
      text('part', 'part'),
      { key: 'count', label: 'count', kind: 'integer' },
      text('plate', 'plate'),
      number('x', 'along the bed', 'mm', 1),
      number('y', 'across the bed', 'mm', 1),
      number('z', 'height', 'mm', 1),
      number('volume', 'volume of one', 'cm3', 2),
      number('filament', 'filament for one', 'cm3', 2),
      number('overhang', 'widest overhang', 'mm', 1),
      text('support', 'support'),
    ],
    rows: parts.map((part, k) => ({
      part: part.name,
      count: part.count,
      plate: platesOf(k).join(', '),
      x: part.size[0],
      y: part.size[1],
      z: part.size[2],
      volume: part.volume / 1000,
      filament: part.filament / 1000,
      overhang: part.overhang,
      support: part.supported ? 'yes' : 'no',
    })),
    notes: [
      `${plates} ${plates === 1 ? 'plate' : 'plates'}; ${figure.label}: about ${figure.value.toFixed(0)} ${figure.unit} (${figure.formula}; ${figure.limit}).`,
      'Support is wanted where faces lean out by more than 45 degrees over a stretch too wide to bridge; the widest overhang is four times a face’s area over its rim. Common practice, no source.',
      ...tellings(model),
    ],
  };
}

/** Sizes that the model has otherwise than the house. */
export function changeTable({ plan }: PrintModel): Table {
  const { sizes, thickened } = plan;
  return {
    id: 'thickened',
    title: 'What the model has thicker than the house',
    columns: [
      text('what', 'what'),
      number('house', 'in the house', 'mm', 0),
      number('model-house', 'in the model, at full size', 'mm', 0),
      number('house-scaled', 'the house at scale', 'mm', 2),
      number('model', 'in the model', 'mm', 2),
    ],
    rows: thickened.map(({ what, from, to }) => ({
      what,
      house: from,
      'model-house': to,
      'house-scaled': from / sizes.scale,
      model: to / sizes.scale,
    })),
    notes: [
      `Nothing is thinner than ${plan.setout.house.print.thinnest} mm in the model: walls, rings and curbs grow outward, niches become shallower.`,
    ],
  };
}

/** Where parts too high for the printer are parted, in lines. */
function partings({ domes, setout, baseCuts, sizes }: PrintPlan): string[] {
  const lines = (what: string, cuts: readonly HeightCut[]) =>
    cuts.map(({ z, joint: { dome, course }, pegs }) => {
      const count = pegs.reduce((n, own) => n + (own?.at.length ?? 0), 0);
      const joint = course === null ? `under the crown of ${dome}` : `above course ${course} of ${dome}`;
      const loose = setout.domes.filter((_, i) => pegs[i]?.at.length === 0).map(({ id }) => id);
      return `The ${what} is higher than the printer reaches and is parted at the joint ${joint}, ${(z / sizes.scale).toFixed(1)} mm above the floor of the model; what stands on it sits on ${count} pegs${loose.length > 0 ? `, none of them in ${loose.join(', ')}, where there is no place for any` : ''}.`;
    });
  return [
    ...lines('base', baseCuts),
    ...setout.domes.flatMap(({ id }, i) => lines(`roof of ${id}`, domes[i]?.roofCuts ?? [])),
  ];
}

/** What else of the model isn't as one might expect, in lines. */
export function tellings({ plan, plain }: PrintModel): string[] {
  const { domes, setout } = plan;
  const asked = setout.house.print.roof !== 'fixed';
  const named = (keep: (i: number) => boolean) => setout.domes.filter((_, i) => keep(i)).map((dome) => dome.id);
  const fixed = asked ? named((i) => domes[i]?.level === null) : [];
  const loose = named((i) => domes[i]?.pegs?.at.length === 0);
  const fine = setout.domes.flatMap((dome, i) => {
    const courses = plain[i] ?? [];
    return courses.length > 0 ? [`${dome.id} ${courses.join(', ')}`] : [];
  });
  return [
    ...partings(plan),
    ...(fixed.length > 0 ? [`The roof stays on where openings reach too high to look in: ${fixed.join(', ')}.`] : []),
    ...(loose.length > 0 ? [`No place for pegs between the openings, the roof lies loose: ${loose.join(', ')}.`] : []),
    ...(fine.length > 0
      ? [`Joints are too close together for the nozzle, and left out, in these courses: ${fine.join('; ')}.`]
      : []),
  ];
}
