import * as texts from '../../base/texts/problems-openings.js';
import { SAME_POINT } from '../../base/tolerances.js';
import { formatApart, formatLength, type LengthUnit } from '../../base/units.js';
import type { Draft } from '../draft.js';
import type { Head, Opening } from '../house.js';
import type { Path, ProblemList } from '../problem-list.js';

const LOWEST_SILL = 50;
/** Wall that a niche leaves behind it. */
const LEAST_BACK = 40;
/** Rise of the lowest segmental head as part of its width; below it the head is flat. */
const LOWEST_HEAD = 1 / 20;

/**
 * Rules within one opening or passage.
 * @returns those whose section holds, so that they can be held against their domes
 */
export function checkOpenings(draft: Draft, problems: ProblemList): Pick<Draft, 'openings' | 'passages'> {
  const { units, wall } = draft;
  const openings = draft.openings.filter(({ path, value }) => {
    checkUse(value, path, units, problems);
    checkRing(value, path, units, problems);
    if (wall && value.depth !== null && value.use === 'niche') checkNiche(value, wall.thickness, path, units, problems);
    return headHolds(value, path, units, problems);
  });
  const passages = draft.passages.filter(({ path, value }) => headHolds(value, path, units, problems));
  return { openings, passages };
}

interface Headed {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly head: Head;
}

function headHolds(opening: Headed, path: Path, units: LengthUnit, problems: ProblemList): boolean {
  const { width, height, head } = opening;
  const { shape, rise } = head;
  const half = width / 2;
  const at = [...path, 'head'];
  const refuse = (needed: string, limit: number): false => {
    const [given, bound] = formatApart(rise, limit, units);
    const message = texts.headRises(shape, opening.id, given, needed, bound);
    problems.add('head-rise', at, message, texts.changeRiseRemove);
    return false;
  };
  if (shape === 'flat' && rise !== 0) return refuse(texts.hasNoRise, 0);
  if (shape === 'semicircular' && Math.abs(rise - half) > SAME_POINT) return refuse(texts.risesHalfItsWidth, half);
  if (shape === 'segmental' && rise > half) return refuse(texts.risesAtMostHalf, half);
  if (shape === 'segmental' && rise < width * LOWEST_HEAD)
    return refuse(texts.risesAtLeastTwentieth, width * LOWEST_HEAD);
  if (shape === 'pointed' && rise <= half) return refuse(texts.risesMoreThanHalf, half);
  if (rise <= height) return true;
  const [given, whole] = formatApart(rise, height, units);
  const message = texts.headRisesTooHigh(shape, opening.id, given, whole);
  const mend = texts.giveHeightOrLowerHead(formatLength(rise, units));
  problems.add('head-too-high', [...path, 'height'], message, mend);
  return false;
}

function checkUse(opening: Opening, path: Path, units: LengthUnit, problems: ProblemList): void {
  const { id, use, sill, depth } = opening;
  if (use === 'door' && sill !== 0) {
    const message = texts.doorHasSill(id, formatLength(sill, units));
    problems.add('sill-of-door', [...path, 'sill'], message, texts.removeSillOrMake);
  }
  if (use !== 'door' && sill < LOWEST_SILL) {
    const [given, least] = formatApart(sill, LOWEST_SILL, units);
    const message = texts.sillTooLow(id, given, use, least);
    problems.add('sill-too-low', [...path, 'sill'], message, texts.raiseSillOrMake);
  }
  if (use === 'niche' && depth === null)
    problems.add('niche-depth', path, texts.nicheHasNoDepth(id), texts.addDepth, 'key');
  if (use !== 'niche' && depth !== null) {
    const message = texts.depthWithoutNiche(use, id);
    problems.add('depth-not-niche', [...path, 'depth'], message, texts.removeDepthOrWrite);
  }
}

function checkRing(opening: Opening, path: Path, units: LengthUnit, problems: ProblemList): void {
  const { id, arch, frame, width, height } = opening;
  const at = [...path, 'arch', 'voussoirs'];
  if (arch.voussoirs !== null && arch.madeAs === 'cast')
    problems.add('voussoirs-cast', at, texts.castArchHasNoVoussoirs(id), texts.writeMadeAsVoussoirs);
  else if (arch.voussoirs !== null && arch.voussoirs % 2 === 0)
    problems.add(
      'voussoirs-even',
      at,
      texts.voussoirsMustBeOdd(id, arch.voussoirs),
      texts.giveOneOf(arch.voussoirs - 1, arch.voussoirs + 1),
    );
  if (2 * frame < width && frame < height) return;
  const message = texts.framesLeaveNoOpening(
    formatLength(frame, units),
    id,
    formatLength(width, units),
    formatLength(height, units),
  );
  problems.add('frame-too-wide', [...path, 'frame'], message, texts.makeFrameNarrower);
}

function checkNiche(opening: Opening, thickness: number, path: Path, units: LengthUnit, problems: ProblemList): void {
  const { depth, arch, id } = opening;
  const most = thickness + (arch.face === 'flush' ? 0 : arch.face) - LEAST_BACK;
  if (depth === null || depth <= most) return;
  const [given, limit] = formatApart(depth, most, units);
  const message = texts.nicheTooDeep(id, given, formatLength(LEAST_BACK, units), limit);
  const mend = texts.makeItShallower;
  problems.add('niche-too-deep', [...path, 'depth'], message, mend);
}
