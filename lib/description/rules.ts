import type { Draft } from './draft.js';
import type { ProblemList } from './problem-list.js';
import { checkClusters } from './rules/clusters.js';
import { checkDomes } from './rules/domes.js';
import { checkFit } from './rules/fit.js';
import { checkGround } from './rules/ground.js';
import { checkIds } from './rules/ids.js';
import { checkMasonry } from './rules/masonry.js';
import { checkMix } from './rules/mix.js';
import { checkOpenings } from './rules/openings.js';
import { checkPartitions } from './rules/partitions.js';
import { checkPegs } from './rules/pegs.js';
import { checkRooms } from './rules/rooms.js';

/** Rules between keys and sections, on whatever of the description could be read. */
export function checkRules(draft: Draft, problems: ProblemList): void {
  checkIds(draft, problems);
  checkMasonry(draft, problems);
  checkGround(draft, problems);
  checkMix(draft, problems);
  checkPegs(draft, problems);
  const domes = checkDomes(draft, problems);
  const { openings, passages } = checkOpenings(draft, problems);
  checkFit(draft, domes, openings, passages, problems);
  checkPartitions(draft, problems);
  checkRooms(draft, problems);
  checkClusters(draft, domes, openings, passages, problems);
}
