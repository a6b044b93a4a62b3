import type { Id, Loop, Procedure, Source, Step } from '../../server/src/text/procedure.ts';
import { rungs } from './values.ts';
import type { World, Wrong } from './world.ts';

/*
 * The network by brute force: circuits by merging what shares a node, and what a measurement meets by following every
 * simple path. Networks of the random procedures are small, and their connectors stand in no loop.
 */

type Measuring = Extract<Step, { readonly verb: 'measure' }>;

const isNode = (node: string): boolean => node !== 'ground';

/** A piece of the network with ground taken out: its elements' ids and its nodes. */
export interface NetPiece {
  /** Of its first node. */
  readonly id: Id;
  readonly members: ReadonlySet<Id>;
  readonly connectors: readonly Id[];
  readonly live: readonly Id[];
  readonly feeders: readonly Source[];
}

export function netPieces(procedure: Procedure): NetPiece[] {
  const groups = procedure.network.elements.map(({ between }) => ({ nodes: between.filter(isNode) }));
  for (let merged = true; merged;) {
    merged = false;
    for (const one of groups)
      for (const other of groups)
        if (one !== other && other.nodes.length > 0 && one.nodes.some((node) => other.nodes.includes(node))) {
          one.nodes.push(...other.nodes.splice(0));
          merged = true;
        }
  }
  return groups
    .filter(({ nodes }) => nodes.length > 0)
    .map(({ nodes }) => {
      const here = procedure.network.elements.filter(({ between }) =>
        between.some((node) => nodes.includes(node)),
      );
      const members = new Set([...here.map(({ id }) => id), ...nodes]);
      const supplied = [...procedure.regulated.values()]
        .filter(({ id }) => members.has(id))
        .map(({ from }) => from);
      return {
        id: here.flatMap(({ between }) => between.filter(isNode))[0] ?? '',
        members,
        connectors: [...new Set(here.flatMap(({ kind, id }) => (kind === 'connector' ? [id] : [])))],
        live: [...members].filter((id) => procedure.parts.get(id)?.live === true),
        feeders: [...procedure.sources.values()].filter(
          ({ id, feeds }) =>
            members.has(id) || supplied.includes(id) || feeds.some((fed) => members.has(fed)),
        ),
      };
    })
    .sort((a, b) => firstAt(procedure, a.id) - firstAt(procedure, b.id));
}

const firstAt = ({ network }: Procedure, node: Id): number =>
  network.elements.findIndex(({ between }) => between.includes(node));

/** What probes touch: connectors and nodes. */
export function probed({ across }: Measuring): Id[] {
  return [...new Set(across.map((probe) => ('node' in probe ? probe.node : probe.connector)))];
}

interface Way {
  readonly a: string;
  readonly b: string;
  readonly thing: Id | null;
  readonly monitor: Id | null;
  readonly source: Id | null;
}

const plain = { thing: null, monitor: null, source: null };

/** A loop as a ladder of named points; what a monitor is inside connects all of its terminals and ground. */
function waysOfLoop(procedure: Procedure, world: World, loop: Loop): Way[] {
  const { monitor } = loop;
  const ways: Way[] = [];
  let [one, other] = [`${loop.id}/1`, `${loop.id}/2`];
  if (monitor !== null)
    for (const at of [one, other]) ways.push({ ...plain, a: at, b: `in ${monitor}`, monitor });
  if (monitor !== null) ways.push({ ...plain, a: 'ground', b: `in ${monitor}`, monitor });
  for (const { kind, id } of loop.elements) {
    if (kind === 'part' && procedure.parts.get(id)?.form === 'end') {
      ways.push({ ...plain, a: one, b: other, thing: id });
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
          ...(rungs(procedure, world, loop, id, side) ?? []).map(() => ({
            ...plain,
            a: ends[0] ?? '',
            b: ends[1] ?? '',
            thing: id,
          })),
        );
    }
    if (kind === 'part' || world.connectors[id] !== 'unplugged')
      for (const at of [0, 1]) ways.push({ ...plain, a: near[at] ?? '', b: far[at] ?? '', thing: id });
    [one, other] = [far[0] ?? '', far[1] ?? ''];
  }
  return ways;
}

function isOn({ regulated }: Procedure, world: World, source: Id): boolean {
  const supply = regulated.get(source);
  if (supply === undefined) return world.connected[source] === true;
  return world.connected[supply.from ?? ''] === true && (!supply.needsIgnition || world.ignition);
}

