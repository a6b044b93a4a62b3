import type { Chance } from '../oracle/chance.ts';
import { corpusText, lines, words } from './corpus.ts';
import { parts } from './everything.ts';
import type { Input } from './input.ts';

/* Texts of the corpus with a few things done to them, and noise. */

type Change = (text: string, chance: Chance) => string;

export function textInput(chance: Chance): Input {
  const base = (): string => corpusText(chance.whole(0, 1e9));
  if (chance.happens(0.08))
    return { text: noise(chance), parts: chance.happens(0.5) ? parts : noise(chance) };
  let text = base();
  for (let left = chance.pick([1, 1, 1, 2, 3, 6]); left > 0; left -= 1)
    text = chance.pick(changes)(text, chance);
  if (chance.happens(0.05)) text = spliced(text, base(), chance);
  return { text, parts: chance.happens(0.1) ? chance.pick(changes)(parts, chance) : parts };
}

/** Characters that mean something to YAML, to the format, to a terminal or to nobody. */
export const special: readonly string[] = [
  ...Array.from(':-,[]{}"\'#&*!|>?%@`\\ \t\n~^=<>$()/.+'),
  ': ',
  ' #',
  '- ',
  '\r\n',
  '\r',
  '---\n',
  '...\n',
  '? ',
  '<<: ',
  '\u0000',
  '\u0007',
  '\u001B[31m',
  '\u007F',
  '\u0085',
  '\u00A0',
  '\u00AD',
  '\u0301',
  '\u061C',
  '\u200B',
  '\u200E',
  '\u202E',
  '\u2028',
  '\u2029',
  '\u2066',
  '\u2212',
  '\uFEFF',
  '\uFFFD',
  '\uFFFF',
  '\uD83D',
  '\uDD0C',
  '\u{1F50C}',
  '\u{E0041}',
  'Ω',
  'Ω',
  '±',
  '°C',
  'µ',
  'é',
  'ｋ',
  '١',
  '0',
  '-0',
  '1e99',
  '1e-99',
  '9'.repeat(41),
  'null',
  'true',
  'on',
  '__proto__',
  'constructor',
  'toString',
  'next',
  'none',
  'ground',
];

const escapes = [
  '\\u0000',
  '\\uD800',
  '\\uDC00',
  '\\u202E',
  '\\n',
  '\\t',
  '\\x1b',
  '\\e',
  '\\N',
  '\\_',
  '\\z',
  '\\U0001F50C',
  '\\\n',
];

const changes: readonly Change[] = [
  // A character, anywhere.
  (text, chance) => put(text, chance, chance.pick(special)),
  (text, chance) => put(text, chance, chance.pick(special)),
  (text, chance) =>
    put(text, chance, String.fromCharCode(chance.whole(0, chance.pick([0x7f, 0xff, 0xffff])))),
  (text, chance) => cut(text, chance, chance.whole(1, chance.pick([1, 3, 40, 400]))),
  (text, chance) => {
    const at = chance.whole(0, text.length);
    return (
      text.slice(0, at) +
      String.fromCharCode(text.charCodeAt(at) ^ (1 << chance.whole(0, 6))) +
      text.slice(at + 1)
    );
  },
  (text, chance) => text.slice(0, chance.whole(0, text.length)),
  (text, chance) => text.slice(chance.whole(0, text.length)),
  // A word.
  (text, chance) => inPlaceOf(text, /[A-Za-z][A-Za-z0-9-]*/g, chance, () => chance.pick(words)),
  (text, chance) => inPlaceOf(text, /[A-Za-z][A-Za-z0-9-]*/g, chance, (word) => mistyped(word, chance)),
  (text, chance) => inPlaceOf(text, /[A-Za-z][A-Za-z0-9-]*/g, chance, () => chance.pick(special)),
  (text, chance) => inPlaceOf(text, /\d+(?:\.\d+)?/g, chance, () => chance.pick(numbers)),
  (text, chance) => inPlaceOf(text, /(?<=: )[^\n,{}[\]]+/g, chance, (value) => quoted(value, chance)),
  (text, chance) =>
    inPlaceOf(text, /(?<=: )[^\n,{}[\]]+/g, chance, () =>
      chance.pick(['', '{}', '[]', '|', '>-', '~', '#x', '*a', '&a x', '!!int 1']),
    ),
  (text, chance) => inPlaceOf(text, /[^\s:]+:/g, chance, () => ''),
  (text, chance) => inPlaceOf(text, /[,:{}[\]]/g, chance, () => ''),
  // Lines.
  (text, chance) => ofLines(text, (all) => all.toSpliced(chance.whole(0, all.length), 1)),
  (text, chance) => ofLines(text, (all) => all.toSpliced(chance.whole(0, all.length), 0, chance.pick(lines))),
  (text, chance) => ofLines(text, (all) => moved(all, chance)),
  (text, chance) =>
    ofLines(text, (all) => {
      const at = chance.whole(0, all.length - 1);
      return all.toSpliced(at, 0, ...all.slice(at, at + chance.whole(1, 6)));
    }),
  (text, chance) =>
    ofLines(text, (all) => {
      const at = chance.whole(0, all.length - 1);
      const [first, last] = [at, at + chance.pick([0, 0, 1, 4])];
      const change = chance.pick([
        (line: string): string => ` ${line}`,
        (line: string): string => `  ${line}`,
        (line: string): string => `\t${line}`,
        (line: string): string => line.replace(/^ /, ''),
        (line: string): string => line.replace(/^ {2}/, ''),
        (line: string): string => line.replace(/- /, ''),
        (line: string): string => `- ${line}`,
        (line: string): string => `# ${line}`,
        (line: string): string => line.trimStart(),
      ]);
      return all.map((line, index) => (index >= first && index <= last ? change(line) : line));
    }),
  (text) => text.replaceAll('\n', '\r\n'),
  (text, chance) => `${chance.pick(['\uFEFF', '\n\n', '# a\n', '%YAML 1.2\n---\n', '---\n'])}${text}`,
  (text, chance) =>
    text + chance.pick(['\n---\na: 1\n', '...', '\n\n\n', '  ', '\n  - ', '\nsteps:\n', '\u0000']),
];

