import { idPattern, isReserved } from '../../format/ids.ts';
import { expectedIn, properties, schemaAt, typesOf, wordsOf } from '../../format/walker.ts';
import type { Schema } from '../../format/walker.ts';
import type { ValidationError } from '../generated/validators.js';
import type { EntryRules } from '../entry-rules.ts';
import { didYouMean, nearest, suggestion } from '../nearest.ts';
import { keyAt, valueAt } from '../problem.ts';
import type { Problem } from '../problem.ts';
import { grouped } from '../../model/remembered.ts';
import { fileSchema } from '../schema.ts';
import type { Path } from '../../model/where.ts';

/* From the errors of a validator to one clear problem for each mistake. */

interface Context {
  readonly schema: Schema;
  readonly data: unknown;
  readonly path: Path;
  readonly rules: EntryRules;
  /** Places, from the entry on, that a problem has been made about already. */
  readonly settled: ReadonlySet<string>;
  /** A key of a later version has been found. */
  readonly usesLater: boolean;
}

interface Placed {
  readonly problem: Problem;
  /** From the entry on. */
  readonly at: Path;
}

interface Failure {
  readonly keyword: string;
  readonly at: Path;
  readonly params: ValidationError['params'];
}

export function pointer(path: Path): string {
  return path.map((step) => `/${step}`).join('');
}

export function problemsFrom(errors: readonly ValidationError[], context: Context): readonly Placed[] {
  const failures = errors.flatMap((error): Failure[] => {
    // The pattern inside `propertyNames`: the error about the name itself says it.
    if (error.propertyName !== undefined) return [];
    return [{ keyword: error.keyword, at: pathOf(error.instancePath, context.data), params: error.params }];
  });
  const open = failures.filter(({ at }) => !isSettled(at, context.settled));
  const unknown = open
    .filter(({ keyword }) => keyword === 'additionalProperties')
    .map((failure) => unknownIn(failure, context));
  const meant = new Set(unknown.flatMap(({ meantFor }) => meantFor ?? []));
  const missing = open
    .filter(({ keyword }) => keyword === 'required' || keyword === 'minProperties')
    .map((failure) =>
      failure.keyword === 'required' ? missingIn(failure, context) : nothingIn(failure, context),
    )
    .filter(({ at }) => !meant.has(pointer(at)) && !context.settled.has(pointer(at)))
    // A key of a later version may stand in the place of the one that is missing.
    .filter(({ at }) => at.length > 1 || !context.usesLater);
  const repeated = open
    .filter(({ keyword }) => keyword === 'uniqueItems')
    .map((failure) => repeatedIn(failure, context));
  const names = open
    .filter(({ keyword }) => keyword === 'propertyNames')
    .map((failure) => nameIn(failure, context));
  // What is wrong with an item says more than that its list is no list of one of the shapes.
  const settled = new Set([...context.settled, ...repeated.map(({ at }) => pointer(at))]);
  return [...unknown, ...missing, ...repeated, ...names, ...wrongValues(open, { ...context, settled })];
}

/** ajv writes indexes as text; whether one is an index or a key shows in the data. */
function pathOf(instancePath: string, data: unknown): Path {
  let at = data;
  return instancePath
    .split('/')
    .slice(1)
    .map((raw) => {
      const step = raw.replaceAll('~1', '/').replaceAll('~0', '~');
      const index = Array.isArray(at) ? Number(step) : step;
      at = (at as Record<string | number, unknown> | undefined)?.[index];
      return index;
    });
}

function isSettled(at: Path, settled: ReadonlySet<string>): boolean {
  return at.some((_, index) => settled.has(pointer(at.slice(0, index + 1))));
}

export function unknownKey(
  at: Path,
  { schema, path, rules }: Pick<Context, 'schema' | 'path' | 'rules'>,
): Problem {
  const key = String(at.at(-1));
  const parent = schemaAt(schema, at.slice(0, -1), fileSchema) ?? {};
  const own = [...properties(parent, fileSchema).keys()];
  const known = at.length === 1 ? [...own, ...(rules.alsoKnown ?? [])] : own;
  const guess = didYouMean(key, known);
  const listed =
    guess === '' && own.length <= 6 ? ` Known here: ${own.map((one) => `\`${one}\``).join(', ')}.` : '';
  const shown = key.trim() === '' ? 'An empty text' : `\`${key}\``;
  return {
    rule: 'unknown-key',
    at: keyAt([...path, ...at]),
    message: `${shown} is not a key that is known here.${guess}${listed}`,
    subject: key,
    ...suggestion(key, known),
  };
}

function unknownIn({ at, params }: Failure, context: Context): Placed & { readonly meantFor: string | null } {
  const key = String(params.additionalProperty);
  const parent = schemaAt(context.schema, at, fileSchema) ?? {};
  const guess = nearest(key, properties(parent, fileSchema).keys());
  const place = [...at, key];
  const problem = unknownKey(place, context);
  return { problem, at: place, meantFor: guess === null ? null : pointer([...at, guess]) };
}

function missingIn({ at, params }: Failure, { schema, path, rules }: Context): Placed {
  const key = String(params.missingProperty);
  const below = schemaAt(schema, [...at, key], fileSchema);
  const expected = below === null ? 'a value' : expectedIn(below, fileSchema);
  const owner = at.length === 0 ? rules.named : `\`${String(at.at(-1))}\``;
  const place = at.length === 0 ? (rules.missingAt ?? path) : [...path, ...at];
  const problem: Problem = {
    rule: 'missing-key',
    at: keyAt(place),
    message: `${owner} needs \`${key}\`: ${expected}.`,
    subject: key,
  };
  return { problem, at: [...at, key] };
}

