import type { JsonObject } from './json-schema.ts';

/*
 * Reading a JSON Schema by the shape of a document: what a key, an item or a scalar may be. Only the words that the
 * generated schema uses: properties, additionalProperties, items, anyOf, oneOf and references into $defs.
 */

export type Schema = JsonObject;

function isSchema(value: unknown): value is Schema {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A schema never changes, and each is asked of for every key and value of a file. */
function remember<T>(compute: (schema: Schema, root: Schema) => T): (schema: Schema, root: Schema) => T {
  const known = new WeakMap<Schema, T>();
  return (schema, root) => {
    const value = known.get(schema) ?? compute(schema, root);
    known.set(schema, value);
    return value;
  };
}

/** The schema itself, or each of its alternatives, references followed. */
export const alternatives = remember((schema, root): readonly Schema[] => {
  const reference = schema.$ref;
  if (typeof reference === 'string') {
    const definitions = root.$defs;
    const found = isSchema(definitions) ? definitions[reference.replace('#/$defs/', '')] : undefined;
    return isSchema(found) ? alternatives(found, root) : [];
  }
  const listed = schema.anyOf ?? schema.oneOf;
  if (!Array.isArray(listed)) return [schema];
  return listed.filter(isSchema).flatMap((one) => alternatives(one, root));
});

/** The keys that a map may have, as far as they are named, with their schemas. */
export const properties = remember((schema, root): ReadonlyMap<string, Schema> => {
  const found = new Map<string, Schema>();
  for (const one of alternatives(schema, root)) {
    const named = one.properties;
    if (!isSchema(named)) continue;
    for (const [key, value] of Object.entries(named))
      if (isSchema(value) && !found.has(key)) found.set(key, value);
  }
  return found;
});

/** The schema of one key, named or not. */
export function propertyOf(schema: Schema, key: string, root: Schema): Schema | null {
  const named = properties(schema, root).get(key);
  if (named !== undefined) return named;
  for (const one of alternatives(schema, root)) {
    const other = one.additionalProperties;
    if (isSchema(other)) return other;
  }
  return null;
}

export function itemOf(schema: Schema, root: Schema): Schema | null {
  for (const one of alternatives(schema, root)) {
    const items = one.items;
    if (isSchema(items)) return items;
  }
  return null;
}

/** The schema at a place below. */
export function schemaAt(schema: Schema, path: readonly (string | number)[], root: Schema): Schema | null {
  let at: Schema | null = schema;
  for (const step of path) {
    if (at === null) return null;
    at = typeof step === 'number' ? itemOf(at, root) : propertyOf(at, step, root);
  }
  return at;
}

export type JsonType = 'string' | 'number' | 'integer' | 'boolean' | 'object' | 'array' | 'null';

/** The types that a schema admits; empty: any. */
export const typesOf = remember((schema, root): ReadonlySet<JsonType> => {
  return new Set(alternatives(schema, root).flatMap((one) => (one.type as JsonType | undefined) ?? []));
});

/** The words that a schema lists, from `enum` or `const`. */
export function wordsOf(schema: Schema, root: Schema): readonly string[] {
  return alternatives(schema, root).flatMap((one) => {
    const listed = Array.isArray(one.enum) ? (one.enum as unknown[]) : [one.const];
    return listed.filter((word) => typeof word === 'string');
  });
}

/** What should stand there, in words, with an example: `a resistance with its spread, such as `1.7..2.3 Ω``. */
export function expectedIn(schema: Schema, root: Schema): string {
  const words = schema['x-expected'];
  const expected = typeof words === 'string' ? words : expectedByType(schema, root);
  const example = exampleIn(schema);
  return example === null || expected.includes('`') ? expected : `${expected}, such as \`${example}\``;
}

/** The first example of a schema as it is written; null: none that is short. */
export function exampleIn(schema: Schema): string | null {
  const [first] = Array.isArray(schema.examples) ? (schema.examples as unknown[]) : [];
  if (typeof first === 'string') return first;
  const items = Array.isArray(first) ? (first as unknown[]) : [];
  const simple =
    items.length > 0 && items.every((item) => typeof item === 'string' || typeof item === 'number');
  return simple ? `[${items.join(', ')}]` : null;
}

function expectedByType(schema: Schema, root: Schema): string {
  const types = typesOf(schema, root);
  const patterned = alternatives(schema, root).some(
    ({ pattern }) => typeof pattern === 'string' && pattern !== '\\S',
  );
  if (types.has('string')) return patterned ? 'an id' : 'text';
  if (types.has('object')) return 'keys with their values';
  if (types.has('array')) return 'a list';
  return 'a value';
}
