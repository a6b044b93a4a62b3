import { formsOf, isKindSection, measureForm, verbs, wiggleForm } from '../format/words.ts';
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
  const names = definitionsFor(section, beside);
  if (names.length === 0)
    return schemaAt(fileSchema, [section, entry === item ? 0 : entry, ...steps], fileSchema);
  const schemas = names.map(definitionSchema);
  const [only] = schemas;
  const schema: Schema = schemas.length === 1 && only !== undefined ? only : { anyOf: schemas };
  return schemaAt(schema, steps, fileSchema);
}

const networkKinds = ['part', 'connector', 'source'] as const;

/** Several where nothing says yet in which of its forms an entry is written; none: the kind is not known yet. */
function definitionsFor(section: string, beside: ReadonlyMap<string, string>): readonly DefinitionName[] {
  if (section === 'connectors') return ['connector'];
  if (section === 'loops') return ['loop'];
  if (section === 'entries') return ['entry'];
  if (section === 'network') {
    const kind = networkKinds.find((one) => beside.has(one));
    return kind === undefined ? [] : [`network-${kind}`];
  }
  if (section === 'steps') {
    const verb = verbs.find((one) => beside.has(one));
    if (verb === undefined) return [];
    if (verb === 'measure') return [measureForm(beside.get('measure'))];
    if (verb === 'wiggle') {
      const form = wiggleForm((key) => beside.has(key));
      return form === null ? ['step-wiggle', 'step-wiggle-measured'] : [form];
    }
    return verb === 'read' && beside.get('read')?.startsWith('[') === true
      ? ['step-read-several']
      : [`step-${verb}`];
  }
  if (!isKindSection(section)) return [];
  const forms = formsOf(section, beside.get('kind') ?? '');
  const form = forms.find(({ keys }) => keys.some((key) => beside.has(key)));
  return form === undefined ? forms.map(({ definition }) => definition) : [form.definition];
}
