import { describe, expect, it } from 'vitest';
import { castPieces } from '../../lib/masonry/cast-pieces.js';
import { pieceChecks } from '../../lib/masonry/piece-checks.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { ringPieceTable } from '../../lib/tables/ring-pieces.js';
import { voussoirTable } from '../../lib/tables/voussoirs.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';

const tablesFor = (voussoirs: number, joint = 10) => {
  const arch = { ring: 150, face: 300, madeAs: 'voussoirs', voussoirs } as const;
  const house = houseOf({
    domes: [
      domeOf({ stemWall: 1300, oculus: { radius: 350, curb: 150, upstand: 100 } }),
      domeOf({ id: 'lab', at: [9000, 0], radius: 2200, shape: 'segmental', rise: 1500 }),
    ],
    openings: [openingOf({ width: 1000, height: 1700, sill: 0, head: { shape: 'semicircular', rise: 500 }, arch })],
  });
  const setout = setOutHouse({ ...house, blocks: { ...house.blocks, joint } });
  const pieces = castPieces(setout);
  return { setout, pieces, stones: voussoirTable(setout, pieces), rings: ringPieceTable(setout, pieces) };
};

describe('table of voussoirs', () => {
  it('gives the edges of a voussoir, Ri 0.5, t 0.15, 9 over 180° without mortar (derived, closed forms)', () => {
    const { rows } = tablesFor(9, 1e-9).stones;
    expect(rows).toHaveLength(9);
    for (const row of rows) {
      expect(row['soffit-chord']).toBeCloseTo(173.648, 3);
      expect(row['back-chord']).toBeCloseTo(225.743, 3);
      expect(row['soffit-arc']).toBeCloseTo(174.533, 3);
      expect(row['back-arc']).toBeCloseTo(226.893, 3);
      expect(row.angle).toBeCloseTo(20, 6);
    }
  });

  it('has mirror images by pairs, and depths that end on the flat face', () => {
    const { rows } = tablesFor(9).stones;
    const forms = rows.map((r) => r.form);
    expect(forms).toEqual([1, 2, 3, 4, 5, 4, 3, 2, 1].map((k) => `entrance ${k}`));
    expect(rows.filter((r) => r.mirrored === 'yes')).toHaveLength(4);
    const [first] = rows;
    // Springer on the stem wall: from the intrados, √(3000² − u²), to the face at 3550, half a metre aside; the joint is 10 mm up.
    const u = Math.sqrt(500 * 500 - 100);
    expect(first?.['depth-soffit-lower']).toBeCloseTo(3000 + 250 + 300 - Math.sqrt(3000 * 3000 - u * u), 6);
  });

  it('measures depths at the corners: from the room’s wall to the face, where joints beside them end', () => {
    const [springer] = tablesFor(9).stones.rows;
    // Springing at 1.2 m, face at 3.55 m; over the stem wall of 1.3 m the hemisphere leans in.
    const depth = (u: number, z: number) => 3550 - Math.sqrt(3000 ** 2 - Math.max(0, z - 1300) ** 2 - u * u);
    // The first joint is whole and level, of the next, at 20 degrees, a half.
    const [c, s] = [Math.cos(Math.PI / 9), Math.sin(Math.PI / 9)];
    for (const [part, radius] of [
      ['soffit', 500],
      ['back', 650],
    ] as const) {
      const [low, out] = [Math.sqrt(radius ** 2 - 10 ** 2), Math.sqrt(radius ** 2 - 5 ** 2)];
      expect(springer?.[`depth-${part}-lower`]).toBeCloseTo(depth(low, 1210), 6);
      expect(springer?.[`depth-${part}-upper`]).toBeCloseTo(depth(out * c + 5 * s, 1200 + out * s - 5 * c), 6);
    }
  });

  it('measures a skewback’s back from the springing up to where arc and jamb meet', () => {
    const arch = { ring: 150, face: 300, madeAs: 'voussoirs', voussoirs: 5 } as const;
    const head = { shape: 'segmental', rise: 250 } as const;
    const setout = setOutHouse(houseOf({ openings: [openingOf({ width: 1000, height: 1700, head, arch })] }));
    const { rows } = voussoirTable(setout, castPieces(setout));
    const skewback = rows.find((row) => row.kind === 'skewback');
    // R = (0.5² + 0.25²) / 0.5 = 0.625 m about 1.075 m: skewbacks end on radii from there.
    const depth = (u: number, z: number) => 3550 - Math.sqrt(3000 ** 2 - (z - 600) ** 2 - u * u);
    expect(skewback?.['depth-back-lower']).toBeCloseTo(depth(650, 1450), 6);
    const [u, up] = [(500 / 625) * 775, ((1450 - 1075) / 625) * 775];
    expect(skewback?.['depth-back-upper']).toBeCloseTo(depth(u, 1075 + up), 6);
  });
});

