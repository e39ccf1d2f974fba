import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseAst } from 'vitest/node';

/** A text for readers that stands outside the folders of texts. Holes of templates are written `…`. */
export interface Wording {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/** Symbols of units, which are no words. */
const UNITS = new Set('mm cm kg kN kPa MPa deg rad ft ft2 ft3 in lb lbf psi psf gal oz fl min px'.split(' '));
/** What a property of this name holds is read by people, be it a single word. */
const FOR_READERS = new Set('label title statement advice message mend caption heading'.split(' '));
/** Calls whose second argument is a label. */
const LABELLED = /Column$|^(givenFigure|computed)$/;
/** Errors that tell a programmer what was called wrongly, or that the program is at fault. */
const FAULTS = new Set(['Error', 'RangeError', 'TypeError']);

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

function kids(node: Node): (readonly [key: string, child: Node])[] {
  return Object.entries(node).flatMap(([key, value]) =>
    (Array.isArray(value) ? value : [value]).filter(isNode).map((child) => [key, child] as const),
  );
}

/** The text of a literal or template. */
function textOf(node: Node): string | undefined {
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type !== 'TemplateLiteral') return undefined;
  return (node.quasis as { value: { cooked: string } }[]).map((q) => q.value.cooked).join('…');
}

const wordsOf = (text: string): string[] =>
  (text.match(/\p{L}[\p{L}'’-]*/gu) ?? []).filter((word) => /\p{L}.*\p{L}/u.test(word) && !UNITS.has(word));

/** Two words beside one another, a hole counting as one; or one with a space before or after it, to be joined to others. */
export function readsLikeWording(text: string): boolean {
  // Of markup, what its reader sees or hears.
  const said = [...text.matchAll(/aria-label="([^"]*)"/g)].map((found) => found[1]);
  const seen = text.replace(/<[^>]*>|[\w:-]+="[^"]*"/g, '|').split('|');
  return [...seen, ...said].some((part = '') => {
    const words = wordsOf(part).length;
    const holes = part.match(/…/g)?.length ?? 0;
    if (words === 1 && holes === 0) return part === text && part.trim() !== part;
    return words > 0 && /(\p{L}|…)[,;:.)"'’]*\s+["'(]*(\p{L}|…)/u.test(part);
  });
}

const IGNORED =
  /^(ImportDeclaration|ExportAllDeclaration|TS(TypeAnnotation|TypeAlias.*|Interface.*|LiteralType|TypeParameter.*))$/;

/** All wording in the text of one TypeScript file. */
export function wordingIn(source: string, file: string): Wording[] {
  const found: Wording[] = [];
  const visit = (node: Node, key: string, parent: Node | undefined): void => {
    if (IGNORED.test(node.type)) return;
    if (node.type === 'NewExpression' && FAULTS.has((node.callee as { name?: string }).name ?? '')) return;
    // Keys of objects are keys of the JSON that is written.
    if (key === 'key' && parent?.type === 'Property' && parent.computed !== true) return;
    const text = textOf(node);
    if (text !== undefined) {
      const name = parent?.type === 'Property' && key === 'value' ? (parent.key as { name?: string }).name : undefined;
      const call = parent?.type === 'CallExpression' ? parent : undefined;
      const label =
        LABELLED.test((call?.callee as { name?: string } | undefined)?.name ?? '') &&
        (call?.arguments as Node[] | undefined)?.[1] === node;
      if (readsLikeWording(text) || ((label || FOR_READERS.has(name ?? '')) && wordsOf(text).length > 0))
        found.push({ file, line: source.slice(0, node.start).split('\n').length, text });
    }
    for (const [under, child] of kids(node)) visit(child, under, node);
  };
  visit(parseAst(source, { lang: 'ts' }) as unknown as Node, '', undefined);
  return found;
}

/** All TypeScript files under a folder, as paths from `root`. */
export function sourcesUnder(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.d.ts'))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}

/** All wording of files given by their paths from `root`. */
export const wordingOf = (root: string, files: readonly string[]): Wording[] =>
  files.flatMap((file) => wordingIn(readFileSync(join(root, file), 'utf8'), file));
