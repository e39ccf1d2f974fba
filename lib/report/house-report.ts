import type { Check } from '../base/figures.js';
import { figureText } from '../base/reader-units.js';
import * as texts from '../base/texts/report.js';
import type { LengthUnit } from '../base/units.js';
import type { Report, ReportSection } from '../documents/report.js';
import type { HouseSetout } from '../setout/house.js';
import type { Statics } from '../statics/results.js';
import { forceDiagram } from './force-diagram.js';
import { thrustDiagram } from './thrust-diagram.js';

/** Checks that belong together, under one heading; diagrams follow those of `statics`. */
export interface CheckGroup {
  readonly id: string;
  readonly title: string;
  readonly checks: readonly Check[];
}

export interface HouseVerdict {
  readonly groups: readonly CheckGroup[];
  readonly summary: readonly string[];
  readonly cautions: readonly string[];
}

/** Everything computed and judged of a house as one report, with forces and thrusts drawn in each dome's section. */
export function houseReport(setout: HouseSetout, statics: Statics, verdict: HouseVerdict): Report {
  const { project, site, material, wall, units } = setout.house;
  const facts: (readonly [string, string])[] = [
    [texts.number, project.number],
    [texts.revision, project.revision],
    [texts.date, project.date ?? texts.undated],
    [texts.address, project.address],
    [texts.client, project.client],
    [texts.drawnBy, project.drawnBy],
    [
      texts.wall,
      texts.wallAndDryDensity(figureText(wall.thickness, 'mm', units), figureText(material.dryDensity, 'kg/m3', units)),
    ],
    [texts.loads, loadsText(site, units)],
  ];
  return {
    title: texts.checksTitle(project.title),
    facts: facts.filter(([, value]) => value !== ''),
    summary: verdict.summary,
    cautions: verdict.cautions,
    units,
    sections: verdict.groups.flatMap((group) => [
      { title: group.title, texts: [], diagrams: [], checks: group.checks },
      ...(group.id === 'statics' ? diagramSections(setout, statics) : []),
    ]),
  };
}

function diagramSections(setout: HouseSetout, statics: Statics): ReportSection[] {
  const { units } = setout.house;
  return setout.domes.flatMap((dome) => {
    const found = statics.domes.find((d) => d.id === dome.id);
    if (!found) return [];
    const footing = setout.footings.find((f) => f.domeId === dome.id) ?? null;
    return [
      {
        title: texts.forcesAndThrust(dome.id),
        texts: [],
        diagrams: [forceDiagram(dome, found, units), thrustDiagram(dome, footing, found, units)],
        checks: [],
      },
    ];
  });
}

function loadsText(site: HouseSetout['house']['site'], units: LengthUnit): string {
  const load = (name: string, value: number | null, unit: string) =>
    `${name} ${value === null ? texts.notGiven : figureText(value, unit, units)}`;
  return [
    load(texts.snow, site.snowKpa, 'kPa'),
    load(texts.wind, site.windKpa, 'kPa'),
    load(texts.seismicCoefficient, site.seismicCoefficient, '1'),
    ...(site.seismicVertical === null ? [] : [load(texts.seismicVertical, site.seismicVertical, '1')]),
    texts.combinedBy(site.combinations),
  ].join(', ');
}
