/** The report's style: readable on a screen and printed, in colour and without. */
export const STYLE = `
:root { color-scheme: light; --ink: #1d2327; --faint: #5d686f; --line: #d3d9dd; --ok: #1c6b3c; --attention: #8a5a00; --fails: #a31621; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem 1.25rem 3rem; color: var(--ink); background: #fff;
  font: 15px/1.5 "DejaVu Sans", Verdana, system-ui, sans-serif; }
h1 { font-size: 1.6rem; line-height: 1.25; margin: 0 0 .75rem; }
h2 { font-size: 1.2rem; margin: 2.25rem 0 .75rem; padding-bottom: .25rem; border-bottom: 2px solid var(--ink); }
h3 { font-size: 1rem; margin: 0; }
p { margin: .5rem 0; }
dl.facts { display: grid; grid-template-columns: max-content 1fr; gap: .1rem 1rem; margin: .5rem 0 1rem; }
dl.facts dt { color: var(--faint); } dl.facts dd { margin: 0; }
.cautions { border: 2px solid var(--fails); border-radius: 4px; padding: .6rem 1rem; margin: 1rem 0; }
.cautions h2 { border: 0; margin: 0; padding: 0; font-size: 1rem; color: var(--fails); }
.cautions ul { margin: .35rem 0 0; padding-left: 1.2rem; }
table { border-collapse: collapse; width: 100%; margin: .5rem 0; }
th, td { text-align: left; vertical-align: top; padding: .3rem .6rem .3rem 0; border-bottom: 1px solid var(--line); }
td.number, th.number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
.all td:first-child { white-space: nowrap; }
.all a { color: inherit; text-decoration-color: var(--line); }
.state { display: inline-block; min-width: 5.6rem; font-weight: 700; }
.state.ok { color: var(--ok); } .state.attention { color: var(--attention); } .state.fails { color: var(--fails); }
.check { border: 1px solid var(--line); border-left: 5px solid var(--line); border-radius: 3px; padding: .6rem .9rem; margin: .75rem 0; break-inside: avoid; }
.check.ok { border-left-color: var(--ok); } .check.attention { border-left-color: var(--attention); } .check.fails { border-left-color: var(--fails); }
.check .id { color: var(--faint); font-size: .85rem; overflow-wrap: anywhere; }
.check .advice { font-weight: 600; }
.check .small { color: var(--faint); font-size: .85rem; overflow-wrap: anywhere; }
.check td.number { padding-right: 1.2rem; }
.check td.how { font-size: .85rem; color: var(--faint); overflow-wrap: anywhere; }
.check td.how span { display: block; }
.check td.label { width: 32%; }
figure { margin: 1rem 0; break-inside: avoid; }
figure svg { max-width: 100%; height: auto; display: block; margin: 0 auto; }
figcaption { color: var(--faint); font-size: .9rem; max-width: 46rem; margin: .25rem auto 0; }
svg text { font: 12px "DejaVu Sans", Verdana, sans-serif; fill: #1d2327; paint-order: stroke; stroke: #fff; stroke-width: 3px; }
svg .masonry { fill: #e6e2da; stroke: #6b655a; stroke-width: 1; }
svg .core { fill: #cfc8bb; stroke: none; }
svg .axis { fill: none; stroke: #8a949a; stroke-width: 1; stroke-dasharray: 12 3 2 3; }
svg .guide { fill: none; stroke: #8a949a; stroke-width: 1; stroke-dasharray: 2 3; }
svg .compression { fill: #b9c3c9; stroke: #5d686f; stroke-width: 1; }
svg .tension { fill: #e9a3a8; stroke: #a31621; stroke-width: 1; }
svg .outline { fill: none; stroke: #1d2327; stroke-width: 1.75; }
svg .dashed { fill: none; stroke: #1d2327; stroke-width: 1; stroke-dasharray: 5 3; }
svg .thrust { fill: none; stroke: #a31621; stroke-width: 2.25; stroke-linejoin: round; }
h2, h3 { break-after: avoid; }
tr, .cautions { break-inside: avoid; }
@page { margin: 14mm; }
@media print { html { font-size: 9.5pt; } body { max-width: none; padding: 0; font-size: 1rem; } a { text-decoration: none; } .check { margin: .5rem 0; padding: .35rem .7rem; } td, th { padding-top: .15rem; padding-bottom: .15rem; } }
`;
