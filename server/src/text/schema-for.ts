import { definitions, kinds, verbs } from '../format/definitions.ts';
import type { DefinitionName } from '../format/definitions.ts';
import { schemaAt } from '../format/walker.ts';
import type { Schema } from '../format/walker.ts';
import { item } from './cursor.ts';
import { definitionSchema, fileSchema } from './schema.ts';

/**
 * The schema of the map or list at a path in which indices do not matter, for a text that is being typed. `beside` are
 * the keys of the entry, from which its verb or kind is known; null: the format knows nothing there.
 */
export function schemaForTyping(path: readonly string[], beside: ReadonlyMap<string, string>): Schema | null {
  const [section, entry, ...rest] = path;
  const steps = rest.map((step) => (step === item ? 0 : step));
  if (section === undefined || entry === undefined)
    return schemaAt(fileSchema, section === undefined ? [] : [section], fileSchema);
  const name = definitionFor(section, beside);
  if (name === 'cable' && rest.length === 0) return anyCable;
  if (name === null || name === 'cable')
    return schemaAt(fileSchema, [section, entry === item ? 0 : entry, ...steps], fileSchema);
  return schemaAt(definitionSchema(name), steps, fileSchema);
}

/** A cable of which nothing says yet how its resistance is stated. */
const anyCable: Schema = {
  anyOf: [definitionSchema('cable-by-size'), definitionSchema('cable-by-resistance')],
};

function definitionFor(
  section: string,
  beside: ReadonlyMap<string, string>,
): DefinitionName | 'cable' | null {
  if (section === 'connectors') return 'connector';
  if (section === 'loops') return 'loop';
  if (section === 'sources') return 'battery';
  if (section === 'instruments') return 'monitor';
  if (section === 'steps') {
    const verb = verbs.find((one) => beside.has(one));
    if (verb === undefined) return null;
    return verb === 'read' && beside.get('read')?.startsWith('[') === true
      ? 'step-read-several'
      : `step-${verb}`;
  }
  if (!Object.hasOwn(kinds, section)) return null;
  const kind = beside.get('kind') ?? '';
  if (section === 'parts' && kind === 'cable') {
    if (beside.has('resistance')) return 'cable-by-resistance';
    return beside.has('wire') || beside.has('length') ? 'cable-by-size' : 'cable';
  }
  const name = section === 'loads' ? `${kind}-load` : kind;
  return Object.hasOwn(definitions, name) ? (name as DefinitionName) : null;
}
