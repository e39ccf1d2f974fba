import { square } from '../math/elementary.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';
import { standsClear } from './clear.js';
import { lineStress } from './joints.js';
import { linesOf, type PairLines } from './pair.js';
import { type Pair, PairProgramme } from './pair-programme.js';

/** A closed ring that may press itself: height of its middle, mm, and its area across the hoop force, mm2. */
export interface PressedRing {
  readonly z: number;
  readonly area: number;
}

/** Two rings from the top down, a third of the closed courses from either end of them; fewer where there are few. */
export function pressedRings({ courses, shell, thickness }: DomeSetout, cutZ: number): PressedRing[] {
  const closed = courses.filter(({ part, from }) => part === 'shell' && shell.at(from).z >= cutZ);
  const places = new Set([(2 * closed.length) / 3, closed.length / 3].map(Math.floor));
  return closed
    .filter((_, i) => places.has(i))
    .map(({ from, to }) => ({
      z: spanPoint(shell, (from + to) / 2, thickness / 2)[1],
      area: thickness * (to - from),
    }))
    .reverse();
}

/** A wall of which some rings may press themselves. */
export interface RingedWall {
  readonly rings: readonly PressedRing[];
  readonly thickness: number;
}

/** A pair under its loads, and lines of thrust in balance with them; empty where none fits. */
export interface Trial {
  readonly pair: Pair;
  readonly lines: PairLines;
}

/** More rounds lower no sample's stress by a hundredth that comes near its strength. */
const ROUNDS = 3;

/**
 * Least greatest compression, MPa, of the lines of thrust of a pair that were found, and of its rings. It is a demand on
 * the safe side: masonry without tension that crushes at a stress f bears a force N at a distance d from its nearer
 * face on the block 2 d deep that N stands in the middle of, and rests beside it (the rectangular block of EN 1996-1-1:2005,
 * 6.1.2, from memory). A closed ring that is pressed all round alike is in balance by itself and pushes both halves
 * outward alike, as in the programme of one lune. So each line in balance, with its rings, is a state of stress in
 * balance that nowhere passes its own greatest stress, and by the lower bound theorem of plasticity the pair bears its
 * loads wherever f is as much, whatever state it really takes. Any line will do; the least harsh tells most. That of
 * the whole dome, whose other lunes push across their own planes, it does not prove.
 *
 * What must fit is F / (2 d r) <= f, F the force and N its part across the section, or F N / (2 r f) <= N d: with F and N
 * as they were in the round before, the leeways N d of a linear programme, each counted over F N / r. What is found is
 * harder than the least there is: by some hundredths where lines must come near a face, by up to a quarter where they
 * needn't.
 *
 * @param trial whose lines begin
 * @param enough a stress that is low enough to end the search
 */
function leastStress({ pair: bare, lines }: Trial, shell: RingedWall, enough: number): number {
  const { rings, thickness } = shell;
  const pair: Pair = { halves: bare.halves, tie: bare.tie, rings: rings.map(({ z }) => z) };
  let least = linesStress(lines, thickness);
  let last = lines;
  const programme = new PairProgramme(pair, 1);
  for (let round = 0; round < ROUNDS && least > enough; round++) {
    programme.recount(countsOf(pair, last, thickness));
    const found = programme.solve(1);
    if (!found || found.value < 0) break;
    last = linesOf(pair, found.at);
    const hoops = found.at.slice(4).map((push, j) => (1000 * push) / (rings[j]?.area ?? 1));
    least = Math.min(least, Math.max(linesStress(last, thickness), ...hoops));
  }
  return least;
}

/**
 * Least greatest compression of each trial that was found, MPa; `null` where no line fits. Only the hardest is sought to
 * the end: of others it is enough that they are no harder.
 */
export function leastStresses(trials: readonly Trial[], shell: RingedWall): (number | null)[] {
  const found = trials.map(({ lines }) => (lines[0].length === 0 ? null : linesStress(lines, shell.thickness)));
  const harder = [...trials.keys()].sort((a, b) => (found[b] ?? 0) - (found[a] ?? 0));
  let hardest = 0;
  for (const i of harder) {
    if (found[i] === null) continue;
    const stress = leastStress(trials[i] as Trial, shell, hardest);
    found[i] = stress;
    hardest = Math.max(hardest, stress);
  }
  return found;
}

const linesStress = (lines: PairLines, thickness: number): number =>
  Math.max(...lines.map((line) => lineStress(line, thickness)));

/** F N / r at each section of both halves over the greatest of all; 0 where no line passes it. */
function countsOf(pair: Pair, lines: PairLines, thickness: number): readonly [number[], number[]] {
  let most = 0;
  const countsOn = (which: 0 | 1): number[] => {
    const line = lines[which];
    let next = 0;
    return pair.halves[which].map((section) => {
      const p = standsClear(section, 1) ? line[next++] : undefined;
      if (!p) return 0;
      const [x, z] = section.half;
      const across = (p.vertical * x + p.horizontal * z) / Math.sqrt(square(x) + square(z));
      const force = Math.sqrt(square(p.vertical) + square(p.horizontal));
      const count = (Math.max(0, across) * force) / Math.max(p.r, thickness);
      most = Math.max(most, count);
      return count;
    });
  };
  const counts = [countsOn(0), countsOn(1)] as const;
  for (const half of counts) for (let i = 0; i < half.length; i++) half[i] = (half[i] as number) / most;
  return counts as [number[], number[]];
}
