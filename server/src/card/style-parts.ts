/** The steps: number, action and tick box side by side, what is read and where it leads below the action. */
export const stepStyle = `
.before { border: 0.3mm solid var(--ink); padding: 2mm 3mm; break-inside: avoid; }
.before h3 { margin: 0 0 1mm; }
.before p + p { margin-top: 1mm; }
.steps ol { border-bottom: 0.3mm solid var(--ink); border-top: 0.5mm solid var(--ink); }
.steps ol > li:first-child { border-top: 0; }
.step { break-inside: avoid; border-top: 0.3mm solid var(--ink); padding: 2.5mm 0; }
.in-step { margin: 0 0 2mm; }
.row { display: flex; }
.number { flex: none; width: 15mm; font-size: 23pt; line-height: 1; font-weight: bold; }
.number.inner { font-size: 16pt; line-height: 1.3; }
.number.inmost { font-size: 12.5pt; line-height: 1.45; }
.number.deep { font-size: 10.5pt; line-height: 1.7; overflow-wrap: anywhere; }
.number.inner, .number.inmost { white-space: nowrap; }
.call { padding: 1.5mm 0; break-after: avoid; }
.call + .step { border-top: 0; }
.call .action { font-size: 13pt; }
.body { flex: 1; min-width: 0; }
.tick { flex: none; position: relative; width: 13mm; }
.action { font-size: 14pt; line-height: 1.25; white-space: pre-line; }
.detail { margin-top: 1mm; white-space: pre-line; }
.from { font-size: 10pt; margin-bottom: 0.8mm; }
.go .action a { font-size: 18pt; line-height: 1; }
.conclude .action { border: 0.5mm solid var(--ink); padding: 1.5mm 3mm; }
.stop .row { border: 0.8mm solid var(--ink); padding: 2.5mm 1.5mm 2.5mm 2.5mm; }
.stop .number { width: 12.5mm; }
.blanks { display: flex; flex-wrap: wrap; gap: 0 6mm; margin-top: 1mm; }
.blanks li { display: flex; align-items: flex-end; flex: 1 1 40%; min-height: 9mm; }
.blanks .label { overflow-wrap: normal; }
.blanks .line { min-width: 12mm; }
.windows { margin-top: 2mm; border: 0.3mm solid var(--ink); }
.windows th, .windows td { border-right: 0.3mm solid var(--ink); padding: 1mm 2.5mm; }
.windows thead th { font-size: 10pt; border-bottom: 0.3mm solid var(--ink); padding: 0.6mm 2.5mm; }
.windows tbody tr + tr > * { border-top: 0.3mm solid var(--ink); }
.windows tbody th { width: 27%; vertical-align: middle; }
.windows .window strong { display: block; font-size: 17pt; line-height: 1.2; }
.windows .remark { font-size: 9.5pt; }
.windows .blank { width: 25%; }
.windows .labelled { width: 30%; }
.windows .labelled .blanks { display: block; margin: 0; }
.by-entry { margin-top: 2mm; }
.by-entry > p { font-size: 10pt; margin-bottom: 0.6mm; }
.by-entry > div { display: flex; align-items: flex-start; gap: 2mm; }
.by-entry .windows { flex: 1; width: auto; margin: 0; }
.by-entry .windows th { width: auto; white-space: nowrap; }
.by-entry .windows td:last-child { border-right: 0; }
.by-entry .windows .window strong { font-size: 13pt; }
.annex { break-before: page; }
.annex h2 { margin-top: 0; }
.annex .by-entry > div { flex-wrap: wrap; }
.annex .windows { flex: none; width: calc((100% - 4mm) / 3); margin-bottom: 2mm; break-inside: avoid; }
.annex .wide .windows { width: calc((100% - 2mm) / 2); }
.annex .windows th, .annex .windows td { padding: 0.5mm 2mm; }
.annex .windows .window strong { font-size: 12pt; line-height: 1.15; white-space: nowrap; }
.codes { margin-top: 2mm; padding-left: 3mm; border-left: 1.2mm solid var(--ink); }
.codes .label { font-weight: bold; }
.ways { margin-top: 2mm; }
.ways li { display: flex; align-items: flex-start; padding: 1mm 0; border-top: 0.15mm solid var(--ink); break-inside: avoid; }
.ways li:first-child { border-top: 0; }
.when { flex: 1; }
.arrow { flex: none; width: 9mm; text-align: center; font-weight: bold; }
.then { flex: none; width: 50mm; }
.halt .then { width: 62%; }
.target { font-size: 16pt; line-height: 1; font-weight: bold; white-space: nowrap; }
.onward .target { font-size: 11.5pt; font-weight: normal; }
.left { margin-top: 2mm; }
.left .label { font-weight: bold; }
.left ul + .label { margin-top: 1.5mm; }
.left li { display: flex; margin-top: 0.8mm; }
.end { border: 0.8mm solid var(--ink); padding: 2.5mm 3mm; margin-top: 5mm; break-inside: avoid; }
.end h3 { margin: 0 0 1mm; }
`;

