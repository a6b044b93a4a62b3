import type { Schema } from '../format/walker.ts';
import { described, markdown } from './markdown.ts';
import type { Markdown } from './markdown.ts';

/** What the format says of a key, with an example. */
export function describeKey(schema: Schema | null, key: string): readonly Markdown[] {
  const description = schema?.description;
  if (schema === null || typeof description !== 'string') return [];
  const [example] = Array.isArray(schema.examples) ? (schema.examples as unknown[]) : [];
  const shown = typeof example === 'string' || typeof example === 'number' || typeof example === 'boolean';
  return [
    markdown`**${key}**: ${described(description)}`,
    ...(shown ? [described(`\`${key}: ${example}\``)] : []),
  ];
}
