import { isDeed, isSubordinate } from './clauses.ts';
import type { Clause, Token } from './clauses.ts';
import { isDeterminer } from './doing-words.ts';
import type { DoingWord } from './doing-words.ts';
import type { Meaning } from './text-names.ts';

/* The commands that a text gives, outside of those that must not tell of any deed at all. */

/** A command in a text: to do something to what has this name. */
export interface Command {
  readonly doing: DoingWord;
  /** As it is written. */
  readonly name: string;
  readonly meaning: Meaning;
}

/** An order to switch the ignition, or a source. */
export interface SwitchOrder {
  /** `switch the ignition on`, as far as it is known. */
  readonly word: string;
  readonly of: 'ignition' | Meaning;
}

/** Words that may stand before a command: `First unplug`, `You must unplug`, `Have a second person unplug`. */
const leading: ReadonlySet<string> = new Set(
  (
    'you must should shall please now then first next again also always just only soon finally once twice ' +
    'can could would will may might need needs have has get let ask tell make be sure to remember try go ahead help ' +
    'somebody someone anybody colleague helper assistant partner technician the a an second other person your it is ' +
    'time best want wish like feel free begin start continue proceed keep by still even very quite well too we they ' +
    'before doing so this that step here there today do never forget fail omit neglect hesitate miss'
  ).split(' '),
);

/** Words that begin a phrase before a command: `With care unplug K30`. */
const prepositions: ReadonlySet<string> = new Set(
  'with without by using at on in from for under over behind during after through via per'.split(' '),
);

/** A deed may be told by its noun behind these: `try unplugging K30`. */
const beforeNoun: ReadonlySet<string> = new Set('try by start begin keep continue go help'.split(' '));

/** Behind a name these begin a description: `Plug K30 is the yellow one`. */
const describing: ReadonlySet<string> = new Set(
  'is are was were has had sits stands stays belongs carries may must can should needs'.split(' '),
);

/** The word of doing that a clause gives a command with, by its place; -1: none. */
export function commandAt(clause: Clause): number {
  const { tokens } = clause;
  let at = 0;
  while (at < tokens.length && (isLeading(tokens[at]) || isNotToDo(tokens, at))) at += 1;
  const first = tokens[at];
  if (first?.meaning === null && prepositions.has(first.word)) at = behindPhrase(tokens, at);
  const token = tokens[at];
  const doing = token?.doing ?? null;
  if (doing === null || doing.needsName || !isDeed(clause, at)) return -1;
  if (doing.form === 'base') return isDeterminer(tokens[at - 1]?.word ?? '') ? -1 : at;
  if (doing.form !== 'doing') return -1;
  const last = tokens[at - 1]?.word ?? '';
  return (at === 0 && isSubordinate(clause)) || beforeNoun.has(last) ? at : -1;
}

/** `Do not forget to unplug K30`: what such a sentence tells is a command all the same. */
function isNotToDo(tokens: readonly Token[], at: number): boolean {
  return tokens[at]?.word === 'not' && tokens[at - 1]?.word === 'do';
}

function isLeading(token: Token | undefined): boolean {
  if (token?.meaning !== null || token.doing !== null) return false;
  return leading.has(token.word) || /^[a-z-]{3,}ly$/.test(token.word);
}

/** The command behind a phrase: it stands behind no article, and not where the phrase begins. */
function behindPhrase(tokens: readonly Token[], from: number): number {
  const at = tokens.findIndex(
    ({ doing }, index) =>
      index > from + 1 &&
      doing?.form === 'base' &&
      !doing.needsName &&
      !isDeterminer(tokens[index - 1]?.word ?? ''),
  );
  return at < 0 ? tokens.length : at;
}

export function commandsIn(clauses: readonly Clause[]): readonly Command[] {
  const commands: Command[] = [];
  let running: DoingWord | null = null;
  for (const clause of clauses) {
    const at = commandAt(clause);
    const doing: DoingWord | null = at < 0 ? goingOn(clause, running) : (clause.tokens[at]?.doing ?? null);
    running = doing;
    if (doing === null) continue;
    for (const { name, meaning } of closest(objectsOf(clause, at + 1)))
      commands.push({ doing, name, meaning });
  }
  return commands;
}

/** `the pins of K30` are those of K30: where an id stands, what people call such a thing adds nothing. */
function closest(objects: ReturnType<typeof objectsOf>): ReturnType<typeof objectsOf> {
  const ids = objects.filter(({ meaning }) => meaning.as === 'id');
  return ids.length > 0 ? ids : objects;
}

/** `and K31` behind `Unplug K30`. */
function goingOn({ tokens, opening, passedFrom }: Clause, running: DoingWord | null): DoingWord | null {
  const isList = (opening === '' || opening === 'and' || opening === 'or') && passedFrom === Infinity;
  const isNames = tokens.every(({ meaning, word }) => meaning !== null || isDeterminer(word));
  return isList && isNames ? running : null;
}

/** The names behind a place of a clause; without `any` those that begin no description. */
export function objectsOf(
  { tokens }: Clause,
  from: number,
  which: 'any' | 'objects' = 'objects',
): readonly { readonly name: string; readonly meaning: Meaning }[] {
  return tokens.slice(from).flatMap(({ meaning, spelled }, index) => {
    const isDescribed = describing.has(tokens[from + index + 1]?.word ?? '');
    return meaning === null || (isDescribed && which === 'objects') ? [] : [{ name: spelled, meaning }];
  });
}

const switchingWords: ReadonlySet<string> = new Set(
  'switch turn connect reconnect disconnect isolate energize energise plug unplug'.split(' '),
);
/** These switch nothing but the ignition. */
const starting: ReadonlySet<string> = new Set('start put flip cycle key activate power crank'.split(' '));
const ignitionWords: ReadonlySet<string> = new Set('ignition engine'.split(' '));

/** Orders to switch the ignition or a source, in a text that is none of a switching step. */
export function switchOrdersIn(clauses: readonly Clause[]): readonly SwitchOrder[] {
  return clauses.flatMap((clause): SwitchOrder[] => {
    const { tokens } = clause;
    const bare = tokens.map(({ word }) => word);
    if (bare[0] === 'ignition' && (bare[1] === 'on' || bare[1] === 'off') && bare.slice(2).every(isAdverb))
      return [{ word: `ignition ${bare[1]}`, of: 'ignition' }];
    let at = commandAt(clause);
    if (at < 0) {
      at = tokens.findIndex((token) => !isLeading(token) || starting.has(token.word));
      if (!starting.has(tokens[at]?.word ?? '') || at >= clause.passedFrom) return [];
    }
    const word = tokens[at]?.word ?? '';
    const behind = tokens.slice(at + 1);
    const base = tokens[at]?.doing?.base ?? word;
    if (!switchingWords.has(base) && !starting.has(base)) return [];
    const ignition = behind.find((token) => ignitionWords.has(token.word));
    if (ignition !== undefined || (base !== 'start' && turnsKey(behind)))
      return [{ word: `${word} the ignition`, of: 'ignition' }];
    if (!switchingWords.has(base)) return [];
    return objectsOf(clause, at + 1).map(({ name, meaning }) => ({ word: `${word} ${name}`, of: meaning }));
  });
}

function turnsKey(behind: readonly Token[]): boolean {
  return (
    behind.some(({ word }) => word === 'key') && behind.some(({ word }) => word === 'on' || word === 'off')
  );
}

function isAdverb(word: string): boolean {
  return word === 'now' || word === 'again' || word === 'first' || word === 'then';
}
