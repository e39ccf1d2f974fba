import { WHOLE } from '../base/tolerances.js';
import { archForm, archPieces } from '../masonry/arch-pieces.js';
import { archVolumes, passageVolumes } from '../masonry/arch-volumes.js';
import { blocksIn, type LaidBlock, type LaidHouse } from '../masonry/block.js';
import { pouredVolume } from '../masonry/mass.js';
import { type RingPiece, ringPieces } from '../masonry/ring-pieces.js';
import { pourOf } from '../masonry/stops.js';
import type { ArchSetout } from '../setout/arch.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, type HouseSetout, passagesOf } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { spanPoint } from '../setout/span.js';
import { type ArchJob, fewestForms, type LayingPlan, layingPlan, type Stage } from './laying-plan.js';
import { castingPlan, daysWith, fewestCopies, leastDays, type TurnRules } from './mould-turns.js';

/** Which mould a block is cast in. */
export type MouldOf = (block: LaidBlock) => string;

/** One mould for each course of each dome: its blocks are equal. */
export const courseMould: MouldOf = (block) => `${block.domeId}-${block.course}`;

/** Pieces cast in one kind of mould: blocks, voussoirs of an arch, segments of a ring, or a crown plug. */
export interface MouldUse {
  readonly mould: string;
  readonly pieces: number;
  /** What its largest piece takes of fresh mix, mm³: as cast, before it shrinks and is cut. */
  readonly volume: number;
  readonly copies: number;
}

export interface CalendarDay {
  readonly day: number;
  /** Pieces by mould, in laying order. */
  readonly cast: readonly { readonly mould: string; readonly pieces: number }[];
  /** Fresh mix of these pieces and of what is cast in place of the day's arches, mm³, without waste. */
  readonly mix: number;
  readonly arches: readonly string[];
  readonly struck: readonly string[];
  readonly laid: readonly string[];
  readonly closed: readonly string[];
}

/** What is cast, struck and laid on each day. */
export interface Calendar {
  /** Pours of a day, as mixer and crew allow; less than 1 when they allow none, and then nothing is planned. */
  readonly poursPerDay: number;
  /** Which of the two limits them. */
  readonly limitedBy: 'mixer' | 'crew';
  readonly moulds: readonly MouldUse[];
  readonly mouldsProven: boolean;
  readonly castingDays: number;
  /** With as many moulds as one likes. */
  readonly leastDays: number;
  readonly targetDays: number | null;
  readonly forms: readonly { readonly family: string; readonly arches: readonly string[]; readonly forms: number }[];
  readonly formsProven: boolean;
  /** Openings and passages whose ring alone takes more mix than the mixer's day. */
  readonly overDay: readonly string[];
  readonly laying: LayingPlan;
  /** Days on which something happens. */
  readonly days: readonly CalendarDay[];
}

interface Piece {
  readonly mould: string;
  /** Poured, mm³. */
  readonly volume: number;
  /** Course, ring or arch that it belongs to. */
  readonly stage: string;
}

const EMPTY: LayingPlan = { stages: [], arches: [], closes: [], lastDay: 0 };

