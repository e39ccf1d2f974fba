/** A commented description to begin from: a potter's one-room house in metres. */
export function starterDescription(): string {
  return `# A house of cast blocks. Lengths without a unit are in metres; any may carry its own: 150 mm, 6'-10", 3/8 in.
# Every key left out takes its default. \`ringcourse check\` tells what does not fit, and how to mend it.
format: 1
units: m

project:
  title: Potter's room
  number: KLN-001
  drawn-by: drawing office
  # date: 2026-05-04          # printed on every sheet; "undated" without it

site:
  north: 0                    # bearing of true north, clockwise from the plan's up
  ground: -0.15               # outside ground, below the finished floor
  # snow: 0.8 kPa
  # bearing-capacity: 100 kPa

wall:
  thickness: 0.25             # structural, without render

blocks:
  course-height: 0.25
  length: 0.40
  joint: 10 mm

domes:
  - id: room
    radius: 2.5               # inside, at the springing
    profile: hemisphere       # or segmental, pointed, catenary, elliptical; with a rise: { shape: pointed, rise: 3.2 }
    stem-wall: 0.5            # upright wall under the springing
    oculus: { radius: 0.30, curb: 0.15 }

# Bearings are degrees clockwise from the plan's up, seen from the dome's axis.
openings:
  - id: door
    in: room
    bearing: 180
    use: door
    width: 1.0
    height: 2.40              # to the crown of the head
    head: semicircular        # or segmental, pointed, flat
  - id: window
    in: room
    bearing: 75
    use: window
    width: 1.10
    height: 1.00
    sill: 0.90
    head: { shape: segmental, rise: 0.25 }
    arch: { face: 0.20 }      # how far its flat face stands out; flush follows the dome
  - id: shelf
    in: room
    bearing: 300
    use: niche
    width: 0.60
    height: 0.70
    sill: 1.00
    depth: 0.15

rooms:
  - { id: studio, in: room, use: habitable }

footing: { width: 0.50, depth: 0.40 }   # or none
slab: { thickness: 0.10 }               # or none

material:
  dry-density: 600 kg/m3
  water-cement: 0.5
  # compressive-strength: 1 MPa          # from your own test cubes

print: { scale: 50 }                     # scale model, 1:50
`;
}
