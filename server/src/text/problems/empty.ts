import { keyAt, valueAt } from '../problem.ts';
import type { Problem } from '../problem.ts';
import type { ScalarNode } from '../tree.ts';
import type { Path } from '../../model/where.ts';

/** Nothing is written after a key or in an item, or a word that stands for nothing in YAML and JSON. */
export function nothingWritten(path: Path, { text, hidden = false }: ScalarNode, expected: string): Problem {
  const last = path.at(-1);
  const isItem = typeof last === 'number';
  const subject = isItem ? {} : { subject: String(last) };
  if (text !== '') {
    const what = isItem ? 'This item' : `\`${String(last)}\``;
    const message = `${what} is empty: \`${text}\` stands for nothing unless it is in quotes. Expected is ${expected}.`;
    return { rule: 'missing-key', at: valueAt(path), message, ...subject };
  }
  if (isItem) {
    const message = `Nothing is written in this item; expected ${expected}.`;
    return { rule: 'missing-key', at: valueAt(path), message };
  }
  const comment = hidden ? ' What follows `#` is a comment; put it in quotes if it is the value.' : '';
  const message = `Nothing is written after \`${String(last)}\`; expected ${expected}.${comment}`;
  return { rule: 'missing-key', at: keyAt(path), message, ...subject };
}
