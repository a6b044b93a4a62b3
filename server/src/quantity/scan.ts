import type { Decimal } from './decimal.ts';
import { decimalFromText } from './decimal.ts';

/** A stretch of the text, in UTF-16 units. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface NumberToken extends Stretch {
  readonly kind: 'number';
  readonly text: string;
  readonly value: Decimal;
}

export interface WordToken extends Stretch {
  readonly kind: 'word';
  readonly text: string;
}

export interface SignToken extends Stretch {
  readonly kind: '±' | '..' | '+' | '-';
}

export type Token = NumberToken | WordToken | SignToken;

/** Something that cannot be read, at its exact characters. */
export interface Problem extends Stretch {
  readonly message: string;
}

export type Scanned =
  { readonly tokens: readonly Token[]; readonly problem?: undefined } | { readonly problem: Problem };

/** Beyond these sizes (in the unit as written) a number is a slip of the pen, and later arithmetic could overflow. */
const largest = 1e100;
const smallest = 1e-100;
const mostDigits = 40;

/** No-break, narrow and thin spaces (U+00A0, U+202F, U+2009) are among them. */
const space = /\s+/y;
const plusMinus = /±|\+\/[-\u2212]|\+[-\u2212]/y;
const range = /\.{2,}|…|–/y;
const numeral = /[+\-\u2212]?\d+(?:[.,]\d+)*(?:[eE][+-]?\d+)?/y;
const word = /%|mm2(?!\d|\.\d)|[\p{L}°²³]+/uy;

/** Splits a quantity into numbers, words and signs. */
export function scan(text: string): Scanned {
  const tokens: Token[] = [];
  let at = 0;
  const match = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    return pattern.exec(text)?.[0];
  };
  while (at < text.length) {
    const blank = match(space);
    if (blank !== undefined) {
      at += blank.length;
      continue;
    }
    const signed = mayBeSigned(tokens.at(-1));
    const read = readSign(match, at, signed) ?? readNumber(match, at, signed) ?? readWord(match, at);
    if (read === undefined) return { problem: strayCharacter(text, at) };
    if ('message' in read) return { problem: read };
    tokens.push(read);
    at = read.to;
  }
  return { tokens };
}

/** After a value a sign stands between two values; at the start of a value it belongs to its number. */
function mayBeSigned(previous: Token | undefined): boolean {
  if (previous === undefined || previous.kind === '..' || previous.kind === '±') return true;
  return previous.kind === 'word' && (previous.text === 'below' || previous.text === 'above');
}

type Match = (pattern: RegExp) => string | undefined;

function readSign(match: Match, at: number, signed: boolean): Token | Problem | undefined {
  const tolerance = match(plusMinus);
  if (tolerance !== undefined) return { kind: '±', from: at, to: at + tolerance.length };
  const points = match(range);
  if (points !== undefined) {
    const stretch = { from: at, to: at + points.length };
    if (points.length > 2) return { ...stretch, message: 'Write a range with two points, as in 1.7..2.3.' };
    if (points === '–' && signed)
      return { ...stretch, message: 'Write a minus as -; – stands between two numbers.' };
    return { kind: '..', ...stretch };
  }
  const sign = match(/[+\-\u2212](?!\d)/y) ?? (signed ? undefined : match(/[+\-\u2212]/y));
  if (sign === undefined) return undefined;
  return { kind: sign === '+' ? '+' : '-', from: at, to: at + 1 };
}

function readNumber(match: Match, at: number, signed: boolean): Token | Problem | undefined {
  const text = match(signed ? numeral : /\d+(?:[.,]\d+)*(?:[eE][+-]?\d+)?/y);
  if (text === undefined) return undefined;
  const stretch = { from: at, to: at + text.length };
  const message = whyNotNumber(text);
  if (message !== undefined) return { ...stretch, message };
  const value = decimalFromText(text.replace('\u2212', '-'));
  return value === undefined ? undefined : { kind: 'number', ...stretch, text, value };
}

function readWord(match: Match, at: number): Token | undefined {
  const text = match(word);
  return text === undefined ? undefined : { kind: 'word', from: at, to: at + text.length, text };
}

function whyNotNumber(text: string): string | undefined {
  if (text.length > mostDigits) return `A number has at most ${mostDigits} characters.`;
  if (text.includes(',')) {
    const pointed = text.replace(',', '.');
    const single = !pointed.includes(',') && pointed.indexOf('.') === pointed.lastIndexOf('.');
    return single
      ? `Write ${pointed}, with a point: a comma is not read.`
      : `${text} is not a number: write one point for decimals, and no commas.`;
  }
  if (text.indexOf('.') !== text.lastIndexOf('.')) {
    return `${text} has more than one decimal point; a range is written with two points, as in 1.7..2.3.`;
  }
  const magnitude = Math.abs(Number(text.replace('\u2212', '-')));
  if (magnitude > largest) return `${text} is too large for a quantity.`;
  if (magnitude < smallest && /[1-9]/.test(text.replace(/[eE].*$/, '')))
    return `${text} is too small for a quantity.`;
  return undefined;
}

function strayCharacter(text: string, at: number): Problem {
  const character = String.fromCodePoint(text.codePointAt(at) ?? 0);
  const stretch = { from: at, to: at + character.length };
  if (character === '.' || character === ',') {
    const fraction = /^[.,](\d+)/.exec(text.slice(at))?.[1];
    if (fraction !== undefined && !/[\d.]/.test(text[at - 1] ?? '')) {
      return {
        from: at,
        to: at + 1 + fraction.length,
        message: `Write 0.${fraction}, with a digit before the point.`,
      };
    }
    if (/\d/.test(text[at - 1] ?? ''))
      return { ...stretch, message: 'A digit is missing behind the decimal point.' };
  }
  if (character === '<' || character === '>') {
    return { ...stretch, message: `Write \`${character === '<' ? 'below' : 'above'}\` for ${character}.` };
  }
  if (character === '^') return { ...stretch, message: 'Write mm² or mm2.' };
  if (character === '—') return { ...stretch, message: 'Write a range with two points, as in 1.7..2.3.' };
  return { ...stretch, message: `\`${character}\` has no meaning in a quantity.` };
}
