import * as z from 'zod';
import { partsFile, partsShell, procedure, routineShell, shell } from './procedure.ts';
import { neededSections } from './words.ts';

export type JsonObject = Readonly<Record<string, unknown>>;

/** The name by which the schema is known; no address, nothing is fetched. */
export const schemaId = 'https://ohmwright.invalid/schemas/procedure.schema.json';

export const partsSchemaId = 'https://ohmwright.invalid/schemas/parts.schema.json';

/** The JSON Schema (draft 2020-12) of a procedure file. Without `uses` it has to hold all that a procedure needs. */
export function procedureSchema(): JsonObject {
  return {
    ...written(procedure, schemaId, 'Ohmwright test procedure, format 1'),
    description: 'A test procedure for airbag and other low-resistance circuits.',
    if: { not: { required: ['uses'] } },
    then: { required: [...neededSections], anyOf: [{ required: ['loops'] }, { required: ['network'] }] },
  };
}

/** The JSON Schema (draft 2020-12) of a parts file. */
export function partsSchema(): JsonObject {
  return {
    ...written(partsFile, partsSchemaId, 'Ohmwright parts file, format 1'),
    description: 'Parts, connectors, routines and so on that several procedures share.',
  };
}

function written(schema: z.ZodType, $id: string, title: string): JsonObject {
  const { $schema, ...rest } = z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' });
  return { $schema, $id, title, ...rest };
}

/** What is checked with its entries or steps left open, by the name of the definition. */
export function shellSchemas(): Readonly<Record<'shell' | 'parts-shell' | 'routine', JsonObject>> {
  const of = (schema: z.ZodType): JsonObject =>
    z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' });
  return { shell: of(shell), 'parts-shell': of(partsShell), routine: of(routineShell) };
}
