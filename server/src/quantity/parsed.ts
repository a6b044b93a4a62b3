import type { Problem, Stretch } from './scan.ts';

/**
 * What a quantity says, or why it cannot be read: a sentence, and the characters it is about, in UTF-16 units of the
 * given text. `from` is less than `to` unless the text is empty.
 */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string; readonly from: number; readonly to: number };

export type Failed = Extract<Parsed<never>, { ok: false }>;

export function parsed<T>(value: T): Parsed<T> {
  return { ok: true, value };
}

export function failed(message: string, { from, to }: Stretch): Failed {
  return { ok: false, message, from, to };
}

export function failedBy({ message, from, to }: Problem): Failed {
  return { ok: false, message, from, to };
}
