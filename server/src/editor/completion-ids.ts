import { connectorsOf } from '../bench/circuits.ts';
import { idPattern } from '../format/ids.ts';
import { isVerb, quantities } from '../format/words.ts';
import type { Section, Verb } from '../format/words.ts';
import type { CursorPlace } from '../text/cursor.ts';
import { targetsOfGood } from '../model/good-outcomes.ts';
import type { Names } from '../text/names.ts';
import type { Id, Loop, Procedure } from '../model/procedure.ts';
import { printable } from '../model/printable.ts';
import { namedNodes } from '../text/read-network.ts';
import { idsOfKind } from './completion-kinds.ts';
import { describeId } from './hover-id.ts';

/** A word that fits, with what it is. */
export interface Word {
  readonly word: string;
  readonly detail?: string;
}

/** The ids of each section, also of entries that cannot be read yet, those of routines and of the steps. */
export type KnownIds = Readonly<Record<Section | 'routines' | 'steps', readonly Id[]>>;

export function knownIds({ things, routines, steps }: Names): KnownIds {
  const inSection = (wanted: Section): readonly Id[] =>
    things.idsIn(wanted).filter((id) => idPattern.test(id));
  return {
    sources: inSection('sources'),
    entries: inSection('entries'),
    instruments: inSection('instruments'),
    loads: inSection('loads'),
    parts: inSection('parts'),
    connectors: inSection('connectors'),
    assemblies: inSection('assemblies'),
    loops: inSection('loops'),
    routines: [...routines].filter((id) => idPattern.test(id)),
    steps: [...steps.keys()].filter((id) => idPattern.test(id)),
  };
}

/** The words that fit where the cursor stands, as the value of `key` or in a list of it; null: no ids stand there. */
export function idsThatFit(procedure: Procedure, ids: KnownIds, place: CursorPlace): readonly Word[] | null {
  const [section] = place.path;
  const key = place.part === 'item' ? (place.path.findLast((step) => step !== '#') ?? '') : place.key;
  const fitting = ((): readonly Word[] | null => {
    if (section === 'sources' && key === 'feeds')
      return described(procedure, [...idsOfKind(procedure, ids).monitors, ...ids.parts, ...ids.connectors]);
    if (section === 'sources' && key === 'isolated-by') return described(procedure, ids.connectors);
    if (section === 'connectors' && key === 'carries') return described(procedure, ids.sources);
    if (section === 'parts' && key === 'temperature' && ids.entries.length > 0)
      return described(procedure, ids.entries);
    if (section === 'loops' && key === 'path') return described(procedure, onPath(procedure, ids, place));
    if (section === 'connectors' && key === 'side') return sidesOfBar(procedure, place);
    if (section === 'network') return inNetwork(procedure, ids, key);
    if (section === 'assemblies') return described(procedure, [...ids.parts, ...ids.connectors]);
    return section === 'steps' ? withNeeds(procedure, place, key, inStep(procedure, ids, place, key)) : null;
  })();
  const taken = new Set(place.items);
  return fitting?.filter(({ word }) => !taken.has(word)) ?? null;
}

/** What an element of the network is, and the nodes that are named already. */
function inNetwork(procedure: Procedure, ids: KnownIds, key: string): readonly Word[] | null {
  switch (key) {
    case 'part':
      return described(procedure, ids.parts);
    case 'connector':
      return described(procedure, ids.connectors);
    case 'source':
      return described(procedure, ids.sources);
    case 'between':
      return nodesOf(procedure);
    default:
      return null;
  }
}

function nodesOf({ network }: Procedure): readonly Word[] {
  const nodes = [...namedNodes(network)].filter((node) => node !== 'ground');
  return [
    ...nodes.map((word) => ({ word, detail: 'node' })),
    { word: 'ground', detail: 'the node of that name' },
  ];
}

/** The sides of the connector whose bar is being written. */
function sidesOfBar({ connectors }: Procedure, { path }: CursorPlace): readonly Word[] {
  const sides = connectors.get(path[1] ?? '')?.sides ?? usualSides;
  return sides.map((word) => ({ word, detail: 'a side of the connector' }));
}

