import { CAUTIONS } from '../base/texts/cautions.js';
import * as texts from '../base/texts/model-scene.js';
import type { ModelPage, PagePiece, PlaceName } from '../documents/model-page.js';
import type { Scene } from '../documents/scene.js';
import { pointApart } from '../math/segments.js';
import { DEG, length2, sub2, type Vec2 } from '../math/vec.js';
import type { HouseSetout } from '../setout/house.js';
import { type PartitionSetout, partitionsOf } from '../setout/partition.js';
import { colouringsOf } from './page-colourings.js';
import { liftsOf } from './page-lifts.js';
import { pageOpenings } from './page-openings.js';
import { type BuildStep, buildOrder } from './page-order.js';
import { type BuiltHouse, isCastPart } from './page-scene.js';

/** Names of rooms stand this high over the floor, and over the roof, mm. */
const NAME_HEIGHT = 1200;
const NAME_OVER = 250;

/** The model page of a house and its `builtScene`: blocks and cast parts that a reader turns, cuts and takes apart. */
export function housePage(built: BuiltHouse, scene: Scene): ModelPage {
  const { setout, blocks, parts } = built;
  const { project, rooms, site } = setout.house;
  const cast = parts.filter(isCastPart).map((m) => m.name);
  const order = buildOrder(setout, blocks);
  const lift = liftsOf(setout);
  const stepOf = stepFinder(order);
  const names = [...setout.arches.map((a) => `arch:${a.id}`), ...setout.passages.map((p) => `passage:${p.id}`)];
  const pieces: PagePiece[] = [
    ...blocks.map((b) => ({ step: stepOf(`${b.domeId} ${b.course}`), lift: lift.course(b), opening: null })),
    ...cast.map((name) => ({
      step: stepOf(name),
      lift: lift.part(name),
      opening: names.includes(name) ? names.indexOf(name) : null,
    })),
  ];
  const facts: readonly (readonly [string, string])[] = [
    [texts.number, project.number],
    [texts.revision, project.revision],
    [texts.date, project.date ?? texts.undated],
    [texts.address, project.address],
    [texts.client, project.client],
    [texts.drawnBy, project.drawnBy],
  ];
  return {
    title: project.title,
    facts: facts.filter(([, value]) => value !== ''),
    cautions: CAUTIONS,
    scene,
    pieces,
    steps: order.map((step) => stepLabel(setout, step)),
    colourings: colouringsOf(built, cast),
    rooms: roomNames(setout, rooms),
    openings: pageOpenings(setout),
    northRad: site.northDeg * DEG,
  };
}

/** Index of the step that lays a course, `dome course`, or sets a part. */
function stepFinder(order: readonly BuildStep[]): (name: string) => number {
  const index = new Map(
    order.map((step, i) => {
      if (step.kind === 'course') return [`${step.domeId} ${step.course}`, i] as const;
      return [step.kind === 'part' ? step.part : 'ground', i] as const;
    }),
  );
  return (name) => index.get(name) ?? 0;
}

function stepLabel({ domes, house }: HouseSetout, step: BuildStep): string {
  if (step.kind === 'part') return step.part.replace(':', ' ');
  if (step.kind === 'course') {
    const count = domes.find((d) => d.id === step.domeId)?.courses.length;
    return texts.courseOf(step.domeId, step.course, count);
  }
  const ground = [...(house.footing ? ['footing'] : []), ...(house.slab ? ['slab'] : [])];
  return ground.length > 0 ? ground.join(texts.andBetween) : texts.theGround;
}

/** Rooms by their names: those with a place there, the others of a dome together at its axis. */
function roomNames(setout: HouseSetout, rooms: HouseSetout['house']['rooms']): PlaceName[] {
  const partitions = partitionsOf(setout);
  return setout.domes.flatMap((dome) => {
    const own = rooms.filter((r) => r.in === dome.id);
    // Over the whole dome: lower, a place on its far side would be shown through it.
    const named = (text: string, [x, y]: Vec2, walls: readonly PartitionSetout[]): PlaceName => ({
      text,
      inside: [x, y, NAME_HEIGHT],
      over: [x, y, dome.topZ + NAME_OVER],
      reach: Math.min(
        dome.springingRadius - length2(sub2([x, y], dome.at)),
        ...walls.map(({ partition: { from, to } }) => pointApart([x, y], from, to)),
      ),
    });
    const whole = own.filter((r) => r.at === null).map((r) => r.name);
    const walls = partitions.filter((wall) => wall.dome === dome);
    return [
      ...(whole.length > 0 ? [named(whole.join(', '), dome.at, [])] : []),
      ...own.flatMap((r) => (r.at ? [named(r.name, r.at, walls)] : [])),
    ];
  });
}
