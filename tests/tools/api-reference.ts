import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** One name that the library's public door lets out. */
export interface ApiEntry {
  readonly name: string;
  /** Module it is declared in, without the folder `lib/` and its ending. */
  readonly module: string;
  readonly doc: string;
  readonly declaration: string;
}

const DECLARATION = (name: string): RegExp =>
  new RegExp(String.raw`^export (?:declare )?(?:abstract )?(?:const|function|class|interface|type) ${name}\b`, 'm');

/** Everything that a built `index.d.ts` exports, with its declaration and comment. */
export function apiEntries(indexPath: string): ApiEntry[] {
  const index = readFileSync(indexPath, 'utf8');
  return [...index.matchAll(/export (?:type )?\{([^}]*)\} from '([^']+)';/g)].flatMap(([, names = '', from = '']) => {
    const path = join(dirname(indexPath), from.replace(/\.js$/, '.d.ts'));
    return names
      .split(',')
      .map((name) => name.replace(/^\s*type\s+/, '').trim())
      .filter((name) => name !== '')
      .map((name) => ({ name, module: from.replace(/^\.\/|\.js$/g, ''), ...declared(name, path) }));
  });
}

function declared(name: string, path: string): Pick<ApiEntry, 'doc' | 'declaration'> {
  const text = readFileSync(path, 'utf8');
  const at = DECLARATION(name).exec(text)?.index;
  if (at === undefined) {
    // Passed on from another module.
    const from = [...text.matchAll(/export (?:type )?\{([^}]*)\} from '([^']+)';/g)].find(([, names]) =>
      new RegExp(String.raw`\b${name}\b`).test(names ?? ''),
    );
    const local = new RegExp(String.raw`import (?:type )?\{[^}]*\b${name}\b[^}]*\} from '([^']+)';`).exec(text);
    const next = from?.[2] ?? local?.[1];
    if (next === undefined) throw new Error(`${name} is declared nowhere in ${path}`);
    return declared(name, join(dirname(path), next.replace(/\.js$/, '.d.ts')));
  }
  const before = text.slice(0, at).trimEnd();
  const doc = before.endsWith('*/') ? before.slice(before.lastIndexOf('/**')) : '';
  return { doc: docText(doc), declaration: declarationAt(text, at) };
}

/** Up to the semicolon or the brace that ends it. */
function declarationAt(text: string, at: number): string {
  let depth = 0;
  for (let i = at; i < text.length; i++) {
    const sign = text[i];
    // Comments hold any sign.
    if (text.startsWith('/*', i)) i = text.indexOf('*/', i) + 1;
    else if (text.startsWith('//', i)) i = text.indexOf('\n', i);
    else if (sign === '{' || sign === '(' || sign === '[') depth++;
    else if (sign === '}' || sign === ')' || sign === ']') {
      depth--;
      if (depth === 0 && sign === '}' && text[i + 1] === '\n') return text.slice(at, i + 1);
    } else if (sign === ';' && depth === 0) return text.slice(at, i + 1);
  }
  return text.slice(at);
}

/** A comment's words as Markdown: what a parameter, error or example is stands in a line of its own. */
function docText(comment: string): string {
  return comment
    .replace(/^\/\*\*|\*\/$/g, '')
    .split('\n')
    .map((line) => line.replace(/^\s*\* ?/, ''))
    .join('\n')
    .trim()
    .replace(/\{@link (\w+)\}/g, '`$1`')
    .replace(/@example\n([\s\S]*)$/, (_, code) => `\n\`\`\`js\n${code.trim()}\n\`\`\``)
    .replace(/^@param (\w+)/gm, '\n- `$1`:')
    .replace(/^@throws /gm, '\n- throws ')
    .replace(/^@returns /gm, '\n- gives ');
}

const TITLES: Readonly<Record<string, string>> = {
  base: 'Problems, figures, units',
  deliver: 'The whole walk',
  description: 'Descriptions',
  documents: 'Neutral documents',
  drawings: 'Drawings',
  dwelling: 'Dwelling',
  masonry: 'Masonry',
  setout: 'Set-out',
  solids: 'Solids',
  statics: 'Statics',
  tables: 'Tables',
  works: 'Works',
  writers: 'Writers',
};

/** The reference of the library's public door, as Markdown. */
export function apiReference(indexPath: string): string {
  const entries = apiEntries(indexPath);
  const groups = new Map<string, ApiEntry[]>();
  for (const entry of entries) {
    const folder = entry.module.replace(/\/.*/, '');
    groups.set(folder, [...(groups.get(folder) ?? []), entry]);
  }
  const order = ['description', 'deliver', 'setout', 'masonry', 'solids', 'statics', 'dwelling', 'works'];
  const rank = (folder: string) => (order.includes(folder) ? order.indexOf(folder) : order.length);
  const sorted = [...groups].sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : 1));
  const body = sorted.flatMap(([folder, own]) => [
    `## ${TITLES[folder] ?? folder}`,
    ...own.map(({ name, doc, declaration }) => `### ${name}\n\n${doc}\n\n\`\`\`ts\n${shortened(declaration)}\n\`\`\``),
  ]);
  return `# The library, name by name

Everything that \`import … from 'ringcourse'\` offers, made from the declarations by \`npx vitest run tests/package/api.test.ts -u\`.
How to use it: [README.md](README.md).

${body.join('\n\n')}
`;
}

const LONGEST = 60;

/** A declaration without \`export declare\`; one that goes on for pages is cut, since its own file tells more. */
function shortened(declaration: string): string {
  const lines = declaration.replace(/^export (declare )?/, '').split('\n');
  return lines.length <= LONGEST ? lines.join('\n') : [...lines.slice(0, LONGEST), '    // …', lines.at(-1)].join('\n');
}
