import type { Markup } from './escape.ts';
import { markup } from './escape.ts';
import { saidHtml, textHtml, wordsHtml } from './html-words.ts';
import type { CardTable } from './model.ts';

/* Tables of windows over what was measured. */

/** A table of more rows stands in two halves side by side, so that it keeps to one page with its step. */
const longestTable = 8;

export function tableHtml(table: CardTable): Markup {
  const { caption, headings, rows } = table;
  const isHalved = rows.length > longestTable && headings.length === 2;
  return markup`<div class="by-entry">
<p>${wordsHtml(caption)}</p>
<div>${inParts(table, isHalved ? Math.ceil(rows.length / 2) : rows.length)}</div>
</div>
`;
}

/** So many rows of the annex at most stand in one column: two columns fill an A5 page below their heading. */
const longestColumn = 26;

export function annexTableHtml(table: CardTable): Markup {
  const { title, caption, headings, rows } = table;
  return markup`<div class="by-entry${headings.length > 2 ? ' wide' : ''}">
<p><strong>${title}.</strong> ${wordsHtml(caption)}</p>
<div>${inParts(table, Math.ceil(rows.length / Math.ceil(rows.length / longestColumn)))}</div>
</div>
`;
}

function inParts({ headings, rows }: CardTable, length: number): readonly Markup[] {
  const starts = rows.flatMap((_, index) => (index % length === 0 ? [index] : []));
  return starts.map(
    (start) => markup`<table class="windows">
<thead><tr>${headings.map((heading) => markup`<th scope="col">${saidHtml(heading)}</th>`)}</tr></thead>
<tbody>
${rows.slice(start, start + length).map(
  ({ entered, window }) =>
    markup`<tr>${entered.map((range) => markup`<th scope="row">${range}</th>`)}<td class="window"><strong>${textHtml(window)}</strong></td></tr>
`,
)}</tbody></table>
`,
  );
}
