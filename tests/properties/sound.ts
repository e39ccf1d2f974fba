import { unzipSync } from 'fflate';
import type { PackageFile } from '../../lib/deliver/file.js';
import { auditStl } from '../../lib/writers/stl.js';
import { lintDxf } from '../readers/dxf-lint.js';
import { readByGltfValidator } from '../readers/gltf.js';

/** What is wrong with the files of a package that can be told from the bytes of each alone. */
export async function faultsIn(files: readonly PackageFile[]): Promise<string[]> {
  const models = files.filter(({ path }) => path.endsWith('.glb'));
  const scenes = await Promise.all(
    models.map(async ({ path, bytes }) => {
      const { issues } = await readByGltfValidator(bytes);
      return issues.numErrors + issues.numWarnings > 0 ? [`${path}: ${JSON.stringify(issues.messages)}`] : [];
    }),
  );
  return [...files.flatMap(faultsOf), ...scenes.flat()];
}

function faultsOf({ path, bytes }: PackageFile): string[] {
  if (!/^[a-z0-9][A-Za-z0-9./-]*$/.test(path) || path.includes('..')) return [`${path} is no plain path`];
  if (bytes.length === 0) return [`${path} is empty`];
  if (path.endsWith('.stl')) {
    const { openEdges, nonFinite, degenerate } = auditStl(bytes);
    return openEdges + nonFinite + degenerate > 0 ? [`${path} isn't closed`] : [];
  }
  if (path.endsWith('.dxf')) return lintDxf(bytes).map((fault) => `${path}: ${fault}`);
  if (path.endsWith('.pdf')) {
    const [start, end] = [bytes.subarray(0, 5), bytes.subarray(-6)].map((part) => new TextDecoder().decode(part));
    return start === '%PDF-' && end?.includes('%%EOF') ? [] : [`${path} is no whole PDF`];
  }
  if (/\.(3mf|xlsx)$/.test(path)) {
    const parts = Object.entries(unzipSync(bytes)).filter(([part]) => /\.(xml|rels|model)$/.test(part));
    if (parts.length === 0) return [`${path} holds no parts`];
    return parts.flatMap(([part, xml]) => slips(`${path}: ${part}`, xml));
  }
  return /\.(csv|svg|html)$/.test(path) ? slips(path, bytes) : [];
}

/** Values that aren't, written out as words. */
function slips(path: string, bytes: Uint8Array): string[] {
  const slip = /.{0,40}(\bNaN\b|\bInfinity\b|\bundefined\b|\[object ).{0,40}/.exec(words(path, bytes));
  return slip ? [`${path}: ${slip[0]}`] : [];
}

/** A page's script speaks of numbers that are none. */
const words = (path: string, bytes: Uint8Array): string => {
  const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  return path.endsWith('.html') ? text.replace(/<script\b[\s\S]*?<\/script>/g, '') : text;
};
