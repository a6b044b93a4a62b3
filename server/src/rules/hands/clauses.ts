import { canBeThing, doingWord, isDeterminer } from './doing-words.ts';
import type { DoingWord } from './doing-words.ts';
import type { Meaning, Piece } from './text-names.ts';

/* A text as clauses: what is said in one breath, with the words of doing and the names in it. */

export interface Token {
  readonly spelled: string;
  /** In small letters. */
  readonly word: string;
  readonly meaning: Meaning | null;
  /** null also where it is the name of a thing. */
  readonly doing: DoingWord | null;
  /** `plug`, `switch` or `screw` as a thing. */
  readonly isThing: boolean;
}

export interface Clause {
  readonly tokens: readonly Token[];
  /** The word that begins it, where that is one of those that join clauses; empty: a mark, or the text itself. */
  readonly opening: string;
  /** From here on it says what is not to be done, or what comes before: nothing in it is a deed. */
  readonly passedFrom: number;
}

/** Clauses behind these are read like main clauses, and may tell of a deed by its noun: `while wiggling K30`. */
const subordinating: ReadonlySet<string> = new Set(
  'while whilst when whenever if unless until till as once'.split(' '),
);
const joining: ReadonlySet<string> = new Set('and or nor then but before so that because since'.split(' '));

export function isSubordinate({ opening }: Clause): boolean {
  return subordinating.has(opening);
}

/** Such a sentence means the contrary: `Do not forget to unplug K30`. */
const undoing: ReadonlySet<string> = new Set('forget fail omit neglect hesitate skip miss except'.split(' '));

type Breath = Pick<Clause, 'tokens' | 'opening'>;

export function clausesOf(pieces: readonly Piece[]): readonly Clause[] {
  const breaths: Breath[] = [];
  let tokens: Token[] = [];
  let opening = '';
  const end = (next: string): void => {
    if (tokens.length > 0) breaths.push({ tokens, opening });
    opening = next;
    tokens = [];
  };
  for (const piece of pieces) {
    if (piece === null) {
      end('');
      continue;
    }
    const word = piece.spelled.toLowerCase();
    if (piece.meaning === null && (subordinating.has(word) || joining.has(word))) end(word);
    else tokens.push(tokenOf(piece.spelled, word, piece.meaning, tokens));
  }
  end('');
  const clauses: Clause[] = [];
  for (const [at, breath] of breaths.entries())
    clauses.push({ ...breath, passedFrom: passedFrom(breath, clauses.at(-1), breaths[at + 1]) });
  return clauses;
}

function isPassed(clause: Clause | undefined): boolean {
  return clause !== undefined && clause.passedFrom < Infinity;
}

function tokenOf(spelled: string, word: string, meaning: Meaning | null, before: readonly Token[]): Token {
  // A load may be called `plug`: where it stands behind no article the word is one of doing too.
  const doing = meaning === null || meaning.as === 'id' ? doingWord(word) : null;
  const isThing = doing !== null && canBeThing(doing) && standsBehindArticle(before);
  return {
    spelled,
    word,
    meaning,
    doing: isThing || isAdjective(doing, word, before) ? null : doing,
    isThing,
  };
}

/** Words between an article and a thing: `the service plug`. Whoever does something is none of them. */
const qualities: ReadonlySet<string> = new Set(
  'service load test warning ignition main light first second other same new old yellow black red orange mating high-voltage small whole'.split(
    ' ',
  ),
);

function standsBehindArticle(before: readonly Token[]): boolean {
  const at = before.findLastIndex(({ word, meaning }) => meaning?.as !== 'people' && !qualities.has(word));
  return at >= 0 && isDeterminer(before[at]?.word ?? '');
}

/** `the measured value`, what `is seated` or `fitted`, and `clean` where it says how something is. */
function isAdjective(doing: DoingWord | null, word: string, before: readonly Token[]): boolean {
  if (doing === null) return false;
  const last = before.at(-1)?.word ?? '';
  if (doing.base === 'measure' && doing.form === 'other') return isDeterminer(last);
  if (word === 'clean') return isBeing(before.at(-1)) || (isBeing(before[0]) && last !== 'to');
  return (word === 'seated' || word === 'fitted') && last !== 'be';
}

function isBeing(token: Token | undefined): boolean {
  return token !== undefined && ['is', 'are', 'was', 'were'].includes(token.word);
}

function passedFrom({ tokens, opening }: Breath, last: Clause | undefined, next: Breath | undefined): number {
  const words = tokens.map(({ word }) => word);
  const isUndone = words.some(
    (word, at) => undoing.has(word) || (word === 'without' && tokens[at + 1]?.doing?.form === 'doing'),
  );
  // `bend` in `Never pull, bend or cut`, and what stands behind `or`.
  const isListed = opening === '' && tokens.length === 1 && isOr(next);
  if (isPassed(last) && (isListed || isOr({ opening }))) return 0;
  if (isUndone) return Infinity;
  if (opening === 'before') return 0;
  const at = words.findIndex(
    (word, index) => negating.has(word) || (word === 'do' && words[index + 1] === 'not'),
  );
  return at < 0 ? Infinity : at;
}

const negating: ReadonlySet<string> = new Set(['never', 'nobody', "don't", 'don’t']);

function isOr(breath: Pick<Breath, 'opening'> | undefined): boolean {
  return breath?.opening === 'or' || breath?.opening === 'nor';
}

/** Whether a token is a deed that somebody is told of, whatever the form. */
export function isDeed({ tokens, passedFrom, opening }: Clause, at: number): boolean {
  const token = tokens[at];
  if (token?.doing == null) return false;
  const next = tokens[at + 1]?.word;
  if (next === 'nothing' || next === 'no') return false;
  if (at < passedFrom) return true;
  // `Before you go on unplug K30`: the command stands behind what comes first.
  return opening === 'before' && token.doing.form === 'base' && at > 0 && !isSubject(tokens[at - 1]);
}

const subjects: ReadonlySet<string> = new Set(
  'you we they anybody anyone somebody someone people hands to and or'.split(' '),
);

function isSubject(token: Token | undefined): boolean {
  return token === undefined || subjects.has(token.word);
}
