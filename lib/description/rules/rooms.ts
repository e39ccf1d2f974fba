import * as texts from '../../base/texts/problems-openings.js';
import { SAME_POINT } from '../../base/tolerances.js';
import { cross2, dot2, length2, sub2 } from '../../math/vec.js';
import type { Draft } from '../draft.js';
import type { ProblemList } from '../problem-list.js';
import { partitionMark, partitionStrip } from './partitions.js';
import { atLeast } from './words.js';

/** So far a place is moved past the line that it must not lie on, mm. */
const PAST = 10;

/** The place of a room lies on the floor of its dome: inside the finished wall, in no earlier dome and no partition. */
export function checkRooms(draft: Draft, problems: ProblemList): void {
  const wall = draft.wall ?? { thickness: 0, renderInside: 0, renderOutside: 0 };
  for (const { path, value: room } of draft.rooms) {
    const index = draft.domes.findIndex((d) => d.value.id === room.in);
    const dome = draft.domes[index]?.value;
    const { at } = room;
    if (!dome || !at) continue;
    const tell = (message: string, mend: string) => problems.add('room-place', [...path, 'at'], message, mend);
    const over = length2(sub2(at, dome.at)) - (dome.radius - wall.renderInside);
    if (over > -SAME_POINT)
      tell(
        texts.roomPlaceOutside(room.id, dome.id),
        texts.moveItTowardsAxis(atLeast(over + PAST, draft.units), dome.id),
      );
    for (const { value: earlier } of draft.domes.slice(0, index)) {
      const inside = earlier.radius + wall.thickness + wall.renderOutside - length2(sub2(at, earlier.at));
      if (inside <= -SAME_POINT) continue;
      tell(
        texts.roomPlaceInDome(room.id, earlier.id, dome.id),
        texts.moveItAwayFrom(atLeast(inside + PAST, draft.units), earlier.id),
      );
    }
    draft.partitions.forEach(({ value: partition }, i) => {
      if (partition.in !== room.in || length2(sub2(partition.to, partition.from)) <= SAME_POINT) return;
      const strip = partitionStrip(partition);
      const from = sub2(at, strip.at);
      const t = dot2(from, strip.along);
      const inside = strip.half - Math.abs(cross2(strip.along, from));
      if (t < 0 || t > strip.to || inside <= -SAME_POINT) return;
      tell(
        texts.roomPlaceInPartition(room.id, partitionMark(i)),
        texts.moveItAwayFrom(atLeast(inside + PAST, draft.units), partitionMark(i)),
      );
    });
  }
}