/** When everything is cast, struck and laid, with the fewest moulds and forms. */
export function calendarOf(house: HouseSetout, laid: LaidHouse, mouldOf: MouldOf = courseMould): Calendar {
  const { casting } = house.house;
  const pieces = piecesInOrder(house, laid, mouldOf);
  const kinds = [...new Set(pieces.map((p) => p.mould))];
  const demand = kinds.map((kind) => pieces.filter((p) => p.mould === kind).length);
  const volumes = kinds.map((kind) =>
    pieces.reduce((most, p) => (p.mould === kind ? Math.max(most, p.volume) : most), 0),
  );
  const { pours, limitedBy } = dailyPours(
    house,
    pieces.map((p) => volumes[kinds.indexOf(p.mould)] as number),
  );
  const rules = turnRules(house, pours);
  const use = (copies: readonly number[]) =>
    kinds.map((mould, i) => ({
      mould,
      pieces: demand[i] as number,
      volume: volumes[i] as number,
      copies: copies[i] as number,
    }));
  const ways = [...house.arches, ...house.passages];
  const overDay = ways.filter((way) => pourDays(house, ringInPlace(way)) > 1).map((way) => way.id);
  const common = { poursPerDay: pours, limitedBy, targetDays: casting.targetDays, overDay };
  if (pours < 1) {
    const copies = kinds.map(() => 1);
    return {
      ...common,
      moulds: use(copies),
      mouldsProven: true,
      castingDays: 0,
      leastDays: 0,
      forms: [],
      formsProven: true,
      laying: EMPTY,
      days: [],
    };
  }

  const least = leastDays(demand, rules);
  const alone = kinds.map(() => 1);
  const wanted = casting.targetDays === null ? daysWith(demand, alone, rules) : Math.floor(casting.targetDays);
  const days = Math.max(least, wanted);
  const found = fewestCopies(demand, days, rules);
  const { counts, proven } = found ?? { counts: [...demand], proven: false };
  const plan = castingPlan(demand, counts, days, rules);
  const castOn = castDays(pieces, kinds, plan);
  const stages = stagesOf(house, pieces, castOn);
  const jobs = archJobs(house, stages, pieces, castOn, plan.length);
  const layingRules = { strike: wholeDays(casting.archStrikeDays), coursesPerDay: casting.coursesPerDay };
  const inPlace = new Map(ways.map((way) => [way.id, castInPlace(way)]));
  const { families, counts: forms, proven: formsProven } = fewestForms(stages, jobs, layingRules);
  const laying = layingPlan(stages, jobs, new Map(families.map((f, i) => [f, forms[i] as number])), layingRules);
  return {
    ...common,
    moulds: use(counts),
    mouldsProven: proven,
    castingDays: plan.length,
    leastDays: least,
    forms: families.map((family, i) => ({
      family,
      arches: jobs.filter((job) => job.family === family).map((job) => job.id),
      forms: forms[i] as number,
    })),
    formsProven,
    laying,
    days: dayByDay(plan, kinds, volumes, laying, inPlace),
  };
}

const wholeDays = (days: number): number => Math.ceil(days - WHOLE);

/** As many pours as fit in the mixer's and in the crew's day, were the largest of all pieces cast on it. */
function dailyPours(house: HouseSetout, volumes: readonly number[]): { pours: number; limitedBy: 'mixer' | 'crew' } {
  const { crew, hoursPerDay, minutesPerBlock } = house.house.casting;
  const byCrew = Math.floor((crew * hoursPerDay * 60) / minutesPerBlock);
  const most = mixerDay(house);
  const largest = [...volumes].sort((a, b) => b - a);
  let pours = 0;
  for (let poured = largest[0] ?? 0; pours < byCrew && poured <= most; poured += largest[pours] ?? 0) pours++;
  return pours < byCrew ? { pours, limitedBy: 'mixer' } : { pours: byCrew, limitedBy: 'crew' };
}

/** What the mixer delivers in a day for the net volume of what is cast, mm³; without end where it isn't told. */
function mixerDay({ house }: HouseSetout): number {
  const { hoursPerDay, mixerLitresPerMinute: mixer, waste } = house.casting;
  return mixer === null ? Number.POSITIVE_INFINITY : (mixer * hoursPerDay * 60 * 1e6) / (1 + waste);
}

function turnRules(house: HouseSetout, pours: number): TurnRules {
  const { demouldDays, hoursPerDay } = house.house.casting;
  const anHour = 1 / 24;
  const fits = Math.floor(hoursPerDay / (24 * Math.max(demouldDays, anHour)) + WHOLE);
  return {
    poursPerDay: pours,
    period: Math.max(1, wholeDays(demouldDays)),
    turnsPerDay: demouldDays < 1 ? Math.max(1, fits) : 1,
  };
}

/**
 * Every piece to cast, in laying order: voussoirs before the courses of their dome, then course by course, the skewback
 * ring before those of the shell, at last the curb or plug.
 */
