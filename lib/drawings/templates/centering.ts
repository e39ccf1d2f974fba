import { formatLength, type WrittenUnits } from '../../base/measures.js';
import * as texts from '../../base/texts/drawing-moulds.js';
import type { Segment } from '../../documents/drawing.js';
import { line } from '../../documents/segments.js';
import type { Template, TemplatePiece } from '../../documents/template.js';
import { acos, atan2 } from '../../math/elementary.js';
import type { HeadArc, Section } from '../../math/section.js';
import type { HouseSetout } from '../../setout/house.js';
import { type Centre, centresOf } from '../../works/centering.js';
import { writtenUnits } from '../words.js';
import { axisStroke, label, measure, outlinePath } from './parts.js';

/** Arches that the same ribs form. */
interface Form {
  readonly section: Section;
  readonly arc: HeadArc;
  readonly centres: Centre[];
}

/**
 * Ribs of every curved head at full size, one template for all arches of one width and rise: the edge on which the
 * lagging lies, the springing line, and the centre line of the same rib of bent tube.
 */
export function centeringTemplates(house: HouseSetout): Template[] {
  const sections = new Map([...house.arches, ...house.passages].map(({ id, section }) => [id, section]));
  const forms = new Map<string, Form>();
  for (const centre of centresOf(house)) {
    const section = sections.get(centre.id);
    if (!section?.arc) continue;
    const key = `${centre.shape} ${Math.round(centre.width)} × ${Math.round(centre.rise)}`;
    const form = forms.get(key) ?? { section, arc: section.arc, centres: [] };
    form.centres.push(centre);
    forms.set(key, form);
  }
  return [...forms.values()].map((form): Template => {
    const names = form.centres.map((c) => c.id).join(' ');
    return {
      id: `centering-${form.centres[0]?.id}`,
      title: texts.centeringOf(names),
      pieces: [ribPiece(house, form, names)],
    };
  });
}

function ribPiece(house: HouseSetout, { section, arc, centres }: Form, names: string): TemplatePiece {
  const { lagging, tube } = house.house.centering;
  const units = writtenUnits(house.house);
  const [first] = centres as [Centre, ...Centre[]];
  const [half, crown] = [first.ribWidth / 2, first.ribRise];
  const size = (mm: number) => sized(mm, units);
  const apart = centres.map((c) => texts.ribsApart(c.id, c.ribs, size(c.spacing)));
  const pointed = arc.past > 0;
  return {
    name: texts.ribOfNames(names),
    primitives: [
      outlinePath([...headSegments(arc, section.springingZ, lagging), line([-half, 0], [half, 0])]),
      {
        kind: 'path',
        layer: 'axis',
        segments: headSegments(arc, section.springingZ, lagging + tube / 2),
        closed: false,
      },
      axisStroke([0, crown - STUB], [0, crown]),
      axisStroke([0, 0], [0, STUB]),
      measure(0, [-half, 0], [half, 0], [0, DIMENSION]),
      measure(90, [0, 0], [0, crown], [DIMENSION, 0]),
      ...(pointed
        ? [{ kind: 'dimension', type: 'aligned', from: [half, 0], to: [0, crown], line: [half, 0] } as const]
        : []),
      ...label(
        [
          texts.ribOfNames(names),
          texts.withRadius(first.shape, size(arc.radius - lagging)),
          ...apart,
          texts.underLagging(size(lagging)),
          texts.chainLineCentre,
        ],
        [-0.45 * half, Math.max(0.45 * crown, DIMENSION + 12 + 5 * 4)],
        Math.min(4, crown / 32),
      ),
    ],
  };
}

/** Dimension lines and ends of the centre line, mm from the edges. */
const DIMENSION = 8;
const STUB = 6;

const sized = (mm: number, units: WrittenUnits): string =>
  `${formatLength(mm, units)}${units === 'feet-inches' ? '' : ' mm'}`;

/** A head's arcs moved inward by `inset`, from the right springing over the crown to the left one; z from the springing. */
function headSegments({ past, centreZ, radius }: HeadArc, springingZ: number, inset: number): Segment[] {
  const r = radius - inset;
  const down = springingZ - centreZ;
  if (past > 0) {
    const top = acos(Math.min(1, past / r));
    const arc = (x: number, start: number, end: number): Segment => ({
      kind: 'arc',
      centre: [x, -down],
      radius: r,
      start,
      end,
      ccw: true,
    });
    return [arc(-past, 0, top), arc(past, Math.PI - top, Math.PI)];
  }
  const reach = Math.sqrt(Math.max(0, r * r - down * down));
  const start = atan2(down, reach);
  return [{ kind: 'arc', centre: [0, -down], radius: r, start, end: Math.PI - start, ccw: true }];
}
