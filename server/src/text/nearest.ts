/**
 * The number of typing mistakes between two words: a letter left out, added, changed, or two swapped. Where there are more
 * than `most`, any number above it.
 */
export function distance(a: string, b: string, most = Infinity): number {
  let [beforeLast, last, current]: [number[], number[], number[]] = [[], [], []];
  for (let column = 0; column <= Math.min(b.length, most); column += 1) last[column] = column;
  let leastOfLast = 0;
  for (let row = 1; row <= a.length; row += 1) {
    // Further from the diagonal there are too many mistakes already.
    const from = Math.max(1, row - most);
    const to = Math.min(b.length, row + most);
    current[from - 1] = from === 1 ? row : Infinity;
    let least = current[from - 1] ?? Infinity;
    for (let column = from; column <= to; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let mistakes = Math.min(
        (last[column] ?? Infinity) + 1,
        (current[column - 1] ?? Infinity) + 1,
        (last[column - 1] ?? Infinity) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) mistakes = Math.min(mistakes, (beforeLast[column - 2] ?? Infinity) + 1);
      current[column] = mistakes;
      least = Math.min(least, mistakes);
    }
    current[to + 1] = Infinity;
    // Two rows, since a swap looks two rows back.
    if (Math.min(least, leastOfLast) > most) return most + 1;
    leastOfLast = least;
    [beforeLast, last, current] = [last, current, beforeLast];
  }
  return last[b.length] ?? Infinity;
}

/** Some of the known words that were probably meant, all equally near. About one mistake in three letters is forgiven. */
function nearestOf(word: string, known: Iterable<string>): readonly string[] {
  let best: string[] = [];
  let least = Infinity;
  const written = simple(word);
  if (written.length > 60) return [];
  const letters = lettersOf(written);
  for (const candidate of known) {
    const allowed = Math.max(1, Math.floor(Math.min(word.length, candidate.length) / 3));
    const most = Math.min(allowed, least);
    // Most of many candidates need no closer look: each letter that one word is longer is a mistake, and a mistake
    // brings in one kind of letter and takes out another at most.
    if (Math.abs(written.length - candidate.length) > most) continue;
    if (ones(letters ^ lettersOf(candidate)) > 2 * most) continue;
    const mistakes = distance(written, simple(candidate), most);
    if (mistakes > allowed || mistakes > least) continue;
    if (mistakes < least) best = [];
    least = mistakes;
    if (best.length < mostNamed + 1 && !best.includes(candidate)) best.push(candidate);
  }
  return best;
}

/** Of words that are equally near. One more is kept, which tells that there are more than one. */
const mostNamed = 3;

/** A bit for each kind of letter, great and small alike; a few kinds share one. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at += 1) {
    const code = word.charCodeAt(at);
    letters |= 1 << (code === underscore || code === blank ? hyphen : code);
  }
  return letters;
}

const [underscore, blank, hyphen] = [95, 32, 45] as const;

function ones(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count += 1;
  return count;
}

function simple(word: string): string {
  return word.toLowerCase().replaceAll('_', '-').replaceAll(' ', '-');
}

/** The known word that was probably meant, or null. */
export function nearest(word: string, known: Iterable<string>): string | null {
  return nearestOf(word, known)[0] ?? null;
}

/** What was probably meant by a word that nothing carries. */
export interface Guess {
  /** ` Did you mean `steps`?`, or nothing. Of words that are equally near three are named, so that none is preferred. */
  readonly sentence: string;
  /** The one word that was probably meant, for whoever puts it in; nothing where several are equally near. */
  readonly meant: { readonly suggestion?: string };
}

export const noGuess: Guess = { sentence: '', meant: {} };

export function guessOf(word: string, known: Iterable<string>): Guess {
  const found = nearestOf(word, known);
  const [only, ...others] = found;
  if (only === undefined) return noGuess;
  const quoted = found.slice(0, mostNamed).map((one) => `\`${one}\``);
  const last = quoted.slice(-1).join('');
  const listed = quoted.length === 1 ? last : `${quoted.slice(0, -1).join(', ')} or ${last}`;
  return { sentence: ` Did you mean ${listed}?`, meant: others.length > 0 ? {} : { suggestion: only } };
}

/** As `Guess`. */
export function suggestion(word: string, known: Iterable<string>): Guess['meant'] {
  return guessOf(word, known).meant;
}

/** As `Guess`. */
export function didYouMean(word: string, known: Iterable<string>): Guess['sentence'] {
  return guessOf(word, known).sentence;
}
