/** Where a problem stands in a description file. Lines and columns count from 1. */
export interface Where {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/**
 * One thing that is wrong, told so that its reader can mend it.
 * `code` is stable across versions; `path` names the key (`openings[0].width`); `where` is missing
 * when the description came in as an object and not as text.
 */
export interface Problem {
  readonly code: string;
  readonly path: string;
  readonly where?: Where;
  /** What is wrong, in the user's units. */
  readonly message: string;
  /** How to mend it. */
  readonly mend: string;
}

/** All problems of one description at once. */
export class DescriptionError extends Error {
  override readonly name = 'DescriptionError';
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map((p) => `${p.path}: ${p.message} ${p.mend}`).join('\n'));
  }
}
