import type { Figure } from '../../base/figures.js';
import * as texts from '../../base/texts/print.js';
import type { Mesh } from '../../documents/mesh.js';
import { meshVolume, triangleNormal } from '../../documents/mesh-measure.js';

/** Common practice of extruding printers, no source: lines along every face, and how much of the rest is filled. */
const LINES = 3;
const INFILL = 0.2;

/** Volume of plastic (mm³) in a part: a skin of three lines, and a fifth of what is within. */
export function filamentVolume(mesh: Mesh, nozzle: number): number {
  const volume = meshVolume(mesh);
  const skin = Math.min(volume, areaOf(mesh) * LINES * nozzle);
  return skin + INFILL * (volume - skin);
}

/** The filament of all parts together, cm³. */
export const filamentFigure = (mm3: number, nozzle: number, scale: number): Figure => ({
  id: 'print.filament',
  label: texts.filamentOfPrintedModel,
  value: mm3 / 1000,
  unit: 'cm3',
  formula: texts.forEachPartSkin,
  source: texts.commonPracticeNoSource,
  inputs: { 'nozzle (mm)': nozzle, scale },
  limit: texts.estimateFor3Lines,
});

function areaOf(mesh: Mesh): number {
  let twice = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const [x, y, z] = triangleNormal(mesh, t);
    twice += Math.sqrt(x * x + y * y + z * z);
  }
  return twice / 2;
}
