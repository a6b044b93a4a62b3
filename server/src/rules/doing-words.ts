/* Words of doing, as a sentence gives a command with them. A mere mention ("K30 is unplugged") uses other forms. */

/** What a word can be done to. */
export type Handled = 'connectors' | 'parts' | 'monitors' | 'assemblies' | 'sources' | 'loads';

interface DoingWords {
  readonly words: readonly string[];
  readonly to: readonly Handled[];
}

const inTheCircuit: readonly Handled[] = ['connectors', 'parts', 'monitors', 'assemblies'];

/** Listed are words that mean hands or a switch whatever stands behind them; `take`, `open` or `check` may mean a page. */
const doingWords: readonly DoingWords[] = [
  { words: ['unlock', 'unplug', 'plug'], to: ['connectors'] },
  { words: ['disconnect', 'reconnect', 'connect'], to: ['sources', ...inTheCircuit] },
  { words: ['fit', 'move'], to: ['loads'] },
  { words: ['remove', 'replace', 'swap'], to: ['loads', ...inTheCircuit] },
  { words: ['measure', 'probe', 'touch', 'wiggle', 'shake', 'bend', 'tap'], to: inTheCircuit },
  { words: ['pull', 'push', 'press', 'lift', 'loosen', 'seat', 'clean', 'cut'], to: inTheCircuit },
  { words: ['detach', 'unclip', 'undo', 'release', 'bridge', 'apply'], to: inTheCircuit },
];

/** Words that may stand before the command itself: `First unplug`, `You must unplug`. */
const leading: ReadonlySet<string> = new Set(
  'you must should shall please now then first next again also always just only carefully gently finally'.split(
    ' ',
  ),
);

/** Behind a name these begin a description: `Plug K30 is the yellow one`. */
const describing: ReadonlySet<string> = new Set(
  'is are was were has had sits stands stays belongs carries may must can should needs'.split(' '),
);

/** A command in a text: to do something to what carries this name. */
export interface Command {
  readonly word: string;
  readonly name: string;
  readonly to: readonly Handled[];
}

/** The commands that a text gives, with every name that may be their object. */
export function commandsIn(text: string): readonly Command[] {
  return text.split(/[.,;:!?()\n]+|\s(?:and|or|then)\s/iu).flatMap((clause): Command[] => {
    const words = clause.match(/[a-z0-9][a-z0-9-]*/giu) ?? [];
    const at = words.findIndex((word) => !leading.has(word.toLowerCase()));
    const word = (words[at] ?? '').toLowerCase();
    const known = doingWords.find((row) => row.words.includes(word));
    if (known === undefined) return [];
    return words.slice(at + 1).flatMap((name, index) => {
      const isDescribed = describing.has((words[at + 2 + index] ?? '').toLowerCase());
      return isDescribed ? [] : [{ word, name, to: known.to }];
    });
  });
}