/** In a routine also the names that it needs, where ids of a step cannot stand. */
function withNeeds(
  procedure: Procedure,
  { routine, path }: CursorPlace,
  key: string,
  words: readonly Word[] | null,
): readonly Word[] | null {
  const needs = procedure.routines.get(routine ?? '')?.needs;
  if (words === null || needs === undefined || key === 'go' || key === 'run' || path.includes('outcomes'))
    return words;
  return [...[...needs].map(([word, kind]) => ({ word, detail: `given: ${kind}` })), ...words];
}

function inStep(
  procedure: Procedure,
  ids: KnownIds,
  place: CursorPlace,
  key: string,
): readonly Word[] | null {
  const { path, entry, part } = place;
  if (path.includes('given')) return ofNeed(procedure, ids, entry.get('run') ?? '', key);
  if (path.includes('outcomes')) {
    if (part !== 'value' || (path.at(-1) === 'outcomes' && ids.loops.includes(key))) return null;
    return [{ word: 'next', detail: 'the step that follows' }, ...described(procedure, ids.steps)];
  }
  return isVerb(key) ? behindVerb(procedure, ids, place, key) : besideVerb(procedure, ids, place, key);
}

function touchable(procedure: Procedure, ids: KnownIds): readonly Word[] {
  const { monitors } = idsOfKind(procedure, ids);
  return described(procedure, [...ids.parts, ...ids.connectors, ...monitors, ...ids.assemblies]);
}

/** It stands by itself, and not in a list. */
function nothing(part: CursorPlace['part']): readonly Word[] {
  return part === 'item' ? [] : [{ word: 'nothing', detail: 'hands touch no connector and no wire' }];
}

/** What can be looked at, hands or not. */
function visible(procedure: Procedure, ids: KnownIds): readonly Word[] {
  const { multimeters, takenAway } = idsOfKind(procedure, ids);
  return [
    ...touchable(procedure, ids),
    ...described(procedure, [...ids.loads, ...takenAway, ...multimeters]),
  ];
}

function behindVerb(
  procedure: Procedure,
  ids: KnownIds,
  { part }: CursorPlace,
  verb: Verb,
): readonly Word[] | null {
  const { monitors, highVoltage, takenAway, unplugged } = idsOfKind(procedure, ids);
  switch (verb) {
    case 'disconnect':
    case 'reconnect':
      return described(procedure, takenAway);
    case 'unlock':
    case 'unplug':
    case 'plug':
      return described(procedure, unplugged);
    case 'fit':
    case 'remove':
    case 'move':
      return described(procedure, ids.loads);
    case 'read':
      return described(procedure, ids.loops);
    case 'read-codes':
    case 'clear-codes':
      return described(procedure, monitors);
    case 'prove-dead':
      return described(procedure, highVoltage);
    case 'replace':
      return touchable(procedure, ids);
    case 'conclude':
      return [
        ...touchable(procedure, ids),
        ...(part === 'item' ? [] : [{ word: 'none', detail: 'nothing is at fault' }]),
      ];
    case 'wiggle':
      return described(procedure, [...ids.parts, ...ids.connectors, ...sidesOf(procedure, ids)]);
    case 'go':
      return described(procedure, ids.steps);
    case 'run':
      return described(procedure, ids.routines);
    case 'ignition':
    case 'wait':
    case 'measure':
    case 'inspect':
    case 'do':
    case 'stop':
      return null;
  }
}

function besideVerb(
  procedure: Procedure,
  ids: KnownIds,
  { entry, part }: CursorPlace,
  key: string,
): readonly Word[] | null {
  const { multimeters, batteries, unplugged } = idsOfKind(procedure, ids);
  const sides = (): readonly Word[] => described(procedure, sidesOf(procedure, ids));
  switch (key) {
    case 'loop':
      return described(procedure, loopsThrough(procedure, ids, entry.get('at') ?? entry.get('to') ?? ''));
    case 'watch':
      return described(procedure, ids.loops);
    case 'with':
      return described(procedure, metersFor(procedure, multimeters, entry));
    case 'known':
      return described(procedure, batteries);
    case 'to':
      return sides();
    case 'around':
      return described(procedure, ids.parts);
    case 'across':
      return [...(part === 'item' ? nodesOf(procedure) : []), ...sides()];
    case 'at':
      return entry.has('fit') || entry.has('prove-dead')
        ? sides()
        : [...nothing(part), ...touchable(procedure, ids), ...sides()];
    case 'of':
      return [...visible(procedure, ids), ...sides()];
    case 'leaves':
      return [
        ...described(procedure, [...ids.sources, ...unplugged, ...ids.loads]),
        { word: 'codes', detail: 'codes stay in the memory' },
        { word: 'repair', detail: 'something is not yet shown to be sound' },
      ];
    default:
      return null;
  }
}

