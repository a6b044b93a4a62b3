import { finish } from '../../server/src/bench/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { checkJson } from '../../server/src/cli/check-json.ts';
import { checkSarif } from '../../server/src/cli/check-sarif.ts';
import { checkText } from '../../server/src/cli/check-text.ts';
import { complete } from '../../server/src/editor/completion.ts';
import { diagnosticsOf } from '../../server/src/editor/diagnostics.ts';
import { hover } from '../../server/src/editor/hover.ts';
import { hintTexts, inlayHints } from '../../server/src/editor/inlay-hints.ts';
import { outline } from '../../server/src/editor/outline.ts';
import { card } from '../../server/src/project/card.ts';
import { fakeTerminal } from '../cli/fake-terminal.ts';
import type { Chance } from '../oracle/chance.ts';
import { opened } from './input.ts';

/** Everything that is asked of a text, once: how long it takes is watched from outside. */
export function quickAnswer(text: string, chance: Chance): readonly string[] {
  const document = opened({ text, parts: '' });
  const { analysis } = document;
  const findings = finish(analysis.findings('order'));
  const checked = [{ analysis, findings, complete: true }];
  const { terminal } = fakeTerminal();
  length(checkText(terminal, checked));
  length(checkJson(checked));
  length(checkSarif({ checked, problems: [], exit: 1, folder: '/' }));
  for (let left = 3; left > 0; left -= 1) {
    const position = document.text.positionAt(chance.whole(0, text.length));
    complete(document, position, { snippets: true });
    finish(hover(document, position));
  }
  outline(document);
  diagnosticsOf(document, findings, { related: true, descriptionOf: () => null });
  const now = hintTexts(document, finish(analysis.windows()).value, finish(analysis.order()).value);
  const whole = { start: { line: 0, character: 0 }, end: { line: document.text.lineCount, character: 0 } };
  inlayHints(document, whole, now, now);
  const made = finish(card(analysis, { date: '2031-04-17', version: '0', draft: true }));
  if (!('card' in made)) return ['a draft of the card is refused'];
  return cardHtml(made.card).length > 0 ? [] : ['the card is empty'];
}

/** Pieces are written out and forgotten, as a program does that prints them. */
function length(pieces: Iterable<string>): number {
  let sum = 0;
  for (const piece of pieces) sum += piece.length;
  return sum;
}
