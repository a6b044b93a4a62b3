import type { CST } from 'yaml';
import type { Problem } from './problem.ts';
import type { Brackets, Token, Walked } from './tokens.ts';

/** What only the tokens tell: what is refused, what a comment swallows, and what is not closed. */
export interface Marks {
  readonly problems: readonly Problem[];
  /** Where the first quote or bracket stands that is not closed. The parser's own errors behind it are left out. */
  readonly unclosed: number | null;
  /** Where the `---` of a second document stands. */
  readonly secondDocument: number | null;
}

function startOf({ at }: Problem): number {
  return 'range' in at ? at.range.from : 0;
}

export function marksOf(
  text: string,
  { tokens: found, brackets }: Walked,
  documents: readonly CST.Token[],
): Marks {
  const unclosed = [...unclosedQuotes(found), ...unclosedBrackets(brackets)];
  const problems: Problem[] = [];
  for (const [index, token] of found.entries()) {
    const problem = refused(token) ?? swallowed(token, text, found[index - 1]);
    if (problem !== null) problems.push(problem);
  }
  return {
    problems: [...unclosed, ...problems],
    unclosed: unclosed.map(startOf).reduce<number | null>((least, one) => Math.min(least ?? one, one), null),
    secondDocument: secondDocument(documents, found),
  };
}

function refused({ type, offset, source }: Token): Problem | null {
  const at = { range: { from: offset, to: offset + source.trimEnd().length } };
  switch (type) {
    case 'anchor':
    case 'alias':
      return {
        rule: 'yaml',
        at,
        loses: type === 'alias',
        message: `\`${source}\` is an anchor or alias, and they are not used here. Write it out, or put text in quotes.`,
      };
    case 'tag':
      return {
        rule: 'yaml',
        at,
        message: `\`${source}\` is a tag, and they are not used here. Remove it, or put text in quotes.`,
      };
    case 'directive':
      return { rule: 'yaml', at, message: 'Lines that start with `%` are not used here. Remove it.' };
    default:
      return null;
  }
}

/**
 * A comment behind a value whose `#` is glued to what follows was probably meant as text: `title: Loop #2`. An ordinary
 * comment has a space behind its `#`.
 */
function swallowed({ type, offset, source }: Token, text: string, before: Token | undefined): Problem | null {
  if (type !== 'comment' || !/^#[^\s#!]/.test(source)) return null;
  if (before?.type !== 'scalar') return null;
  const between = text.slice(before.offset + before.source.length, offset);
  if (!/^[ \t]*,?[ \t]+$/.test(between)) return null;
  return {
    rule: 'comment-swallows',
    at: { range: { from: offset, to: offset + source.length } },
    message:
      'Text after ` #` is a comment. Put the value in quotes if it belongs to it, or write a space after `#`.',
  };
}

function unclosedQuotes(tokens: readonly Token[]): readonly Problem[] {
  const problems: Problem[] = [];
  for (const { type, offset, source } of tokens) {
    const quote = type === 'double-quoted-scalar' ? '"' : type === 'single-quoted-scalar' ? "'" : null;
    if (quote === null || (source.length > 1 && closes(source, quote))) continue;
    const at = { range: { from: offset, to: offset + source.length } };
    const message = `The quote \`${quote}\` that opens here is not closed.`;
    problems.push({ rule: 'yaml', at, misplaces: true, message });
  }
  return problems;
}

function closes(source: string, quote: string): boolean {
  if (!source.endsWith(quote)) return false;
  const inside = source.slice(1, -1);
  return quote === "'" ? !inside.replaceAll("''", '').includes("'") : !/(?:^|[^\\])(?:\\\\)*\\$/.test(inside);
}

function unclosedBrackets(brackets: readonly Brackets[]): readonly Problem[] {
  const problems = brackets.flatMap(({ opens: { offset, source }, closed }): Problem[] => {
    if (closed) return [];
    const at = { range: { from: offset, to: offset + 1 } };
    const message = `The bracket \`${source}\` that opens here is not closed.`;
    return [{ rule: 'yaml', at, misplaces: true, message }];
  });
  // The innermost first: it is the one that is kept where several open on one line.
  return problems.sort((a, b) => startOf(b) - startOf(a));
}

function secondDocument(tokens: readonly CST.Token[], found: readonly Token[]): number | null {
  const second = tokens.filter(({ type }) => type === 'document')[1];
  if (second === undefined || !('offset' in second)) return null;
  return (
    found.find(({ type, offset }) => type === 'doc-start' && offset >= second.offset)?.offset ?? second.offset
  );
}
