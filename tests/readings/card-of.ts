import { finish } from '../../server/src/model/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import type { CardModel } from '../../server/src/card/model.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

/** The card of a text, a draft, as data and as it is printed. */
export function buildCardOf(text: string): { readonly model: CardModel; readonly html: string } {
  const analysis = analyse(snapshotOf([{ id: 'test.procedure.yaml', text }]), 'test.procedure.yaml');
  const made = finish(card(analysis, { date: '2031-04-17', version: '0', draft: true }));
  if (!('card' in made)) throw new Error('a draft is never refused');
  return { model: made.card, html: cardHtml(made.card) };
}
