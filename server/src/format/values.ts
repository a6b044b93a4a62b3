import * as z from 'zod';

// Compiling checks while they run costs a command line more than it saves.
z.config({ jitless: true });
import {
  idOr,
  idPattern,
  nodePattern,
  pinPattern,
  placePattern,
  terminalPattern,
  touchOrNothingPattern,
  touchPattern,
} from './ids.ts';

/*
 * The shapes that keys take. Each carries a description and examples for editors, and `x-expected`: the words in which
 * a message says what should have stood there.
 */

type Examples = readonly [unknown, ...unknown[]];

function told(expected: string, description: string, examples: Examples) {
  return { description, examples: [...examples], 'x-expected': expected };
}

/** Text of at least one visible character. */
export function text(description: string, ...examples: Examples) {
  return z
    .string()
    .regex(/\S/)
    .meta(told('text', description, examples));
}

/**
 * A quantity is a string for the schema; what it means is read by the quantity parser, which points at the exact
 * characters that are wrong. A pattern could only say that something is.
 */
export function quantity(expected: string, description: string, ...examples: Examples) {
  return z.string().meta(told(expected, description, examples));
}

/** A resistance with its spread. */
export function resistance(description: string) {
  return quantity('a resistance with its spread', description, '1.7..2.3 Ω', '2.2 Ω ± 1 %');
}

export function flag(description: string, ...examples: Examples) {
  return z.boolean().meta(told('`true` or `false`', description, examples));
}

/** A key that is written to say yes, and left out otherwise. */
export function yes(description: string) {
  return z.literal(true).meta(told('`true`', description, [true]));
}

export function id(expected: string, description: string, ...examples: Examples) {
  return z
    .string()
    .regex(idPattern)
    .meta(told(expected, description, examples));
}

/** A list of at least one, each once: a second of the same is a slip, and another one was meant. */
export function each<T extends z.ZodType>(one: T) {
  return z
    .array(one)
    .min(1)
    .refine((items) => new Set(items).size === items.length)
    .meta({ uniqueItems: true });
}

/** A map of at least one key: what is written and empty has lost what was meant. */
export function filled<T extends z.ZodType<object>>(map: T): T {
  return map.refine((value) => Object.keys(value).length > 0).meta({ minProperties: 1 });
}

/** One id, or a list of at least one. */
export function ids(expected: string, description: string, ...examples: Examples) {
  const one = z.string().regex(idPattern);
  return z.union([one, each(one)]).meta(told(expected, description, examples));
}

export function list(expected: string, description: string, ...examples: Examples) {
  return each(z.string().regex(/\S/)).meta(told(expected, description, examples));
}

export function place(description: string, ...examples: Examples) {
  return z
    .string()
    .regex(placePattern)
    .meta(told('a side of a connector', description, examples));
}

/** Where the probes of an instrument go: both poles of a side, or two terminals. */
export function probed(description: string, ...examples: Examples) {
  const terminal = z.string().regex(terminalPattern).meta({ 'x-expected': 'a terminal, such as `K7.end.1`' });
  const pair = z.array(terminal).min(2).max(2);
  return z
    .union([z.string().regex(placePattern), pair])
    .meta(told('a side of a connector, or two terminals', description, examples));
}

/** Two nodes of the network, or two terminals. */
export function nodePair(description: string, ...examples: Examples) {
  return z
    .array(node())
    .min(2)
    .max(2)
    .meta(told('two nodes', description, examples));
}

/** The nodes of a part: two, or three where it has a wiper. */
export function partNodes(description: string, ...examples: Examples) {
  return z
    .array(node())
    .min(2)
    .max(3)
    .meta(told('two nodes, or of a potentiometer three', description, examples));
}

/** Where the probes go that measure anything: a side of a connector, or two nodes or terminals. */
export function across(description: string, ...examples: Examples) {
  return z
    .union([z.string().regex(placePattern), z.array(node()).min(2).max(2)])
    .meta(told('a side of a connector, or two terminals or nodes', description, examples));
}

function node() {
  return z
    .string()
    .regex(nodePattern)
    .meta({ 'x-expected': 'the name of a node, `ground`, or a terminal, such as `K7.end.1`' });
}

function touch(expected = 'an id, a side or a terminal') {
  return z.string().regex(touchPattern).meta({ 'x-expected': expected });
}

/** One or several things that hands touch, or the word that says that they touch nothing. */
export function touched(description: string, ...examples: Examples) {
  return z
    .union([
      z.string().regex(touchOrNothingPattern),
      each(touch('an id, a side or a terminal; `nothing` stands alone')),
    ])
    .meta(told('an id, a side or a terminal, a list of them, or `nothing`', description, examples));
}

/** One or several things that are moved by hand. */
export function moved(description: string, ...examples: Examples) {
  const one = z.string().regex(placePattern).meta({ 'x-expected': 'an id or a side of a connector' });
  return z
    .union([one, each(one)])
    .meta(told('an id or a side of a connector, or a list of them', description, examples));
}

/** One or several things that are only looked at. */
export function seen(description: string, ...examples: Examples) {
  return z
    .union([touch(), each(touch())])
    .meta(told('an id, a side or a terminal, or a list of them', description, examples));
}

/** Where an outcome leads: a step id, or `next`. */
export function target(description: string, ...examples: Examples) {
  return z
    .string()
    .regex(idOr('next'))
    .meta(told('a step id or `next`', description, examples));
}

/** What ends a list of ids and the words beside them. */
export function idsOr(
  words: readonly ('none' | 'codes' | 'repair')[],
  expected: string,
  description: string,
  ...examples: Examples
) {
  const one = z.string().regex(words.length === 1 ? idPattern : idOr(...words));
  const first = z.string().regex(idOr(...words));
  return z.union([first, each(one)]).meta(told(expected, description, examples));
}

const anyPin = z.union([z.string().regex(pinPattern), z.int().min(0)]);
const pinExpected = 'the name of a pin, such as `3` or `A1`';

/** One pin of a connector. General YAML tools see `3` as a number; Ohmwright keeps what is written. */
export function pin(description: string, ...examples: Examples) {
  return anyPin.meta(told(pinExpected, description, examples));
}

/** Two pins of one connector. */
export function pinPair(description: string, ...examples: Examples) {
  return z
    .array(anyPin.meta({ 'x-expected': pinExpected }))
    .min(2)
    .max(2)
    .meta(told('two pins', description, examples));
}

export function keyword<const T extends readonly [string, ...string[]]>(
  words: T,
  description: string,
  ...examples: Examples
) {
  const quoted = words.map((word) => `\`${word}\``);
  const expected =
    quoted.length === 1
      ? quoted.join('')
      : `${quoted.slice(0, -1).join(', ')} or ${quoted.slice(-1).join('')}`;
  return z.enum(words).meta(told(expected, description, examples));
}

export function group<T extends z.ZodType>(
  schema: T,
  expected: string,
  description: string,
  ...examples: Examples
): T {
  return schema.meta(told(expected, description, examples));
}

export function kind<const T extends string>(word: T, description: string) {
  return z.literal(word).meta(told(`\`${word}\``, description, [word]));
}
