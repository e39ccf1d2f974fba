import { describe, expect, test } from 'vitest';
import { CODES, type ProblemCode } from '../../lib/base/texts/problem-codes.js';
import { marked, opening, passage, problemsOf, withDomes, withHall } from './helpers.js';

/** One wrong description for each way to be wrong; ‸ stands where the problem must be told. */
const CASES: readonly (readonly [code: ProblemCode, text: string])[] = [
  // The file as text
  ['file-empty', '‸'],
  ['file-empty', '‸# only a comment\n\n'],
  ['file-empty', '‸---\n'],
  ['file-too-large', `‸${'# long\n'.repeat(50_000)}`],
  ['file-not-text', '‸format: 1\0'],
  ['file-syntax', 'format: 1\ndomes: [{ id: a, radius: 3 }\n‸wall: { thickness: 0.2 }'],
  ['file-syntax', 'format: 1\nproject:\n‸\ttitle: x'],
  ['file-syntax', 'format: 1\nproject: { title: "Shed }‸'],
  ['file-documents', `${withHall()}‸---\n${withHall()}`],
  ['nesting-too-deep', `format: 1\ndomes: ${'['.repeat(24)}‸${'['.repeat(200)}`],
  ['yaml-alias', withHall('footing: { width: &w 0.5, depth: ‸*w }')],
  [
    'yaml-expansion',
    withHall(
      `a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n${[1, 2, 3, 4, 5]
        .map(
          (n) =>
            `a${n}: &a${n} [${n === 4 ? '‸' : ''}${Array(10)
              .fill(`*a${n - 1}`)
              .join(', ')}]`,
        )
        .join('\n')}`,
    ),
  ],
  ['yaml-tag', withHall('slab: { thickness: !!float ‸0.1 }')],
  ['yaml-merge', withHall('slab: { ‸<<: { thickness: 0.1 } }')],

  // Keys and values
  ['key-unknown', withHall('‸colour: red')],
  ['key-unknown', withHall('blocks: { ‸courseHeight: 0.2 }')],
  ['key-unknown', withHall('wall: { ‸__proto__: { thickness: 1 } }')],
  ['key-unknown', withHall('‸constructor: 1')],
  ['key-missing', 'format: 1\ndomes:\n  - ‸{ id: hall }'],
  ['key-missing', '‸format: 1\n'],
  ['key-missing', '‸domes: [{ id: hall, radius: 3 }]'],
  ['key-duplicate', withHall('slab: { thickness: 0.1, ‸thickness: 0.2 }')],
  ['key-not-text', withHall('slab: { ‸[a, b]: 0.1 }')],
  ['value-missing', withHall('wall: { ‸thickness: }')],
  ['value-missing', withHall('wall: { thickness: ‸~ }')],
  ['value-missing', withHall('‸openings:')],
  ['value-type', withHall('wall: { thickness: ‸[1, 2] }')],
  ['value-type', withHall('wall: ‸0.25')],
  ['value-type', withHall('openings: ‸5')],
  ['value-type', '‸just words'],
  ['value-type', '‸[1, 2]'],
  ['value-choice', withHall('units: ‸yards')],
  ['value-choice', withHall(`openings: [${opening('use: ‸widow, width: 1, height: 1')}]`)],
  ['value-choice', withHall('slab: ‸nothing')],
  ['value-choice', withHall('', 'radius: 3, profile: ‸hemishpere')],
  ['value-choice', withHall(`openings: [${opening('width: 1, height: 1, arch: { face: ‸flsh }')}]`)],
  ['value-range', withHall('wall: { thickness: ‸2 mm }')],
  ['value-range', withHall('print: { scale: ‸0 }')],
  ['value-range', withHall('casting: { mixer: ‸0 L/min }')],
  ['value-range', withHall('material: { wet-density: ‸60 kg/m3 }')],
  ['mix-too-light', withHall('material: { wet-density: ‸120 kg/m3, foam-density: 150 kg/m3 }')],
  ['mix-too-light', withHall('casting: { measured-wet-density: ‸50 kg/m3 }')],
  ['mix-too-dense', withHall('material: { dry-density: ‸1500 kg/m3 }')],
  ['mix-too-dense', withHall('material: { wet-density: ‸1900 kg/m3 }')],
  ['pegs-together', withHall('setting-out: { pegs: ‸[[-9, -9], [-9, -9.2]] }')],
  ['peg-in-dome', withHall('setting-out: { pegs: [‸[0, 0.5], [-9, -9]] }')],
  ['value-range', withHall('blocks: { course-height: ‸0.1 mm }')],
  [
    'value-whole',
    withHall(`openings: [${opening('width: 1, height: 1, arch: { made-as: voussoirs, voussoirs: ‸9.5 }')}]`),
  ],
  ['value-number', withHall('material: { water-cement: ‸half }')],
  ['value-text', withHall(`project: { title: ‸${'x'.repeat(201)} }`)],
  ['value-text', withHall('project: { title: ‸"a\\nb" }')],
  ['list-length', 'format: 1\ndomes: ‸[]'],
  ['list-length', withHall('', 'radius: 3, at: ‸[1, 2, 3]')],
  ['list-length', withHall('site: { plot: ‸[[0, 0], [1, 1]] }')],
  ['format-unknown', 'format: ‸0\ndomes: [{ id: hall, radius: 3 }]'],
  ['format-unknown', 'format: ‸one\ndomes: [{ id: hall, radius: 3 }]'],
  ['format-unknown', 'format: ‸2\ndomes: [{ id: hall, radius: 3 }]'],
  ['date-unreal', withHall('project: { date: ‸2026-02-30 }')],
  ['date-unreal', withHall('project: { date: ‸4 May 2026 }')],

  // Quantities
  ['quantity-unreadable', withHall('wall: { thickness: ‸.nan }')],
  ['quantity-unreadable', withHall('wall: { thickness: ‸thick }')],
  ['quantity-size', withHall('wall: { thickness: ‸1e308 }')],
  ['quantity-unit', withHall('wall: { thickness: ‸25 cms }')],
  ['quantity-unit-missing', withHall('site: { snow: ‸0.8 }')],
  ['quantity-kind', withHall('wall: { thickness: ‸25 kg }')],
  ['quantity-feet-inches', withHall(`wall: { thickness: ‸1' 13" }`)],

  // Names
  ['partition-short', withHall('partitions: [‸{ in: hall, from: [0, 0], to: [0.1, 0] }]')],
  ['partition-outside', withHall('partitions: [{ in: hall, from: ‸[0, 9], to: [0, 0] }]')],
  [
    'partition-before-opening',
    withHall(
      'openings: [{ id: gate, in: hall, bearing: 0, width: 1, height: 1.2 }]\npartitions: [‸{ in: hall, from: [0, 0], to: [0, 2.95] }]',
    ),
  ],
  [
    'partition-in-doorway',
    withHall(
      'partitions: [{ in: hall, from: [-1, 0], to: [1, 0], door: ‸{ at: 1 } }, { in: hall, from: [0, -1], to: [0, 1] }]',
    ),
  ],
  ['room-place', withHall('rooms: [{ id: wash, in: hall, at: ‸[0, 2.99] }]')],
  [
    'room-place',
    withHall(
      'partitions: [{ in: hall, from: [-1, 1], to: [1, 1] }]\nrooms: [{ id: wash, in: hall, at: ‸[0.2, 1.02] }]',
    ),
  ],
  ['partition-door', withHall('partitions: [{ in: hall, from: [0, 0], to: [1, 0], door: ‸{ at: 0.2 } }]')],
  ['id-unsafe', 'format: 1\ndomes: [{ id: ‸../../hall, radius: 3 }]'],
  ['id-unsafe', 'format: 1\ndomes: [{ id: ‸con, radius: 3 }]'],
  ['id-unsafe', withHall('rooms: [{ id: ‸constructor, in: hall }, { id: other, in: hall }]')],
  ['id-unsafe', `format: 1\ndomes: [{ id: ‸${'a'.repeat(33)}, radius: 3 }]`],
  ['id-duplicate', withHall('rooms: [{ id: ‸hall, in: hall }]')],
  ['reference-unknown', withHall('rooms: [{ id: living, in: ‸hal }]')],
  ['reference-unknown', withHall('passages: [{ id: link, between: [hall, ‸lab], width: 1, height: 2 }]')],
  ['passage-ends', withHall('passages: [{ id: link, between: ‸[hall, hall], width: 1, height: 2 }]')],

  // Blocks and wall
  ['range-order', withHall('blocks: { joint-range: ‸[20 mm, 5 mm] }')],
  ['joint-outside-range', withHall('blocks: { joint: ‸25 mm }')],
  ['joint-too-thick', withHall('blocks: { joint: ‸20 mm, course-height: 60 mm }')],
  ['tolerance-too-wide', withHall('blocks: { tolerance: ‸8 mm }')],
  ['piece-too-long', withHall('blocks: { shortest-piece: ‸0.25 }')],
  ['lap-too-long', withHall('blocks: { least-lap: ‸0.21 }')],
  ['wall-too-thick', withHall('wall: { thickness: 0.45 }\nfooting: { width: 0.5 }', 'radius: ‸0.45')],
  ['blocks-too-few', withHall('blocks: { length: ‸2 m, course-height: 0.1 }', 'radius: 0.5')],
  [
    'blocks-too-many',
    withHall(
      'blocks: { course-height: ‸20 mm, length: 50 mm, joint: 5 mm, shortest-piece: 20 mm, least-lap: 20 mm }',
      'radius: 10',
    ),
  ],
  ['courses-too-few', withHall('blocks: { course-height: ‸1 m }', 'radius: 1')],

  // Domes
  ['rise-hemisphere', withHall('', 'radius: 3, profile: { shape: hemisphere, rise: ‸2.5 }')],
  ['rise-too-high', withHall('', 'radius: 3, profile: { shape: segmental, rise: ‸3 }')],
  ['rise-too-high', withHall('', 'radius: 3, profile: { shape: catenary, rise: ‸12.1 }')],
  ['rise-too-low', withHall('', 'radius: 3, profile: { shape: pointed, rise: ‸3 }')],
  ['rise-too-low', withHall('', 'radius: 3, profile: { shape: elliptical, rise: ‸0.29 }')],
  ['stem-wall-low', withHall('', 'radius: 3, stem-wall: ‸0.1')],
  ['oculus-too-large', withHall('', 'radius: 3, oculus: { radius: ‸2.3, curb: 0.15 }')],

  // Domes among one another
  ['domes-same-place', 'format: 1\ndomes:\n  - { id: hall, radius: 3 }\n  - ‸{ id: lab, radius: 3.4 }'],
  ['domes-same-place', withDomes('{ id: lab, radius: 3, at: ‸[0.1, 0.1] }')],
  ['domes-nested', withDomes('{ id: lab, radius: 1, at: ‸[1, 1] }')],
  ['domes-nested', withDomes('{ id: barn, radius: 6, at: ‸[2, 0] }')],
  ['overlap-too-deep', withDomes('{ id: lab, radius: 2, at: ‸[3.2, 0] }')],
  ['overlap-too-deep', withDomes('{ id: barn, radius: 5, at: ‸[5, 0] }')],
  ['overlap-too-deep', withDomes('{ id: lab, radius: 2, at: ‸[3.3, 0], oculus: { radius: 0.6 } }')],
  ['domes-nearly-touch', withDomes('{ id: lab, radius: 2, at: ‸[5.6, 0] }')],
  ['domes-nearly-touch', withDomes('{ id: lab, radius: 2, at: ‸[5.3, 0] }')],
  [
    'dome-cut-away',
    withDomes('{ id: barn, radius: 3, at: [6.8, 0] }, { id: lobby, radius: 1, stem-wall: 2, at: ‸[3.4, 0] }'),
  ],
  [
    'room-parted',
    withDomes('{ id: barn, radius: 3, at: [6, 0] }, { id: lab, radius: 2.5, stem-wall: 1, at: ‸[3, 1.8] }'),
  ],
  // Over a few millimetres alone, just under the level at which the two earlier domes come apart.
  [
    'room-parted',
    `format: 1
domes:
  - { id: a, radius: 2.65 }
  - { id: b, radius: 2.6, stem-wall: 0.5, at: [5.1, 0] }
  - { id: c, radius: 2.25, stem-wall: 0.55, at: ‸[2.65, 1.9] }`,
  ],

  // Openings and passages
  ['opening-too-high', withHall(`openings: [${opening('use: door, width: 1, height: ‸3.5')}]`)],
  [
    'opening-too-high',
    withHall(`openings: [${opening('use: door, width: 1, height: ‸3.1')}]`, 'radius: 3, oculus: { radius: 1.6 }'),
  ],
  ['opening-too-wide', withHall(`openings: [${opening('width: ‸4.4, height: 1, sill: 1.5, head: flat')}]`)],
  [
    'openings-meet',
    withHall(
      `openings: [${opening('width: 1, height: 1')}, { id: vent, in: hall, bearing: ‸110, width: 1, height: 1 }]`,
    ),
  ],
  [
    'opening-meets-dome',
    withDomes(
      '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [5, 0] }',
      'openings: [{ id: bay, in: lab, bearing: ‸240, width: 0.8, height: 1 }]',
    ),
  ],
  [
    'opening-meets-dome',
    withDomes(
      '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [6.2, 0] }',
      'openings: [{ id: bay, in: hall, bearing: ‸90, width: 0.8, height: 1, arch: { face: 0.5 } }]',
    ),
  ],
  [
    'opening-blocked',
    withDomes(
      '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [6.6, 0] }',
      'openings: [{ id: door, in: hall, bearing: ‸90, use: door, width: 0.9, height: 2, arch: { face: flush } }]',
    ),
  ],
  [
    'opening-blocked',
    withDomes(
      '{ id: lab, radius: 3, stem-wall: 0.6, at: [8, 0] }',
      'openings: [{ id: out, in: hall, bearing: ‸90, use: door, width: 0.9, height: 2 }, { id: far, in: lab, bearing: 270, use: niche, width: 0.9, height: 1, sill: 0.5, depth: 0.4, arch: { face: 0.6 } }]',
    ),
  ],
  [
    'opening-blocked',
    withDomes(
      '{ id: north, radius: 2.4, stem-wall: 0.6, at: [6, 5] }, { id: south, radius: 2.4, stem-wall: 0.6, at: [6, -5] }',
      `openings: [{ id: out, in: hall, bearing: ‸90, use: door, width: 0.9, height: 2, arch: { face: 1.4 } }]\npassages: [{ id: long, between: [north, south], width: 0.9, height: 1.9 }]`,
    ),
  ],
  [
    'barrels-meet',
    withDomes(
      '{ id: lab, radius: 3, stem-wall: 0.6, at: [8, 0] }',
      'openings: [{ id: out, in: hall, bearing: 90, use: niche, depth: 0.4, width: 0.9, height: 1, arch: { face: 0.8 } }, { id: far, in: lab, bearing: ‸270, use: niche, width: 0.9, height: 1, depth: 0.4, arch: { face: 0.6 } }]',
    ),
  ],
  [
    'barrels-meet',
    withDomes(
      '{ id: north, radius: 2.4, stem-wall: 0.6, at: [6, 5] }, { id: south, radius: 2.4, stem-wall: 0.6, at: [6, -5] }',
      `openings: [{ id: out, in: hall, bearing: ‸90, use: niche, depth: 0.4, width: 0.9, height: 1, arch: { face: 2.2 } }]\npassages: [{ id: long, between: [north, south], width: 0.9, height: 1.9 }]`,
    ),
  ],
  [
    'passage-too-high',
    withDomes('{ id: lab, radius: 2, at: [4.5, 0] }', `passages: [${passage('lab', 'width: 0.9, height: ‸1.9')}]`),
  ],
  [
    'passage-too-wide',
    withDomes(
      '{ id: lab, radius: 2, at: [4.5, 0] }',
      `passages: [${passage('lab', 'width: ‸3, height: 1.5, head: flat')}]`,
    ),
  ],
  [
    'passage-not-through',
    withDomes(
      '{ id: lab, radius: 2, stem-wall: 1.5, at: [3.3, 0] }',
      `passages: [{ id: link, between: ‸[lab, hall], width: 0.8, height: 1.4 }]`,
    ),
  ],
  [
    'passage-not-through',
    withDomes(
      '{ id: far, radius: 2.4, stem-wall: 0.6, at: [3.8, 6] }, { id: lab, radius: 2.5, stem-wall: 0.6, at: [3.8, 0] }',
      `passages: [{ id: link, between: ‸[far, lab], width: 0.9, height: 1.9 }]`,
    ),
  ],
  [
    'passage-crosses-dome',
    withDomes(
      '{ id: mid, radius: 2, stem-wall: 0.6, at: [6.5, 0.5] }, { id: lab, radius: 2.4, stem-wall: 0.6, at: [13, 0] }',
      `passages: [{ id: link, between: ‸[hall, lab], width: 0.9, height: 1.9 }]`,
    ),
  ],
  [
    'passage-crosses-dome',
    withDomes(
      '{ id: mid, radius: 2, stem-wall: 0.6, at: [6.5, 2.95] }, { id: lab, radius: 2.4, stem-wall: 0.6, at: [13, 0] }',
      `passages: [{ id: link, between: ‸[hall, lab], width: 0.9, height: 1.9 }]`,
    ),
  ],
  [
    'passage-meets-opening',
    withDomes(
      '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [7, 0] }',
      `openings: [{ id: bay, in: hall, bearing: ‸70, width: 0.8, height: 1 }]\npassages: [${passage('lab')}]`,
    ),
  ],
  [
    'passages-meet',
    withDomes(
      '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [7, 0] }',
      `passages: [${passage('lab')}, { id: again, between: ‸[lab, hall], width: 0.9, height: 1.5 }]`,
    ),
  ],
  [
    'passages-meet',
    withDomes(
      '{ id: east, radius: 2.4, stem-wall: 0.6, at: [14, 0] }, { id: north, radius: 2.4, stem-wall: 0.6, at: [7, 7] }, { id: south, radius: 2.4, stem-wall: 0.6, at: [7, -7] }',
      `passages: [${passage('east')}, { id: over, between: ‸[north, south], width: 0.9, height: 1.9 }]`,
    ),
  ],
  ['sill-of-door', withHall(`openings: [${opening('use: door, width: 1, height: 2, sill: ‸0.1')}]`)],
  ['sill-too-low', withHall(`openings: [${opening('width: 1, height: 2, sill: ‸0')}]`)],
  ['head-rise', withHall(`openings: [${opening('width: 1, height: 1, head: ‸{ shape: segmental, rise: 0.6 }')}]`)],
  ['head-rise', withHall(`openings: [${opening('width: 1, height: 1, head: ‸{ shape: segmental, rise: 0.01 }')}]`)],
  ['head-rise', withHall(`openings: [${opening('width: 1, height: 1, head: ‸{ shape: pointed, rise: 0.5 }')}]`)],
  ['head-rise', withHall(`openings: [${opening('width: 1, height: 1, head: ‸{ shape: semicircular, rise: 0.4 }')}]`)],
  ['head-rise', withHall(`openings: [${opening('width: 1, height: 1, head: ‸{ shape: flat, rise: 0.4 }')}]`)],
  ['head-too-high', withHall(`openings: [${opening('width: 1, height: ‸0.4')}]`)],
  ['frame-too-wide', withHall(`openings: [${opening('width: 0.4, height: 1, frame: ‸0.2')}]`)],
  [
    'voussoirs-even',
    withHall(`openings: [${opening('width: 1, height: 1, arch: { made-as: voussoirs, voussoirs: ‸8 }')}]`),
  ],
  ['voussoirs-cast', withHall(`openings: [${opening('width: 1, height: 1, arch: { voussoirs: ‸9 }')}]`)],
  ['niche-depth', withHall(`openings: [‸${opening('use: niche, width: 0.5, height: 0.6')}]`)],
  ['niche-too-deep', withHall(`openings: [${opening('use: niche, width: 0.5, height: 0.6, depth: ‸0.22')}]`)],
  ['depth-not-niche', withHall(`openings: [${opening('width: 0.5, height: 0.6, depth: ‸0.1')}]`)],

  // Footing, site, prices
  ['footing-too-narrow', withHall('footing: { width: ‸0.2 }')],
  ['footing-too-wide', withHall('footing: { width: ‸2.3 }', 'radius: 1')],
  ['tie-without-footing', withHall('footing: none\ntie: { level: ‸footing, diameter: 10 mm }')],
  ['tie-too-high', withHall('tie: { level: ‸3.7, diameter: 10 mm }')],
  ['value-range', withHall('material: { compressive-strength: ‸0 MPa }')],
  ['value-range', withHall('material: { dry-density: ‸250 kg/m3 }')],
  ['value-range', withHall('material: { dry-density: ‸1900 kg/m3 }')],
  ['value-range', withHall('site: { snow: ‸1 MPa }')],
  ['footing-too-shallow', withHall('footing: { depth: ‸0.1 }')],
  ['plot-crossing', withHall('site: { plot: ‸[[0, 0], [9, 9], [9, 0], [0, 9]] }')],
  ['plot-crossing', withHall('site: { plot: ‸[[0, 0], [4, 4], [9, 9]] }')],
  ['outside-plot', withHall('site: { plot: [[-3, -9], [9, -9], [9, 9], [-3, 9]] }', 'radius: 3, at: ‸[0, 0]')],
  [
    'outside-plot',
    withHall(
      `site: { plot: [[-9, -9], [3.5, -9], [3.5, 9], [-9, 9]] }\nopenings: [{ id: out, in: hall, bearing: ‸90, use: door, width: 0.9, height: 2 }]`,
    ),
  ],
  [
    'outside-plot',
    withDomes(
      '{ id: lab, radius: 2.4, stem-wall: 0.6, at: [12, 0] }',
      `site: { plot: [[-9, -9], [5.5, -9], [6, 0], [6.5, -9], [19, -9], [19, 9], [-9, 9]] }\npassages: [{ id: link, between: ‸[hall, lab], width: 0.9, height: 1.9 }]`,
    ),
  ],
  ['price-currency', withHall('‸prices: { cement: { per: 25 kg, price: 6 } }')],
  ['price-currency', withHall('prices: { currency: ‸euro }')],
  ['price-item', withHall('prices: { currency: EUR, cement: ‸{ per: 25 kgs, price: 6 } }')],
  ['price-item', withHall('prices: { currency: EUR, Cement: ‸{ per: 25 kg, price: 6 } }')],
];