describe('table of ring pieces', () => {
  it('parts rings so that no segment is too heavy to lift, and names each once', () => {
    const { setout, pieces, rings } = tablesFor(9);
    const marks = rings.rows.map((r) => r.mark);
    expect(marks).toEqual(pieces.rings.map((p) => p.mark));
    expect(marks).toContain('hall-curb-1');
    expect(marks).toContain('lab-skewback-1');
    expect(marks).toContain('lab-plug');
    for (const row of rings.rows)
      if (row.kind !== 'crown plug') expect(row['wet-mass']).toBeLessThanOrEqual(setout.house.blocks.heaviestKg);
  });

  it('leaves a joint between segments all round, at the middle of their width', () => {
    const { setout, pieces } = tablesFor(9);
    const outer = setout.domes[0]?.curb?.bedOuter[0] ?? 0;
    for (const [kind, radius] of [
      ['curb', (350 + outer) / 2],
      ['skewback', 2200 + 125],
    ] as const) {
      const ring = pieces.rings.filter((p) => p.kind === kind);
      expect(ring.length).toBeGreaterThanOrEqual(3);
      for (const [k, { endRad }] of ring.entries()) {
        const next = ring[k + 1]?.startRad ?? (ring[0]?.startRad ?? 0) + 2 * Math.PI;
        expect((next - endRad) * radius, `${kind} ${k + 1}`).toBeCloseTo(10, 6);
      }
    }
  });
});

describe('masses of voussoirs', () => {
  it('are fresh those of what their moulds hold: larger by the drying shrinkage each way', () => {
    const { setout, pieces, stones, rings } = tablesFor(9);
    // 600 kg/m3 dry of neat cement: 500 of cement and 250 of water, foam of 50 kg/m3 in the rest of the cubic metre.
    const wet = 750 + 0.05 * (1000 - 500 / 3.15 - 250);
    for (const [rows, own] of [
      [stones.rows, pieces.arches],
      [rings.rows, pieces.rings],
    ] as const)
      for (const [k, row] of rows.entries()) {
        const volume = (own[k]?.volume ?? 0) / 1e9;
        expect(row['dry-mass']).toBeCloseTo(volume * 600, 6);
        expect(row['wet-mass']).toBeCloseTo((volume / (1 - setout.house.blocks.shrinkage) ** 3) * wet, 6);
      }
  });

  it('fail when too heavy, and as many as the advice tells are light enough', () => {
    const of = (voussoirs: number) => {
      const { setout, pieces } = tablesFor(voussoirs);
      return pieceChecks(setout, pieces).find((c) => c.id === 'voussoir-mass.entrance');
    };
    const heavy = of(3);
    expect(heavy?.state).toBe('fails');
    const more = Number(/voussoirs: (\d+)/.exec(heavy?.advice ?? '')?.[1]);
    expect(more % 2).toBe(1);
    expect(of(more + 2)?.state).toBe('ok');
  });
});
