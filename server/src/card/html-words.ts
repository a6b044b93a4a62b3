import { amount } from './amount.ts';
import type { Content, Markup } from './escape.ts';
import { escapeSaid, markup } from './escape.ts';
import type { Notice, Piece, Words } from './model.ts';

export function wordsHtml(words: Words): readonly Markup[] {
  return words.map(pieceHtml);
}

function pieceHtml(piece: Piece): Markup {
  if (typeof piece === 'string') return textHtml(piece);
  if ('id' in piece) return markup`<b class="id">${piece.id}</b>`;
  if ('strong' in piece) return markup`<strong>${textHtml(piece.strong)}</strong>`;
  if ('said' in piece) return saidHtml(piece.said);
  return markup`<a href="#step-${piece.step}">${piece.step}</a>`;
}

/** What the author wrote. It reads in its own direction, and what stands beside it in theirs. */
export function saidHtml(text: string): Markup {
  return markup`<bdi>${amountsIn(escapeSaid(text, (shown) => shown.split(amount)))}</bdi>`;
}

/** What is between two amounts, and the amounts, in turn. */
export function textHtml(text: string): Markup {
  return amountsIn(text.split(amount));
}

function amountsIn(parts: readonly Content[]): Markup {
  return markup`${parts.map((part, index) => (index % 2 === 0 ? part : markup`<span class="amount">${part}</span>`))}`;
}

/** A notice: its word always, the safety alert symbol for those that are about getting hurt. */
export function noticeHtml(notice: Notice, place: 'panel' | 'in-step'): Markup {
  const symbol = notice.signal === 'notice' || notice.signal === 'note' ? null : alertSymbol;
  return markup`<div class="notice signal-${notice.signal} ${place}" role="note">
<p class="signal">${symbol}<strong>${notice.word}</strong></p>
<div class="said">${notice.lines.map((line) => markup`<p>${saidHtml(line)}</p>`)}</div>
</div>
`;
}

/** An exclamation mark in a triangle. The word beside it says the same, so it is silent for screen readers. */
const alertSymbol = markup`<svg class="alert" aria-hidden="true" focusable="false" width="8mm" height="7mm" viewBox="0 0 16 14"><path class="alert-field" d="M8 .8L15.4 13.4H.6z" /><path class="alert-mark" d="M7 4.6h2l-.35 4.6h-1.3zM7.05 10.2h1.9v1.9h-1.9z" /></svg>`;
