/** A small house of one dome, one door and one window, in metres. */
export const HOUSE = `format: 1
project: { title: Garden room }
units: m
wall: { thickness: 0.2 }
blocks: { course-height: 0.25, length: 0.4, joint: 10 mm }
domes:
  - { id: room, at: [0, 0], radius: 2.0, profile: hemisphere, stem-wall: 0.6, oculus: { radius: 0.3, curb: 0.12 } }
openings:
  - { id: door, in: room, bearing: 180, use: door, width: 0.9, height: 2.1, head: semicircular, arch: { ring: 0.15, face: 0.2 } }
`;

/** The same with one value put in another's place. */
export function changed(from: string, to: string): string {
  if (!HOUSE.includes(from)) throw new Error(`the house holds no ${from}`);
  return HOUSE.replace(from, to);
}
