import { describe, expect, it } from 'vitest';
import type { House } from '../../lib/description/house.js';
import { auditView } from '../../lib/documents/drawing-audit.js';
import { bareView } from '../../lib/drawings/draft.js';
import { NOTHING_HANDED } from '../../lib/drawings/handed.js';
import { houseSheets } from '../../lib/drawings/sheets/house-sheets.js';
import { thrustDrafts } from '../../lib/drawings/thrust-section.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { staticsOf } from '../../lib/statics/statics.js';
import { SHAPES } from '../properties/houses.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const TIE = { level: 'above openings', bars: 2, diameter: 10, yieldMpa: 500, bondMpa: null, lap: null } as const;
const made = (part: Partial<House> = {}) => {
  const setout = setOutHouse(houseOf({ openings: [openingOf()], tie: TIE, ...part }));
  const statics = staticsOf(setout);
  const [draft] = thrustDrafts(setout, statics);
  if (!draft) throw new Error('nothing drawn');
  const drafted = draft.draw(50);
  return { setout, dome: statics.domes[0], draft, drafted, view: bareView(draft, drafted) };
};
const onThrust = ({ view }: ReturnType<typeof made>) =>
  view.primitives.filter((p) => 'layer' in p && p.layer === 'thrust');

describe('a section with the line of thrust', () => {
  const section = made();

  it('draws it on both sides where the statics has it, with the tie in the middle of the wall', () => {
    const lines = onThrust(section).filter((p) => p.kind === 'path');
    const line = section.dome?.thrust.line.filter((p) => p.r >= 0) ?? [];
    expect(lines).toHaveLength(2);
    for (const [k, side] of [-1, 1].entries()) {
      const path = lines[k];
      if (path?.kind !== 'path') throw new Error('no line');
      expect(path.segments.length).toBeGreaterThan(line.length - 20);
      const end = path.segments.at(-1);
      if (end?.kind !== 'line') throw new Error('no straight piece');
      expect(end.to[0]).toBeCloseTo(side * (line.at(-1)?.r ?? 0), 9);
      expect(end.to[1]).toBeCloseTo(line.at(-1)?.z ?? 0, 9);
    }
    const ties = onThrust(section).filter((p) => p.kind === 'circle');
    expect(ties).toHaveLength(2);
    for (const tie of ties) {
      if (tie.kind !== 'circle') continue;
      expect(tie.centre[1]).toBeCloseTo(section.dome?.tie?.z ?? 0, 9);
      const dome = section.setout.domes[0];
      expect(Math.abs(tie.centre[0]) - (dome?.radiusAt(tie.centre[1]) ?? 0)).toBeCloseTo(125, 9);
    }
  });

  it('goes through wall that no opening cuts, and says what it shows', () => {
    // The door lies at 180 degrees: the plane of the house's own section would run along it.
    expect(section.draft.id).toBe('thrust-hall');
    const { notes, title } = section.drafted.foot;
    expect(title).toBe('Line of thrust, dome hall');
    expect(notes.join(' ')).toContain(`geometric factor ${section.dome?.thrust.factor.toFixed(2)}`);
    expect(auditView(section.view)).toEqual([]);
    const levels = section.view.primitives.filter((p) => p.kind === 'level').map((p) => p.label);
    expect(levels.join(' ')).toContain('rings closed above');
    expect(levels.join(' ')).toContain('ring tie');
  });

  const RISES = { hemisphere: 3000, segmental: 2400, pointed: 3800, catenary: 3200, elliptical: 2300 } as const;
  it.each(SHAPES)('is sound up to the top of its levels: %s', (shape) => {
    const { view } = made({ domes: [domeOf({ shape, rise: RISES[shape] })] });
    expect(auditView(view)).toEqual([]);
  });

  it('stands on a sheet of the structural summary, in parts where no scale gives it room', () => {
    expect(shownOn('A3', 3000).map(({ view }) => view.id)).toEqual(['thrust-hall']);
    expect(shownOn('A3', 40_000).length).toBeGreaterThan(1);
  });

  it('is drawn as large as a sheet has room for, at a smaller scale than plans where it has none at theirs', () => {
    const scales = (scale: number) => shownOn('A3', 3000, scale).map((s) => s.view.scale);
    expect(scales(50)).toEqual([50]);
    expect(scales(100)).toEqual([50]);
    expect(scales(20)).toEqual([50]);
  });

  /** Views on the sheets of the structural summary of a pointed dome. */
  function shownOn(sheet: string, radius: number, scale: number | null = null) {
    const { setout } = made({ domes: [domeOf({ radius, shape: 'pointed', rise: 1.3 * radius })] });
    const handed = { ...NOTHING_HANDED, statics: staticsOf(setout) };
    return houseSheets(setout, handed, { sheet, scale, sheets: ['structure'] }).sheets.flatMap((s) => s.views);
  }

  it('leaves the line out on a side that is open, and says when none fits', () => {
    const all = [0, 45, 90, 135, 180, 225, 270, 315].map((bearingDeg, i) =>
      openingOf({
        id: `o${i}`,
        bearingDeg,
        width: 1000,
        height: 2000,
        arch: { ring: 200, face: 'flush', madeAs: 'cast', voussoirs: null },
      }),
    );
    const crowded = made({ openings: all });
    expect(onThrust(crowded).filter((p) => p.kind === 'path').length).toBeLessThanOrEqual(2);
    const thin = made({ wall: { thickness: 60, renderInside: 0, renderOutside: 0 }, tie: 'none' });
    const text = thin.drafted.foot.notes.join(' ');
    expect(text).toContain('no thrust fits');
  });
});
