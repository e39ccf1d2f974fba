import { readFileSync } from 'node:fs';

/** Every document that its reader may take a command or a piece of code from. */
export const DOCUMENTS = [
  'README.md',
  'cli/README.md',
  'cli/PROBLEMS.md',
  'lib/README.md',
  'samples/README.md',
  'samples/TABLES.md',
  'DEVELOPERS.md',
] as const;

export interface Fence {
  readonly document: string;
  readonly language: string;
  readonly code: string;
}

/** Fenced blocks of a document, also those that stand indented in a list. */
export function fencesOf(document: string): Fence[] {
  const text = readFileSync(document, 'utf8');
  return [...text.matchAll(/^( *)```(\w+)\n([\s\S]*?)^ *```$/gm)].map(([, indent = '', language = '', code = '']) => ({
    document,
    language,
    code: code.replaceAll(new RegExp(`^${indent}`, 'gm'), ''),
  }));
}

/** Code within a line of text, tables included; `\|` of a table's cell is a bar. */
export function inlineOf(document: string): string[] {
  const text = readFileSync(document, 'utf8').replace(/^ *```[\s\S]*?^ *```$/gm, '');
  return [...text.matchAll(/`([^`\n]+)`/g)].map(([, code = '']) => code.replaceAll('\\|', '|'));
}
