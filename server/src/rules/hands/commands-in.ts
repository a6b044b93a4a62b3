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
  readonly of: 'ignition' | 'power' | Meaning;
}

/** Words that may stand before a command: `First unplug`, `You must unplug`, `Have a second person unplug`. */
const leading: ReadonlySet<string> = new Set(
  (
    'you must should shall please now then first next again also always just only soon finally once twice ' +
    'can could would will may might need needs have has get let ask tell make be sure to remember try go ahead help ' +
    'somebody someone anybody colleague helper assistant partner technician the a an second other person your it is ' +
    'time best want wish like feel free begin start continue proceed keep by still even very quite well too we they ' +
    'before doing so this that step here there today do never forget fail omit neglect hesitate miss ' +
    'meanwhile more afterwards instead later otherwise therefore thereafter'
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
  for (const [index, clause] of clauses.entries()) {
    const at = commandAt(clause);
    const doing: DoingWord | null = at < 0 ? goingOn(clause, running) : (clause.tokens[at]?.doing ?? null);
    running = doing;
    if (doing === null) continue;
    const behind = closest(objectsOf(clause, at + 1));
    const objects = behind.length > 0 || clause.tokens.length > 1 ? behind : namedAlone(clauses[index - 1]);
    for (const { name, meaning } of objects) commands.push({ doing, name, meaning });
  }
  return commands;
}

/** `the pins of K30` are those of K30: where an id stands, what people call such a thing adds nothing. */
function closest(objects: ReturnType<typeof objectsOf>): ReturnType<typeof objectsOf> {
  const ids = objects.filter(({ meaning }) => meaning.as === 'id');
  return ids.length > 0 ? ids : objects;
}

/** The name before a colon: `K30: unplug`. */
function namedAlone(clause: Clause | undefined): ReturnType<typeof objectsOf> {
  const isAlone = clause?.tokens.every(({ meaning, word }) => meaning !== null || isDeterminer(word));
  return clause !== undefined && isAlone === true ? objectsOf(clause, 0) : [];
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
  const behind = tokens.slice(from);
  const described = behind.findIndex(
    ({ meaning }, index) => meaning !== null && describing.has(behind[index + 1]?.word ?? ''),
  );
  // What stands behind a description belongs to it.
  const end = which === 'any' || described < 0 ? behind.length : described;
  return behind
    .slice(0, end)
    .flatMap(({ meaning, spelled }) => (meaning === null ? [] : [{ name: spelled, meaning }]));
}

/** These switch a source that is their object. */
const switchingWords: ReadonlySet<string> = new Set(
  'switch turn connect reconnect disconnect isolate energize energise plug unplug attach reattach refit'.split(
    ' ',
  ),
);
/** These switch the ignition or the power where they have it for their object. */
const starting: ReadonlySet<string> = new Set(
  'start put flip cycle key activate power crank restore'.split(' '),
);
const ignitionWords: ReadonlySet<string> = new Set('ignition engine'.split(' '));

/** Orders to switch the ignition or a source, in a text that is none of a switching step. */
export function switchOrdersIn(clauses: readonly Clause[]): readonly SwitchOrder[] {
  return clauses.flatMap((clause, index): readonly SwitchOrder[] => {
    const said = saidOn(clause, clauses[index + 1]);
    if (said !== null) return [{ word: said, of: 'ignition' }];
    const { tokens } = clause;
    let at = commandAt(clause);
    if (at < 0) {
      at = tokens.findIndex((token) => !isLeading(token) || starting.has(token.word));
      if (!starting.has(tokens[at]?.word ?? '') || at >= clause.passedFrom) return [];
    }
    const word = tokens[at]?.word ?? '';
    const base = tokens[at]?.doing?.base ?? word;
    if (!switchingWords.has(base) && !starting.has(base)) return [];
    const behind = tokens.slice(at + 1);
    const isIgnition = behind.some((token) => ignitionWords.has(token.word));
    if (isIgnition || (base !== 'start' && turnsKey(behind)))
      return [{ word: `${word} the ignition`, of: 'ignition' }];
    const isSwitch = base === 'switch' || base === 'turn' || base === 'restore';
    if (isSwitch && behind.some((token) => token.word === 'power'))
      return [{ word: `${word} the power`, of: 'power' }];
    if (!switchingWords.has(base)) return [];
    return objectsOf(clause, at + 1).map(({ name, meaning }) => ({ word: `${word} ${name}`, of: meaning }));
  });
}

/** `Ignition on now`, `Key on, engine off`, `Ignition: on`; null: nothing of that kind. */
function saidOn({ tokens }: Clause, next: Clause | undefined): string | null {
  const [first, ...rest] = tokens.map(({ word }) => word);
  if (first === undefined || (!ignitionWords.has(first) && first !== 'key')) return null;
  const [way = '', ...others] = rest.length > 0 ? rest : (next?.tokens ?? []).map(({ word }) => word);
  return (way === 'on' || way === 'off') && others.every(isAdverb) ? `${first} ${way}` : null;
}

function turnsKey(behind: readonly Token[]): boolean {
  return (
    behind.some(({ word }) => word === 'key') && behind.some(({ word }) => word === 'on' || word === 'off')
  );
}

function isAdverb(word: string): boolean {
  return word === 'now' || word === 'again' || word === 'first' || word === 'then';
}
