import type { Table } from '../documents/table.js';

/** One file of a package. */
export interface PackageFile {
  /** Relative, with forward slashes. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** One group of drawn files, and a line that tells of it. */
export interface DrawnSet {
  readonly files: readonly PackageFile[];
  readonly summary: string;
  /** The list of its sheets, where it has one. */
  readonly register?: Table;
}
