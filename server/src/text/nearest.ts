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

/** The known words that were probably meant, all equally near. About one mistake in three letters is forgiven. */
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
    if (mistakes > allowed || mistakes > least || best.includes(candidate)) continue;
    if (mistakes < least) best = [];
    least = mistakes;
    best.push(candidate);
  }
  return best;
}

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

/** The one known word that was probably meant, for whoever puts it in; nothing where several are equally near. */
export function suggestion(word: string, known: Iterable<string>): { readonly suggestion?: string } {
  const [only, ...others] = nearestOf(word, known);
  return only === undefined || others.length > 0 ? {} : { suggestion: only };
}

/** ` Did you mean `steps`?`, or nothing. Of ids that are equally near three are named, so that none is suggested. */
export function didYouMean(word: string, known: Iterable<string>): string {
  const found = nearestOf(word, known).slice(0, 3);
  if (found.length === 0) return '';
  const quoted = found.map((one) => `\`${one}\``);
  const last = quoted.slice(-1).join('');
  return ` Did you mean ${quoted.length === 1 ? last : `${quoted.slice(0, -1).join(', ')} or ${last}`}?`;
}
