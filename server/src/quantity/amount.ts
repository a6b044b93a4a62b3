import type { Decimal } from './decimal.ts';
import { add, compare, multiply, plainText } from './decimal.ts';
import type { Dimension } from './dimensions.ts';
import { hasZeroAsLeast, nameOf } from './dimensions.ts';
import type { Failed, Parsed } from './parsed.ts';
import { failed, failedBy, parsed } from './parsed.ts';
import type { NumberToken, Stretch, Token, WordToken } from './scan.ts';
import { scan } from './scan.ts';
import type { Meant, Unit } from './units.ts';
import { isBarePrefix, printingUnits, unitNamed, unitsButForCase } from './units.ts';

/** A number with the word behind it, before the word is understood. A time may have several: `1 min 30 s`. */
export interface Written extends Stretch {
  readonly terms: readonly { readonly number: NumberToken; readonly word: WordToken | null }[];
}

/** A value in the base unit, with the unit in which it was written. */
export interface Amount {
  readonly value: Decimal;
  readonly unit: Unit;
}

/** The tokens of a text, read from left to right, and what the text should say. */
export interface Cursor {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly dimension: Dimension;
  /** What is expected, as a noun phrase with an example. */
  readonly expected: string;
  /** Whether a value may lie below zero although its dimension does not: a voltage from one point to another. */
  readonly signed: boolean;
  next: number;
}

/** Scans a text. An empty one is a failure already. */
export function begin(text: string, dimension: Dimension, expected: string, signed = false): Parsed<Cursor> {
  const scanned = scan(text);
  if (scanned.problem !== undefined) return failedBy(scanned.problem);
  if (scanned.tokens.length === 0) {
    return failed(`Nothing is written here; expected ${expected}.`, { from: 0, to: text.length });
  }
  return parsed({ text, tokens: scanned.tokens, dimension, expected, signed, next: 0 });
}

export function peek(cursor: Cursor): Token | undefined {
  return cursor.tokens[cursor.next];
}

/** Takes the next token if it is this sign. */
export function takeSign(cursor: Cursor, kind: '±' | '..' | '+'): Stretch | undefined {
  const token = peek(cursor);
  if (token?.kind !== kind) return undefined;
  cursor.next += 1;
  return token;
}

/** Takes a number with the word behind it, if any. Where no number stands, the failure says what was expected. */
export function takeWritten(cursor: Cursor): Parsed<Written> {
  const terms: { number: NumberToken; word: WordToken | null }[] = [];
  for (;;) {
    const number = peek(cursor);
    if (number?.kind !== 'number') break;
    const word = cursor.tokens[cursor.next + 1];
    const named = word?.kind === 'word' ? word : null;
    if (
      terms.length > 0 &&
      (cursor.dimension !== 'time' || named === null || unitNamed(named.text)?.dimension !== 'time')
    )
      break;
    terms.push({ number, word: named });
    cursor.next += named === null ? 1 : 2;
    if (named === null) break;
  }
  const first = terms[0];
  const last = terms.at(-1);
  if (first === undefined || last === undefined) return noNumber(cursor);
  return parsed({ terms, from: first.number.from, to: (last.word ?? last.number).to });
}

/** The written value in the base unit. A number without a unit takes the one that stands further right, if any. */
export function toAmount(written: Written, cursor: Cursor, toTheRight?: Unit): Parsed<Amount> {
  let total: Amount | undefined;
  for (const { number, word } of written.terms) {
    const unit = word === null ? missingOr(toTheRight, number, cursor) : unitOf(word, cursor);
    if (!unit.ok) return unit;
    const value = multiply(number.value, unit.value.factor);
    if (total !== undefined && compare(unit.value.factor, total.unit.factor) >= 0) {
      return failed('Write the larger unit first, as in 1 min 30 s.', { from: number.from, to: written.to });
    }
    total = { value: total === undefined ? value : add(total.value, value), unit: unit.value };
  }
  return total === undefined ? failed(`Expected ${cursor.expected}.`, written) : parsed(total);
}

