import { inReaderUnits } from '../base/reader-units.js';
import type { House } from '../description/house.js';
import type { Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import type { Warmth } from '../works/warmth.js';
import { numberColumn, tableUnits, textColumn } from './units.js';

type Shown = ReturnType<typeof inReaderUnits>;

const MOIST =
  'Moist blocks insulate badly: saturated ones conduct up to six times as well as dry ones (Jerman and others 2013). Keep rain off until the render is on, let the shell dry before it is rendered, and use no vapour-tight paint outside.';

/** What the losses are computed with beside the blocks, and where its values come from when the description gives none. */
function valuesNote({ warmth, units }: House): string {
  const say = (value: number, unit: string) => {
    const shown = inReaderUnits(value, unit, units);
    return `${Number(shown.value.toPrecision(3))} ${shown.unit}`;
  };
  const ease = (value: number) => say(value, 'W/(m K)');
  const through = (value: number) => say(value, 'W/(m2 K)');
  return `Computed with renders of ${ease(warmth.renderConductivity)}, a slab of ${ease(warmth.slabConductivity)}, ground of ${ease(warmth.groundConductivity)}, windows of ${through(warmth.window)}, doors of ${through(warmth.door)}, ${warmth.airChanges} changes of air an hour. Where the description gives none: slab as dense concrete in ISO 10456, ground as unknown ground in ISO 13370 (both from memory); renders, windows, doors and air are common practice, no source.`;
}

/** Transmittances and losses, each with its formula and source. */
export function warmthTable(house: House, { figures }: Warmth): Table {
  return {
    id: 'warmth',
    title: 'Warmth',
    columns: [
      textColumn('what', 'what'),
      { key: 'value', label: 'value', kind: 'number', decimals: 3 },
      textColumn('unit', 'unit'),
      textColumn('formula', 'formula'),
      textColumn('source', 'source'),
      textColumn('limit', 'valid for'),
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
    notes: [
      'Heat needed on a cold day, W = heat loss coefficient × (inside less outside temperature); Btu/h and °F where the table has them. An estimate to compare houses by, not a heating design.',
      valuesNote(house),
      MOIST,
    ],
  };
}

/** Layers of the shell, from the inside out. */
export function layerTable(house: HouseSetout, { layers }: Warmth): Table {
  const { units } = house.house;
  const { site } = tableUnits(units);
  const [ease, hindrance] = ['W/(m K)', 'm2 K/W'].map((unit) => inReaderUnits(1, unit, units)) as [Shown, Shown];
  return {
    id: 'layers',
    title: 'Layers of the shell',
    columns: [
      textColumn('layer', 'layer, from the inside out'),
      numberColumn('thickness', 'thickness', site),
      { key: 'conductivity', label: 'conductivity', kind: 'number', unit: ease.unit, decimals: 3 },
      { key: 'resistance', label: 'resistance', kind: 'number', unit: hindrance.unit, decimals: 3 },
    ],
    rows: layers.map(({ name, thickness, conductivity }) => ({
      layer: name,
      thickness: site.of(thickness),
      conductivity: conductivity * ease.value,
      resistance: (thickness / 1000 / conductivity) * hindrance.value,
    })),
    notes: [
      house.house.warmth.conductivity === null
        ? `Blocks: 0.072 e^(0.00125 × dry density) (ACI 122R-02 equation 2-1, from memory) × ${house.house.warmth.moistureFactor} for moisture in use.`
        : `Blocks: conductivity as given × ${house.house.warmth.moistureFactor} for moisture in use.`,
      MOIST,
    ],
  };
}
