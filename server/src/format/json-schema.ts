import * as z from 'zod';
import { procedure, shell } from './procedure.ts';

export type JsonObject = Readonly<Record<string, unknown>>;

/** The name by which the schema is known; no address, nothing is fetched. */
export const schemaId = 'https://ohmwright.invalid/schemas/procedure.schema.json';

/** The JSON Schema (draft 2020-12) of what an author writes. */
export function procedureSchema(): JsonObject {
  const { $schema, ...rest } = z.toJSONSchema(procedure, { target: 'draft-2020-12', io: 'input' });
  return {
    $schema,
    $id: schemaId,
    title: 'Ohmwright test procedure, format 1',
    description: 'A test procedure for airbag and other low-resistance circuits.',
    ...rest,
  };
}

/** The same with the entries left open. */
export function shellSchema(): JsonObject {
  return z.toJSONSchema(shell, { target: 'draft-2020-12', io: 'input' });
}
