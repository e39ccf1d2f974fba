/** What every problem code stands for and how it is mended, for documents and for tests. */
export interface CodeDoc {
  readonly cause: string;
  readonly mend: string;
}

const doc = (cause: string, mend: string): CodeDoc => ({ cause, mend });

/** Every problem that a description may have, by its stable code. */
export const CODES = {
  // The file as text
  'file-empty': doc('The file is empty or holds only comments.', 'Start from `ringcourse new`.'),
  'file-too-large': doc('The file is larger than a description can sensibly be.', 'Give a description, not data.'),
  'file-not-text': doc('The file holds bytes that are no UTF-8 text.', 'Save it as plain text in UTF-8.'),
  'file-syntax': doc('The text is not well-formed YAML or JSON.', 'Mend the text at the place named.'),
  'file-documents': doc('The file holds several YAML documents.', 'Keep one house in a file; remove the `---` lines.'),
  'nesting-too-deep': doc('Lists or keys are nested far deeper than a description needs.', 'Flatten them.'),
  'yaml-alias': doc('A YAML alias (`*name`) is used.', 'Write the value out where it is needed.'),
  'yaml-expansion': doc(
    'YAML aliases stand for one another until the file would hold more values than any description.',
    'Remove them, and write out the few values that are needed.',
  ),
  'yaml-tag': doc('A YAML tag (`!name`) is used.', 'Remove the tag.'),
  'yaml-merge': doc('A YAML merge key (`<<`) is used.', 'Write the keys out where they are needed.'),
  'set-unreadable': doc(
    'What is to be set isn’t a path, an equals sign and a value.',
    'Write it like `domes.hall.radius=2.5`.',
  ),
  'set-nowhere': doc(
    'The path of what is to be set leads nowhere.',
    'Use keys of the description and ids that it has.',
  ),
  'vary-range': doc(
    'A row of values to vary has no step, no value between two bars, or too many values.',
    'Write it like `domes.hall.radius=2.5..4/0.25` or `domes.hall.profile=catenary|pointed`.',
  ),
  'problems-more': doc('There are more problems than are listed.', 'Mend the listed ones first.'),

  // Keys and values
  'key-unknown': doc('A key that no description has.', 'Use the suggested key, or remove it.'),
  'key-missing': doc('A key without default is missing.', 'Add it.'),
  'key-duplicate': doc('A key stands twice in one place.', 'Keep one of them.'),
  'key-not-text': doc('A list or mapping is used as a key.', 'Use a plain word as the key.'),
  'value-missing': doc('A key has no value.', 'Give a value, or remove the key to take its default.'),
  'value-type': doc('A value is of the wrong kind, for instance text where a list belongs.', 'Give the kind named.'),
  'value-choice': doc('A word that is not among the choices.', 'Use one of the choices.'),
  'value-range': doc('A value outside its range.', 'Give a value within the range.'),
  'value-whole': doc('A count that is not a whole number.', 'Give a whole number.'),
  'value-number': doc('A plain number that cannot be read.', 'Write digits with a decimal point.'),
  'value-text': doc('Text that is too long or holds control characters.', 'Shorten it to one plain line.'),
  'list-length': doc('A list with too few or too many entries.', 'Give as many as named.'),
  'format-unknown': doc('The format number is not one that this version reads.', 'Write `format: 1`.'),
  'date-unreal': doc('Not a date of the calendar written YYYY-MM-DD.', 'Write a real date such as 2026-05-04.'),

  // Quantities
  'quantity-unreadable': doc('A quantity that cannot be read.', 'Write a number and a unit.'),
  'quantity-size': doc('A quantity too large to be a measurement.', 'Give the size that is meant.'),
  'quantity-unit': doc('An unknown unit.', 'Use one of the accepted units.'),
  'quantity-unit-missing': doc('A quantity other than a length or angle without its unit.', 'Write the unit.'),
  'quantity-kind': doc(
    'A quantity of another kind, for instance a mass for a length.',
    'Use a unit of the kind named.',
  ),
  'quantity-feet-inches': doc('Feet that are not whole before inches, or 12 inches and more.', `Write it like 6'-10".`),

  // Names
  'id-unsafe': doc('An id that cannot serve as a name of parts and files.', 'Use a-z, 0-9 and -, a letter first.'),
  'id-duplicate': doc('Two things carry the same id.', 'Give each its own.'),
  'reference-unknown': doc('An id that names no dome.', 'Use the id of a dome.'),
  'passage-ends': doc('A passage that joins a dome to itself.', 'Name two different domes.'),

  // Blocks and wall
  'range-order': doc('A range whose first value is not smaller than its second.', 'Put the smaller value first.'),
  'joint-outside-range': doc('The joint lies outside joint-range.', 'Change the joint or the range.'),
  'joint-too-thick': doc('The joint is more than a quarter of the course height.', 'Thinner joints or higher courses.'),
  'tolerance-too-wide': doc('Block tolerance uses up the whole joint range.', 'A finer tolerance or a wider range.'),
  'piece-too-long': doc('shortest-piece is more than half a block.', 'Shorten it to at most half the block length.'),
  'lap-too-long': doc('least-lap is more than half a block.', 'Shorten it to at most half the block length.'),
  'wall-too-thick': doc('The wall is as thick as a dome’s inside radius, or thicker.', 'A thinner wall or wider dome.'),
  'blocks-too-few': doc('Fewer than three blocks fit round a dome.', 'Shorter blocks.'),
  'blocks-too-many': doc('More blocks than one house can have.', 'Higher courses or longer blocks.'),
  'courses-too-few': doc('Less than two courses fit between springing and curb or crown.', 'Lower courses.'),

  // Domes
  'rise-hemisphere': doc('A hemisphere with a rise other than its radius.', 'Remove the rise or choose another shape.'),
  'rise-too-high': doc('A rise too high for the profile’s shape.', 'A lower rise or another shape.'),
  'rise-too-low': doc('A rise too low for the profile’s shape.', 'A higher rise or another shape.'),
  'stem-wall-low': doc('A stem wall lower than half a course.', 'No stem wall, or one of half a course and more.'),
  'oculus-too-large': doc('Oculus and curb take more than 0.8 of the dome’s radius.', 'A smaller oculus or curb.'),

  // Domes among one another
  'domes-same-place': doc('Two domes whose axes stand in one place, or nearly.', 'Give each its own `at`.'),
  'domes-nested': doc('A dome that stands wholly within another.', 'Move it out, or remove it.'),
  'overlap-too-deep': doc(
    'Two domes overlap so far that an axis, a curb or a crown plug of one lies in the other.',
    'Set their axes further apart.',
  ),
  'domes-nearly-touch': doc(
    'Two domes leave too narrow a gap, or graze so that thin shells of wall would be left.',
    'Set them further apart, or let them overlap more.',
  ),
  'dome-cut-away': doc(
    'Less than a quarter of a dome’s wall stands on the ground beside the earlier domes that it abuts.',
    'Move it away from them, or list it before one of them.',
  ),
  'room-parted': doc('Two earlier domes meet inside a later one and part its room.', 'Move it away from them.'),

  // Openings and passages
  'opening-too-high': doc('An arch reaches into the curb or the crown.', 'Lower the opening or raise the dome.'),
  'opening-too-wide': doc('An arch takes more than 0.9 of the dome’s width at some height.', 'Narrow or lower it.'),
  'openings-meet': doc('Two arches of one dome leave no piece of wall between them.', 'Move them apart.'),
  'opening-meets-dome': doc(
    'The arch or barrel of an opening runs into another dome, or leaves no piece of wall beside it.',
    'Turn the opening away, or set the domes further apart.',
  ),
  'opening-blocked': doc(
    'Another dome, barrel or passage stands right in front of an opening.',
    'Turn the opening, or move what stands in its way.',
  ),
  'barrels-meet': doc('Barrels of two domes, or a barrel and a passage, meet outside.', 'Turn an opening away.'),
  'passage-too-high': doc(
    'A passage’s vault reaches into the curb or the crown of one of its domes.',
    'Lower the passage or raise the dome.',
  ),
  'passage-too-wide': doc(
    'A passage’s vault takes more than 0.9 of the width of one of its domes at some height.',
    'Narrow or lower it.',
  ),
  'passage-not-through': doc(
    'A passage that doesn’t come out in the rooms of both its domes.',
    'Move apart the domes that stand in its way.',
  ),
  'passage-crosses-dome': doc(
    'A passage that runs into a third dome, or nearly.',
    'Join each dome to that one, or move it away.',
  ),
  'passage-meets-opening': doc(
    'A passage and an arch of one dome leave no piece of wall between them.',
    'Turn the opening away.',
  ),
  'passages-meet': doc(
    'Two passages cross, or leave no piece of wall between them.',
    'Make them narrower, move their domes, or remove one.',
  ),
  'partition-short': doc('A partition that is hardly one.', 'Set its ends further apart.'),
  'partition-outside': doc('An end of a partition lies outside its room.', 'Move it inward.'),
  'partition-before-opening': doc('A partition stands in front of an opening or passage.', 'Move it aside.'),
  'partition-door': doc('A door that is wider or higher than its partition, or beyond its end.', 'Move or shrink it.'),
  'partition-in-doorway': doc('A partition stands in the doorway of another.', 'Move the door or the partition.'),
  'room-place': doc(
    'The place of a room lies in a wall or partition, or outside its dome.',
    'Move it onto the floor that it means.',
  ),
  'sill-of-door': doc('A door with a sill.', 'Remove the sill or make it a window.'),
  'sill-too-low': doc(
    'A window, vent or niche whose sill is nearly on the floor.',
    'Raise the sill or make it a door.',
  ),
  'head-rise': doc('A head whose rise does not suit its shape.', 'A rise as named, or another shape.'),
  'head-too-high': doc('A head higher than the whole opening.', 'A higher opening or a lower head.'),
  'frame-too-wide': doc('Frames that leave no clear opening.', 'A narrower frame.'),
  'voussoirs-even': doc('An arch of an even number of voussoirs has no keystone.', 'An odd number.'),
  'voussoirs-cast': doc('A number of voussoirs for an arch that is cast in one.', 'Write `made-as: voussoirs`.'),
  'niche-depth': doc('A niche without depth.', 'Add its depth.'),
  'niche-too-deep': doc(
    'A niche that leaves too thin a wall behind it.',
    'A shallower niche or a face that stands out.',
  ),
  'depth-not-niche': doc('A depth for an opening that goes through the wall.', 'Remove it or make it a niche.'),

  // Mix and setting out
  'mix-too-light': doc('A wet density that foam alone would have.', 'A higher density.'),
  'mix-too-dense': doc('A density that the mix would not reach without any foam.', 'A lower density, or more sand.'),
  'pegs-together': doc('Two datum pegs nearly in one place.', 'Set them further apart.'),
  'peg-in-dome': doc('A datum peg inside a dome.', 'Move it outside the house.'),

  // Footing, site, prices
  'footing-too-narrow': doc('A footing narrower than the wall.', 'Widen it.'),
  'footing-too-wide': doc('A footing so wide that no floor is left inside a dome.', 'Narrow it.'),
  'footing-too-shallow': doc('A footing that does not reach into the ground.', 'Deepen it.'),
  'tie-without-footing': doc(
    'A tie in the footing of a house without footing.',
    'Give a footing, or lay the tie above the openings.',
  ),
  'tie-too-high': doc('A tie that lies above the crown of a dome.', 'Lower it, or lay it above the openings.'),
  'plot-crossing': doc(
    'A plot whose sides cross, or that encloses no area.',
    'List the corners in order round the plot.',
  ),
  'outside-plot': doc(
    'A dome, barrel or passage with its footing crosses the boundary of the plot.',
    'Move it inward, or mend the plot.',
  ),
  'price-currency': doc('Prices without a currency, or one not of three capitals.', 'Add `currency: EUR` or another.'),
  'price-item': doc('A price item whose name or value is not one.', 'Write `cement: { per: 25 kg, price: 6.20 }`.'),
} as const satisfies Record<string, CodeDoc>;

/** A stable code of a problem. */
export type ProblemCode = keyof typeof CODES;
