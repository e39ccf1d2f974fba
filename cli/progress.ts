import type { Terminal } from './terminal.js';

/** Tells of the stages of long work, each with its time. */
export interface Progress {
  readonly stage: (name: string) => void;
  readonly end: () => void;
}

const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;

/**
 * Progress on standard error: at a terminal each stage's name stands while it runs and its own time follows; elsewhere
 * a stage is one line, with the time since the start.
 * @param now milliseconds
 */
export function progressOn(terminal: Terminal, now: () => number = () => performance.now()): Progress {
  const start = now();
  let running: number | null = null;
  const finish = () => {
    if (running !== null) terminal.note(['faint', seconds(now() - running).padStart(8)]);
    running = null;
  };
  if (!terminal.live)
    return { stage: (name) => terminal.note(`${seconds(now() - start).padStart(8)}  ${name}`), end: () => undefined };
  return {
    stage: (name) => {
      finish();
      running = now();
      terminal.part(`  ${name.padEnd(24, ' ')}`);
    },
    end: finish,
  };
}
