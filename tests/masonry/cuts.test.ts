import { describe, expect, it } from 'vitest';
import { blockCuts } from '../../lib/masonry/cuts.js';
import { layBlocks } from '../../lib/masonry/lay.js';
import { nameCuts } from '../../lib/masonry/leftovers.js';
import { formIn } from '../../lib/masonry/placed.js';
import { planMasonry } from '../../lib/masonry/plan.js';
import { stopsOf } from '../../lib/masonry/stops.js';
import { withCourses } from '../../lib/masonry/with-courses.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { houseOf, openingOf } from '../tools/house.js';

// Symmetrical about bearing 0: every cut has its mirror image on the other side.
const house = houseOf({
  openings: [openingOf({ bearingDeg: 0, width: 900 }), openingOf({ id: 'back', bearingDeg: 180, width: 900, sill: 0 })],
});
const plan = planMasonry(setOutHouse(house));
const { setout } = plan;
const laid = layBlocks(setout);
const cuts = blockCuts(setout, laid);
const jambs = cuts.filter(({ block }) => block.course <= 4);

describe('cuts of blocks', () => {
  it('are marked for every cut block, and leave no more than the block had', () => {
    expect(cuts.map((c) => c.block.mark)).toEqual(laid.blocks.filter((b) => b.cutBy.length > 0).map((b) => b.mark));
    for (const { left, whole } of cuts) {
      for (const edge of ['innerLower', 'innerUpper', 'outerLower', 'outerUpper'] as const)
        expect(left[edge]).toBeLessThanOrEqual(whole[edge] + 1e-9);
    }
  });

  it('lie beside a jamb where ring and joint end: by the sine of the head kept', () => {
    const half = 450 + 200 + 10;
    expect(jambs.length).toBeGreaterThan(8);
    for (const { block, keeps, left, angleRad } of jambs) {
      if (block.part !== 'stem' || keeps === 'notch') continue;
      // The head kept stands at `bearing` from the opening's axis; the cut at asin(half / r).
      const head = keeps === 'start' ? block.startRad : block.endRad;
      const axis = block.cutBy[0] === 'entrance' ? 0 : Math.PI;
      const turn = Math.abs(Math.atan2(Math.sin(head - axis), Math.cos(head - axis)));
      expect(angleRad).toBeCloseTo(turn, 9);
      for (const [edge, r] of [
        ['innerLower', 3000],
        ['outerUpper', 3250],
      ] as const)
        expect(left[edge]).toBeCloseTo(r * (turn - Math.asin(half / r)), 6);
    }
  });
});

describe('a slot narrower than the blocks that it parts', () => {
  it('leaves two pieces of a block: the first clockwise keeps its start, the other its end', () => {
    const axis = (91.1 * Math.PI) / 180;
    const arch = { ring: 40, face: 'flush', madeAs: 'cast', voussoirs: null } as const;
    const head = { shape: 'flat', rise: 0 } as const;
    const slot = openingOf({
      id: 'slot',
      use: 'vent',
      bearingDeg: 91.1,
      width: 100,
      height: 1200,
      sill: 100,
      head,
      arch,
    });
    const parted = setOutHouse(houseOf({ openings: [slot] }));
    const pieces = blockCuts(parted, layBlocks(parted)).filter((c) => c.block.seed && c.block.part === 'stem');
    const half = 50 + 40 + 10;
    expect(pieces.map((c) => c.block.mark.slice(-1))).toEqual(expect.arrayContaining(['a', 'b']));
    // Of longer ones too both heads stay: no stop board takes the place of either.
    const longer = withCourses(parted, (_, course) => {
      const place = Math.floor(((axis - course.startRad) / (2 * Math.PI)) * course.count);
      return { ...course, leftOut: [place + 1] };
    });
    const laidLonger = layBlocks(longer);
    const both = laidLonger.blocks.filter((b) => b.seed && b.part === 'stem');
    expect(both.length).toBeGreaterThan(1);
    const stops = stopsOf(longer, laidLonger);
    for (const { course, number, mark } of both) {
      const own = longer.domes[0]?.courses[course - 1];
      expect(own && formIn(own, number).places).toBe(2);
      expect(stops.has(mark)).toBe(false);
    }
    for (const { block, keeps, left } of pieces) {
      expect(keeps).toBe(block.mark.endsWith('a') ? 'start' : 'end');
      const turn = block.mark.endsWith('a') ? axis - block.startRad : block.endRad - axis;
      expect(left.innerLower).toBeCloseTo(3000 * (turn - Math.asin(half / 3000)), 6);
    }
  });
});

