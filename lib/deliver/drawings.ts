import type { House } from '../description/house.js';
import { houseViews } from '../drawings/house-views.js';
import { bondHouse } from '../masonry/bond/bond.js';
import { type HouseSetout, setOutHouse } from '../setout/house.js';
import { writeDxf } from '../writers/dxf.js';
import { writeSvg } from '../writers/svg.js';
import type { PackageFile } from './file.js';

/** Every view of a house, each as DXF and SVG. */
export const drawingFiles = (setout: HouseSetout): PackageFile[] =>
  houseViews(setout).flatMap((view) => [
    { path: `drawings/${view.id}.dxf`, bytes: writeDxf(view) },
    { path: `drawings/${view.id}.svg`, bytes: writeSvg(view) },
  ]);

/** The same from the description, for a thread that is given no more than that. */
export const drawHouse = (house: House): PackageFile[] => drawingFiles(bondHouse(setOutHouse(house)).setout);
