import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges, Conditions } from './conditions.ts';
import type { PartModel } from './parts.ts';
import { dependenceOf } from './parts.ts';

/* Temperatures that parts share, each by a key: `ambient`, or `entry` and its id. */

const entry = 'entry ';

export function temperatureKey(on: 'ambient' | { readonly entry: string }): string {
  return on === 'ambient' ? on : `${entry}${on.entry}`;
}

/** Which of the keys a part follows; -1: none of them. */
export function followedBy(part: PartModel, keys: readonly string[]): number {
  const dependence = dependenceOf(part);
  return dependence === null ? -1 : keys.indexOf(temperatureKey(dependence.on));
}

/** °C. An entry that is not among the ranges is not a number. */
export function rangeOf({ ambient, entered }: ConditionRanges, key: string): Span {
  if (key === 'ambient') return ambient;
  return entered.get(key.slice(entry.length)) ?? { least: NaN, nominal: NaN, most: NaN };
}

/** The temperatures of the keys as given, all others at nominal. */
export function conditionsAt(
  { ambient, entered }: ConditionRanges,
  keys: readonly string[],
  at: readonly number[],
): Conditions {
  const given = new Map(keys.map((key, number) => [key, at[number]]));
  return {
    ambient: given.get('ambient') ?? ambient.nominal,
    entered: new Map([...entered].map(([id, { nominal }]) => [id, given.get(entry + id) ?? nominal])),
  };
}
