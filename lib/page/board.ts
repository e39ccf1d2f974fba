import type { PagePayload } from '../documents/page-payload.js';
import { swatchOf } from './hatches.js';
import * as texts from './texts.js';
import { type CutKind, findMarks, type View } from './view.js';

/** What the controls do to the view. */
export interface Controls {
  readonly view: () => View;
  readonly change: (part: Partial<View>) => void;
  /** Draws apart, from 0 to 1. */
  readonly spread: (apart: number) => void;
  /** Chooses a piece, and turns to it where it can't be seen. */
  readonly choose: (piece: number | null) => void;
  readonly chooseOpening: (opening: number) => void;
  readonly lookFrom: (bearingRad: number, elevationRad: number) => void;
  readonly reset: () => void;
}

/** Most marks that a search lists. */
const MOST_FOUND = 12;
const DEG = Math.PI / 180;

export const part = <T extends Element>(id: string): T => {
  const found = document.getElementById(id);
  if (!found) throw new Error(`this page has no ${id}`);
  return found as unknown as T;
};

/** Wires the controls beside the model; returns what brings them in line with a view. */
export function startBoard(payload: PagePayload, controls: Controls): (view: View) => void {
  const { steps, names } = payload;
  const { view, change } = controls;
  const step = part<HTMLInputElement>('step');
  step.max = String(steps.length - 1);
  step.addEventListener('input', () => change({ step: Number(step.value) }));
  const by = (n: number) => () => change({ step: Math.min(steps.length - 1, Math.max(0, view().step + n)) });
  part('step-back').addEventListener('click', by(-1));
  part('step-on').addEventListener('click', by(1));

  const apart = part<HTMLInputElement>('apart');
  apart.addEventListener('input', () => controls.spread(Number(apart.value) / 100));

  const cutKinds = [...document.querySelectorAll<HTMLInputElement>('input[name="cut"]')];
  const share = part<HTMLInputElement>('cut-place');
  const bearing = part<HTMLInputElement>('cut-bearing');
  const other = part<HTMLInputElement>('cut-other');
  const cut = () =>
    change({
      cut: {
        kind: (cutKinds.find((k) => k.checked)?.value ?? 'none') as CutKind,
        share: Number(share.value) / 1000,
        bearingRad: Number(bearing.value) * DEG,
        other: other.checked,
      },
    });
  for (const control of [...cutKinds, share, bearing, other]) control.addEventListener('input', cut);

  const colourKinds = [...document.querySelectorAll<HTMLInputElement>('input[name="colours"]')];
  for (const kind of colourKinds)
    kind.addEventListener('input', () => change({ colouring: Number(kind.value), only: null }));

  const find = part<HTMLInputElement>('find');
  const found = part<HTMLElement>('found');
  const search = (choose: boolean) => {
    const all = findMarks(names, find.value);
    const [first] = all;
    if (choose && first !== undefined) controls.choose(first);
    found.replaceChildren(
      sentence(
        find.value.trim() === ''
          ? ''
          : all.length === 0
            ? texts.noMarkIsLike
            : all.length === 1
              ? texts.oneFound
              : texts.foundCount(all.length),
      ),
      ...all.slice(0, MOST_FOUND).map((k) => button(names[k] as string, () => controls.choose(k))),
    );
  };
  find.addEventListener('input', () => search(false));
  part<HTMLFormElement>('find-form').addEventListener('submit', (event) => {
    event.preventDefault();
    search(true);
  });

  part('openings').replaceChildren(...payload.openings.map((o, k) => button(o.name, () => controls.chooseOpening(k))));
  for (const [id, bearingRad, elevationRad] of LOOKS)
    part(id).addEventListener('click', () => controls.lookFrom(bearingRad, elevationRad));
  part('look-first').addEventListener('click', () => controls.reset());
  const shown = part<HTMLInputElement>('names');
  shown.addEventListener('input', () => change({ names: shown.checked }));

  let legend = -1;
  return (now) => {
    step.value = String(now.step);
    const label = steps[now.step] ?? '';
    step.setAttribute('aria-valuetext', label);
    part('step-text').textContent = texts.stepOf(now.step + 1, steps.length, label);
    apart.value = String(Math.round(100 * now.apart));
    for (const kind of cutKinds) kind.checked = kind.value === now.cut.kind;
    part<HTMLElement>('cut-place-row').hidden = now.cut.kind === 'none';
    part<HTMLElement>('cut-bearing-row').hidden = now.cut.kind !== 'upright';
    part('cut-bearing-text').textContent = `${Math.round(now.cut.bearingRad / DEG)}°`;
    for (const kind of colourKinds) kind.checked = Number(kind.value) === now.colouring;
    if (legend !== now.colouring) drawLegend(now.colouring);
    for (const [k, entry] of [...part('legend').querySelectorAll('button')].entries())
      entry.setAttribute('aria-pressed', String(now.only === k));
    legend = now.colouring;
    for (const [k, entry] of [...part('openings').querySelectorAll('button')].entries())
      entry.setAttribute('aria-pressed', String(now.opening === k));
    tellPiece(payload, now);
  };

  /** The entries of a colouring, each a button that shows it alone. */
  function drawLegend(colouring: number): void {
    const { entries, of } = payload.colourings[colouring] as PagePayload['colourings'][number];
    part('legend').replaceChildren(
      ...entries.map(({ label, colour, hatch = 0 }, k) => {
        const made = button(label, () => change({ only: view().only === k ? null : k }));
        const swatch = document.createElement('span');
        swatch.className = 'swatch';
        swatch.style.background = swatchOf(colour, hatch);
        const count = document.createElement('small');
        count.textContent = String(of.filter((e) => e === k).length);
        made.prepend(swatch);
        made.append(count);
        return made;
      }),
    );
  }
}

const LOOKS = [
  ['look-north', 0, 0.12],
  ['look-east', Math.PI / 2, 0.12],
  ['look-south', Math.PI, 0.12],
  ['look-west', 1.5 * Math.PI, 0.12],
  ['look-above', Math.PI, Math.PI / 2],
] as const;

function button(text: string, act: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = text;
  made.addEventListener('click', act);
  return made;
}

function sentence(text: string): HTMLElement {
  const made = document.createElement('p');
  made.textContent = text;
  return made;
}

/** What is known of the piece or opening that the reader chose, as texts alone. */
function tellPiece({ names, told, facts, openings }: PagePayload, { chosen, opening }: View): void {
  const about = part('about');
  part<HTMLElement>('about').parentElement?.toggleAttribute('data-empty', chosen === null && opening === null);
  const known = opening === null ? undefined : openings[opening];
  if (chosen === null && !known) {
    about.replaceChildren(sentence(texts.clickTapOrPress));
    return;
  }
  const title = document.createElement('h3');
  title.textContent = chosen === null ? (known?.name ?? '') : (names[chosen] as string);
  const list = document.createElement('dl');
  const own = chosen === null ? [] : (told[chosen] ?? []).map((k) => facts[k] as readonly [string, string]);
  for (const [name, value] of known ? known.facts : own) {
    const term = document.createElement('dt');
    term.textContent = name;
    const told = document.createElement('dd');
    told.textContent = value;
    list.append(term, told);
  }
  about.replaceChildren(title, list);
}
