/** The model page's style: a drawing on its sheet, by day, by night, in the hand and on paper. */
export const MODEL_STYLE = `
:root { --paper: #f4f1ea; --sheet: #fffdf9; --ink: #1f252b; --faint: #5a626b; --line: #cdc6b8; --edge: #2b2a27; --accent: #a3125f; --halo: #fffdf9; }
@media (prefers-color-scheme: dark) {
  :root:not(.on-paper) { --paper: #14171a; --sheet: #1d2125; --ink: #ebe7df; --faint: #a8adb3; --line: #41474e; --edge: #0c0c0b; --accent: #ff5fb0; --halo: #14171a; }
}
:root.on-paper { --paper: #ffffff; --sheet: #ffffff; --halo: #ffffff; color-scheme: light; }
* { box-sizing: border-box; }
[hidden] { display: none !important; }
body { margin: 0; color: var(--ink); background: var(--sheet); font: 15px/1.45 "DejaVu Sans", Verdana, system-ui, sans-serif; }
header { display: flex; flex-wrap: wrap; align-items: stretch; border-bottom: 2px solid var(--ink); }
header h1 { font-size: 1.15rem; line-height: 1.3; margin: 0; padding: .55rem 1rem; flex: 1 1 16rem; overflow-wrap: anywhere; }
header dl { display: flex; flex-wrap: wrap; margin: 0; }
header dl div { padding: .3rem .8rem; border-left: 1px solid var(--line); max-width: 16rem; }
dt { color: var(--faint); font-size: .78rem; } dd { margin: 0; overflow-wrap: anywhere; }
main { display: grid; grid-template-columns: minmax(0, 1fr) 21rem; height: calc(100vh - 3.6rem); min-height: 30rem; }
.stage { position: relative; background: var(--paper); overflow: hidden; }
#view { display: block; width: 100%; height: 100%; touch-action: none; cursor: grab; }
#print { display: none; }
#view:active { cursor: grabbing; }
#view:focus-visible { outline: 3px solid var(--accent); outline-offset: -3px; }
.cross { display: none; position: absolute; left: 50%; top: 50%; width: 17px; height: 17px; margin: -8px; pointer-events: none;
  background: linear-gradient(var(--accent), var(--accent)) 50% 50% / 17px 1px no-repeat, linear-gradient(var(--accent), var(--accent)) 50% 50% / 1px 17px no-repeat; }
#view:focus-visible ~ .cross { display: block; }
#marks { position: absolute; inset: 0; width: 100%; height: 100%; pointer-events: none; }
#marks text { fill: var(--ink); font-size: 14px; paint-order: stroke; stroke: var(--halo); stroke-width: 4px; stroke-linejoin: round; }
#marks .room { text-anchor: middle; font-style: italic; font-size: 15px; }
#marks .size, #marks .mark { text-anchor: middle; font-weight: 700; } #marks .compass { text-anchor: middle; font-weight: 700; }
#marks line { stroke: var(--ink); stroke-width: 1.4; } #marks .halo { stroke: var(--halo); stroke-width: 5; }
#hint { position: absolute; margin: 0; padding: .1rem .45rem; background: var(--ink); color: var(--sheet); font-size: .85rem; pointer-events: none; white-space: nowrap; }
#trouble { position: absolute; inset: auto 1rem 1rem; margin: 0; padding: .7rem 1rem; background: var(--sheet); border: 2px solid var(--accent); }
.board { overflow-y: auto; border-left: 2px solid var(--ink); background: var(--sheet); }
.board > * { padding: .55rem 1rem; border-bottom: 1px solid var(--line); }
h2 { display: inline; margin: 0; font-size: .95rem; } h3 { margin: .2rem 0 .4rem; font-size: 1.25rem; overflow-wrap: anywhere; }
summary { cursor: pointer; }
.board p { margin: .4rem 0; }
.about { min-height: 7rem; background: var(--paper); }
.about h2 { display: block; color: var(--faint); font-weight: 400; font-size: .85rem; }
.about dl { display: grid; grid-template-columns: max-content 1fr; gap: .1rem .8rem; margin: 0; font-variant-numeric: tabular-nums; }
#keys div { margin-bottom: .3rem; }
.row { display: flex; align-items: center; gap: .5rem; } .row input { flex: 1; min-width: 0; } .row label { min-width: 6.2rem; }
.choice { display: flex; flex-wrap: wrap; gap: .3rem 1rem; }
.list { display: flex; flex-wrap: wrap; gap: .35rem; } .list > p { flex-basis: 100%; margin: 0; }
#legend { max-height: 13rem; overflow-y: auto; }
label { display: inline-flex; align-items: center; gap: .35rem; }
button, input[type="search"] { font: inherit; color: inherit; background: var(--sheet); border: 1px solid var(--faint); border-radius: 0; padding: .3rem .6rem; min-height: 2.1rem; }
button { cursor: pointer; display: inline-flex; align-items: center; gap: .4rem; }
button:hover { border-color: var(--ink); }
button[aria-pressed="true"] { background: var(--ink); color: var(--sheet); }
button small { opacity: .75; }
input { accent-color: var(--accent); } input[type="range"] { height: 2rem; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 1px; }
.swatch { width: 1.1rem; height: 1.1rem; border: 1px solid var(--faint); }
.said { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
footer { padding: .8rem 1rem 1.5rem; border-top: 2px solid var(--ink); font-size: .88rem; overflow-x: auto; }
table { border-collapse: collapse; margin: 0 0 1rem; } caption { text-align: left; font-weight: 700; padding-bottom: .3rem; }
th, td { text-align: left; padding: .2rem .9rem .2rem 0; border-bottom: 1px solid var(--line); white-space: nowrap; }
.cautions ul { margin: .3rem 0 0; padding-left: 1.2rem; max-width: 60rem; }
noscript p { padding: 1rem; }
@media (max-width: 48rem) {
  main { display: block; height: auto; min-height: 0; }
  .stage { min-height: 17rem; position: sticky; top: 0; z-index: 1; height: 52vh; border-bottom: 2px solid var(--ink); }
  .board { border-left: 0; overflow: visible; }
  header dl { display: none; }
  button, input[type="search"] { min-height: 2.6rem; }
}
@media print {
  @page { margin: 12mm; }
  main { display: block; height: auto; }
  .stage { position: relative; height: auto; overflow: visible; }
  #view, #hint, .cross { display: none; } #print { display: block; width: 100%; max-height: calc(100vh - 12rem); object-fit: contain; }
  .board { overflow: visible; border: 0; } .board > details:not(#colours) { display: none; } .board > .about { min-height: 0; border: 0; padding: .5rem 0; }
  .board > .about[data-empty] { display: none; }
  #colours { border: 0; padding: .5rem 0; } #colours .choice { display: none; } #colours > summary { list-style: none; } #legend { max-height: none; overflow: visible; font-size: 8.5pt; } #legend button { min-height: 0; padding: .1rem .4rem; break-inside: avoid; }
  .swatch { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  footer { padding: .5rem 0; font-size: 8.5pt; border: 0; } tr, li, .cautions { break-inside: avoid; }
}
`;
