#!/usr/bin/env node
import { EXIT } from './exit.js';
import { run } from './run.js';
import { terminalOn } from './terminal.js';

// A reader that has seen enough (`| head`) closes the pipe: no trouble of ours.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') process.exitCode = EXIT.fault;
  });
}

process.exitCode = await run(process.argv.slice(2), terminalOn(process.stdout, process.stderr, process.env));
