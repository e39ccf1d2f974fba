import type { Opening } from '../description/house.js';
import type { ArchSetout } from '../setout/arch.js';
import { type ClearSize, clearRectangle, clearWidthAt, glazedArea } from './clear.js';
import { EGRESS_DOOR, ESCAPE } from './rules.js';

/** Clear sizes of an opening inside its frame; lengths mm, areas m2. */
export interface OpeningSizes {
  readonly id: string;
  readonly domeId: string;
  readonly bearingRad: number;
  readonly use: Opening['use'];
  readonly frame: number;
  readonly clear: ClearSize;
  /** Beside the open leaf at the height asked of an egress door. */
  readonly atDoorHeight: number;
  readonly glazing: number;
}

/** Sizes of an opening that goes through. */
export function openingSizes({ id, bearingRad, section, opening }: ArchSetout): OpeningSizes {
  const clear = { section, frame: opening.frame };
  return {
    id,
    domeId: opening.in,
    bearingRad,
    use: opening.use,
    frame: opening.frame,
    clear: clearRectangle(clear, opening.use === 'egress window' ? ESCAPE.width : 0),
    atDoorHeight: clearWidthAt(clear, EGRESS_DOOR.height),
    glazing: opening.use === 'window' || opening.use === 'egress window' ? glazedArea(clear) : 0,
  };
}
