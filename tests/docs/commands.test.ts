import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { entryOf, LISTED } from '../../cli/commands.js';
import { changed } from '../cli/houses.js';
import { callBytes } from '../cli/in-process.js';
import { MAIN } from '../cli/program.js';
import { DOCUMENTS, fencesOf, inlineOf } from './documents.js';

/** Lines of a shell that set the machine up: `.ci/run` runs them as they stand. */
const BY_CI = ['npm ci', 'npm test'];

/** One call as it stands in a document. */
interface Call {
  readonly line: string;
  readonly args: readonly string[];
  readonly from: string | null;
  readonly to: string | null;
}

function callOf(line: string): Call | null {
  const found = /^(?:ringcourse|node dist\/cli\/main\.js) (.*)$/.exec(line);
  if (!found) return null;
  const words = [...(found[1] ?? '').matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
  const after = (sign: string) => (words.includes(sign) ? (words[words.indexOf(sign) + 1] ?? '') : null);
  const end = words.findIndex((word) => word === '<' || word === '>');
  return { line, args: end < 0 ? words : words.slice(0, end), from: after('<'), to: after('>') };
}

const shellLines = DOCUMENTS.flatMap(fencesOf)
  .filter(({ language }) => language === 'sh')
  .flatMap(({ code }) => code.split('\n'))
  .flatMap((line) => line.split(' && '))
  .map((line) => line.trim())
  .filter((line) => line !== '' && !line.startsWith('#'));
const inlineLines = DOCUMENTS.flatMap(inlineOf);
const examples = (await Promise.all(LISTED.map(entryOf))).flatMap((command) =>
  command.examples.map(([call]) => `ringcourse ${call}`),
);

const calls = new Map<string, Call>();
for (const line of [...shellLines, ...inlineLines, ...examples]) {
  const call = callOf(line);
  // A bare name of a command is spoken of, not called.
  if (call && (call.args.length > 1 || ['tables', 'schema'].includes(call.args[0] ?? '')))
    calls.set([...call.args, call.from, call.to].join(' '), call);
}
const isHelp = ({ args }: Call) => args.includes('--help');
/** Has a test of its own, since it never ends. */
const isWatch = ({ args }: Call) => args[0] === 'watch';
/** The packed package builds it, and a test of samples reads what comes out. */
const isSample = ({ args }: Call) => args.includes('samples/garden-studio.yaml');

/** Of large blocks, which are computed faster. */
const QUICK = changed('course-height: 0.25, length: 0.4', 'course-height: 0.4, length: 0.6');

let dir: string;
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'ringcourse-docs-'));
  writeFileSync(join(dir, 'house.yaml'), QUICK);
  writeFileSync(join(dir, 'larger.yaml'), QUICK.replace('radius: 2.0', 'radius: 2.2'));
  symlinkSync(resolve('samples'), join(dir, 'samples'));
});
afterAll(() => rmSync(dir, { recursive: true, force: true }));

describe('commands in the documents', () => {
  it('are those of this program, or of the build server', () => {
    const strange = shellLines.filter((line) => !callOf(line) && !BY_CI.includes(line));
    expect(strange).toEqual([]);
    expect(readFileSync('.ci/run', 'utf8')).toMatch(/npm ci\b.*&& npm test/);
    expect(calls.size).toBeGreaterThan(25);
  });

  it.each([...calls.values()].filter((call) => !isHelp(call) && !isWatch(call) && !isSample(call)))(
    '$line',
    async ({ args, from, to }) => {
      // A first description is written where none is.
      const cwd = args[0] === 'new' ? mkdtempSync(join(dir, 'new-')) : dir;
      const ran =
        from === null
          ? await callBytes(cwd, args)
          : (() => {
              const input = readFileSync(join(cwd, from));
              const { status, stdout, stderr } = spawnSync(process.execPath, [MAIN, ...args], {
                cwd,
                input,
                maxBuffer: 1 << 28,
              });
              return { code: status, out: stdout, err: String(stderr) };
            })();
      // A check that fails is told by 4, and everything is written all the same.
      expect([0, 4], ran.err).toContain(ran.code);
      if (to !== null) expect(ran.out.length).toBeGreaterThan(0);
    },
  );

  it.each([...calls.values()].filter(isHelp))('$line', async ({ args }) => {
    const { code, out } = await callBytes(dir, args);
    expect(code).toBe(0);
    expect(out.toString()).toContain(`ringcourse ${args[0]}`);
  });
});
