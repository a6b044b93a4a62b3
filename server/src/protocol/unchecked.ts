import { ErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Position, Range } from 'vscode-languageserver';

/* What comes from a client may have any shape, whatever its type says. */

/** What stands under a key. */
export function at(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null
    ? (value as Readonly<Record<string, unknown>>)[key]
    : undefined;
}

export function isPosition(value: unknown): value is Position {
  return [at(value, 'line'), at(value, 'character')].every(
    (number) => typeof number === 'number' && Number.isInteger(number) && number >= 0,
  );
}

export function isRange(value: unknown): value is Range {
  return isPosition(at(value, 'start')) && isPosition(at(value, 'end'));
}

/** Throws the answer of the protocol to a request that is about no place. */
export function checkPlace(place: Position | Range): void {
  if (!isPosition(place) && !isRange(place))
    throw new ResponseError(ErrorCodes.InvalidParams, 'Lines and characters are whole numbers from 0.');
}
