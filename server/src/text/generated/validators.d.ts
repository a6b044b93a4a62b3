import type { DefinitionName } from '../../format/definitions.ts';

/** An error as ajv's compiled code leaves it on the validator. */
export interface ValidationError {
  readonly keyword: string;
  readonly instancePath: string;
  readonly schemaPath: string;
  /** Set on what went wrong inside `propertyNames`. */
  readonly propertyName?: string;
  readonly params: Readonly<Record<string, unknown>>;
}

export interface Validator {
  (data: unknown): boolean;
  errors?: readonly ValidationError[] | null;
}

export declare const validators: Readonly<Record<DefinitionName, Validator>>;
