import { nearest } from './library.js';

/** `Did you mean build?`, or `otherwise` when no known name is near the typed one. */
export function didYouMean(typed: string, known: readonly string[], otherwise: string): string {
  const near = nearest(typed, known);
  return near === null ? otherwise : `Did you mean ${near}?`;
}
