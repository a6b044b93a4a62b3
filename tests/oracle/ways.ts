import type { Id, Loop, Procedure, Step } from '../../server/src/model/procedure.ts';
import { sideOhms } from './on-track.ts';
import type { OnTrack } from './on-track.ts';
import { ohmsOf } from './resistance.ts';
import { rungs } from './values.ts';
import type { Interval } from './values.ts';
import { same } from './world.ts';
import type { World } from './world.ts';

/* All that conducts on a bench, in loops and in the network, as ways between points. */

export type Measuring = Extract<Step, { readonly verb: 'measure' }>;

/** Whether the instrument drives a current of its own. */
export const sendsCurrent = ({ quantity }: Measuring): boolean =>
  quantity === 'resistance' || quantity === 'insulation';

/** What leads from one point to another. */
export interface Way {
  readonly a: string;
  readonly b: string;
  /** null: not known. */
  readonly ohms: Interval | null;
  readonly thing: Id | null;
  readonly monitor: Id | null;
  readonly source: Id | null;
  /** That it is drawn in; null: in the network. */
  readonly loop: Id | null;
  /** A load or a closed bar, across the pins of its connector. */
  readonly isRung?: true;
  /** One side of the wiper of a potentiometer. */
  readonly onTrack?: OnTrack;
}

export const plain = { ohms: { least: 0, most: 0 }, thing: null, monitor: null, source: null, loop: null };

const ohmsOfPart = (procedure: Procedure, id: Id): Interval | null =>
  ohmsOf(procedure, procedure.parts.get(id)?.resistance ?? null);

/** A loop as a ladder of named points; what a monitor is inside connects all of its terminals and ground. */
function waysOfLoop(procedure: Procedure, world: World, loop: Loop): Way[] {
  const { monitor, id: own } = loop;
  const ways: Way[] = [];
  let [one, other] = [`${loop.id}/1`, `${loop.id}/2`];
  if (monitor !== null)
    for (const at of [one, other]) ways.push({ ...plain, a: at, b: `in ${monitor}`, ohms: null, monitor });
  if (monitor !== null) ways.push({ ...plain, a: 'ground', b: `in ${monitor}`, ohms: null, monitor });
  for (const { kind, id } of loop.elements) {
    const ohms =
      kind === 'part' ? ohmsOfPart(procedure, id) : (procedure.connectors.get(id)?.contact ?? null);
    if (kind === 'part' && procedure.parts.get(id)?.form === 'end') {
      ways.push({ ...plain, a: one, b: other, ohms, thing: id, loop: own });
      continue;
    }
    const [pin, pin2] = loop.pins.get(id) ?? ['1', '2'];
    const far =
      kind === 'part'
        ? [`${loop.id}/${id}/1`, `${loop.id}/${id}/2`]
        : [`${id}.end.${pin}`, `${id}.end.${pin2}`];
    const near = kind === 'part' ? [one, other] : [`${id}.monitor.${pin}`, `${id}.monitor.${pin2}`];
    if (kind === 'connector') {
      ways.push({ ...plain, a: one, b: near[0] ?? '' }, { ...plain, a: other, b: near[1] ?? '' });
      for (const [side, ends] of [
        ['monitor', near],
        ['end', far],
      ] as const)
        ways.push(
          ...(rungs(procedure, world, loop, id, side) ?? []).map((rung) => ({
            ...plain,
            a: ends[0] ?? '',
            b: ends[1] ?? '',
            ohms: rung,
            thing: id,
            isRung: true as const,
          })),
        );
    }
    if (kind === 'part' || world.connectors[id] !== 'unplugged')
      for (const at of [0, 1])
        ways.push({ ...plain, a: near[at] ?? '', b: far[at] ?? '', ohms, thing: id, loop: own });
    [one, other] = [far[0] ?? '', far[1] ?? ''];
  }
  return ways;
}

export function isOn({ regulated }: Procedure, world: World, source: Id): boolean {
  const supply = regulated.get(source);
  if (supply === undefined) return world.connected[source] === true;
  return world.connected[supply.from ?? ''] === true && (!supply.needsIgnition || world.ignition);
}

