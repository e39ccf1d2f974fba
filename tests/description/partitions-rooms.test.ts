import { describe, expect, it } from 'vitest';
import { DescriptionError, type Problem } from '../../lib/base/problems.js';
import { readDescription } from '../../lib/description/read.js';

/** Two partitions run into one that has a door `at` some metres from its west end. */
const text = (at: string, others: string) =>
  `format: 1
units: m
domes: [{ id: hall, at: [0, 0], radius: 3 }]
partitions:
  - { in: hall, from: [-2, 0], to: [2, 0], thickness: 0.1, door: { at: ${at}, width: 0.8 } }
${others}`;
const TWO = `  - { in: hall, from: [-0.3, -1], to: [-0.3, 1], thickness: 0.1 }
  - { in: hall, from: [0.3, -1], to: [0.3, 1], thickness: 0.1 }`;

function doorways(source: string): Problem[] {
  try {
    readDescription(source, 'house.yaml');
    return [];
  } catch (error) {
    if (!(error instanceof DescriptionError)) throw error;
    return error.problems.filter(({ code }) => code === 'partition-in-doorway');
  }
}

describe('partitions in the doorway of another', () => {
  it('are all told at once, with places for the door that are free of all of them', () => {
    const [problem, ...more] = doorways(text('2', TWO));
    expect(more).toEqual([]);
    expect(problem?.message).toContain('P2, P3');
    // Faces at 1.65 and 2.35 from the west end, half a door's width off.
    expect(problem?.mend).toContain('1.25 m or less, or 2.75 m or more');
    for (const at of ['1.25', '2.75']) expect(doorways(text(at, TWO)), at).toEqual([]);
  });

  it('are told with no place where a third leaves none on that side', () => {
    const three = `${TWO}\n  - { in: hall, from: [-1.2, -1], to: [-1.2, 1], thickness: 0.1 }`;
    // Between 0.85 and 1.65 stays just a door's width.
    expect(doorways(text('2', three))[0]?.mend).toContain('2.75 m or more');
    const four = `${three}\n  - { in: hall, from: [1.2, -1], to: [1.2, 1], thickness: 0.1 }\n  - { in: hall, from: [0, -1], to: [0, 1], thickness: 0.2 }`;
    const close = four.replaceAll('-1.2', '-1.16').replaceAll('[1.2', '[1.16');
    expect(doorways(text('2', close))[0]?.mend).toContain('No place is left for the door');
  });
});

describe('the place of a room', () => {
  const places = (at: string, rest = '') => {
    try {
      readDescription(
        `format: 1\nunits: mm\ndomes: [{ id: hall, at: [0, 0], radius: 3000 }]\nrooms: [{ id: wash, in: hall, at: ${at} }]\n${rest}`,
        'house.yaml',
      );
      return [];
    } catch (error) {
      if (!(error instanceof DescriptionError)) throw error;
      return error.problems.filter(({ code }) => code === 'room-place');
    }
  };
  const amount = (problem: Problem | undefined) => Number(/([\d.]+) mm or more/.exec(problem?.mend ?? '')?.[1]);

  it('is told to be moved so far that it is let through then', () => {
    const out = amount(places('[0, 3050]')[0]);
    expect(out).toBeGreaterThan(50);
    expect(places(`[0, ${3050 - out}]`)).toEqual([]);
    const wall = 'partitions: [{ in: hall, from: [-1000, 1000], to: [1000, 1000], thickness: 100 }]';
    const [face] = places('[0, 1050]', wall);
    expect(amount(face)).toBeGreaterThan(0);
    expect(places(`[0, ${1050 + amount(face)}]`, wall)).toEqual([]);
  });
});
