import { describe, expect, test } from 'vitest';
import { opening, problemsOf, withHall } from './helpers.js';

describe('all problems at once', () => {
  const TEXT = `format: 1
units: ft
project: { date: 2026-02-30, clinet: Ann }
walls: { thickness: 0.25 m }
blocks: { joint: 1 in, tolerance: 3 kg }
domes:
  - { id: hall, radius: 10, profile: { shape: segmental, rise: 12 } }
  - { id: Lab, radius: 20 lb }
openings:
  - { id: door, in: hal, bearing: 0, use: door, width: 3, height: 30, frame: 1.5 }
  - { id: door, in: hall, bearing: 90, width: 4, height: 3, head: pointd }
rooms: [{ id: r, in: hall, use: kitchn, colour: red }]
`;

  test('in the order of the text, over schema and rules, sections and entries', () => {
    expect(problemsOf(TEXT).map((p) => [p.code, p.path, p.where?.line])).toEqual([
      ['date-unreal', 'project.date', 3],
      ['key-unknown', 'project.clinet', 3],
      ['key-unknown', 'walls', 4],
      ['quantity-kind', 'blocks.tolerance', 5],
      ['rise-too-high', 'domes[0].profile.rise', 7],
      ['id-unsafe', 'domes[1].id', 8],
      ['quantity-kind', 'domes[1].radius', 8],
      ['reference-unknown', 'openings[0].in', 10],
      ['frame-too-wide', 'openings[0].frame', 10],
      ['id-duplicate', 'openings[1].id', 11],
      ['value-choice', 'openings[1].head', 11],
      ['value-choice', 'rooms[0].use', 12],
      ['key-unknown', 'rooms[0].colour', 12],
    ]);
  });

  test('near misses of keys, choices and ids get a suggestion', () => {
    const mends = new Map(problemsOf(TEXT).map((p) => [p.path, p.mend]));
    expect(mends.get('project.clinet')).toContain('"client"');
    expect(mends.get('walls')).toContain('"wall"');
    expect(mends.get('openings[0].in')).toContain('"hall"');
    expect(mends.get('openings[1].head')).toContain('"pointed"');
    expect(mends.get('rooms[0].use')).toContain('"kitchen"');
    expect(mends.get('rooms[0].colour')).toContain('Known here: id, in, use, name, at.');
  });

  test('in the units of the file', () => {
    const rise = problemsOf(TEXT).find((p) => p.code === 'rise-too-high');
    expect(rise?.message).toBe(
      `The rise of the segmental dome "hall" is 12'-0"; it must be less than its radius (10'-0").`,
    );
    const metric = problemsOf(withHall('', 'radius: 3, profile: { shape: segmental, rise: 3.5 }'))[0];
    expect(metric?.message).toBe(
      'The rise of the segmental dome "hall" is 3.50 m; it must be less than its radius (3.00 m).',
    );
  });

  test('a key that nobody knows hides nothing in its entry; a misspelt one is told once', () => {
    const codes = (more: string) => problemsOf(withHall(`openings: [${opening(more)}]`)).map((p) => p.code);
    expect(codes('width: 1, height: 3.5, colour: red')).toEqual(['opening-too-high', 'key-unknown']);
    expect(codes('widht: 1, height: 3.5')).toEqual(['key-unknown']);
  });

  test('an opening that is too high is still told that it is too wide where it stands', () => {
    const codes = (more: string) => problemsOf(withHall(`openings: [${opening(more)}]`)).map((p) => p.code);
    expect(codes('use: door, width: 7, height: 9')).toEqual(['opening-too-wide', 'opening-too-high']);
    // Wide only high up, where it can't stay: no word of the width.
    expect(codes('use: door, width: 2, height: 9')).toEqual(['opening-too-high']);
    // All of it over the crown, where there is no width to hold it against.
    expect(codes('width: 7, height: 1, sill: 9, head: flat')).toEqual(['opening-too-high']);
  });

  test('an oculus that is too large hides nothing of the openings below it', () => {
    const text = withHall(
      `openings: [${opening('width: 1, height: 1, sill: 3.2', 'high')}, ${opening('width: 1, height: 1', 'low')}, { id: near, in: hall, bearing: 100, width: 1, height: 1 }]`,
      'radius: 3, stem-wall: 0.6, oculus: { radius: 3.5 }',
    );
    expect(problemsOf(text).map((p) => p.code)).toEqual(['oculus-too-large', 'opening-too-high', 'openings-meet']);
  });

  test('openings that are too high are held against each other where they stand', () => {
    const hall = 'radius: 3, stem-wall: 0.6';
    const codes = (...entries: string[]) =>
      problemsOf(withHall(`openings: [${entries.join(', ')}]`, hall)).map((p) => p.code);
    const door = (id: string, bearing: number, more = 'height: 5') =>
      `{ id: ${id}, in: hall, bearing: ${bearing}, use: door, width: 1, ${more} }`;
    const high = 'opening-too-high';
    // Half 500, ring 200, half a piece 60, on a circle of 3 m: 2 asin(0.76 / 3) = 29.36 deg.
    expect(codes(door('a', 0), door('b', 29))).toEqual([high, 'openings-meet', high]);
    expect(codes(door('a', 0), door('b', 29.4))).toEqual([high, high]);
    expect(codes(door('a', 0), door('b', 29, 'height: 2'))).toEqual([high, 'openings-meet']);
    // They meet only as high up as neither can reach.
    const window = (id: string, bearing: number, sill: number) =>
      `{ id: ${id}, in: hall, bearing: ${bearing}, width: 1, height: 1.5, sill: ${sill}, head: flat }`;
    expect(codes(window('a', 0, 2.3), window('b', 31, 2.3))).toEqual([high, high]);
    // One over the other: the curb brings the door down to below the window.
    const curbed = `${hall}, oculus: { radius: 1.5 }`;
    const over = withHall(`openings: [${door('a', 0)}, ${window('b', 0, 3.2)}]`, curbed);
    expect(problemsOf(over).map((p) => p.code)).toEqual([high, high]);
  });

  test('openings of a dome whose rise is wrong are held to what no rise can mend', () => {
    const codes = (openings: string, rise = '13') =>
      problemsOf(withHall(`openings: [${openings}]`, `radius: 3, profile: { shape: elliptical, rise: ${rise} }`)).map(
        (p) => p.code,
      );
    expect(codes(opening('use: door, width: 6, height: 5'))).toEqual(['rise-too-high', 'opening-too-wide']);
    expect(codes(opening('use: door, width: 1, height: 5'), '0.1')).toEqual(['rise-too-low']);
    const near = '{ id: near, in: hall, bearing: 100, width: 1, height: 1 }';
    expect(codes(`${opening('width: 1, height: 1')}, ${near}`)).toEqual(['rise-too-high', 'openings-meet']);
    expect(codes(`${opening('width: 1, height: 1')}, ${near.replace('100', '120')}`, '0.1')).toEqual(['rise-too-low']);
  });

  test('where the unit is in doubt, sizes are not judged', () => {
    expect(problemsOf('format: 1\nunits: inches\ndomes: [{ id: hall, radius: 118 }]').map((p) => p.code)).toEqual([
      'value-choice',
    ]);
  });

  test('objects get paths instead of places', () => {
    const problems = problemsOf({
      format: 1,
      domes: [
        { id: 'hall', radius: Number.NaN },
        { id: 'hall', radius: '3 kg' },
      ],
    });
    expect(problems.map((p) => [p.code, p.path, p.where])).toEqual([
      ['quantity-unreadable', 'domes[0].radius', undefined],
      ['quantity-kind', 'domes[1].radius', undefined],
      ['id-duplicate', 'domes[1].id', undefined],
    ]);
  });
});

