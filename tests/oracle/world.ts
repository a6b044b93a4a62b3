import { netPieces } from './network.ts';
import type { Id, Loop, Place, Procedure, Source } from '../../server/src/model/procedure.ts';

/* The whole bench in one state, and the plain facts about circuits that do not change on the way. */

export type Mating = 'mated' | 'unlocked' | 'unplugged';

export interface World {
  readonly ignition: boolean;
  readonly connected: Readonly<Record<Id, boolean>>;
  /** Seconds still owed, by live loop and by carried source. */
  readonly owed: Readonly<Record<Id, number>>;
  /** High-voltage sources shown to be dead since they were last on, with the points that hung together where it was shown. */
  readonly proven: Readonly<Record<Id, readonly string[]>>;
  /** Seconds that each source still owes by itself. */
  readonly sourceOwed: Readonly<Record<Id, number>>;
  /** Seconds of its stated after-run that each supply still has. */
  readonly afterRun: Readonly<Record<Id, number>>;
  /** By point, of what is charged. */
  readonly charges: Readonly<Record<string, Charge>>;
  /** The same by sources above 30 V alone, high voltage left out: what still makes an arc. */
  readonly arcs: Readonly<Record<string, Charge>>;
  /** By point, what an insulation tester left there: the seconds until it is gone, where waiting is enough. */
  readonly tested: Readonly<Record<string, number | 'until proven'>>;
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
  /** Stages and high-voltage sources that hands have come near, and `id back` of those that came back. */
  readonly met: readonly Id[];
}

/** What a point holds after it was powered. */
export interface Charge {
  /** Seconds still to be waited. */
  readonly left: number;
  /** The greatest wait of all that powered it. */
  readonly whole: number;
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

/** All that a reading depends on, as text. */
export const seenOf = ({ ignition, connected, connectors, loads }: World): string =>
  JSON.stringify([ignition, connected, connectors, loads]);

/** Before anything has been powered. */
export function bare(procedure: Procedure): World {
  return {
    ignition: false,
    connected: same(procedure.sources.keys(), true),
    owed: Object.fromEntries(dangers(procedure).map((danger) => [danger.id, wholeWait(danger)])),
    proven: {},
    sourceOwed: {},
    afterRun: {},
    charges: {},
    arcs: {},
    tested: {},
    excuses: [],
    connectors: same(procedure.connectors.keys(), 'mated'),
    loads: same(procedure.loads.keys(), null),
    stored: same(procedure.monitors.keys(), true),
    recorded: same(procedure.monitors.keys(), false),
    pending: [],
    opened: [],
    met: [],
  };
}

export const allLoops = (procedure: Procedure): Loop[] => [...procedure.loops.values()];

/** Loops that have the connector or part in their path. */
export const loopsThrough = (procedure: Procedure, id: Id): Loop[] =>
  allLoops(procedure).filter((loop) => loop.elements.some((element) => element.id === id));

export const isLive = (procedure: Procedure, loop: Loop): boolean =>
  loop.elements.some((element) => procedure.parts.get(element.id)?.live === true);

const isHigh = ({ kind }: Source): boolean => kind === 'high-voltage';

export const liveLoops = (procedure: Procedure): Loop[] =>
  allLoops(procedure).filter((loop) => isLive(procedure, loop));

/** The sources that feed a loop: by its monitor, or by something that stands in it. */
export const feedersOf = (procedure: Procedure, loop: Loop): Source[] =>
  [...procedure.sources.values()].filter((source) =>
    source.feeds.some((fed) => fed === loop.monitor || loop.elements.some((element) => element.id === fed)),
  );

export const feedersOfMonitor = (procedure: Procedure, monitor: Id): Source[] =>
  [...procedure.sources.values()].filter((source) => source.feeds.includes(monitor));

/** What has to be dead before hands come near. */
export interface Danger {
  /** A loop or a piece of the network that is live or has high voltage, or a source that a connector carries or isolates. */
  readonly id: Id;
  readonly loop: Loop | null;
  readonly feeders: readonly Source[];
  /** Connectors that must not stand open while it is under power. */
  readonly connectors: readonly Id[];
  /** Of a piece of the network all that is in it. */
  readonly piece?: ReadonlySet<Id>;
}

/** The connector that is opened to take a source away. */
export const isolatorOf = (source: Source | undefined): Id | null =>
  source?.kind === 'high-voltage' ? source.isolatedBy : null;

export const isIsolator = (procedure: Procedure, connector: Id): boolean =>
  [...procedure.sources.values()].some((source) => isolatorOf(source) === connector);

/** Sources that hands on a connector are hands on, whatever its loops are fed by. */
export const carriedBy = (procedure: Procedure, connector: Id): Source[] =>
  [...procedure.sources.values()].filter(
    (source) =>
      isolatorOf(source) === connector || procedure.connectors.get(connector)?.carries.includes(source.id),
  );

export function dangers(procedure: Procedure): Danger[] {
  const loops = allLoops(procedure)
    .filter((loop) => isLive(procedure, loop) || feedersOf(procedure, loop).some(isHigh))
    .map((loop) => ({
      id: loop.id,
      loop,
      feeders: feedersOf(procedure, loop),
      connectors: connectorsOf(loop),
    }));
  const carried = [...procedure.sources.values()].flatMap((source) => {
    const through = [...procedure.connectors.keys()].filter((id) =>
      carriedBy(procedure, id).includes(source),
    );
    const connectors = through.filter((id) => id !== isolatorOf(source));
    return through.length === 0 ? [] : [{ id: source.id, loop: null, feeders: [source], connectors }];
  });
  const pieces = netPieces(procedure)
    .filter(({ live, feeders }) => live.length > 0 || feeders.some(isHigh))
    .map(({ id, members, connectors, feeders }) => ({ id, loop: null, feeders, connectors, piece: members }));
  return [...loops, ...pieces, ...carried];
}

/** Seconds until the source's reserve is below its safe voltage, in the worst case: V(t) = V0 exp(-t / RC). */
export function discharge(source: Source): number {
  if (source.reserve === null || source.reserve === 'unstated') return 0;
  const { bleed, capacitance, chargedTo, safeBelow } = source.reserve;
  if (chargedTo.most <= safeBelow.least) return 0;
  return bleed.most * capacitance.most * Math.log(chargedTo.most / safeBelow.least);
}

export function wholeWait({ feeders }: Danger): number {
  const each = feeders.map((source) =>
    Math.max(typeof source.wait === 'number' ? source.wait : 0, discharge(source)),
  );
  return Math.max(0, ...each);
}

export const isOff = (world: World, source: Source): boolean =>
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
