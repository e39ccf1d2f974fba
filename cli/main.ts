#!/usr/bin/env node
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

const code = await run(process.argv.slice(2), terminalOn(process.stdout, process.stderr, process.env));
if (!lost) process.exitCode = code;