/** The ids of steps that nothing good leads to, stops first: where a reading that is wrong can go on. */
export function whereWrongLeads({ steps }: Procedure, { steps: ids }: KnownIds): readonly Id[] {
  const good = targetsOfGood(steps);
  const spared = new Set(steps.flatMap(({ id, index }) => (id !== undefined && good.has(index) ? [id] : [])));
  const stops = new Set(steps.flatMap(({ id, verb }) => (id !== undefined && verb === 'stop' ? [id] : [])));
  const free = ids.filter((id) => !spared.has(id));
  return [...free.filter((id) => stops.has(id)), ...free.filter((id) => !stops.has(id))];
}

/** What can be given to a routine in the place of a name that it needs. */
function ofNeed(procedure: Procedure, ids: KnownIds, routine: Id, need: Id): readonly Word[] | null {
  const kind = procedure.routines.get(routine)?.needs.get(need);
  if (kind === undefined) return null;
  return described(procedure, kind === 'side' ? sidesOf(procedure, ids) : ids[`${kind}s`]);
}

/** First the monitor, then what is not on this path yet, up to an end part; one that closes another loop is left out. */
function onPath(procedure: Procedure, ids: KnownIds, { items, path }: CursorPlace): readonly Id[] {
  const { monitors } = idsOfKind(procedure, ids);
  const standing = new Set(items);
  if (!monitors.some((id) => standing.has(id))) {
    if (items.length === 0) return monitors;
    // The path is written from its other end.
    return [...monitors, ...ids.connectors, ...ids.parts];
  }
  const isEnd = (id: Id): boolean => procedure.parts.get(id)?.form === 'end';
  if (items.some(isEnd)) return ids.connectors.concat(ids.parts.filter((id) => !isEnd(id)));
  const others = [...procedure.loops.values()].filter(({ id }) => id !== path[1]);
  const taken = new Set(others.flatMap(({ elements }) => elements.map(({ id }) => id)));
  return [...ids.connectors, ...ids.parts.filter((id) => !isEnd(id) || !taken.has(id))];
}

/** Those that measure what the step does; one that cannot be read yet may. */
function metersFor(
  { multimeters }: Procedure,
  ids: readonly Id[],
  entry: CursorPlace['entry'],
): readonly Id[] {
  const written = entry.has('prove-dead') ? 'voltage' : (entry.get('measure') ?? entry.get('quantity'));
  const wanted = quantities.find((one) => one === written);
  if (wanted === undefined) return ids;
  return ids.filter((id) => {
    const meter = multimeters.get(id);
    return meter?.[wanted] !== null || (wanted === 'current' && meter.clamp !== null);
  });
}

const usualSides = ['monitor', 'end'] as const;

/** Both sides of every connector. First those where it is plain in which loop a load sits. */
export function sidesOf({ loops, connectors }: Procedure, ids: KnownIds): readonly string[] {
  const counts = new Map(ids.connectors.map((id) => [id, 0]));
  for (const id of [...loops.values()].flatMap(connectorsOf)) counts.set(id, (counts.get(id) ?? 0) + 1);
  const rank = (id: Id): number => {
    const count = counts.get(id) ?? 0;
    return count === 0 ? Infinity : count;
  };
  const inOrder = ids.connectors.toSorted((a, b) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b)));
  return inOrder.flatMap((id) => (connectors.get(id)?.sides ?? usualSides).map((side) => `${id}.${side}`));
}

/** The loops through the connector of a side; all where it is not known. */
function loopsThrough({ loops }: Procedure, ids: KnownIds, side: string): readonly Id[] {
  const [connector = ''] = side.split('.');
  const passes = (loop: Loop | undefined): boolean =>
    loop !== undefined && connectorsOf(loop).includes(connector);
  const through = ids.loops.filter((id) => passes(loops.get(id)));
  return through.length === 0 ? ids.loops : through;
}

function described(procedure: Procedure, ids: readonly Id[]): readonly Word[] {
  return ids.map((word) => {
    const detail = describeId(procedure, word);
    return detail === null ? { word } : { word, detail: printable(detail) };
  });
}
