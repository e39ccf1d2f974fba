#!/usr/bin/env node
// Before all other code, which it is about.
import './engine.js';

import { createInterface } from 'node:readline/promises';
import { EXIT } from './exit.js';
import { run } from './run.js';
import { terminalOn } from './terminal.js';

let lost = false;
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    // A reader that has seen enough (`| head`) closes the pipe: no trouble of ours. A full disk is.
    if (error.code === 'EPIPE') return;
    lost = true;
    process.exitCode = EXIT.file;
  });
}

/** Questions need a person on both sides. */
async function ask(question: string): Promise<string | null> {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  const ended = new Promise<null>((resolve) => lines.once('close', () => resolve(null)));
  // Whoever stops the questions wants no file either.
  lines.once('SIGINT', () => {
    lines.close();
    process.kill(process.pid, 'SIGINT');
  });
  const answer = await Promise.race([lines.question(question), ended]);
  lines.close();
  return answer;
}
const person = process.stdin.isTTY === true && process.stderr.isTTY === true;

const terminal = terminalOn(process.stdout, process.stderr, process.env, person ? ask : null);
const code = await run(process.argv.slice(2), terminal);
if (!lost) process.exitCode = code;
