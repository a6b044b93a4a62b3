/** So many words are named in one message. */
const mostNamed = 12;

/** `a, b, c`; of many words the first few, and that there are more. */
export function someOf(words: readonly string[]): string {
  return `${words.slice(0, mostNamed).join(', ')}${words.length > mostNamed ? ', …' : ''}`;
}
