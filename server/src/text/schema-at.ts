import { formsOf, isKindSection, measureForm, wiggleForm } from '../format/words.ts';
import type { DefinitionName } from '../format/definitions.ts';
import { schemaAt } from '../format/walker.ts';
import type { Schema } from '../format/walker.ts';
import { verbsIn } from './read-steps.ts';
import { listHolding } from './step-content.ts';
import { definitionSchema, fileSchema } from './schema.ts';
import { entryOf, nodeAt, textOf } from './tree.ts';
import type { Node } from './tree.ts';
import type { Path } from '../model/where.ts';

/** The schema of what stands at a path: that of a step is chosen by its verb, that of an entry by its kind. */
export function schemaOfPlace(root: Node | null, path: Path): Schema | null {
  const list = listHolding(path);
  if (list !== null) {
    const item = nodeAt(root, path.slice(0, list.length + 1));
    const definition = item === undefined ? null : stepDefinition(item);
    if (definition === null) return schemaAt(fileSchema, path, fileSchema);
    return schemaAt(definitionSchema(definition), path.slice(list.length + 1), fileSchema);
  }
  const [section, entry, ...rest] = path;
  if (section === undefined || entry === undefined) return schemaAt(fileSchema, path, fileSchema);
  const name = definitionAt(String(section), nodeAt(root, [section, entry]));
  if (name === null) return schemaAt(fileSchema, path, fileSchema);
  return schemaAt(definitionSchema(name), rest, fileSchema);
}

function definitionAt(section: string, item: Node | undefined): DefinitionName | null {
  if (section === 'connectors') return 'connector';
  if (section === 'loops') return 'loop';
  if (section === 'entries') return 'entry';
  const kind = textOf(entryOf(item, 'kind')?.value);
  if (kind === undefined || !isKindSection(section)) return null;
  const forms = formsOf(section, kind);
  const form = forms.find(({ keys }) => keys.some((key) => entryOf(item, key) !== undefined)) ?? forms[0];
  return form?.definition ?? null;
}

function stepDefinition(item: Node): DefinitionName | null {
  const [verb] = verbsIn(item);
  if (verb === undefined) return entryOf(item, 'section') === undefined ? null : 'section';
  if (verb === 'measure') return measureForm(textOf(entryOf(item, 'measure')?.value));
  if (verb === 'wiggle') return wiggleForm((key) => entryOf(item, key) !== undefined) ?? 'step-wiggle';
  if (verb === 'read' && entryOf(item, 'read')?.value.kind === 'list') return 'step-read-several';
  return `step-${verb}`;
}
