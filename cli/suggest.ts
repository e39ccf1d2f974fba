import { nearest } from './library.js';
import * as texts from './texts/options.js';

/** `Did you mean build?`, or `otherwise` when no known name is near the typed one. */
export function didYouMean(typed: string, known: readonly string[], otherwise: string): string {
  const near = nearest(typed, known);
  return near === null ? otherwise : texts.didYouMean(near);
}
