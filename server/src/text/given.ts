import type { NeedKind } from '../format/procedure.ts';
import { isVerb } from '../format/words.ts';
import type { Verb } from '../format/words.ts';
import type { Id } from '../model/procedure.ts';
import { withEntries } from './tree.ts';
import type { Entry, MapNode, Node } from './tree.ts';

/** What stands for a name that a routine needs: an id, or a side of a connector. */
export interface Given {
  readonly kind: NeedKind;
  readonly text: string;
}

/** What a value names: an id or a place, or a list of them. `connector`: where a side is given, the connector of it. */
type Naming = 'as-given' | 'connector' | 'nothing';

const namedByVerb: Readonly<Record<Verb, Naming>> = {
  ignition: 'nothing',
  disconnect: 'as-given',
  reconnect: 'as-given',
  wait: 'nothing',
  'prove-dead': 'as-given',
  unlock: 'connector',
  unplug: 'connector',
  plug: 'connector',
  fit: 'as-given',
  remove: 'as-given',
  move: 'as-given',
  read: 'as-given',
  measure: 'nothing',
  wiggle: 'as-given',
  'read-codes': 'as-given',
  'clear-codes': 'as-given',
  inspect: 'nothing',
  do: 'nothing',
  replace: 'connector',
  conclude: 'connector',
  go: 'nothing',
  stop: 'nothing',
  run: 'nothing',
};

/** By key, of those that stand beside a verb. */
const namedBeside: ReadonlyMap<string, Naming> = new Map([
  ['known', 'as-given'],
  ['watch', 'as-given'],
  ['with', 'as-given'],
  ['across', 'as-given'],
  ['around', 'as-given'],
  ['in', 'as-given'],
  ['drawing', 'as-given'],
  ['at', 'as-given'],
  ['of', 'as-given'],
  ['to', 'as-given'],
  ['loop', 'as-given'],
  ['leaves', 'connector'],
]);

function namingOf(key: string): Naming {
  return isVerb(key) ? namedByVerb[key] : (namedBeside.get(key) ?? 'nothing');
}

/** A step of a routine with what is given in the place of the names that the routine needs. */
export function withGiven(step: MapNode, given: ReadonlyMap<Id, Given>): MapNode {
  if (given.size === 0) return step;
  const entries = step.entries.map((entry) => {
    const { key, value } = entry;
    const naming = namingOf(key);
    if (naming !== 'nothing') return { ...entry, value: replaced(value, given, naming === 'connector') };
    if (key === 'given' && value.kind === 'map')
      return {
        ...entry,
        value: mapped(value, (inner) => ({ ...inner, value: replaced(inner.value, given, false) })),
      };
    // Of a reading of several loops the outcomes stand below the names of the loops.
    if (key === 'outcomes' && value.kind === 'map' && step.byKey.get('read')?.value.kind === 'list')
      return {
        ...entry,
        value: mapped(value, (inner) => ({ ...inner, key: given.get(inner.key)?.text ?? inner.key })),
      };
    return entry;
  });
  return withEntries(step, entries);
}

function replaced(node: Node, given: ReadonlyMap<Id, Given>, connector: boolean): Node {
  if (node.kind === 'list')
    return { ...node, items: node.items.map((item) => replaced(item, given, connector)) };
  if (node.kind !== 'scalar') return node;
  const text = textFor(node.text, given, connector);
  return text === null ? node : { ...node, text, start: null };
}

/** `where`, `where.monitor`, `where.monitor.1`: the first word stands for something. */
function textFor(written: string, given: ReadonlyMap<Id, Given>, connector: boolean): string | null {
  const [name = '', ...rest] = written.split('.');
  const found = given.get(name);
  if (found === undefined) return null;
  const text = connector && found.kind === 'side' ? (found.text.split('.')[0] ?? '') : found.text;
  return [text, ...rest].join('.');
}

function mapped(map: MapNode, change: (entry: Entry) => Entry): MapNode {
  return withEntries(map, map.entries.map(change));
}
