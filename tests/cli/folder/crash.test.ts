import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { FileError } from '../../../cli/exit.js';
import { type Manifest, sha256 } from '../../../cli/folder/manifest.js';
import { inspectFolder, writeFolder } from '../../../cli/folder/write.js';
import { bytes, delivery, temporaryFolder, tree } from './helpers.js';

const temporary = temporaryFolder();
const out = () => join(temporary.path, 'out');
const beside = (ending: string) => join(temporary.path, `.out.${ending}`);
const WRITE = pathToFileURL(resolve('dist/cli/folder/write.js')).href;
const GUARD = pathToFileURL(resolve('dist/cli/folder/guard.js')).href;

/** A process of its own that writes `out` with `text` in four files, doing `midway` as it writes the third. */
function writer(text: string, midway = ''): ChildProcess {
  const script = `
    import { writeFolder } from ${JSON.stringify(WRITE)};
    const bytes = new TextEncoder().encode(process.argv[2]);
    let asked = 0;
    const third = { path: 'a/3', get bytes() { if (++asked === 2) { ${midway} } return bytes; } };
    const files = [{ path: 'a/1', bytes }, { path: 'a/2', bytes }, third, { path: 'b/4', bytes }];
    const more = { only: null, description: '', version: '1', checks: [] };
    try {
      await writeFolder(process.argv[1], { files, ...more });
    } catch (error) {
      process.exitCode = error.name === 'FileError' ? 5 : 1;
    }`;
  return spawn(process.execPath, ['--input-type=module', '-e', script, out(), text], { stdio: 'inherit' });
}

const ended = (child: ChildProcess): Promise<number | NodeJS.Signals | null> =>
  new Promise((done) => child.on('exit', (code, signal) => done(code ?? signal)));

function lockHeldBy(pid: number, host = hostname()): void {
  writeFileSync(beside('lock'), JSON.stringify({ pid, host }));
}

const deadProcess = (): number => spawnSync(process.execPath, ['-e', '']).pid;

describe('a run that is killed', () => {
  it('midway leaves the package before it, and the next run tidies up after it', async () => {
    await writeFolder(out(), delivery({ 'a/1': 'first' }));
    const before = tree(out());
    expect(await ended(writer('second', `process.kill(process.pid, 'SIGKILL')`))).toBe('SIGKILL');
    expect(tree(out())).toEqual(before);
    expect(readdirSync(temporary.path).sort()).toEqual(['.out.lock', '.out.new', 'out']);

    const notes = await inspectFolder(out());
    expect(notes.join()).toContain('cut short');
    expect(tree(out())).toEqual(before);
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });

  it('midway is made good by writing anew', async () => {
    await ended(writer('second', `process.kill(process.pid, 'SIGKILL')`));
    expect(await ended(writer('third'))).toBe(0);
    expect(tree(out())).toMatchObject({ 'a/1': 'third', 'b/4': 'third' });
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });

  it('between the two renames gets its package back', async () => {
    await writeFolder(out(), delivery({ 'a/1': 'first' }));
    const before = tree(out());
    renameSync(out(), beside('old'));
    mkdirSync(beside('new'));
    writeFileSync(join(beside('new'), 'manifest.json'), '{"program": "ringcou');
    lockHeldBy(deadProcess());
    const notes = await inspectFolder(out());
    expect(notes.join()).toContain('Restored');
    expect(tree(out())).toEqual(before);
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });

  it('while removing the package before it has the rest removed', async () => {
    await writeFolder(out(), delivery({ 'a/1': 'first', 'b/2': 'first' }));
    renameSync(out(), beside('old'));
    rmSync(join(beside('old'), 'a/1'));
    await writeFolder(join(temporary.path, 'new'), delivery({ 'a/1': 'second' }));
    renameSync(join(temporary.path, 'new'), out());
    await inspectFolder(out());
    expect(tree(out())).toMatchObject({ 'a/1': 'second' });
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'])('by %s undoes what it began and ends by that signal', async (signal) => {
    await writeFolder(out(), delivery({ 'a/1': 'first' }));
    const before = tree(temporary.path);
    expect(await ended(writer('second', `process.kill(process.pid, '${signal}')`))).toBe(signal);
    expect(tree(temporary.path)).toEqual(before);
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'])(
    'by %s in the last stretch, when nothing else waits, still ends',
    async (signal) => {
      const script = `
      import { writeFileSync } from 'node:fs';
      import { guarded } from ${JSON.stringify(GUARD)};
      await guarded(async (onUndo) => {
        onUndo(() => writeFileSync(process.argv[1], 'undone'));
        process.kill(process.pid, '${signal}');
      });
      setTimeout(() => process.exit(0), 2000);`;
      const child = spawn(process.execPath, ['--input-type=module', '-e', script, out()], { stdio: 'inherit' });
      expect(await ended(child)).toBe(signal);
      // What was done by then stays done.
      expect(tree(temporary.path)).toEqual({});
    },
  );

  it('does not cost someone else the files they put beside or inside', async () => {
    mkdirSync(beside('new'));
    writeFileSync(join(beside('new'), 'mine.txt'), 'mine');
    await expect(writeFolder(out(), delivery({ 'a/1': 'x' }))).rejects.toThrow('mine.txt');
    expect(tree(temporary.path)).toEqual({ '.out.new/': '', '.out.new/mine.txt': 'mine' });
  });
});

describe('the lock', () => {
  it('of a living process is respected', async () => {
    lockHeldBy(process.ppid);
    const before = tree(temporary.path);
    await expect(writeFolder(out(), delivery({ 'a/1': 'x' }))).rejects.toThrow(`process ${process.ppid}`);
    await expect(writeFolder(out(), delivery({ 'a/1': 'x' }))).rejects.toThrow(FileError);
    expect(tree(temporary.path)).toEqual(before);
  });

  it('of another machine, or one that can not be read, is respected and named', async () => {
    lockHeldBy(1, 'another-machine.invalid');
    await expect(writeFolder(out(), delivery({ 'a/1': 'x' }))).rejects.toMatchObject({
      message: expect.stringContaining('another-machine.invalid'),
      mend: expect.stringContaining('.out.lock'),
    });
    writeFileSync(beside('lock'), 'torn');
    await expect(writeFolder(out(), delivery({ 'a/1': 'x' }))).rejects.toThrow('.out.lock');
  });

  it('of a dead process, or of a process that had our number, is cleared', async () => {
    for (const pid of [deadProcess(), process.pid]) {
      lockHeldBy(pid);
      await writeFolder(out(), delivery({ 'a/1': 'x' }));
      expect(readdirSync(temporary.path)).toEqual(['out']);
    }
  });

  it('lets many processes at one folder leave one whole package', async () => {
    const codes: unknown[] = [];
    for (let round = 0; round < 3; round++) {
      const texts = [1, 2, 3, 4, 5].map((n) => `run ${round}.${n}`);
      codes.push(...(await Promise.all(texts.map((text) => ended(writer(text))))));
    }
    expect(codes.filter((code) => code !== 0 && code !== 5)).toEqual([]);
    expect(codes).toContain(0);
    const now = tree(out());
    const { files } = JSON.parse(readFileSync(join(out(), 'manifest.json'), 'utf8')) as Manifest;
    expect(files).toHaveLength(4);
    for (const entry of files) expect(sha256(bytes(now[entry.path] ?? ''))).toBe(entry.sha256);
    expect(readdirSync(temporary.path)).toEqual(['out']);
  });
});
