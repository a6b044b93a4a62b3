/** The same text with a notice at each step that brings hands to something; none of them stands in a draft by itself. */
export function withNotices(text: string): string {
  return text.replace(
    /^( *)- (?:disconnect|prove-dead|unlock|unplug|fit|replace|do|inspect): .*$/gm,
    '$&\n$1  danger: Stay clear.',
  );
}