function piecesInOrder(house: HouseSetout, laid: LaidHouse, mouldOf: MouldOf): Piece[] {
  const done = new Set<string>();
  const poured = (volume: number) => pouredVolume(volume, house.house.blocks);
  const pour = pourOf(house, laid);
  const rings = ringPieces(house).pieces;
  return house.domes.flatMap((dome) => {
    const ring = (kind: RingPiece['kind']): Piece[] => {
      const stage = ringStage(dome, kind);
      const own = rings.filter((r) => r.domeId === dome.id && r.kind === kind);
      return own.map(({ volume }) => ({ mould: stage, volume: poured(volume), stage }));
    };
    const voussoirs = archesOf(house, dome).flatMap((arch): Piece[] => {
      if (arch.opening.arch.madeAs === 'cast') return [];
      const { pieces } = archPieces(arch, house.house.blocks.joint);
      return pieces.map((piece) => ({ mould: archForm(piece), volume: poured(piece.volume), stage: arch.id }));
    });
    const blocksOf = (course: Course): Piece[] => {
      const own = blocksIn(laid, dome.id, course.index);
      // A cut block is cast whole, and one that a cut divides is cast once.
      return own.flatMap((b): Piece[] => {
        const key = `${b.domeId} ${b.course} ${b.number}`;
        if (done.has(key)) return [];
        done.add(key);
        return [{ mould: mouldOf(b), volume: pour(b), stage: `${dome.id}-${course.index}` }];
      });
    };
    const [stem, shell] = (['stem', 'shell'] as const).map((part) =>
      dome.courses.filter((course) => course.part === part).flatMap(blocksOf),
    ) as [Piece[], Piece[]];
    return [...voussoirs, ...stem, ...ring('skewback'), ...shell, ...ring('curb'), ...ring('plug')];
  });
}

/** Name of a ring's stage, and of the form that its segments are cast in. */
const ringStage = (dome: DomeSetout, kind: RingPiece['kind']): string => `${dome.id}-${kind}`;

/** Last day on which a piece of each course, ring or arch is cast; pieces of one mould in their order. */
function castDays(
  pieces: readonly Piece[],
  kinds: readonly string[],
  plan: readonly (readonly number[])[],
): Map<string, number> {
  const last = new Map<string, number>();
  for (const [kind, mould] of kinds.entries()) {
    const queue = pieces.filter((p) => p.mould === mould);
    let next = 0;
    for (const [day, picked] of plan.entries())
      for (let n = picked[kind] as number; n > 0; n--) {
        const { stage } = queue[next++] as Piece;
        last.set(stage, Math.max(last.get(stage) ?? 0, day + 1));
      }
  }
  return last;
}

type Way = ArchSetout | PassageSetout;

/**
 * The courses in laying order, a skewback ring as one of them; one goes past an arch when it is the first to reach over
 * its crown. The last of a dome waits until what closes the crown can follow it.
 */
function stagesOf(house: HouseSetout, pieces: readonly Piece[], castOn: ReadonlyMap<string, number>): Stage[] {
  const cure = wholeDays(house.house.casting.readyToLayDays);
  const built = new Set(pieces.map((p) => p.stage));
  return house.domes.flatMap((dome) => {
    const ways: Way[] = [...archesOf(house, dome), ...passagesOf(house, dome)];
    const stage = (id: string, course: number | null, topZ: number): Stage[] => {
      if (!built.has(id)) return [];
      const past = ways.filter((way) => topZ > way.topZ).map((way) => way.id);
      return [{ id, domeId: dome.id, course, readyDay: (castOn.get(id) ?? 0) + cure, past }];
    };
    const coursesOf = (part: Course['part']) =>
      dome.courses
        .filter((course) => course.part === part)
        .flatMap(({ index }) => stage(`${dome.id}-${index}`, index, courseTop(dome, index)));
    const { skewback } = dome;
    const ring = skewback
      ? stage(ringStage(dome, 'skewback'), null, Math.max(skewback.shoulderZ, skewback.bed[1]))
      : [];
    const stages = [...coursesOf('stem'), ...ring, ...coursesOf('shell')];
    const closing = castOn.get(ringStage(dome, dome.curb ? 'curb' : 'plug')) ?? 0;
    return stages.map((s, i) =>
      i === stages.length - 1 ? { ...s, readyDay: Math.max(s.readyDay, closing + cure) } : s,
    );
  });
}

