import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges, Conditions } from './conditions.ts';
import type { Network } from './network.ts';
import type { PartModel, SharedQuantity, Wiper } from './parts.ts';
import { dependenceOf } from './parts.ts';

/* Temperatures and wipers that parts share, each by a key: `ambient`, or `entry` or `wiper` and its id. */

const entry = 'entry ';
const wiper = 'wiper ';

export function keyOf(on: SharedQuantity): string {
  if (on === 'ambient') return on;
  return 'entry' in on ? `${entry}${on.entry}` : `${wiper}${on.wiper}`;
}

/** Which of the keys a part follows; -1: none of them. */
export function followedBy(part: PartModel, keys: readonly string[]): number {
  const dependence = dependenceOf(part);
  return dependence === null ? -1 : keys.indexOf(keyOf(dependence.on));
}

/** °C, or a part of the track. What is neither among the ranges nor in the network is not a number. */
export function rangeOf({ ambient, entered }: ConditionRanges, network: Network, key: string): Span {
  if (key === 'ambient') return ambient;
  const found = key.startsWith(entry)
    ? entered.get(key.slice(entry.length))
    : wipersIn(network).find(({ id }) => id === key.slice(wiper.length))?.place;
  return found ?? { least: NaN, nominal: NaN, most: NaN };
}

/** Each once. */
export function wipersIn(network: Network): readonly Wiper[] {
  const found = network.flatMap(({ part }) => (part.kind === 'track' ? [part.wiper] : []));
  return found.filter(({ id }, at) => found.findIndex((one) => one.id === id) === at);
}

/** The temperatures and wipers of the keys as given, all other temperatures at nominal. */
export function conditionsAt(
  { ambient, entered }: ConditionRanges,
  keys: readonly string[],
  at: readonly number[],
): Conditions {
  const given = new Map(keys.map((key, number) => [key, at[number] ?? NaN]));
  const wipers = [...given].flatMap(([key, place]) =>
    key.startsWith(wiper) ? [[key.slice(wiper.length), place] as const] : [],
  );
  return {
    ambient: given.get('ambient') ?? ambient.nominal,
    entered: new Map([...entered].map(([id, { nominal }]) => [id, given.get(entry + id) ?? nominal])),
    wipers: new Map(wipers),
  };
}
