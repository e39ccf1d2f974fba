import type { Dome } from '../house.js';
import type { Arch } from './arch.js';
import type { DomeShape } from './shape.js';

/** An arch in its dome. */
export interface Seat {
  readonly arch: Arch;
  readonly dome: Dome;
  readonly shape: Pick<DomeShape, 'radiusAt' | 'archLimit'>;
}

/** A seat that leaves wall to both sides, and by how much the arch's top is too high. */
export interface Held extends Seat {
  readonly excess: number;
}

export const wordOf = (arch: Arch): string => (arch.opening ? 'arch' : 'vault');

/** Heights at which an arch's outline turns. */
export const turnsOf = ({ baseZ, section, topZ }: Arch, grow: number): number[] => [
  baseZ,
  section.springingZ,
  section.shoulderZ(grow),
  topZ,
];
