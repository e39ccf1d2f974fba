import { describe, expect, it } from 'vitest';
import { houseFrom } from '../../lib/description/read.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { castShape } from '../../lib/masonry/moulds/shape.js';
import { blockAtHome } from '../../lib/masonry/placed.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { mouldRelease, mouldReleases, releaseCheck } from '../../lib/works/mould-release.js';

const DEG = Math.PI / 180;

const planOf = (
  length: number,
  height: number,
  boards: 'loose' | 'fixed',
  stem = 0,
  faces: 'curved' | 'flat' = 'curved',
) =>
  planMasonry(
    setOutHouse(
      houseFrom({
        format: 1,
        units: 'm',
        domes: [{ id: 'hall', at: [0, 0], radius: 2, profile: 'hemisphere', 'stem-wall': stem }],
        blocks: { length, 'course-height': height, heaviest: '80 kg', faces },
        casting: { 'bed-boards': boards },
      }),
    ),
  );

const checkOf = (plan: ReturnType<typeof planOf>) => releaseCheck(plan, layBlocks(plan.setout));
const releasesOf = (plan: ReturnType<typeof planOf>) => mouldReleases(plan, layBlocks(plan.setout));

describe('the undercut check', () => {
  it('fails where long low blocks hook their upper bed behind a fixed board, and says what to change', () => {
    const [check] = checkOf(planOf(1, 0.12, 'fixed'));
    expect(check).toMatchObject({ id: 'mould-release', state: 'fails' });
    expect(check?.capacity?.value).toBeLessThan(-1);
    expect(check?.capacity?.inputs).toMatchObject({ side: 'upper bed', moves: 'block' });
    expect(check?.advice).toContain('casting.bed-boards: loose');
  });

  it('is ok for the same blocks with loose boards, and for short high ones between fixed ones', () => {
    expect(checkOf(planOf(1, 0.12, 'loose'))[0]?.state).toBe('ok');
    expect(checkOf(planOf(0.4, 0.25, 'fixed'))[0]?.state).toBe('ok');
  });

  it('is no more than attention for the parallel beds of a stem wall between fixed boards', () => {
    const [check] = checkOf(planOf(0.4, 0.25, 'fixed', 0.6));
    expect(check?.state).toBe('attention');
    expect(check?.capacity?.value).toBeCloseTo(0, 6);
    expect(check?.advice).toContain('M1');
  });

  it('has the draft of the upper bed’s corner in closed form', () => {
    // Normal of the upper bed at its corner, elevation N and ψ from the middle, against outward in the middle at M:
    // sin(draft) = sin N cos M cos ψ − cos N sin M, by the scalar product of the two.
    const plan = planOf(1, 0.12, 'fixed');
    for (const { mould, id } of plan.moulds.moulds) {
      const shape = castShape(blockAtHome(mould), plan.setout.house.blocks);
      const step = mouldRelease(id, shape, 'fixed').steps.at(-1);
      if (step?.tightest !== 'upper bed') continue;
      const { upper, middle } = mould.parent.at;
      const [inner, outer] = [shape.at(1, 0, 1), shape.at(1, 1, 1)].map(([across], i) => {
        const r = (upper.r + i * mould.parent.thickness * upper.normal[0]) * shape.grow;
        return Math.asin(across / r);
      }) as [number, number];
      const psi = Math.max(inner, outer);
      const [n, m] = [upper.normalRad, middle.normalRad];
      const draft = Math.asin(Math.sin(n) * Math.cos(m) * Math.cos(psi) - Math.cos(n) * Math.sin(m));
      expect(step.draftRad / DEG, id).toBeCloseTo(draft / DEG, 1);
    }
  });
});

describe('how a mould comes apart', () => {
  it.each(['curved', 'flat'] as const)('with %s faces: extrados first, boards next, the block last', (faces) => {
    for (const release of releasesOf(planOf(0.4, 0.25, 'loose', 0.6, faces))) {
      expect(release.steps.map((s) => s.moves)).toEqual([
        'form of the extrados',
        'board of the upper bed',
        'board of the lower bed',
        'block',
      ]);
      for (const step of release.steps) expect(step.draftRad, release.mould).toBeGreaterThan(0);
    }
  });

  it('the floor is packed up by what makes the two heads of a wedge level: thickness times the sine of their angle', () => {
    const plan = planOf(0.4, 0.25, 'loose', 0.6);
    const [first] = plan.moulds.moulds;
    if (!first) throw new Error('a house has a mould');
    const shape = castShape(blockAtHome(first.mould), plan.setout.house.blocks);
    const { packing } = mouldRelease('M1', shape, 'loose');
    // On a stem wall the heads' planes pass the axis: each leans by half their angle.
    const half = Math.atan(first.mould.slope);
    expect(packing.outerLower).toBeCloseTo(0, 9);
    expect(packing.outerUpper).toBeCloseTo(0, 9);
    expect(packing.innerLower).toBeCloseTo(shape.thickness * Math.sin(2 * half), 6);
    expect(packing.innerUpper).toBeCloseTo(packing.innerLower, 9);
  });
});
