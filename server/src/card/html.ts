import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { drawLoop } from './drawing.ts';
import type { Content, Markup } from './escape.ts';
import { markup, trusted } from './escape.ts';
import { stepHtml } from './html-step.ts';
import { annexTableHtml } from './html-table.ts';
import { noticeHtml, saidHtml, textHtml, wordsHtml } from './html-words.ts';
import type { CardModel, Fact } from './model.ts';
import type { Face, Paper } from './style.ts';
import { styleOf } from './style.ts';

export interface CardForm {
  readonly paper?: Paper;
  readonly face?: Face;
}

/** Of the one style sheet of the file, for its content security policy: no other style is let in. */
function hashOf(style: string): string {
  return btoa(Array.from(sha256(utf8ToBytes(style)), (byte) => String.fromCharCode(byte)).join(''));
}

/**
 * The card as one HTML file that needs nothing else: no script, no font, no picture, no address. All text of the model
 * is escaped.
 */
export function cardHtml(model: CardModel, { paper = 'A4', face = 'paper' }: CardForm = {}): string {
  const style = styleOf({ paper, face, running: model.stamp.running, draft: model.draft });
  const body = [
    model.draft === null ? null : markup`<p class="draft-mark" aria-hidden="true">${model.draft}</p>`,
    headHtml(model),
    markup`<main>`,
    jobHtml(model),
    needsHtml(model),
    drawingsHtml(model),
    networkHtml(model),
    stepsHtml(model),
    assumptionsHtml(model),
    remarksHtml(model),
    markup`</main>`,
    stampHtml(model),
    annexHtml(model),
  ];
  return markup`<!doctype html>
<html lang="${model.language}">
<head>
<meta charset="utf-8" />
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-${hashOf(style)}'" />
<meta name="viewport" content="width=device-width, initial-scale=1" />
<title>${model.draft === null ? '' : `${model.draft}: `}${model.title}</title>
<style>${trusted(style)}</style>
</head>
<body>
${body.map(onLine)}</body>
</html>
`.markup;
}

function onLine(part: Content): Content {
  return part === null
    ? null
    : markup`${part}
`;
}

function headHtml(model: CardModel): Markup {
  return markup`<header>
${model.draft === null ? null : markup`<p class="draft-banner">${model.draft}</p>`}
<p class="form">${model.form}</p>
<h1>${saidHtml(model.title)}</h1>
${factsHtml(model.facts, 'facts')}
${noticeHtml(model.hazard, 'panel')}
</header>`;
}

function jobHtml({ job }: CardModel): Markup {
  return markup`<section class="job" aria-label="${job.heading}">
<ul>${job.blanks.map((label) => markup`<li><span class="label">${label}</span><span class="line"></span></li>`)}</ul>
</section>`;
}

function needsHtml({ needs }: CardModel): Markup | null {
  if (needs.groups.length === 0) return null;
  return markup`<section class="needs">
<h2>${needs.heading}</h2>
<dl>${needs.groups.map(
    ({ label, items }) => markup`<div><dt>${label}</dt>
${items.map((item) => markup`<dd><span class="small-box"></span><span>${wordsHtml(item)}</span></dd>`)}</div>
`,
  )}</dl>
</section>`;
}

function drawingsHtml({ drawings }: CardModel): Markup | null {
  if (drawings.loops.length === 0) return null;
  return markup`<section class="drawings">
<h2>${drawings.heading}</h2>
${drawings.explanations.map((text) => markup`<p>${text}</p>`)}
<div class="loops">${drawings.loops.flatMap((loop, index) =>
    drawLoop(loop, `loop-${index + 1}`).map((drawing, part) =>
      part === 0
        ? markup`<figure><h3>${loop.title}</h3>${drawing}</figure>
`
        : markup`<figure>${drawing}</figure>
`,
    ),
  )}</div>
</section>`;
}

function networkHtml({ network }: CardModel): Markup | null {
  if (network === null) return null;
  return markup`<section class="network">
<h2>${network.heading}</h2>
<p>${network.explanation}</p>
<table>
<thead><tr>${network.columns.map((column) => markup`<th scope="col">${column}</th>`)}</tr></thead>
<tbody>
${network.rows.map(
  ({ from, what, to }) => markup`<tr><td>${from}</td><td>${wordsHtml(what)}</td><td>${to}</td></tr>
`,
)}</tbody></table>
</section>`;
}

function stepsHtml({ before, steps, end }: CardModel): Markup {
  const sections = steps.sections.map(
    ({ title, steps: list }) => markup`${title === null ? null : markup`<h3>${saidHtml(title)}</h3>`}
<ol start="${list[0]?.number ?? 1}">
${list.map((step) => stepHtml(step, steps))}</ol>
`,
  );
  const closing =
    end === null
      ? null
      : markup`<div class="end" id="end"><h3>${end.heading}</h3>${end.lines.map((line) => markup`<p>${wordsHtml(line)}</p>`)}</div>`;
  return markup`<section class="steps">
<h2>${steps.heading}</h2>
<div class="before"><h3>${before.heading}</h3>${before.lines.map((line) => markup`<p>${wordsHtml(line)}</p>`)}
${steps.explanations.map((text) => markup`<p>${text}</p>`)}</div>
${sections}${closing}
</section>`;
}

function assumptionsHtml({ assumptions }: CardModel): Markup {
  return markup`<section class="assumptions">
<h2>${assumptions.heading}</h2>
<p>${assumptions.introduction}</p>
${factsHtml(assumptions.facts, 'rows')}
</section>`;
}

function remarksHtml({ remarks }: CardModel): Markup {
  const items = remarks.items.map(
    ({ severity, step, message, rule }) =>
      markup`<li><strong>${severity}${step === null ? '' : `, step ${step}`}:</strong> <bdi dir="ltr">${textHtml(message)}</bdi> <span class="rule">(${rule})</span></li>
`,
  );
  return markup`<section class="remarks">
<h2>${remarks.heading}</h2>
<p>${remarks.introduction}</p>
${items.length === 0 ? null : markup`<ul>${items}</ul>`}
</section>`;
}

function annexHtml({ annex }: CardModel): Markup | null {
  if (annex === null) return null;
  return markup`<section class="annex">
<h2>${annex.heading}</h2>
${annex.tables.map(annexTableHtml)}
</section>`;
}

function stampHtml({ stamp }: CardModel): Markup {
  return markup`<footer class="stamp">
<h2>${stamp.heading}</h2>
${factsHtml(stamp.facts, 'rows')}
</footer>`;
}

function factsHtml(facts: readonly Fact[], kind: 'facts' | 'rows'): Markup {
  return markup`<table class="${kind}"><tbody>
${facts.map(
  ({ label, words }) => markup`<tr><th scope="row">${label}</th><td>${wordsHtml(words)}</td></tr>
`,
)}</tbody></table>`;
}