describe('every problem is told once, where it is, and how to mend it', () => {
  test.each(CASES)('%s', (code, withMark) => {
    const { text, line, column } = marked(withMark);
    const problems = problemsOf(text);
    expect(problems.map((p) => p.code)).toEqual([code]);
    expect(problems[0]?.where).toEqual({ file: 'house.yaml', line, column });
    expect(problems[0]?.message).toMatch(/^["A-Z].*[.]$/s);
    expect(problems[0]?.mend).toMatch(/^[A-Z].*[.`?]$/s);
    expect(`${problems[0]?.message} ${problems[0]?.mend}`).not.toMatch(
      /undefined|NaN |\[object|Invalid input|expected |implicit|mapping|scalar|token|flow/,
    );
  });

  test('a later format is told from what is none', () => {
    const told = (format: string) => problemsOf(`format: ${format}\ndomes: [{ id: hall, radius: 3 }]`)[0];
    expect(told('2')).toMatchObject({ message: expect.stringContaining('format 2, which a later version') });
    expect(told('2')?.mend).toMatch(/Install a later version, or write `format: 1`/);
    expect(told('0')?.mend).toBe('Write `format: 1`.');
  });

  test('and says so when there are more than anyone mends at once', () => {
    const problems = problemsOf(withHall(Array.from({ length: 130 }, (_, i) => `stray-${i}: 1`).join('\n')));
    expect(problems).toHaveLength(101);
    expect(problems[100]).toMatchObject({ code: 'problems-more', message: 'There are 30 more problems.' });
  });

  // Those of `--set` have theirs in overrides.test.ts.
  test('no code is without a case', () => {
    const others = ['problems-more', 'vary-range', 'set-unreadable', 'set-nowhere'];
    const provoked = new Set<string>([...CASES.map(([code]) => code), ...others]);
    expect(Object.keys(CODES).filter((code) => !provoked.has(code))).toEqual([]);
  });
});
