import type { Chance } from '../oracle/chance.ts';
import { corpusText, lines, words } from './corpus.ts';
import { special } from './text-inputs.ts';

/* What a writer does in an editor, one act after another. Places are shares of the text, so that acts can be left out. */

export type Act =
  /** Character by character. */
  | { readonly kind: 'type'; readonly at: number; readonly text: string }
  | { readonly kind: 'replace'; readonly at: number; readonly length: number; readonly text: string }
  | { readonly kind: 'line'; readonly at: number; readonly text: string }
  | { readonly kind: 'undo' }
  /** The whole text at once. */
  | { readonly kind: 'set'; readonly text: string };

export interface Writing {
  readonly start: string;
  readonly acts: readonly Act[];
}

export function writing(chance: Chance): Writing {
  const start = chance.happens(0.15) ? '' : corpusText(chance.whole(0, 1e9));
  return { start, acts: Array.from({ length: chance.whole(1, 8) }, () => act(chance)) };
}

function act(chance: Chance): Act {
  const at = chance.draw();
  switch (chance.whole(0, 9)) {
    case 0:
    case 1:
      return {
        kind: 'type',
        at,
        text: chance.pick([chance.pick(words), '- ', ': ', '\n  - ', '{ kind: ', '"', '# ', ' Ω']),
      };
    case 2:
      // A whole line, with the line end before it.
      return { kind: 'line', at, text: chance.pick(lines) };
    case 3:
      return { kind: 'replace', at, length: chance.whole(1, chance.pick([1, 10, 200])), text: '' };
    case 4:
      return { kind: 'replace', at, length: 0, text: chance.pick(special) };
    case 5: {
      // A block from elsewhere.
      const other = corpusText(chance.whole(0, 1e9)).split('\n');
      const from = chance.whole(0, other.length - 1);
      return {
        kind: 'replace',
        at,
        length: 0,
        text: `${other.slice(from, from + chance.whole(1, 10)).join('\n')}\n`,
      };
    }
    case 6:
      return { kind: 'replace', at, length: chance.whole(0, 30), text: chance.pick(words) };
    case 7:
    case 8:
      return { kind: 'undo' };
    default:
      return chance.happens(0.3)
        ? { kind: 'set', text: corpusText(chance.whole(0, 1e9)) }
        : { kind: 'type', at, text: chance.pick(lines) };
  }
}

/** A stretch of the text, and what takes its place. */
export interface Stroke {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The strokes of an act on the text as it is, each on the text that the one before it leaves. */
export function strokesOf(act: Act, text: string, earlier: readonly string[]): readonly Stroke[] {
  switch (act.kind) {
    case 'type': {
      const at = Math.floor(act.at * text.length);
      return Array.from(act.text, (_, index) => index).map((index) => {
        const characters = Array.from(act.text);
        const before = characters.slice(0, index).join('').length;
        return { from: at + before, to: at + before, text: characters[index] ?? '' };
      });
    }
    case 'replace': {
      const from = Math.floor(act.at * text.length);
      return [{ from, to: Math.min(text.length, from + act.length), text: act.text }];
    }
    case 'line': {
      const end = text.indexOf('\n', Math.floor(act.at * text.length));
      const at = end === -1 ? text.length : end;
      return strokesOf({ kind: 'type', at: 0, text: `\n${act.text}` }, '', []).map(
        ({ from, to, text: put }) => ({
          from: at + from,
          to: at + to,
          text: put,
        }),
      );
    }
    case 'undo': {
      const before = earlier.at(-1);
      return before === undefined ? [] : [between(text, before)];
    }
    case 'set':
      return [{ from: 0, to: text.length, text: act.text }];
  }
}

function between(text: string, wanted: string): Stroke {
  let start = 0;
  while (start < text.length && start < wanted.length && text[start] === wanted[start]) start += 1;
  let end = 0;
  const most = Math.min(text.length, wanted.length) - start;
  while (end < most && text[text.length - 1 - end] === wanted[wanted.length - 1 - end]) end += 1;
  return { from: start, to: text.length - end, text: wanted.slice(start, wanted.length - end) };
}
