/* The places of a snippet that a writer fills in, as the protocol writes them. */

/** No more than this many choices are listed; a longer list is for the completion of the value itself. */
const mostChoices = 12;

/** A place with words to choose from; where there is one or too many, the first stands there to be typed over. */
export function choice(at: number, words: readonly string[], otherwise: string): string {
  const [first] = words;
  if (words.length < 2 || words.length > mostChoices) return place(at, first ?? otherwise);
  return `\${${at}|${words.map((word) => word.replace(/[\\,|]/g, '\\$&')).join(',')}|}`;
}

/** A place with a text to type over. */
export function place(at: number, text: string): string {
  return `\${${at}:${text.replace(/[\\$}]/g, '\\$&')}}`;
}

/** What is good goes on; what is not goes to a step with an id, or the reading would decide nothing. */
export function twoOutcomes(good: string, bad: string, at: number, steps: readonly string[]): string {
  return `{ ${good}: ${place(at, 'next')}, ${bad}: ${choice(at + 1, steps, 'step-id')} }`;
}

/** A text of which nothing is a place. */
export function literal(text: string): string {
  return text.replace(/[\\$]/g, '\\$&');
}

const anyPlace =
  /\\([\\$},|])|\$\{\d+\|((?:\\.|[^,|\\])*)(?:\\.|[^|\\])*\|\}|\$\{\d+:((?:\\.|[^}\\])*)\}|\$\d+/g;

/** A snippet as plain text: in every place its text or its first choice. */
export function withoutPlaces(snippet: string): string {
  return snippet.replace(anyPlace, (_, escaped?: string, first?: string, text?: string) => {
    return escaped ?? (first ?? text ?? '').replace(/\\(.)/g, '$1');
  });
}
