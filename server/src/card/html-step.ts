import type { Markup } from './escape.ts';
import { markup } from './escape.ts';
import { tableHtml } from './html-table.ts';
import { noticeHtml, saidHtml, textHtml, wordsHtml } from './html-words.ts';
import type { CardModel, CardOutcome, CardStep, CardWindow, Left } from './model.ts';

type Labels = CardModel['steps'];

/** A step with its notices before it, in one block that no page break divides. */
export function stepHtml(step: CardStep, labels: Labels): Markup {
  return markup`<li class="step ${step.kind}" id="step-${step.number}">
${step.notices.map((notice) => noticeHtml(notice, 'in-step'))}<div class="row">
<p class="number${sizeOf(step)}">${step.number}</p>
<div class="body">
${step.reachedFrom === null ? null : markup`<p class="from">${wordsHtml(step.reachedFrom)}</p>`}
<p class="action">${wordsHtml(step.action)}</p>
${step.details.map((line) => markup`<p class="detail">${wordsHtml(line)}</p>`)}
${blanksHtml(step.blanks)}${windowsHtml(step.windows, labels)}${codesHtml(step, labels)}${outcomesHtml(step)}${leftHtml(step)}</div>
${step.kind === 'call' ? null : markup`<p class="tick"><span class="box"></span><span class="unseen">${labels.done}</span></p>`}
</div>
</li>
`;
}

/** Numbers of steps in routines are longer, and so are set smaller: as large as their column holds. */
function sizeOf({ number }: CardStep): string {
  if (number.length <= 3 && !number.includes('.')) return '';
  if (number.length <= 5) return ' inner';
  return number.length === 6 ? ' inmost' : ' deep';
}

function blanksHtml(blanks: readonly string[]): Markup | null {
  if (blanks.length === 0) return null;
  return markup`<ul class="blanks">${blanks.map((label) => markup`<li><span class="label">${saidHtml(label)}</span><span class="line"></span></li>`)}</ul>
`;
}

function windowsHtml(windows: readonly CardWindow[], { columns }: Labels): Markup | null {
  if (windows.length === 0) return null;
  return markup`<table class="windows">
<thead><tr>${columns.map((column) => markup`<th scope="col">${column}</th>`)}</tr></thead>
<tbody>
${windows.map(
  ({ of, window, remark, blanks }) =>
    markup`<tr><th scope="row">${wordsHtml(of)}</th><td class="window"><strong>${textHtml(window)}</strong>${remark === null ? null : markup`<span class="remark">${remark}</span>`}</td><td class="blank${blanks.length > 0 ? ' labelled' : ''}">${blanksHtml(blanks)}</td></tr>
`,
)}</tbody></table>
${windows.map(({ table }) => (table === null ? null : tableHtml(table)))}`;
}

function codesHtml({ codes }: CardStep, labels: Labels): Markup | null {
  if (codes === null) return null;
  return markup`<div class="codes"><p class="label">${labels.codes}</p>
${codes.lines.map((line) => markup`<p>${wordsHtml(line)}</p>`)}</div>
`;
}

function outcomesHtml({ outcomes }: CardStep): Markup | null {
  if (outcomes === null) return null;
  return markup`${outcomes.introduction === null ? null : markup`<p class="detail">${outcomes.introduction}</p>`}<ul class="ways">
${outcomes.rows.map(wayHtml)}</ul>
`;
}

function wayHtml({ when, then, to, isNext }: CardOutcome): Markup {
  const target =
    to === null || to === 'end' ? null : markup` <a class="target" href="#step-${to.step}">${to.step}</a>`;
  const kind = isNext ? markup` class="onward"` : to === null ? markup` class="halt"` : null;
  return markup`<li${kind}><span class="small-box"></span><span class="when">${wordsHtml(when)}</span><span class="arrow" aria-hidden="true">→</span><span class="then">${then}${target}</span></li>
`;
}

function leftHtml({ left }: CardStep): Markup | null {
  if (left === null) return null;
  const sometimes = left.sometimes === null ? null : leftListHtml(left.sometimes);
  return markup`<div class="left">${leftListHtml(left)}${sometimes}</div>
`;
}

function leftListHtml({ heading, items }: Left): Markup {
  const boxes = items.map(
    (item) => markup`<li><span class="small-box"></span><span>${wordsHtml(item)}</span></li>`,
  );
  return markup`<p class="label">${heading}</p>
${boxes.length === 0 ? null : markup`<ul>${boxes}</ul>`}`;
}
