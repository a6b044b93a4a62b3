import { cssString } from './escape.ts';
import type { Words } from './model.ts';
import { drawingStyle, narrowStyle, stepStyle } from './style-parts.ts';

export type Paper = 'A4' | 'A5';

/** As it is printed, or in the colours of the editor beside whose text it stands. */
export type Face = 'paper' | 'editor';

export interface StyleOptions {
  readonly paper: Paper;
  readonly face: Face;
  readonly running: Words;
  readonly draft: string | null;
}

/**
 * The style sheet of a card: black on white, told apart by words, lines and weight, so that a grey copy of a copy says the
 * same. `running` stands at the foot of every page, `draft` at its head and across it. In an editor there are no pages, and the
 * colours and the face of the letters are those of its theme.
 */
export function styleOf(options: StyleOptions): string {
  const { paper, face, running, draft } = options;
  return (
    (face === 'editor' ? editorColours : paperColours + pageStyle(paper, running, draft)) +
    textStyle +
    stepStyle +
    drawingStyle +
    (paper === 'A5' ? narrowStyle : '') +
    markStyle(options)
  );
}

function pageStyle(paper: Paper, running: Words, draft: string | null): string {
  const sides = paper === 'A4' ? '14mm' : '9mm';
  const head =
    draft === null
      ? ''
      : `@top-center { content: ${cssString([draft])}; font: bold 13pt ${fonts}; border: 0.6mm solid #000; padding: 0.6mm 4mm; margin: 3mm 0 2mm; }`;
  return `
@page {
  size: ${paper} portrait;
  margin: ${draft === null ? '12mm' : '16mm'} ${sides} 16mm;
  ${head}
  @bottom-left { content: ${cssString(running)}; font: 8.5pt ${fonts}; width: 80%; vertical-align: top; padding-top: 2.5mm; }
  @bottom-right { content: counter(page) " / " counter(pages); font: bold 11pt ${fonts}; vertical-align: top; padding-top: 2mm; }
}
`;
}

/** The mark across a page: the more letters it has, the smaller they are. */
function markStyle({ paper, face, draft }: StyleOptions): string {
  if (draft === null) return '';
  const width = face === 'editor' ? '150vw' : paper === 'A4' ? '840pt' : '600pt';
  return `.draft-mark { font-size: min(44pt, ${width} / ${draft.length}); }
`;
}

/** Plain upright faces with clear figures that are on nearly every machine. */
const fonts = `Arial, "Liberation Sans", Helvetica, "Noto Sans", "DejaVu Sans", sans-serif`;

const paperColours = `
:root { --ink: #000; --paper: #fff; --shade: #ccc; --faint: rgba(0, 0, 0, 0.13); --grave: #000; --face: ${fonts}; }
`;

/** The editor sets these variables on its pages, light, dark and of high contrast. */
const editorColours = `
:root {
  --ink: var(--vscode-editor-foreground, #000);
  --paper: var(--vscode-editor-background, #fff);
  --shade: var(--vscode-inputValidation-warningBackground, #ccc);
  --faint: color-mix(in srgb, var(--vscode-editor-foreground, #000) 13%, transparent);
  --grave: var(--vscode-editorError-foreground, #000);
  --face: var(--vscode-font-family, ${fonts});
}
html { color-scheme: light dark; }
.notice .signal.signal { width: auto; min-width: 26mm; font-size: 12pt; }
`;