function nothingIn({ at }: Failure, { schema, path }: Context): Placed {
  const key = String(at.at(-1));
  const below = schemaAt(schema, at, fileSchema);
  const expected = below === null ? 'a value' : expectedIn(below, fileSchema);
  const problem: Problem = {
    rule: 'missing-key',
    at: keyAt([...path, ...at]),
    message: `Nothing is written in \`${key}\`; expected ${expected}.`,
    subject: key,
  };
  return { problem, at };
}

/** Of items that are the same the later one. */
function repeatedIn({ at, params }: Failure, { data, path }: Context): Placed {
  const places = [Number(params.i), Number(params.j)].sort((one, other) => one - other);
  const [first, second] = places.map((index) => [...at, index]);
  const word = String(dataAt(data, second ?? at));
  const problem: Problem = {
    rule: 'wrong-value',
    at: valueAt([...path, ...(second ?? at)]),
    message: `\`${word}\` stands in this list already. Remove it, or write the one that is meant.`,
    subject: word,
    related: [{ at: valueAt([...path, ...(first ?? at)]), message: 'The first one.' }],
  };
  return { problem, at: second ?? at };
}

function nameIn({ at, params }: Failure, { path }: Context): Placed {
  const name = String(params.propertyName);
  const place = [...at, name];
  const problem: Problem = {
    rule: 'wrong-value',
    at: keyAt([...path, ...place]),
    message: notAnId(name),
    subject: name,
  };
  return { problem, at: place };
}

export function notAnId(word: string): string {
  return isReserved(word)
    ? `\`${word}\` has a meaning of its own in procedures and cannot be an id. Choose another.`
    : `\`${word}\` cannot be an id: an id starts with a letter and goes on with letters, digits and hyphens.`;
}

const aboutValues: ReadonlySet<string> = new Set([
  'type',
  'enum',
  'const',
  'pattern',
  'minItems',
  'maxItems',
  'minimum',
  'maximum',
  'exclusiveMinimum',
  'anyOf',
  'oneOf',
]);

/** One problem a place. Of a choice between shapes, what is wrong further down says more than the choice itself. */
function wrongValues(failures: readonly Failure[], context: Context): readonly Placed[] {
  const ofValues = failures.filter(({ keyword }) => aboutValues.has(keyword));
  const byPlace = grouped(ofValues.map((failure) => [pointer(failure.at), failure] as const));
  const above = new Set([...byPlace.keys(), ...context.settled].flatMap(placesAbove));
  const placed: Placed[] = [];
  for (const [place, found] of byPlace) {
    const [first] = found;
    if (first === undefined) continue;
    const choice = found.some(({ keyword }) => keyword === 'anyOf' || keyword === 'oneOf');
    if (choice && above.has(place)) continue;
    const telling = found.find(
      ({ keyword }) => keyword !== 'type' && keyword !== 'anyOf' && keyword !== 'oneOf',
    );
    placed.push({ problem: wrongValue(telling ?? first, context), at: first.at });
  }
  return placed;
}

/** `/a/b/c` lies below `/a/b`, `/a` and the entry itself. */
function placesAbove(place: string): readonly string[] {
  const steps = place.split('/').slice(0, -1);
  return steps.map((_, count) => steps.slice(0, count + 1).join('/'));
}

function wrongValue({ keyword, at }: Failure, { schema, data, path }: Context): Problem {
  const below = schemaAt(schema, at, fileSchema) ?? {};
  const value = dataAt(data, at);
  const place = [...path, ...at];
  const last = place.at(-1);
  const owner = typeof last === 'number' ? 'This item' : `\`${String(last)}\``;
  const isText = typeof value === 'string';
  const isScalar = isText || typeof value === 'number' || typeof value === 'boolean';
  const spot =
    isScalar || typeof last === 'number' || keyword.endsWith('Items') ? valueAt(place) : keyAt(place);
  const words = wordsOf(below, fileSchema);
  const expected = expectedIn(below, fileSchema);
  const subject = isText ? value : String(last);
  if (
    isText &&
    keyword === 'pattern' &&
    /\bid\b/.test(expected) &&
    !value.includes('.') &&
    !idPattern.test(value)
  ) {
    return {
      rule: 'wrong-value',
      at: spot,
      message: `${owner} takes ${expected}. ${notAnId(value)}`,
      subject,
    };
  }
  const guess = isText && value === value.trim() ? didYouMean(value, words) : '';
  const message = `${owner} takes ${expected}, not ${found(value, keyword, below)}.${guess}`;
  const meant = isText ? suggestion(value, words) : {};
  return { rule: 'wrong-value', at: spot, message, subject, ...meant };
}

function dataAt(data: unknown, path: Path): unknown {
  let at = data;
  for (const step of path) at = (at as Record<string | number, unknown> | null | undefined)?.[step];
  return at;
}

function found(value: unknown, keyword: string, schema: Schema): string {
  if (Array.isArray(value)) {
    if (value.length === 0) return 'an empty list';
    return keyword.endsWith('Items') ? `a list of ${value.length}` : 'a list';
  }
  if (typeof value === 'object' && value !== null) return 'keys with their values';
  if (typeof value === 'string') {
    if (value.trim() === '') return 'an empty text';
    const quoted = /^(?:true|false|[\d.]+)$/.test(value) && !typesOf(schema, fileSchema).has('string');
    if (quoted) return `\`${value}\` in quotes`;
    const [line = ''] = value.trim().split(/[\r\n]/);
    const shown = `\`${line.length > 40 ? `${line.slice(0, 40)}…` : line}\``;
    return value === value.trim() ? shown : `${shown} with a blank or a line break around it`;
  }
  return `\`${String(value)}\``;
}
