import fc from 'fast-check';

/** A text with one thing done to it, as a slip of the hand or of the clipboard does it. */
export interface Mutant {
  readonly text: string;
  /** The lines around the change, in offsets of the new text. */
  readonly from: number;
  readonly to: number;
}

/** Everything that has a meaning in YAML, and what looks like nothing. A bar stands between two, so that blanks show. */
const pieces = [
  ': |:| :|? |?\n|- |-|, |,| #|#|# |"|\'|{|}|[|]|{}|[]|""|"": |\'\' |~|null|: x|, : x|[: x]|{: x}|? [a]\n',
  '>|&a |*a |!!omap |!!set |!!str |!!binary |!x |! |<<: |<<: *a\n|%YAML 1.2\n|\n---\n|\n...\n|\n|\n  |\n    ',
  '  | |\t|\u00A0|\u200B|\uFEFF|\r\n|\\|@|`|=|1|x|x: ',
]
  .flatMap((line) => line.split('|'))
  .concat('|', '|\n', '|+\n');

const token = /[\p{L}\p{N}]+|\n[ ]*|[ \t]+|[^\s\p{L}\p{N}]/gu;

type Edit = (text: string) => fc.Arbitrary<readonly [from: number, to: number, put: string]>;

const tokensOf = (text: string): readonly RegExpExecArray[] => [...text.matchAll(token)];
const linesOf = (text: string): readonly RegExpExecArray[] => [...text.matchAll(/[^\n]*\n/g)];

/** Puts something before a token, or in its place. */
const atToken = (put: (text: string) => fc.Arbitrary<string>, isKept = false): Edit => {
  return (text) =>
    fc
      .tuple(fc.constantFrom(...tokensOf(text)), put(text))
      .map(([{ 0: token, index }, word]) => [index, isKept ? index : index + token.length, word] as const);
};

/** Puts something in the place of a line. */
const atLine = (put: (line: string, text: string) => fc.Arbitrary<string>): Edit => {
  return (text) =>
    fc.constantFrom(...linesOf(text)).chain(({ 0: line, index }) => {
      return put(line, text).map((other) => [index, index + line.length, other] as const);
    });
};

const edits: readonly Edit[] = [
  atToken(() => fc.constant('')),
  atToken(() => fc.constantFrom(...pieces)),
  atToken(() => fc.constantFrom(...pieces), true),
  atToken((text) => fc.constantFrom(...tokensOf(text)).map(([word]) => word)),
  // A word, a colon or a bracket that is gone, more often than anything else.
  (text) =>
    fc
      .constantFrom(...text.matchAll(/[A-Za-z][A-Za-z0-9-]*(?=:)|[-:,[\]{}"']|^ +/gm))
      .map((match) => [match.index, match.index + match[0].length, ''] as const),
  atLine(() => fc.constant('')),
  atLine((line) => fc.constant(line + line)),
  atLine((line) => fc.integer({ min: 1, max: 4 }).map((blanks) => ' '.repeat(blanks) + line)),
  atLine((line) =>
    fc.integer({ min: 1, max: 4 }).map((blanks) => line.replace(new RegExp(`^ {1,${blanks}}`), '')),
  ),
  atLine((line) => fc.constant(line.replace(/\n$/, ' '))),
  atLine((line) => fc.constant(line.replace(/(: ).*\n/, '$1\n'))),
  atLine((_, text) => fc.constantFrom(...linesOf(text)).map(([line]) => line)),
];

export function mutantsOf(texts: readonly string[]): fc.Arbitrary<Mutant> {
  return fc.constantFrom(...texts).chain((text) =>
    fc.constantFrom(...edits).chain((edit) =>
      edit(text).map(([from, to, put]) => {
        const changed = text.slice(0, from) + put + text.slice(to);
        const start = changed.lastIndexOf('\n', changed.lastIndexOf('\n', from - 1) - 1) + 1;
        return { text: changed, from: start, to: endOfLines(changed, from + put.length, 3) };
      }),
    ),
  );
}

function endOfLines(text: string, at: number, lines: number): number {
  let end = at;
  for (let line = 0; line < lines && end !== -1; line += 1) end = text.indexOf('\n', end + 1);
  return end === -1 ? text.length : end;
}
