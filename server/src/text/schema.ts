import type { DefinitionName } from '../format/definitions.ts';
import type { Schema } from '../format/walker.ts';
import { partsFileKeys } from '../format/words.ts';
import file from '../../../schemas/procedure.schema.json';

/** The generated JSON Schema of a file: descriptions and examples for messages and hovers. */
export const fileSchema: Schema = file;

const named: Readonly<Record<string, Schema>> = file.$defs;

/** What a parts file may hold is described where a procedure holds it. */
const partsFileSchema: Schema = {
  ...fileSchema,
  required: ['format'],
  if: {},
  then: {},
  properties: Object.fromEntries(
    Object.entries(file.properties).filter(([key]) => partsFileKeys.includes(key)),
  ),
};

/** The schema of one definition. That of a shell is the file's own: only how deep it is looked at differs. */
export function definitionSchema(name: DefinitionName): Schema {
  if (name === 'shell') return fileSchema;
  return name === 'parts-shell' ? partsFileSchema : (named[name] ?? {});
}
