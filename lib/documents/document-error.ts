/**
 * A document that can't be written as it stands.
 * `code` is stable across versions; `part` names the solid, the view or the table.
 */
export class DocumentError extends Error {
  override readonly name = 'DocumentError';
  constructor(
    readonly code: string,
    readonly part: string,
    message: string,
  ) {
    super(`${part}: ${message}`);
  }
}
