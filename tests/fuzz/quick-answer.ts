import { finish } from '../../server/src/model/work.ts';
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
import { spentOn } from './pace.ts';

/**
 * Everything that is asked of a text, each thing once. What takes more than `patience` times what it takes to parse the
 * largest good text, in milliseconds of the processor, is wrong; what never ends is seen from outside.
 */
export function quickAnswer(
  text: string,
  chance: Chance,
  patience: number,
  parsing: number,
): readonly string[] {
  const wrong: string[] = [];
  const answer = <T>(asked: string, ask: () => T): T => {
    const answers: T[] = [];
    const times = spentOn(() => answers.push(ask())) / parsing;
    if (times > patience)
      wrong.push(`${asked}: ${times.toFixed(1)} times the parsing of the largest good text`);
    return answers[0] as T;
  };
  const document = opened({ text, parts: '' });
  const { analysis } = document;
  const findings = answer('findings', () => finish(analysis.findings('order')));
  const checked = [{ analysis, findings, complete: true }];
  const { terminal } = fakeTerminal();
  answer('check as text', () => length(checkText(terminal, checked)));
  answer('check as JSON', () => length(checkJson(checked)));
  answer('check as SARIF', () => length(checkSarif({ checked, problems: [], exit: 1, folder: '/' })));
  for (let left = 3; left > 0; left -= 1) {
    const position = document.text.positionAt(chance.whole(0, text.length));
    answer('completion', () => complete(document, position, { snippets: true }));
    answer('hover', () => finish(hover(document, position)));
  }
  answer('outline', () => outline(document));
  answer('diagnostics', () =>
    diagnosticsOf(document, findings, { related: true, descriptionOf: () => null }),
  );
  const whole = { start: { line: 0, character: 0 }, end: { line: document.text.lineCount, character: 0 } };
  answer('hints', () => {
    const now = hintTexts(document, finish(analysis.windows()).value, finish(analysis.order()).value);
    return inlayHints(document, whole, now, now);
  });
  const made = answer('card', () =>
    finish(card(analysis, { date: '2031-04-17', version: '0', draft: true })),
  );
  if (!('card' in made)) return [...wrong, 'a draft of the card is refused'];
  const html = answer('card as HTML', () => cardHtml(made.card));
  return html.length > 0 ? wrong : [...wrong, 'the card is empty'];
}

/** Pieces are written out and forgotten, as a program does that prints them. */
function length(pieces: Iterable<string>): number {
  let sum = 0;
  for (const piece of pieces) sum += piece.length;
  return sum;
}
