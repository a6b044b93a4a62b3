import { properties } from '../format/walker.ts';
import type { Schema } from '../format/walker.ts';
import type { CursorPlace } from '../text/cursor.ts';
import { fileSchema } from '../text/schema.ts';
import { literal, place as fillIn, twoOutcomes } from './completion-places.ts';

/** The examples of the format, as they are written in a file; none of a whole section, which is no place to start from. */
export function writtenExamples(schema: Schema, place: CursorPlace): readonly string[] {
  const listed = Array.isArray(schema.examples) ? (schema.examples as unknown[]) : [];
  const isSection = place.path.length === 0 && (place.key === 'steps' || isOpen(schema));
  return isSection ? [] : listed.map((example) => written(example, place.inFlow));
}

function isOpen(schema: Schema): boolean {
  return properties(schema, fileSchema).size === 0 && schema.additionalProperties !== undefined;
}

/** Two outcomes of those that are known: the first, and the rest where there is a word for it. */
export function outcomesWithPlaces(names: readonly string[], steps: readonly string[]): string {
  const [first = 'within', second = 'else'] = names;
  return twoOutcomes(first, names.includes('else') ? 'else' : second, 1, steps);
}

/** The connectors of a loop, of which the pins can be told. */
export function connectorsOnPath(
  entry: ReadonlyMap<string, string>,
  connectors: readonly string[],
): readonly string[] {
  const path = new Set((entry.get('path') ?? '').split(/[^A-Za-z0-9-]+/));
  const standing = connectors.filter((id) => path.has(id));
  return standing.length === 0 ? connectors : standing;
}

/** `{ K10: [1, 2], K21: [1, 2] }`, to be typed over. */
export function pinsWithPlaces(connectors: readonly string[]): string {
  const pins = connectors.map(
    (id, at) => `${literal(id)}: [${fillIn(2 * at + 1, '1')}, ${fillIn(2 * at + 2, '2')}]`,
  );
  return `{ ${pins.join(', ')} }`;
}

function written(example: unknown, inFlow: boolean): string {
  if (Array.isArray(example)) return `[${example.map((one) => written(one, true)).join(', ')}]`;
  if (typeof example === 'object' && example !== null) {
    const entries = Object.entries(example).map(([key, value]) => `${key}: ${written(value, true)}`);
    return `{ ${entries.join(', ')} }`;
  }
  const text = String(example);
  const needsQuotes =
    typeof example === 'string' && (/: | #|:$/.test(text) || (inFlow && /[,[\]{}]/.test(text)));
  return needsQuotes ? JSON.stringify(text) : text;
}
