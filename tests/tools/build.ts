import { execFileSync } from 'node:child_process';

/** Builds the program once before the tests that run it. */
export function setup(): void {
  execFileSync('npm', ['run', 'build', '--silent'], { stdio: ['ignore', 'inherit', 'inherit'] });
}
