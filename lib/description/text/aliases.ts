import { isAlias, isMap, isPair, isScalar, isSeq, type Node, type ParsedNode } from 'yaml';

/** More values than any description has. */
export const MOST_VALUES = 100_000;

export interface Expansion {
  /** Values that the text stands for with every alias written out; not counted on past `MOST_VALUES`. */
  readonly values: number;
  /** Offset of the alias that takes it past `MOST_VALUES`. */
  readonly at: number;
}

/**
 * How far aliases expand: told in one step of the text, since writing them out is what would never end.
 * An anchor counts from its end on, so that one inside itself counts as nothing.
 */
export function expansionOf(root: ParsedNode): Expansion {
  const sizes = new Map<string, number>();
  let at = 0;
  const size = (node: unknown): number => {
    if (isAlias(node)) {
      const values = sizes.get(node.source) ?? 1;
      if (values > MOST_VALUES && at === 0) at = node.range?.[0] ?? 0;
      return values;
    }
    const parts = isPair(node) ? [node.key, node.value] : isSeq(node) || isMap(node) ? node.items : [];
    const values = Math.min(
      Number.MAX_SAFE_INTEGER,
      parts.reduce((sum: number, part) => sum + size(part), 1),
    );
    const anchor = isScalar(node) || isSeq(node) || isMap(node) ? node.anchor : undefined;
    if (anchor !== undefined) sizes.set(anchor, values);
    if (values > MOST_VALUES && at === 0 && !isPair(node)) at = firstAlias(node as Node);
    return values;
  };
  return { values: size(root), at };
}

function firstAlias(node: unknown): number {
  if (isAlias(node)) return node.range?.[0] ?? 0;
  const parts = isPair(node) ? [node.key, node.value] : isSeq(node) || isMap(node) ? node.items : [];
  for (const part of parts) {
    const at = firstAlias(part);
    if (at > 0) return at;
  }
  return 0;
}
