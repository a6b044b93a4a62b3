import type { DefinitionName } from '../format/definitions.ts';
import type { Schema } from '../format/walker.ts';
import file from '../../../schemas/procedure.schema.json';

/** The generated JSON Schema of a file: descriptions and examples for messages and hovers. */
export const fileSchema: Schema = file;

const named: Readonly<Record<string, Schema>> = file.$defs;

/** The schema of one definition. That of the shell is the file's own: only how deep it is looked at differs. */
export function definitionSchema(name: DefinitionName): Schema {
  return name === 'shell' ? fileSchema : (named[name] ?? {});
}