describe('names of cuts', () => {
  const named = nameCuts(cuts, () => 'M1');

  it('are shared by cuts alike and by mirror images', () => {
    const byName = new Map<string, typeof named>();
    for (const n of named) byName.set(n.name, [...(byName.get(n.name) ?? []), n]);
    let pairs = 0;
    for (const group of byName.values()) {
      const [first] = group;
      for (const other of group) {
        expect(other.cut.left.innerLower).toBeCloseTo(first?.cut.left.innerLower as number, 0);
        expect(other.mirrored).toBe(other.cut.keeps !== first?.cut.keeps);
        if (other.mirrored) pairs++;
      }
    }
    expect(pairs).toBeGreaterThan(0);
    expect(byName.size).toBeLessThan(named.length);
  });

  it('of one block’s piece and its mirror image are one', () => {
    const [cut] = cuts.filter((c) => c.keeps === 'start');
    if (!cut) throw new Error('no cut keeps its first head');
    const mirror = { ...cut, keeps: 'end' as const, block: { ...cut.block, mark: 'other' } };
    const [one, other] = nameCuts([cut, mirror], () => 'M1');
    expect(other?.name).toBe(one?.name);
    expect([one?.mirrored, other?.mirrored]).toEqual([false, true]);
  });
});

describe('leftovers', () => {
  it('give pieces of the same mould that are no longer, each once, from blocks that are cast', () => {
    const mouldOf = (c: (typeof cuts)[number]) => `course ${c.block.course}`;
    const named = nameCuts(cuts, mouldOf);
    const taken = named.filter((n) => n.from !== null);
    expect(taken.length).toBeGreaterThan(0);
    expect(new Set(taken.map((n) => n.from)).size).toBe(taken.length);
    for (const { cut, from } of taken) {
      const source = named.find((n) => n.cut.block.mark === from);
      if (!source) throw new Error(`no block ${from}`);
      expect(source.from).toBeNull();
      expect(mouldOf(source.cut)).toBe(mouldOf(cut));
      for (const edge of ['innerLower', 'innerUpper', 'outerLower', 'outerUpper'] as const)
        expect(source.cut.whole[edge] - source.cut.left[edge]).toBeGreaterThanOrEqual(cut.left[edge]);
    }
  });

  // A saw takes 5 mm (common practice, no source).
  it.each<readonly [what: string, pieces: readonly number[], from: readonly (string | null)[]]>([
    ['are shorter by the saw’s width: what just fits', [250, 145], [null, 'b0']],
    ['are shorter by the saw’s width: what is a millimetre too long', [250, 146], [null, null]],
    ['are taken from the shortest that does', [300, 200, 90], [null, null, 'b0']],
  ])('%s', (_, pieces, from) => {
    const [cut] = cuts.filter((c) => c.keeps === 'start');
    if (!cut) throw new Error('no cut keeps its first head');
    const all = (mm: number) => ({ innerLower: mm, innerUpper: mm, outerLower: mm, outerUpper: mm });
    const marked = pieces.map((mm, k) => ({
      ...cut,
      block: { ...cut.block, mark: `b${k}` },
      left: all(mm),
      whole: all(400),
    }));
    expect(nameCuts(marked, () => 'M1').map((n) => n.from)).toEqual(from);
  });
});