const numbers = [
  '0',
  '-1',
  '1e100',
  '1e101',
  '1e-100',
  '1e-101',
  '0.0000001',
  '999999999',
  '1.2.3',
  '1,5',
  '.5',
  '5.',
  '١',
  '0x10',
  'NaN',
  'Infinity',
  '1e400',
];

function put(text: string, chance: Chance, what: string): string {
  const at = chance.whole(0, text.length);
  return text.slice(0, at) + what + text.slice(at);
}

function cut(text: string, chance: Chance, length: number): string {
  const at = chance.whole(0, text.length);
  return text.slice(0, at) + text.slice(at + length);
}

function inPlaceOf(text: string, pattern: RegExp, chance: Chance, by: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const { index, 0: word } = chance.pick(found);
  return text.slice(0, index) + by(word) + text.slice(index + word.length);
}

function mistyped(word: string, chance: Chance): string {
  const at = chance.whole(0, word.length);
  return chance.pick([
    word.slice(0, at) + word.slice(at + 1),
    word.slice(0, at) + chance.pick(Array.from('abkz09-_.')) + word.slice(at),
    word.toUpperCase(),
    word.toLowerCase(),
    `${word}s`,
  ]);
}

function quoted(value: string, chance: Chance): string {
  const at = chance.whole(0, value.length);
  const inside = value.slice(0, at) + chance.pick(['', ...escapes]) + value.slice(at);
  return chance.pick([
    `"${inside}"`,
    `'${inside}'`,
    `"${inside}`,
    `[${value}]`,
    `{ ${value} }`,
    `|\n        ${value}`,
  ]);
}

function ofLines(text: string, change: (all: string[]) => string[]): string {
  return change(text.split('\n')).join('\n');
}

function moved(all: string[], chance: Chance): string[] {
  const from = chance.whole(0, all.length - 1);
  const taken = all.slice(from, from + chance.whole(1, 4));
  const rest = all.toSpliced(from, taken.length);
  return rest.toSpliced(chance.whole(0, rest.length), 0, ...taken);
}

function spliced(one: string, other: string, chance: Chance): string {
  return one.slice(0, chance.whole(0, one.length)) + other.slice(chance.whole(0, other.length));
}

function noise(chance: Chance): string {
  const alphabet = chance.pick<readonly string[]>([
    special,
    Array.from('ab: -\n'),
    Array.from('[]{},:ab "\'\n'),
    lines,
    words.map((one) => `${one}: `),
  ]);
  const pieces = Array.from({ length: chance.whole(0, 60) }, () => chance.pick(alphabet));
  return (
    chance.pick(['', '', 'format: 1\n', 'format: 1\nsteps:\n']) +
    pieces.join(chance.pick(['', '', '\n', ' ']))
  );
}
