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
    const message = `The joint range runs from ${low} to ${high}.`;
    problems.add('range-order', at('joint-range'), message, 'Put the thinner joint first, the thicker second.');
  } else {
    if (blocks.joint < thinnest || blocks.joint > thickest) {
      const message = `The joint of ${say(blocks.joint)} lies outside its range ${say(thinnest)} to ${say(thickest)}.`;
      problems.add('joint-outside-range', at('joint'), message, 'Change "joint" or "joint-range".');
    }
    if (2 * blocks.tolerance >= thickest - thinnest) {
      const message = `A block tolerance of ${say(blocks.tolerance)} either way uses up the joint range of ${say(thickest - thinnest)}.`;
      const mend = `Cast to less than ${say((thickest - thinnest) / 2)}, or let "joint-range" reach past ${say(thinnest + 2 * blocks.tolerance)}.`;
      problems.add('tolerance-too-wide', at('tolerance'), message, mend);
    }
  }
  const least = Math.min(blocks.courseHeight, blocks.length) * THICKEST_JOINT;
  if (blocks.joint > least) {
    const [joint, limit] = formatApart(blocks.joint, least, units);
    const message = `The joint of ${joint} is more than a quarter of the course height or block length (${limit}).`;
    problems.add('joint-too-thick', at('joint'), message, 'Make joints thinner, or courses higher and blocks longer.');
  }
  if (blocks.shortestPiece > blocks.length / 2) {
    const [piece, half] = formatApart(blocks.shortestPiece, blocks.length / 2, units);
    const message = `The shortest piece of ${piece} is longer than half a block (${half}).`;
    problems.add('piece-too-long', at('shortest-piece'), message, `Give at most ${half}, or longer blocks.`);
  }
  if (blocks.leastLap > blocks.length / 2) {
    const [lap, half] = formatApart(blocks.leastLap, blocks.length / 2, units);
    const message = `The least lap of ${lap} is longer than half a block (${half}), which no bond can give.`;
    problems.add('lap-too-long', at('least-lap'), message, `Give at most ${half}, or longer blocks.`);
  }
}
