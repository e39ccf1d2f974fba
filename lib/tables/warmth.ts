import { inReaderUnits } from '../base/reader-units.js';
import * as texts from '../base/texts/table-works.js';
import type { House } from '../description/house.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import type { Warmth } from '../works/warmth.js';
import { numberColumn, tableUnits, textColumn } from './units.js';

type Shown = ReturnType<typeof inReaderUnits>;

const MOIST = texts.moistBlocksInsulateBadly;

/** What the losses are computed with beside the blocks, and where its values come from when the description gives none. */
function valuesNote({ warmth, units }: House): string {
  const say = (value: number, unit: string) => {
    const shown = inReaderUnits(value, unit, units);
    return `${Number(shown.value.toPrecision(3))} ${shown.unit}`;
  };
  const ease = (value: number) => say(value, 'W/(m K)');
  const through = (value: number) => say(value, 'W/(m2 K)');
  return texts.computedWithRenders(
    ease(warmth.renderConductivity),
    ease(warmth.slabConductivity),
    ease(warmth.groundConductivity),
    through(warmth.window),
    through(warmth.door),
    warmth.airChanges,
  );
}

/** Transmittances and losses, each with its formula and source. */
export function warmthTable(house: House, { figures }: Warmth): Table {
  return {
    id: 'warmth',
    title: texts.warmth,
    columns: [
      textColumn('what', texts.what),
      { key: 'value', label: texts.value, kind: 'number', decimals: 3 },
      textColumn('unit', texts.unit),
      textColumn('formula', texts.formula),
      textColumn('source', texts.source),
      textColumn('limit', texts.validFor),
    ],
    rows: figures.map(({ label, value, unit, formula, source, limit }) => {
      const shown = inReaderUnits(value, unit, house.units);
      return {
        what: label,
        value: shown.value,
        unit: unit === '1' ? null : shown.unit,
        formula,
        source,
        limit: limit ?? null,
      };
    }),
    notes: [texts.heatNeededOnCold, valuesNote(house), MOIST],
  };
}

/** Layers of the shell, from the inside out. */
export function layerTable(house: HouseSetout, { layers }: Warmth): Table {
  const { units } = house.house;
  const { site } = tableUnits(units);
  const [ease, hindrance] = ['W/(m K)', 'm2 K/W'].map((unit) => inReaderUnits(1, unit, units)) as [Shown, Shown];
  return {
    id: 'layers',
    title: texts.layersOfShell,
    columns: [
      textColumn('layer', texts.layerFromInsideOut),
      numberColumn('thickness', texts.thickness, site),
      { key: 'conductivity', label: texts.conductivity, kind: 'number', unit: ease.unit, decimals: 3 },
      { key: 'resistance', label: texts.resistance, kind: 'number', unit: hindrance.unit, decimals: 3 },
    ],
    rows: layers.map(({ name, thickness, conductivity }) => ({
      layer: name,
      thickness: site.of(thickness),
      conductivity: conductivity * ease.value,
      resistance: (thickness / 1000 / conductivity) * hindrance.value,
    })),
    notes: [
      house.house.warmth.conductivity === null
        ? texts.blocksConductivityFromDensity(house.house.warmth.moistureFactor)
        : texts.blocksConductivityAsGiven(house.house.warmth.moistureFactor),
      MOIST,
    ],
  };
}
