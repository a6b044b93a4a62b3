import type { Battery, Id, Loop, Place, Procedure } from '../../server/src/text/procedure.ts';

/* The whole bench in one state, and the plain facts about circuits that do not change on the way. */

export type Mating = 'mated' | 'unlocked' | 'unplugged';

export interface World {
  readonly ignition: boolean;
  readonly connected: Readonly<Record<Id, boolean>>;
  /** Seconds still owed, by live loop. */
  readonly owed: Readonly<Record<Id, number>>;
  /** Each a set of sources that count as safe after an unsafe touch. */
  readonly excuses: readonly (readonly Id[])[];
  readonly connectors: Readonly<Record<Id, Mating>>;
  readonly loads: Readonly<Record<Id, Place | null>>;
  /** Monitors whose memory holds codes. */
  readonly stored: Readonly<Record<Id, boolean>>;
  /** Monitors whose codes were written down. */
  readonly recorded: Readonly<Record<Id, boolean>>;
  /** Replaced and not verified. */
  readonly pending: readonly Id[];
  /** Loops with a connector that was opened and no verifying reading since. */
  readonly opened: readonly Id[];
}

/** What is wrong with a step on a bench. */
export interface Wrong {
  readonly rule: string;
  readonly subject: Id | null;
  /** A live loop open or loaded under power at an end: an error at any end, named in `leaves` or not. */
  readonly grave?: true;
}

export function same<T>(ids: Iterable<Id>, value: T): Record<Id, T> {
  return Object.fromEntries([...ids].map((id) => [id, value]));
}

export function start(procedure: Procedure): World {
  return {
    ignition: false,
    connected: same(procedure.sources.keys(), true),
    owed: Object.fromEntries(liveLoops(procedure).map((loop) => [loop.id, wholeWait(procedure, loop)])),
    excuses: [],
    connectors: same(procedure.connectors.keys(), 'mated'),
    loads: same(procedure.loads.keys(), null),
    stored: same(procedure.monitors.keys(), true),
    recorded: same(procedure.monitors.keys(), false),
    pending: [],
    opened: [],
  };
}

export const allLoops = (procedure: Procedure): Loop[] => [...procedure.loops.values()];

/** Loops that have the connector or part in their path. */
export const loopsThrough = (procedure: Procedure, id: Id): Loop[] =>
  allLoops(procedure).filter((loop) => loop.elements.some((element) => element.id === id));

export const isLive = (procedure: Procedure, loop: Loop): boolean =>
  loop.elements.some((element) => procedure.parts.get(element.id)?.live === true);

export const liveLoops = (procedure: Procedure): Loop[] =>
  allLoops(procedure).filter((loop) => isLive(procedure, loop));

/** The sources that feed a loop: by its monitor, or by something that stands in it. */
export const feedersOf = (procedure: Procedure, loop: Loop): Battery[] =>
  [...procedure.sources.values()].filter((source) =>
    source.feeds.some((fed) => fed === loop.monitor || loop.elements.some((element) => element.id === fed)),
  );

export const feedersOfMonitor = (procedure: Procedure, monitor: Id): Battery[] =>
  [...procedure.sources.values()].filter((source) => source.feeds.includes(monitor));

/** Seconds until the source's reserve is below its safe voltage, in the worst case: V(t) = V0 exp(-t / RC). */
function discharge(source: Battery): number {
  if (source.reserve === null || source.reserve === 'unstated') return 0;
  const { bleed, capacitance, chargedTo, safeBelow } = source.reserve;
  if (chargedTo.most <= safeBelow.least) return 0;
  return bleed.most * capacitance.most * Math.log(chargedTo.most / safeBelow.least);
}

export function wholeWait(procedure: Procedure, loop: Loop): number {
  const each = feedersOf(procedure, loop).map((source) =>
    Math.max(typeof source.wait === 'number' ? source.wait : 0, discharge(source)),
  );
  return Math.max(0, ...each);
}

export const isOff = (world: World, source: Battery): boolean =>
  !world.ignition && world.connected[source.id] === false;

export const isPowered = (procedure: Procedure, world: World, monitor: Id): boolean =>
  world.ignition &&
  feedersOfMonitor(procedure, monitor).some((source) => world.connected[source.id] === true);

export const connectorsOf = (loop: Loop): Id[] =>
  loop.elements.filter((element) => element.kind === 'connector').map((element) => element.id);

export const openConnectors = (world: World, loop: Loop): Id[] =>
  connectorsOf(loop).filter((id) => world.connectors[id] !== 'mated');

export const loadsIn = (world: World, loop: Loop): Id[] =>
  Object.keys(world.loads).filter((id) => world.loads[id]?.loop === loop.id);

export const loadsAt = (world: World, connector: Id): Id[] =>
  Object.keys(world.loads).filter((id) => world.loads[id]?.connector === connector);