/** The unit that a word names, if it is one of the dimension. */
export function unitOf(
  word: WordToken,
  { dimension, expected }: Pick<Cursor, 'dimension' | 'expected'>,
): Parsed<Unit> {
  const unit = unitNamed(word.text);
  if (unit?.dimension === dimension) return parsed(unit);
  if (word.text === '%') return failed(`A percentage does not stand here; expected ${expected}.`, word);
  const nearly = unitsButForCase(word.text, dimension);
  if (nearly.length > 0) {
    const choice = nearly.map((one) => inWords(one, nearly.length > 1)).join(' or ');
    return failed(`${quoted(word)} is not a unit; write ${choice}: upper and lower case matter.`, word);
  }
  if (unit !== undefined) {
    const belongs = `${quoted(word)} is a unit of ${nameOf(unit.dimension).replace(/^an? /, '')}`;
    return failed(`${belongs}; expected ${expected}.`, word);
  }
  const bare = isBarePrefix(word.text) ? ' on its own' : '';
  return failed(`${quoted(word)}${bare} is not a unit; expected ${expected}.`, word);
}

/** `mohm`, and where there is a choice also what it is worth: (0.001 Ω). */
function inWords({ spelling, unit }: Meant, withWorth: boolean): string {
  const worth = ` (${plainText(unit.factor)} ${printingUnits(unit.dimension).base.symbol})`;
  return `\`${spelling}\`${withWorth ? worth : ''}`;
}

/** Fails where something is left over. */
export function expectEnd(cursor: Cursor): Failed | undefined {
  const token = peek(cursor);
  if (token === undefined) return undefined;
  const rest = { from: token.from, to: cursor.tokens.at(-1)?.to ?? token.to };
  return failed(whyNotHere(token, cursor), rest);
}

/** In °C. */
const absoluteZero: Decimal = { coefficient: -27315n, exponent: -2 };

/** Fails where a value lies below zero that may not, or a temperature not above absolute zero. */
export function expectNotNegative(
  value: Decimal,
  at: Stretch,
  { dimension, signed }: Pick<Cursor, 'dimension' | 'signed'>,
): Failed | undefined {
  if (value.coefficient >= 0n || signed) return undefined;
  if (hasZeroAsLeast(dimension)) return failed(`${capital(nameOf(dimension))} is never negative.`, at);
  return compare(value, absoluteZero) > 0 ? undefined : failed('A temperature lies above -273.15 °C.', at);
}

export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** The word as messages show it; a long one is cut. */
function quoted({ text }: WordToken): string {
  return text.length > 24 ? `\`${text.slice(0, 24)}…\`` : `\`${text}\``;
}

function missingOr(unit: Unit | undefined, number: NumberToken, cursor: Cursor): Parsed<Unit> {
  if (unit !== undefined) return parsed(unit);
  return failed(`The unit is missing behind ${number.text}; expected ${cursor.expected}.`, number);
}

function whyNotHere(token: Token, { tokens, next, expected }: Cursor): string {
  const before = tokens[next - 1];
  const after = tokens[next + 1];
  switch (token.kind) {
    case 'number':
      return before?.kind === 'number'
        ? 'Two numbers stand beside each other; write a number without spaces in it.'
        : `A second value does not stand here; expected ${expected}.`;
    case '-':
      return after?.kind === 'number' && !(before?.kind === 'word' && before.text === '%')
        ? 'Write a range with two points, as in 1.7..2.3.'
        : `A minus does not stand here; expected ${expected}.`;
    case '±':
      return `A tolerance does not stand here; expected ${expected}.`;
    case '..':
      return `A range does not stand here; expected ${expected}.`;
    case '+':
      return `A sum does not stand here; expected ${expected}.`;
    case 'word':
      return `${quoted(token)} does not stand here; expected ${expected}.`;
  }
}

function noNumber(cursor: Cursor): Failed {
  const token = peek(cursor);
  const before = cursor.tokens[cursor.next - 1];
  if (token === undefined) {
    return failed(
      `A value is missing at the end; expected ${cursor.expected}.`,
      before ?? { from: 0, to: cursor.text.length },
    );
  }
  if (token.kind === 'word')
    return failed(`${quoted(token)} is not a number; expected ${cursor.expected}.`, token);
  return failed(`A number is missing before this sign; expected ${cursor.expected}.`, token);
}
