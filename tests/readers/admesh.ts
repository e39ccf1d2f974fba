import { readWith } from './run.js';

/** What admesh (Debian) says of an STL file before it repairs anything. */
export interface AdmeshReading {
  readonly facets: number;
  /** Facets with one, two or three edges that meet no other facet. */
  readonly disconnected: number;
  readonly parts: number;
  readonly volume: number;
  readonly degenerate: number;
  readonly backwardsEdges: number;
  readonly normalsFixed: number;
  readonly facetsReversed: number;
  readonly header: string;
  readonly min: readonly number[];
  readonly max: readonly number[];
}

export function readByAdmesh(stl: Uint8Array): AdmeshReading {
  const out = readWith({ command: 'admesh', args: [], debianPackage: 'admesh' }, { name: 'model.stl', bytes: stl });
  const number = (pattern: RegExp): number => {
    const found = pattern.exec(out)?.[1];
    if (found === undefined) throw new Error(`admesh printed nothing for ${pattern}:\n${out}`);
    return Number(found);
  };
  const axis = (which: string): number[] =>
    ['X', 'Y', 'Z'].map((a) => number(new RegExp(`${which} ${a} =\\s*(\\S+?),?\\s`)));
  return {
    facets: number(/Number of facets\s*:\s*(\d+)/),
    disconnected: number(/Total disconnected facets\s*:\s*(\d+)/),
    parts: number(/Number of parts\s*:\s*(\d+)/),
    volume: number(/Volume\s*:\s*(\S+)/),
    degenerate: number(/Degenerate facets\s*:\s*(\d+)/),
    backwardsEdges: number(/Backwards edges\s*:\s*(\d+)/),
    normalsFixed: number(/Normals fixed\s*:\s*(\d+)/),
    facetsReversed: number(/Facets reversed\s*:\s*(\d+)/),
    header: /Header\s*: (.*)/.exec(out)?.[1]?.trim() ?? '',
    min: axis('Min'),
    max: axis('Max'),
  };
}
