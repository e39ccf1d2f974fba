import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { strFromU8, unzipSync } from 'fflate';
import { readWith } from './run.js';

const here = fileURLToPath(new URL('3mf/', import.meta.url));

/** What lib3mf (Debian) found in strict mode; lengths in the file's unit, 1 for millimetres. */
export interface ThreeMfReading {
  readonly unit: number;
  readonly warnings: number;
  readonly objects: readonly {
    readonly id: number;
    readonly name: string;
    readonly valid: boolean;
    readonly vertices?: number;
    readonly triangles?: number;
    /** Closed and oriented. */
    readonly sound?: boolean;
    readonly low?: readonly [number, number, number];
    readonly high?: readonly [number, number, number];
    readonly components?: number;
  }[];
  readonly items: readonly {
    readonly object: number;
    readonly partNumber: string;
    readonly move: readonly [number, number, number];
  }[];
  readonly materials: readonly string[];
}

let compiled: string | undefined;

/** The reader on lib3mf, compiled once in a folder of its own. */
function program(): string {
  if (compiled) return compiled;
  const folder = mkdtempSync(join(tmpdir(), 'ringcourse-3mf-'));
  compiled = join(folder, 'read-3mf');
  execFileSync('g++', ['-O1', '-I/usr/include/lib3mf', '-o', compiled, join(here, 'read.cpp'), '-l3MF']);
  return compiled;
}

export function readByLib3mf(bytes: Uint8Array): ThreeMfReading {
  const reader = { command: program(), args: [], debianPackage: 'lib3mf-dev' };
  return JSON.parse(readWith(reader, { name: 'model.3mf', bytes })) as ThreeMfReading;
}

export const modelXml = (bytes: Uint8Array): string =>
  strFromU8(unzipSync(bytes)['3D/3dmodel.model'] ?? new Uint8Array());

/**
 * Holds the model against the core schema of the 3MF Consortium (2015/02, as the sources of lib3mf carry it), in two
 * places put so that xmllint takes it: where it asks for a network, and where it writes the largest number for no limit.
 * @throws Error with what the schema forbids
 */
export function requireSchema(bytes: Uint8Array): void {
  const folder = mkdtempSync(join(tmpdir(), 'ringcourse-3mf-'));
  const schema = readFileSync(join(here, 'core-2015-02.xsd'), 'utf8')
    .replace('http://www.w3.org/2001/xml.xsd', join(here, 'xml.xsd'))
    .replaceAll('Occurs="2147483647"', 'Occurs="unbounded"');
  const path = join(folder, 'core.xsd');
  writeFileSync(path, schema);
  const xmllint = { command: 'xmllint', debianPackage: 'libxml2-utils' };
  readWith(
    { ...xmllint, args: ['--nonet', '--noout', '--huge', '--schema', path] },
    { name: '3dmodel.model', bytes: new TextEncoder().encode(modelXml(bytes)) },
  );
}