describe('what only looks wrong', () => {
  test.each([
    [
      'a passage',
      withHall('passages: [{ id: link, between: [hall, lab], width: 1, height: 2 }]').replace(
        '[{',
        '[{ id: lab, radius: 2.4, stem-wall: 0.6, at: [5, 0] }, {',
      ),
    ],
    ['overlapping domes', 'format: 1\ndomes: [{ id: a, radius: 3 }, { id: b, radius: 3, at: [4, 0] }]'],
    [
      'a flush vent above a flush window',
      withHall(
        `openings: [${opening('width: 0.8, height: 0.6, sill: 0.5')}, ${opening('use: vent, width: 0.2, height: 0.2, sill: 2, arch: { ring: 0.1 }', 'vent')}]`,
      ),
    ],
    [
      'a pointed head of one width',
      withHall(`openings: [${opening('width: 1, height: 1.2, head: { shape: pointed, rise: 1 }')}]`),
    ],
    [
      'a segmental head of half a width',
      withHall(`openings: [${opening('width: 1, height: 1.2, head: { shape: segmental, rise: 0.5 }')}]`),
    ],
    ['a hemisphere with its own rise', withHall('', 'radius: 3, profile: { shape: hemisphere, rise: 3 }')],
    [
      'a deep niche in a face that stands out',
      withHall(`openings: [${opening('use: niche, width: 0.5, height: 0.6, depth: 0.4, arch: { face: 0.2 }')}]`),
    ],
    ['29 February of a leap year', withHall('project: { date: 2028-02-29 }')],
    ['a mark in quotes', withHall('project: { title: "a # b [[[ {{{" }')],
  ])('%s is read', (_name, text) => {
    expect(problemsOf(text)).toEqual([]);
  });

  test('a barrel goes down to the floor, so nothing can stand under it', () => {
    const low = opening('width: 0.8, height: 0.6, sill: 0.5');
    const vent = opening('use: vent, width: 0.2, height: 0.2, sill: 2, arch: { ring: 0.1, face: 0.1 }', 'vent');
    expect(problemsOf(withHall(`openings: [${low}, ${vent}]`)).map((p) => p.code)).toEqual(['openings-meet']);
  });
});

test('turning an opening by as much as the mend says parts it from its neighbour', () => {
  const text = (bearing: number) =>
    withHall(
      `openings: [${opening('width: 1, height: 1')}, { id: vent, in: hall, bearing: ${bearing}, width: 1, height: 1 }]`,
    );
  const turn = Number(/Turn one ([\d.]+) deg/.exec(problemsOf(text(110))[0]?.mend ?? '')?.[1]);
  expect(turn).toBeGreaterThan(0);
  expect(problemsOf(text(110 + turn))).toEqual([]);
  expect(problemsOf(text(110 + turn - 0.2))).not.toEqual([]);
});

test('lowering an opening by as much as the mend says makes it fit', () => {
  const text = (sill: number) => withHall(`openings: [${opening(`width: 1, height: 1, sill: ${sill}`)}]`);
  const lower = Number(/by ([\d.]+) m /.exec(problemsOf(text(2.6))[0]?.mend ?? '')?.[1]);
  expect(lower).toBeGreaterThan(0);
  expect(problemsOf(text(2.6 - lower)).filter((p) => p.code === 'opening-too-high')).toEqual([]);
});
