/** The number of typing mistakes between two words: a letter left out, added, changed, or two swapped. */
export function distance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let least = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) least = Math.min(least, (beforeLast[column - 2] ?? 0) + 1);
      current.push(least);
    }
    beforeLast = last;
    last = current;
  }
  return last[b.length] ?? 0;
}

/** The known word that was probably meant, or null. About one mistake in three letters is forgiven. */
export function nearest(word: string, known: Iterable<string>): string | null {
  let best: string | null = null;
  let least = Infinity;
  const written = simple(word);
  if (written.length > 60) return null;
  for (const candidate of known) {
    const allowed = Math.max(1, Math.floor(Math.min(word.length, candidate.length) / 3));
    const mistakes = distance(written, simple(candidate));
    if (mistakes <= allowed && mistakes < least) {
      best = candidate;
      least = mistakes;
    }
  }
  return best;
}

function simple(word: string): string {
  return word.toLowerCase().replaceAll('_', '-').replaceAll(' ', '-');
}

/** ` Did you mean `steps`?`, or nothing. */
export function didYouMean(word: string, known: Iterable<string>): string {
  const found = nearest(word, known);
  return found === null ? '' : ` Did you mean \`${found}\`?`;
}
