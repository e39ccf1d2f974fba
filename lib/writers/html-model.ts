import * as texts from '../base/texts/model-page.js';
import type { ModelPage } from '../documents/model-page.js';
import { MODEL_STYLE } from './html-model-style.js';
import { escaped } from './markup.js';
import { base64, packPage } from './page-data.js';

/** What a model page needs of its maker. */
export interface PageSource {
  /** The bundled script of `lib/page`, as text. */
  readonly script: string;
  readonly sha256: (bytes: Uint8Array) => Promise<Uint8Array>;
}

/**
 * A model as one HTML page that stands alone: style, script and data are in it, and the page forbids the browser to
 * fetch anything, or to run any script but the one whose hash it names. Texts come to the reader as texts only.
 * @throws Error when the script could end its own element.
 */
export async function writeModelPage(page: ModelPage, { script, sha256 }: PageSource): Promise<Uint8Array> {
  if (/<\/script|<!--/i.test(script)) throw new Error('the script of the page holds what ends a script in HTML');
  const encoder = new TextEncoder();
  const hash = async (text: string) => `'sha256-${base64(await sha256(encoder.encode(text)))}'`;
  const policy = [
    "default-src 'none'",
    `script-src ${await hash(script)}`,
    `style-src ${await hash(MODEL_STYLE)}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const html = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<title>${escaped(page.title)}</title>`,
    `<style>${MODEL_STYLE}</style>`,
    '</head>',
    '<body>',
    head(page),
    '<main>',
    STAGE,
    board(page),
    '</main>',
    paper(page),
    `<noscript><p>${texts.needsScript}</p></noscript>`,
    `<script type="text/plain" id="data">${packPage(page)}</script>`,
    `<script>${script}</script>`,
    '</body>',
    '</html>',
    '',
  ];
  return encoder.encode(html.join('\n'));
}

const list = (facts: readonly (readonly [string, string])[]): string =>
  facts.map(([name, value]) => `<div><dt>${escaped(name)}</dt><dd>${escaped(value)}</dd></div>`).join('');

const head = ({ title, facts }: ModelPage): string =>
  `<header><h1>${escaped(title)}</h1><dl>${list(facts)}</dl></header>`;

const STAGE = [
  '<div class="stage">',
  `<canvas id="view" tabindex="0" role="application" aria-label="${texts.theModel}" aria-describedby="keys"></canvas>`,
  '<canvas id="print" aria-hidden="true"></canvas>',
  '<svg id="marks" aria-hidden="true"></svg>',
  '<i class="cross" aria-hidden="true"></i>',
  '<p id="hint" hidden aria-hidden="true"></p>',
  '<p id="trouble" role="alert" hidden></p>',
  '</div>',
].join('\n');

const radio = (name: string, value: string, label: string, checked: boolean): string =>
  `<label><input type="radio" name="${name}" value="${escaped(value)}"${checked ? ' checked' : ''}> ${escaped(label)}</label>`;

const button = (id: string, label: string): string => `<button type="button" id="${id}">${label}</button>`;

const group = (title: string, inner: string, open = true, id = ''): string =>
  `<details${id && ` id="${id}"`}${open ? ' open' : ''}><summary><h2>${title}</h2></summary><div>${inner}</div></details>`;

function board({ colourings, steps, openings }: ModelPage): string {
  const last = steps.length - 1;
  const colours = colourings.map(({ name }, k) => radio('colours', String(k), name, k === 0)).join('');
  return [
    '<div class="board">',
    `<section class="about" aria-live="polite"><h2>${texts.pointedAt}</h2><div id="about"></div></section>`,
    group(
      texts.courseByCourse,
      `<p><output id="step-text" for="step"></output></p><p class="row">${button('step-back', `<span aria-hidden="true">−</span><span class="said">${texts.oneStepLess}</span>`)}<input type="range" id="step" min="0" max="${last}" value="${last}" aria-label="${texts.stepsShown}">${button('step-on', `<span aria-hidden="true">+</span><span class="said">${texts.oneStepMore}</span>`)}</p>`,
    ),
    group(
      texts.drawnApart,
      `<p class="row"><input type="range" id="apart" min="0" max="100" value="0" aria-label="${texts.howFarApart}"></p>`,
    ),
    group(
      texts.cut,
      `<p class="choice" role="radiogroup" aria-label="${texts.kindOfCut}">${radio('cut', 'none', texts.whole, true)}${radio('cut', 'level', texts.level, false)}${radio('cut', 'upright', texts.upright, false)}</p><div id="cut-place-row" hidden><p class="row"><label for="cut-place">${texts.place}</label><input type="range" id="cut-place" min="0" max="1000" value="500"></p><p><label><input type="checkbox" id="cut-other"> ${texts.showOtherSide}</label></p></div><p class="row" id="cut-bearing-row" hidden><label for="cut-bearing">${texts.bearing} <output id="cut-bearing-text"></output></label><input type="range" id="cut-bearing" min="0" max="180" value="180"></p>`,
    ),
    group(
      texts.findMark,
      `<form id="find-form"><p class="row"><input type="search" id="find" aria-label="${texts.mark}" autocomplete="off" spellcheck="false"><button>${texts.find}</button></p></form><div id="found" class="list" aria-live="polite"></div>`,
    ),
    group(
      texts.colours,
      `<p class="choice" role="radiogroup" aria-label="${texts.colouredBy}">${colours}</p><div id="legend" class="list" aria-label="${texts.coloursPressOne}"></div>`,
      true,
      'colours',
    ),
    ...(openings.length > 0
      ? [group(texts.openings, '<div id="openings" class="list"></div>')]
      : ['<div id="openings" hidden></div>']),
    group(
      texts.lookFrom,
      `<p class="list">${button('look-north', texts.north)}${button('look-east', texts.east)}${button('look-south', texts.south)}${button('look-west', texts.west)}${button('look-above', texts.above)}${button('look-first', texts.asAtFirst)}</p><p><label><input type="checkbox" id="names" checked> ${texts.namesOfRooms}</label></p>`,
    ),
    group(texts.keysAndFingers, KEYS, false),
    '</div>',
  ].join('\n');
}

const KEYS = `<dl id="keys">${list(texts.KEYS)}</dl>`;

/** What stands under the model on paper, and at the foot of the page. */
function paper({ openings, cautions }: ModelPage): string {
  const names = [...new Set(openings.flatMap((o) => o.facts.map(([name]) => name)))];
  const row = ({ name, facts }: ModelPage['openings'][number]) => {
    const known = new Map(facts);
    return `<tr><th scope="row">${escaped(name)}</th>${names.map((n) => `<td>${escaped(known.get(n) ?? '')}</td>`).join('')}</tr>`;
  };
  const table =
    openings.length === 0
      ? ''
      : `<table><caption>${texts.openingsAndPassages}</caption><thead><tr><th scope="col">${texts.name}</th>${names.map((n) => `<th scope="col">${escaped(n)}</th>`).join('')}</tr></thead><tbody>${openings.map(row).join('')}</tbody></table>`;
  return `<footer>${table}<section class="cautions"><h2>${texts.cautions}</h2><ul>${cautions.map((c) => `<li>${escaped(c)}</li>`).join('')}</ul></section></footer>`;
}
