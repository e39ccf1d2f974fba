import type { Check } from '../base/figures.js';
import type { LengthUnit } from '../base/units.js';
import type { Vec2 } from '../math/vec.js';

/** How a shape of a diagram is drawn; what it means is told in the diagram's caption or texts. */
export type DiagramStyle =
  | 'masonry'
  | 'core'
  | 'axis'
  | 'guide'
  | 'compression'
  | 'tension'
  | 'thrust'
  | 'outline'
  | 'dashed';

export type DiagramShape =
  | { readonly kind: 'line'; readonly style: DiagramStyle; readonly points: readonly Vec2[]; readonly closed?: boolean }
  | { readonly kind: 'dot'; readonly style: DiagramStyle; readonly at: Vec2 }
  | {
      readonly kind: 'text';
      readonly at: Vec2;
      readonly text: string;
      readonly anchor: 'start' | 'middle' | 'end';
    };

/** A picture in a report: x to the right, y downward, both in pixels of a page 96 to the inch. */
export interface Diagram {
  readonly title: string;
  /** What it shows, for those who can't see it as well. */
  readonly caption: string;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly DiagramShape[];
}

export interface ReportSection {
  readonly title: string;
  readonly texts: readonly string[];
  readonly diagrams: readonly Diagram[];
  readonly checks: readonly Check[];
}

/** A neutral report: writers turn it into pages. `cautions` stand at its top and at its end. */
export interface Report {
  readonly title: string;
  /** Name and value of what the report is about. */
  readonly facts: readonly (readonly [name: string, value: string])[];
  readonly summary: readonly string[];
  readonly cautions: readonly string[];
  readonly sections: readonly ReportSection[];
  /** Units of its reader; figures stand in SI. */
  readonly units: LengthUnit;
}