function waysOfNetwork(procedure: Procedure, world: World): Way[] {
  return procedure.network.elements.flatMap((element): Way[] => {
    const { id } = element;
    const [a, b] = element.between;
    if (element.kind === 'part') return [{ ...plain, a, b, thing: id }];
    if (element.kind !== 'connector')
      return isOn(procedure, world, id) ? [{ ...plain, a, b, source: id }] : [];
    const [first, second] = procedure.connectors.get(id)?.sides ?? ['', ''];
    const [near, far] = [`${id}.${first}.${element.pin}`, `${id}.${second}.${element.pin}`];
    return [
      { ...plain, a, b: near },
      { ...plain, a: far, b },
      ...(world.connectors[id] === 'unplugged' ? [] : [{ ...plain, a: near, b: far, thing: id }]),
    ];
  });
}

function allWays(procedure: Procedure, world: World): Way[] {
  const ofLoops = [...procedure.loops.values()].flatMap((loop) => waysOfLoop(procedure, world, loop));
  return [...ofLoops, ...waysOfNetwork(procedure, world)];
}

/** Where the probes are; the terminals of connectors that lead nowhere are points too. */
function pointsOf({ across }: Measuring): [string, string] {
  const [one, other] = across.map((probe) =>
    'node' in probe ? probe.node : `${probe.connector}.${probe.side}.${probe.pin}`,
  );
  return [one ?? '', other ?? ''];
}

/** All ways that lie on a simple path between two points. */
function between(ways: readonly Way[], from: string, to: string): ReadonlySet<Way> {
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
function hangingOn(ways: readonly Way[], from: string): ReadonlySet<string> {
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

/** A live stage in the way of an ohmmeter, a monitor between the probes, a source that is on. */
export function measureWrongs(procedure: Procedure, world: World, step: Step): Wrong[] {
  if (step.verb !== 'measure') return [];
  const ways = allWays(procedure, world);
  const [from, to] = pointsOf(step);
  const met = between(ways, from, to);
  const wrongs: Wrong[] = [];
  const isOhms = step.quantity === 'resistance';
  const things = ways.filter((way) => met.has(way));
  const live = things.find(({ thing }) => thing !== null && procedure.parts.get(thing)?.live === true);
  if (isOhms && live !== undefined) wrongs.push({ rule: 'meter-across-live', subject: live.thing });
  // Ground alone connects nothing with a source.
  const apart = ways.filter(({ a, b }) => a !== 'ground' && b !== 'ground');
  const near = [from, to].filter(isNode).map((point) => hangingOn(apart, point));
  const isNear = (node: string): boolean => isNode(node) && near.some((points) => points.has(node));
  const powered =
    isOhms && ways.some((way) => way.source !== null && (met.has(way) || isNear(way.a) || isNear(way.b)));
  if (powered) return [...wrongs, { rule: 'impossible', subject: step.of }];
  const monitor = things.find((way) => way.monitor !== null);
  if (monitor !== undefined) wrongs.push({ rule: 'monitor-in-the-way', subject: monitor.monitor });
  return wrongs;
}

/** What a measurement of resistance shows to be sound, taken by `within`: all on a way between the probes as built. */
export function shownSound(procedure: Procedure, world: World, step: Step): readonly Id[] {
  if (step.verb !== 'measure' || step.quantity !== 'resistance') return [];
  const built: World = {
    ...world,
    ignition: false,
    connected: Object.fromEntries(Object.keys(world.connected).map((id) => [id, false])),
    connectors: Object.fromEntries(Object.keys(world.connectors).map((id) => [id, 'mated'])),
    loads: Object.fromEntries(Object.keys(world.loads).map((id) => [id, null])),
  };
  const ways = allWays(procedure, built);
  const [from, to] = pointsOf(step);
  // A source that is taken away still makes one thing of what stands on either side of it.
  const joined = procedure.network.elements.flatMap(({ kind, between: [a, b] }): Way[] =>
    kind === 'source' ? [{ ...plain, a, b }] : [],
  );
  const around = [from, to].map((point) => hangingOn([...ways, ...joined], point));
  const isAround = ({ a }: Way): boolean => around.some((points) => points.has(a));
  const here = ways.filter((way) => way.monitor === null && isAround(way));
  const connectors = here.flatMap(({ thing }) =>
    thing !== null && procedure.connectors.has(thing) ? [thing] : [],
  );
  const isOpen = connectors.some(
    (id) =>
      world.connectors[id] !== 'mated' || Object.values(world.loads).some((place) => place?.connector === id),
  );
  if (isOpen) return [];
  const met = between(ways, from, to);
  return [...met].flatMap(({ thing }) => thing ?? []);
}