/** Highest point of a course's blocks, at the extrados. */
function courseTop(dome: DomeSetout, index: number): number {
  const course = dome.courses[index - 1];
  if (!course) return Number.POSITIVE_INFINITY;
  return Math.max(
    spanPoint(dome[course.part], course.to, 0)[1],
    spanPoint(dome[course.part], course.to, dome.thickness)[1],
  );
}

/** Arches in the order in which laying comes past them; they are cast when the blocks are, laid when theirs are cured. */
function archJobs(
  house: HouseSetout,
  stages: readonly Stage[],
  pieces: readonly Piece[],
  castOn: ReadonlyMap<string, number>,
  castingDays: number,
): ArchJob[] {
  const cure = wholeDays(house.house.casting.readyToLayDays);
  const needed = (way: Way) => {
    const at = stages.findIndex((stage) => stage.past.includes(way.id));
    return at < 0 ? stages.length : at;
  };
  const ways: Way[] = [...house.arches, ...house.passages];
  const order = new Map(ways.map((way) => [way, needed(way)]));
  const voussoirs = new Set(pieces.map((p) => p.stage));
  return [...ways]
    .sort((a, b) => (order.get(a) as number) - (order.get(b) as number))
    .map((way) => ({
      id: way.id,
      family: familyOf(way),
      days: pourDays(house, castInPlace(way)),
      readyDay: voussoirs.has(way.id) ? Math.max(castingDays + 1, (castOn.get(way.id) ?? 0) + cure) : castingDays + 1,
    }));
}

/** What is cast of an arch in its place, mm³: jambs, spandrel and a niche's back, and its ring. */
function castInPlace(way: Way): number {
  const { jambs, spandrel, back } = volumesOf(way);
  return jambs + spandrel + back + ringInPlace(way);
}

/** The ring of an arch, mm³; nothing where it is laid of voussoirs. */
const ringInPlace = (way: Way): number =>
  'opening' in way && way.opening.arch.madeAs !== 'cast' ? 0 : volumesOf(way).head;

const volumesOf = (way: Way) => ('opening' in way ? archVolumes(way) : passageVolumes(way));

/** Days on which the mixer delivers so much, mm³; one where it isn't told. */
const pourDays = (house: HouseSetout, volume: number): number =>
  Math.max(1, Math.ceil(volume / mixerDay(house) - WHOLE));

/** Arches of one clear width and head are formed by the same ribs. */
function familyOf({ section }: Way): string {
  const { shape, rise } = section.head;
  return `${shape} ${Math.round(section.width)} × ${Math.round(rise)}`;
}

function dayByDay(
  plan: readonly (readonly number[])[],
  kinds: readonly string[],
  volumes: readonly number[],
  laying: LayingPlan,
  inPlace: ReadonlyMap<string, number>,
): CalendarDay[] {
  const last = Math.max(plan.length, laying.lastDay);
  const days = Array.from({ length: last }, (_, i): CalendarDay => {
    const day = i + 1;
    const picked = plan[i] ?? [];
    const arches = laying.arches.filter((a) => a.from <= day && day <= a.day);
    return {
      day,
      cast: kinds.flatMap((mould, k) => ((picked[k] ?? 0) > 0 ? [{ mould, pieces: picked[k] as number }] : [])),
      mix:
        picked.reduce((sum, n, k) => sum + n * (volumes[k] as number), 0) +
        arches.reduce((sum, a) => sum + (inPlace.get(a.id) ?? 0) / a.days, 0),
      arches: arches.map((a) => a.id),
      struck: laying.arches.filter((a) => a.strikeDay === day).map((a) => a.id),
      laid: laying.stages.filter((s) => s.from <= day && day <= s.to).map((s) => s.id),
      closed: laying.closes.filter((c) => c.day === day).map((c) => c.domeId),
    };
  });
  return days.filter((d) => d.cast.length + d.arches.length + d.struck.length + d.laid.length + d.closed.length > 0);
}
