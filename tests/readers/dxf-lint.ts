/** One tag of a DXF file as text. */
export interface RawTag {
  readonly code: number;
  readonly value: string;
}

export function tagsOf(dxf: Uint8Array): RawTag[] {
  const lines = new TextDecoder('utf-8', { fatal: true }).decode(dxf).split('\n');
  if (lines.pop() !== '') throw new Error('The file does not end with a line end.');
  if (lines.length % 2 !== 0) throw new Error(`${lines.length} lines are no pairs of group code and value.`);
  return Array.from({ length: lines.length / 2 }, (_, i) => ({
    code: Number(lines[2 * i]),
    value: lines[2 * i + 1] as string,
  }));
}

const isReal = (c: number): boolean => (c >= 10 && c <= 59) || (c >= 110 && c <= 149) || (c >= 210 && c <= 239);
const isWhole = (c: number): boolean =>
  (c >= 60 && c <= 99) || (c >= 160 && c <= 179) || (c >= 270 && c <= 299) || (c >= 370 && c <= 389);
const isReference = (c: number): boolean => (c >= 320 && c <= 369) || (c >= 390 && c <= 399);

/** What an audit of the reader lets pass: wild numbers, reused handles, references to nothing, unknown names. */
export function lintDxf(dxf: Uint8Array): string[] {
  const tags = tagsOf(dxf);
  const faults: string[] = [];
  const handles = new Set<string>();
  let inHeader = false;
  for (const [i, { code, value }] of tags.entries()) {
    if (!Number.isInteger(code)) faults.push(`Tag ${i}: "${code}" is no group code.`);
    if (code === 2 && tags[i - 1]?.value === 'SECTION') inHeader = value === 'HEADER';
    if (isReal(code) && !/^-?\d+(\.\d+)?$/.test(value)) faults.push(`Tag ${i}: group ${code} is "${value}".`);
    if (isWhole(code) && !/^-?\d+$/.test(value)) faults.push(`Tag ${i}: group ${code} is "${value}".`);
    if (/\p{Cc}/u.test(value)) faults.push(`Tag ${i}: group ${code} holds a control character.`);
    if ((code === 5 || code === 105) && !inHeader) {
      if (handles.has(value)) faults.push(`Handle ${value} is used twice.`);
      handles.add(value);
    }
  }
  const seed = tags[tags.findIndex((t) => t.value === '$HANDSEED') + 1]?.value ?? '0';
  const greatest = Math.max(...[...handles].map((h) => Number.parseInt(h, 16)));
  if (Number.parseInt(seed, 16) <= greatest) faults.push(`The next handle ${seed} is taken.`);
  for (const { code, value } of tags)
    if (isReference(code) && value !== '0' && !handles.has(value))
      faults.push(`Group ${code} refers to ${value}, which isn't there.`);

  const named = (type: string): Set<string> => {
    const names = new Set<string>();
    tags.forEach((t, i) => {
      if (t.code !== 0 || t.value !== type) return;
      const end = tags.findIndex((u, j) => j > i && u.code === 0);
      const name = tags.slice(i, end).find((u) => u.code === 2)?.value;
      if (name !== undefined) names.add(name.toLowerCase());
    });
    return names;
  };
  const [layers, lineTypes, records] = [named('LAYER'), named('LTYPE'), named('BLOCK_RECORD')];
  for (const block of named('BLOCK')) if (!records.has(block)) faults.push(`Block ${block} has no record.`);
  for (const { code, value } of tags) {
    if (code === 8 && !layers.has(value.toLowerCase())) faults.push(`Layer ${value} isn't there.`);
    if (code === 6 && !lineTypes.has(value.toLowerCase())) faults.push(`Line type ${value} isn't there.`);
  }
  if (tags.at(-1)?.value !== 'EOF') faults.push('The file has no end.');
  return faults;
}
