import { z } from 'zod';
import * as texts from '../base/texts/problems-values.js';
import { formatNumber, formatQuantity, type LengthUnit, UNITS } from '../base/units.js';
import type { Path } from './problem-list.js';
import type { LeafDoc } from './schema/leaves.js';
import { descriptionSchema } from './schema.js';

/** The part of JSON Schema draft 7 that describes a description. */
export interface JsonSchema {
  readonly $schema?: string;
  readonly title?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly default?: unknown;
  readonly pattern?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | JsonSchema;
  readonly items?: JsonSchema | readonly JsonSchema[];
  readonly anyOf?: readonly JsonSchema[];
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly leaf?: LeafDoc;
}

/** One key of the description, for documents. */
export interface KeyDoc {
  /** `domes[].stem-wall`; `prices.*` for any name. */
  readonly path: string;
  readonly about: string;
  /** What stands there: `length`, `one of door, window`, `list of 2`, `keys` ... */
  readonly kind: string;
  readonly required: boolean;
  /** As written in a file; empty where there is none. */
  readonly default: string;
  /** Least and greatest value, in metres, kPa, kg ...; empty where there are none. */
  readonly range: string;
}

let cached: JsonSchema | undefined;

/** The schema with the leaves' own metadata under `leaf`. */
function fullSchema(): JsonSchema {
  cached ??= z.toJSONSchema(descriptionSchema('m'), { io: 'input', target: 'draft-7' }) as JsonSchema;
  return cached;
}

/** JSON Schema (draft 7) of a description file, so that editors complete keys and show their meaning. */
export function descriptionJsonSchema(): JsonSchema {
  return { ...publicSchema(fullSchema()), title: texts.descriptionOfCastBlock };
}

function publicSchema({ leaf, ...node }: JsonSchema): JsonSchema {
  const about = [node.description, leaf ? leafText(leaf, 'm') : ''].filter(Boolean).join(' ');
  const { properties, items, anyOf, additionalProperties } = node;
  return {
    ...node,
    ...(about ? { description: about } : {}),
    ...(properties
      ? { properties: Object.fromEntries(Object.entries(properties).map(([k, v]) => [k, publicSchema(v)])) }
      : {}),
    ...(items ? { items: isList(items) ? items.map(publicSchema) : publicSchema(items) } : {}),
    ...(anyOf ? { anyOf: anyOf.map(publicSchema) } : {}),
    ...(typeof additionalProperties === 'object' ? { additionalProperties: publicSchema(additionalProperties) } : {}),
  };
}

function leafText(leaf: LeafDoc, units: LengthUnit): string {
  const range = rangeText(leaf, units);
  const kind = leaf.kind in UNITS ? UNITS[leaf.kind as keyof typeof UNITS].map((u) => u.name).join(', ') : '';
  const parts = [
    kind ? texts.unitsAre(kind) : '',
    range ? texts.rangeIs(range) : '',
    leaf.defaultText ? texts.defaultIs(leaf.defaultText) : '',
  ];
  return parts.filter(Boolean).join(' ');
}

function rangeText(leaf: LeafDoc, units: LengthUnit): string {
  if (leaf.least === undefined || leaf.most === undefined) return '';
  const { kind } = leaf;
  const say = (v: number) => (kind in UNITS ? formatQuantity(v, kind as keyof typeof UNITS, units) : formatNumber(v));
  return texts.rangeFromTo(say(leaf.least), say(leaf.most));
}

/** Keys that may stand at a path of the description; empty where none or any may. */
export function keysAt(path: Path): string[] {
  let nodes: readonly JsonSchema[] = [fullSchema()];
  for (const step of path) nodes = nodes.flatMap(branches).flatMap((node) => within(node, step));
  return nodes.flatMap(branches).flatMap((node) => Object.keys(node.properties ?? {}));
}

const branches = (node: JsonSchema): readonly JsonSchema[] => node.anyOf ?? [node];
const isList = (items: JsonSchema | readonly JsonSchema[]): items is readonly JsonSchema[] => Array.isArray(items);

function within(node: JsonSchema, step: string | number): JsonSchema[] {
  const { items, properties, additionalProperties } = node;
  if (typeof step === 'number') {
    const item = items && isList(items) ? items[step] : items;
    return item ? [item as JsonSchema] : [];
  }
  const found = properties && Object.hasOwn(properties, step) ? properties[step] : additionalProperties;
  return typeof found === 'object' ? [found] : [];
}

/** Every key of the description in the order of the schema, for the tables of the documents. */
export function descriptionKeys(): KeyDoc[] {
  return keyDocs(fullSchema(), '');
}

function keyDocs(parent: JsonSchema, prefix: string): KeyDoc[] {
  return branches(parent).flatMap((node) => {
    if (node.type === 'array' && node.items && !isList(node.items)) return keyDocs(node.items, `${prefix}[]`);
    const named = Object.entries(node.properties ?? {});
    if (typeof node.additionalProperties === 'object') named.push(['*', node.additionalProperties]);
    return named.flatMap(([name, child]) => {
      const path = prefix ? `${prefix}.${name}` : name;
      const own: KeyDoc = {
        path,
        about: child.description ?? '',
        kind: kindText(child),
        required: node.required?.includes(name) ?? false,
        default: child.leaf?.defaultText ?? (child.default === undefined ? '' : written(child.default)),
        range: child.leaf ? rangeText(child.leaf, 'm') : '',
      };
      return [own, ...keyDocs(child, path)];
    });
  });
}

function kindText(node: JsonSchema): string {
  if (node.leaf) return node.leaf.kind === 'fraction' ? 'percentage' : node.leaf.kind;
  if (node.const !== undefined) return String(node.const);
  if (node.enum) return texts.oneOf(node.enum.join(', '));
  if (node.anyOf) return node.anyOf.map(kindText).join(texts.orInList);
  if (node.type === 'array')
    return node.items && isList(node.items) ? texts.listOf(node.items.length) : texts.plainList;
  return node.type === 'object' ? 'keys' : 'text';
}

function written(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(written).join(', ')}]`;
  return typeof value === 'object' ? '' : String(value);
}