/** Both sides of a wiper, and what leads from the track to where the wiper is connected. */
function waysOfTrack(
  { parts }: Procedure,
  id: Id,
  [first, wiper, second]: readonly [string, string, string],
): Way[] {
  const { resistance, wiper: place = null } = parts.get(id) ?? {};
  const at = `on ${id}`;
  const side = (end: 'first' | 'second', a: string): Way => {
    if (resistance?.kind !== 'stated' || place === null) return { ...plain, a, b: at, ohms: null, thing: id };
    const onTrack = { id, end, track: resistance.resistance, place };
    return { ...plain, a, b: at, ohms: sideOhms(onTrack), thing: id, onTrack };
  };
  return [side('first', first), side('second', second), { ...plain, a: at, b: wiper, thing: id }];
}

function waysOfNetwork(procedure: Procedure, world: World): Way[] {
  return procedure.network.elements.flatMap((element): Way[] => {
    const { id } = element;
    const [a, b, third] = element.between;
    if (third !== undefined) return waysOfTrack(procedure, id, [a, b, third]);
    if (element.kind === 'part') return [{ ...plain, a, b, ohms: ohmsOfPart(procedure, id), thing: id }];
    if (element.kind !== 'connector')
      return isOn(procedure, world, id) ? [{ ...plain, a, b, source: id }] : [];
    const connector = procedure.connectors.get(id);
    const [first, second] = connector?.sides ?? ['', ''];
    const ohms = connector?.contact ?? null;
    const [near, far] = [`${id}.${first}.${element.pin}`, `${id}.${second}.${element.pin}`];
    return [
      { ...plain, a, b: near },
      { ...plain, a: far, b },
      ...(world.connectors[id] === 'unplugged' ? [] : [{ ...plain, a: near, b: far, ohms, thing: id }]),
    ];
  });
}

export function allWays(procedure: Procedure, world: World): Way[] {
  const ofLoops = [...procedure.loops.values()].flatMap((loop) => waysOfLoop(procedure, world, loop));
  return [...ofLoops, ...waysOfNetwork(procedure, world)];
}

/** Where the probes are; the terminals of connectors that lead nowhere are points too. */
export function pointsOf({ across }: Measuring): [string, string] {
  const [one, other] = across.map((probe) =>
    'node' in probe ? probe.node : `${probe.connector}.${probe.side}.${probe.pin}`,
  );
  return [one ?? '', other ?? ''];
}

/** All ways that lie on a simple path between two points. */
export function between(ways: readonly Way[], from: string, to: string): ReadonlySet<Way> {
  const found = new Set<Way>();
  const follow = (at: string, passed: ReadonlySet<string>, way: readonly Way[]): void => {
    if (at === to) {
      for (const one of way) found.add(one);
      return;
    }
    for (const one of ways) {
      const next = one.a === at ? one.b : one.b === at ? one.a : null;
      if (next !== null && !passed.has(next)) follow(next, new Set([...passed, next]), [...way, one]);
    }
  };
  follow(from, new Set([from]), []);
  return found;
}

/** Everything that hangs together with a point, by what conducts on the bench. */
export function hangingOn(ways: readonly Way[], from: string): ReadonlySet<string> {
  const reached = new Set([from]);
  for (let grown = true; grown;) {
    grown = false;
    for (const { a, b, monitor } of ways)
      if (monitor === null && reached.has(a) !== reached.has(b)) {
        reached.add(a).add(b);
        grown = true;
      }
  }
  return reached;
}

/** Everything mated, no load fitted, nothing under power. */
export function asBuilt(world: World): World {
  return {
    ...world,
    ignition: false,
    connected: same(Object.keys(world.connected), false),
    connectors: same(Object.keys(world.connectors), 'mated'),
    loads: same(Object.keys(world.loads), null),
  };
}

export function joinedBySources({ network }: Procedure): Way[] {
  return network.elements.flatMap(({ kind, between: [a, b] }): Way[] =>
    kind === 'source' ? [{ ...plain, a, b }] : [],
  );
}