/** The drawings: millimetres in the drawing are millimetres on paper. */
export const drawingStyle = `
.loops { display: flex; flex-wrap: wrap; gap: 2mm 2mm; align-items: flex-start; margin-top: 2mm; }
.network table { margin-top: 2mm; }
.network th { font-weight: bold; padding: 1mm 3mm 1mm 0; }
.network td { padding: 1mm 3mm 1mm 0; border-top: 0.2mm solid var(--ink); overflow-wrap: anywhere; }
.network td:first-child, .network td:last-child { width: 27%; font-weight: bold; }
.network tr { break-inside: avoid; }
.network thead { break-after: avoid; }
figure { break-inside: avoid; width: 90mm; max-width: 100%; }
figure h3 { margin: 1mm 0 1.5mm; }
figure svg { display: block; max-width: 100%; height: auto; }

figure svg text { fill: var(--ink); }
figure svg .d-live { fill: var(--paper); }
.d-line { font-size: 3.4px; }
.d-name { font-size: 4.2px; font-weight: bold; }
.d-side { font-size: 2.9px; text-anchor: middle; }
.d-pin { font-weight: bold; text-anchor: middle; }
.d-sign { font-weight: bold; text-anchor: middle; }
.d-sign { font-size: 6px; }
.d-live { font-size: 5px; font-weight: bold; text-anchor: middle; fill: var(--paper); letter-spacing: 0.3px; }
.d-wire { fill: none; stroke: var(--ink); stroke-width: 0.5; }
.d-tie { stroke: var(--ink); stroke-width: 0.25; stroke-dasharray: 0.8 0.8; }
.d-box { fill: var(--paper); fill-opacity: 1; stroke: var(--ink); stroke-width: 0.4; }
.d-heavy { fill: var(--paper); stroke: var(--ink); stroke-width: 0.9; }
.d-dashed { fill: var(--paper); stroke: var(--ink); stroke-width: 0.4; stroke-dasharray: 1.4 1; }
.d-bar { stroke: var(--ink); stroke-width: 1.1; stroke-linecap: round; }
.d-black { fill: var(--ink); }
.d-white { fill: var(--paper); }
.d-white-line { stroke: var(--paper); stroke-width: 0.7; stroke-linecap: round; }
`;

/** What gives way on A5, where a line holds two thirds as much. The windows and the step numbers do not. */
export const narrowStyle = `
html { font-size: 11pt; }
h1 { font-size: 18pt; }
.facts th { width: 22mm; }
.rows th, .needs dt { width: auto; }
.rows th { width: 34mm; }
.needs dl > div { grid-template-columns: 34mm 1fr; }
.notice .signal { width: 33mm; font-size: 11.5pt; gap: 1mm; padding: 1.5mm; }
.notice .said { padding: 1.2mm 2mm; }
.action { font-size: 13pt; }
.number { width: 13mm; font-size: 21pt; }
.number.inner { font-size: 14pt; }
.number.inmost { font-size: 11pt; line-height: 1.6; }
.number.deep { font-size: 9pt; }
.stop .number { width: 10.5mm; }
.tick { width: 12mm; }
.step { padding: 1.8mm 0; }
.call { padding: 1mm 0; }
.arrow { width: 6mm; }
.then { width: 34mm; }
.windows th, .windows td { padding: 1mm 1.5mm; }
.windows tbody th { width: 28%; }
.windows .window strong { font-size: 15.5pt; }
.windows .labelled { width: 36%; }
.by-entry .windows th, .by-entry .windows td { padding: 0.8mm 1.5mm; }
.by-entry .windows .window strong { font-size: 12.5pt; }
.annex .windows, .annex .wide .windows { width: calc((100% - 2mm) / 2); }
.annex .windows th, .annex .windows td { padding: 0.2mm 1.5mm; }
.annex .windows .window strong { font-size: 11pt; }
`;