const textStyle = `
* { box-sizing: border-box; }
html { font: 11.5pt/1.32 var(--face); color: var(--ink); background: var(--paper); -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { margin: 0; overflow-wrap: anywhere; }
@media screen { body { max-width: 186mm; margin: 8mm auto; padding: 0 4mm; } }
h1, h2, h3, p, ul, ol, dl, dd, figure { margin: 0; padding: 0; }
ul, ol { list-style: none; }
h1 { font-size: 21pt; line-height: 1.15; margin: 0.5mm 0 3mm; }
h2 { font-size: 15pt; line-height: 1.2; margin: 7mm 0 2.5mm; padding-bottom: 1mm; border-bottom: 0.6mm solid var(--ink); }
h3 { font-size: 13pt; line-height: 1.25; margin: 5mm 0 2mm; }
h1, h2, h3 { break-after: avoid; break-inside: avoid; }
.amount { white-space: nowrap; unicode-bidi: isolate; direction: ltr; }
.id { unicode-bidi: isolate; }
p, li, dd { orphans: 2; widows: 2; }
a { color: inherit; text-decoration: none; font-weight: bold; }
b.id { font-weight: bold; }
.form { font-size: 11pt; letter-spacing: 0.04em; }
.drawings > p { break-after: avoid; break-inside: avoid; }
.label { font-size: 11pt; }
table { border-collapse: collapse; width: 100%; }
th { text-align: left; font-weight: normal; vertical-align: top; }
td { vertical-align: top; }
.facts th { width: 27mm; padding: 0.5mm 3mm 0.5mm 0; }
.facts td { padding: 0.5mm 0; font-weight: bold; white-space: pre-line; }
.rows { margin-top: 2mm; }
.rows th { width: 46mm; padding: 1mm 3mm 1mm 0; border-top: 0.2mm solid var(--ink); }
.rows td { padding: 1mm 0; border-top: 0.2mm solid var(--ink); }
.rows tr { break-inside: avoid; }
.box { display: block; width: 9mm; height: 9mm; border: 0.6mm solid var(--ink); background: var(--paper); margin: 0 0 0 auto; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.small-box { flex: none; width: 4.2mm; height: 4.2mm; border: 0.35mm solid var(--ink); background: var(--paper); margin: 0.5mm 2.4mm 0 0; }
.draft-banner { font-size: 15pt; font-weight: bold; border: 0.8mm solid var(--ink); padding: 1mm 3mm; margin-bottom: 4mm; text-align: center; }
@media print { .draft-banner { display: none; } }
.draft-mark { position: fixed; white-space: nowrap; z-index: 2; top: 42%; left: 0; right: 0; text-align: center; font-weight: bold; line-height: 1; color: var(--faint); transform: rotate(-35deg); pointer-events: none; }
.notice { display: flex; border: 0.7mm solid var(--ink); break-inside: avoid; }
.notice .signal { flex: none; width: 45mm; white-space: nowrap; overflow-wrap: normal; display: flex; align-items: center; gap: 2mm; padding: 1.5mm 2.5mm; font-size: 14pt; line-height: 1.1; border-right: 0.7mm solid var(--ink); }
.notice .said { flex: 1; padding: 1.5mm 3mm; white-space: pre-line; font-weight: bold; }
.notice.signal-note { border-width: 0.3mm; }
.notice.signal-note .signal { border-right-width: 0.3mm; }
.notice.signal-note .said { font-weight: normal; }
.notice.signal-notice { border-style: dashed; }
.notice.signal-notice .signal { border-right-style: dashed; font-style: italic; }
.notice.signal-notice .said { font-weight: normal; }
.notice.signal-danger { border-width: 1mm; border-color: var(--grave); }
.notice.signal-danger .signal { background: var(--grave); color: var(--paper); border-color: var(--grave); }
.notice.signal-warning .signal { background: var(--shade); }
.alert { flex: none; }
.alert-field { fill: var(--ink); }
.alert-mark { fill: var(--paper); }
.signal-danger .alert-field { fill: var(--paper); }
.signal-danger .alert-mark { fill: var(--ink); }
.panel { margin-top: 4mm; }
.panel .said { font-weight: normal; }
.panel .said p:first-child { font-weight: bold; }
.panel .said p + p { margin-top: 1mm; }
.job { margin-top: 5mm; break-inside: avoid; }
.job ul { display: flex; flex-wrap: wrap; gap: 6mm; }
.job li { display: flex; align-items: flex-end; flex: 1 1 calc(50% - 3mm); height: 9mm; }
.line { flex: 1; min-width: 18mm; border-bottom: 0.3mm solid var(--ink); margin-left: 2mm; }
.needs dl > div { display: grid; grid-template-columns: 46mm 1fr; padding: 1.2mm 0; border-top: 0.2mm solid var(--ink); break-inside: avoid; }
.needs dl > div:first-child { border-top: 0; }
.needs dt { grid-column: 1; grid-row: 1 / span 30; padding-right: 3mm; }
.needs dd { display: flex; grid-column: 2; }
.needs dd > span:last-child { flex: 1; }
.remarks li { margin-top: 1.5mm; break-inside: avoid; }
.rule { white-space: nowrap; }
.remarks, .stamp { break-inside: avoid-page; }
.stamp td { font-size: 10pt; }
`;
