import type { Entry, Node } from './tree.ts';
import type { Range } from '../model/where.ts';

/* Where something can be added to a map or a list, or taken out of a list, with the text around it left as it is. */

/** Put in at the offset is `before`, the new entry, `after`. */
export interface Addition {
  readonly at: number;
  readonly before: string;
  readonly after: string;
}

/** null where there is neither a list nor a map to add to. */
export function placeToAdd(node: Node | undefined, text: string): Addition | null {
  if (node?.kind !== 'map' && node?.kind !== 'list') return null;
  const nodes = node.kind === 'map' ? node.entries.map(({ value }) => value) : node.items;
  const end = node.range.from + text.slice(node.range.from, node.range.to).trimEnd().length;
  if (text[node.range.from] === '{' || text[node.range.from] === '[') {
    const open = text.slice(node.range.from, end - 1).trimEnd();
    return {
      at: node.range.from + open.length,
      before: nodes.length === 0 || open.endsWith(',') ? ' ' : ', ',
      after: '',
    };
  }
  const lineBreak = text.includes('\r\n') ? '\r\n' : '\n';
  const lead = text.slice(lineStart(text, node.range.from), node.range.from);
  if (lead.trim() !== '') return null;
  const at = lineEnd(text, end);
  const open = text.slice(0, at).endsWith('\n') ? '' : lineBreak;
  const dash = node.kind === 'list' ? '- ' : '';
  return { at, before: `${open}${lead}${dash}`, after: open === '' ? lineBreak : '' };
}

/** What to take out for each item of a list under a key; for the only one that is the key as well. */
export function placesOfItems({ keyRange, value }: Entry, text: string): readonly Range[] {
  if (value.kind !== 'list') return [];
  const { items, range } = value;
  const [only] = items;
  if (items.length === 1 && only !== undefined) {
    const whole = { from: lineStart(text, keyRange.from), to: lineEnd(text, trimmedEnd(text, range)) };
    // Where something stands before the key on its line it is left.
    return text.slice(whole.from, keyRange.from).trim() === '' ? [whole] : [];
  }
  if (text[range.from] !== '[')
    return items.map((item) => ({
      from: lineStart(text, item.range.from),
      to: lineEnd(text, trimmedEnd(text, item.range)),
    }));
  return items.map((item, at) => {
    const next = items[at + 1];
    const previous = items[at - 1];
    return next === undefined
      ? { from: previous?.range.to ?? item.range.from, to: item.range.to }
      : { from: item.range.from, to: next.range.from };
  });
}

function trimmedEnd(text: string, { from, to }: Range): number {
  return from + text.slice(from, to).trimEnd().length;
}

export function lineStart(text: string, at: number): number {
  return text.lastIndexOf('\n', at - 1) + 1;
}

export function lineEnd(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  return end === -1 ? text.length : end + 1;
}
