import * as texts from '../../base/texts/problems-site.js';
import { formatApart, formatLength } from '../../base/units.js';
import type { Draft } from '../draft.js';
import type { Path, ProblemList } from '../problem-list.js';

/** Part of a course or block that a joint may take at most. */
const THICKEST_JOINT = 1 / 4;

/** Rules between the sizes of block, joint and lap. */
export function checkMasonry(draft: Draft, problems: ProblemList): void {
  const { blocks, units } = draft;
  if (!blocks) return;
  const [thinnest, thickest] = blocks.jointRange;
  const say = (mm: number) => formatLength(mm, units);
  const at = (key: string): Path => ['blocks', key];

  if (thinnest >= thickest) {
    const [low, high] = formatApart(thinnest, thickest, units);
    const message = texts.jointRangeRuns(low, high);
    problems.add('range-order', at('joint-range'), message, texts.putThinnerJointFirst);
  } else {
    if (blocks.joint < thinnest || blocks.joint > thickest) {
      const message = texts.jointOutsideRange(say(blocks.joint), say(thinnest), say(thickest));
      problems.add('joint-outside-range', at('joint'), message, texts.changeJointOrJoint);
    }
    if (2 * blocks.tolerance >= thickest - thinnest) {
      const message = texts.blockToleranceOfEither(say(blocks.tolerance), say(thickest - thinnest));
      const mend = texts.castToLess(say((thickest - thinnest) / 2), say(thinnest + 2 * blocks.tolerance));
      problems.add('tolerance-too-wide', at('tolerance'), message, mend);
    }
  }
  const least = Math.min(blocks.courseHeight, blocks.length) * THICKEST_JOINT;
  if (blocks.joint > least) {
    const [joint, limit] = formatApart(blocks.joint, least, units);
    const message = texts.jointTooThick(joint, limit);
    problems.add('joint-too-thick', at('joint'), message, texts.makeJointsThinner);
  }
  if (blocks.shortestPiece > blocks.length / 2) {
    const [piece, half] = formatApart(blocks.shortestPiece, blocks.length / 2, units);
    const message = texts.shortestPieceTooLong(piece, half);
    problems.add('piece-too-long', at('shortest-piece'), message, texts.giveAtMost(half));
  }
  if (blocks.leastLap > blocks.length / 2) {
    const [lap, half] = formatApart(blocks.leastLap, blocks.length / 2, units);
    const message = texts.leastLapTooLong(lap, half);
    problems.add('lap-too-long', at('least-lap'), message, texts.giveAtMost(half));
  }
}
