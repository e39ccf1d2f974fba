import * as texts from '../../base/texts/print.js';
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
    title: texts.partsOfModel(print.scale),
    columns: [
      text('part', 'part'),
      { key: 'count', label: texts.count, kind: 'integer' },
      text('plate', 'plate'),
      number('x', texts.alongBed, 'mm', 1),
      number('y', texts.acrossBed, 'mm', 1),
      number('z', 'height', 'mm', 1),
      number('volume', texts.volumeOfOne, 'cm3', 2),
      number('filament', texts.filamentForOne, 'cm3', 2),
      number('overhang', texts.widestOverhang, 'mm', 1),
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
      texts.filamentNote(plates, figure.label, figure.value.toFixed(0), figure.unit, figure.formula, figure.limit),
      texts.supportIsWantedWhere,
      ...tellings(model),
    ],
  };
}

/** Sizes that the model has otherwise than the house. */
export function changeTable({ plan }: PrintModel): Table {
  const { sizes, thickened } = plan;
  return {
    id: 'thickened',
    title: texts.whatModelHasThicker,
    columns: [
      text('what', 'what'),
      number('house', texts.inHouse, 'mm', 0),
      number('model-house', texts.inModelAtFull, 'mm', 0),
      number('house-scaled', texts.houseAtScale, 'mm', 2),
      number('model', texts.inModel, 'mm', 2),
    ],
    rows: thickened.map(({ what, from, to }) => ({
      what,
      house: from,
      'model-house': to,
      'house-scaled': from / sizes.scale,
      model: to / sizes.scale,
    })),
    notes: [texts.nothingIsThinner(plan.setout.house.print.thinnest)],
  };
}

/** Where parts too high for the printer are parted, in lines. */
function partings({ domes, setout, baseCuts, sizes }: PrintPlan): string[] {
  const lines = (part: string, cuts: readonly HeightCut[]) =>
    cuts.flatMap(({ z, joint: { dome, course }, pegs }) => {
      const count = pegs.reduce((n, own) => n + (own?.at.length ?? 0), 0);
      const joint = course === null ? texts.underCrown(dome) : texts.aboveCourse(course, dome);
      const loose = setout.domes.filter((_, i) => pegs[i]?.at.length === 0).map(({ id }) => id);
      return [
        texts.partedAtJoint(part, joint, (z / sizes.scale).toFixed(1), count),
        ...(loose.length > 0 ? [texts.noPegsOn(part, loose.join(', '))] : []),
      ];
    });
  return [
    ...lines(texts.theBase, baseCuts),
    ...setout.domes.flatMap(({ id }, i) => lines(texts.roofOf(id), domes[i]?.roofCuts ?? [])),
  ];
}

/** What else of the model isn't as one might expect, in lines. */
function tellings({ plan, plain }: PrintModel): string[] {
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
    ...(fixed.length > 0 ? [texts.roofStaysOnWhere(fixed.join(', '))] : []),
    ...(loose.length > 0 ? [texts.noPlaceForPegs(loose.join(', '))] : []),
    ...(fine.length > 0 ? [texts.jointsAreTooClose(fine.join('; '))] : []),
  ];
}
