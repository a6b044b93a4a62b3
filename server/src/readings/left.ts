import type { Watcher } from '../paths/explore.ts';
import { stateOf } from '../bench/hardware.ts';
import { isolatedBy } from '../bench/hazards.ts';
import type { Explorer } from '../paths/run.ts';
import { replacedIn } from '../bench/verification.ts';
import type { Work } from '../model/work.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import type { SharedWatchers } from './shared-watchers.ts';

export type LeftAs = 'disconnected' | 'unlocked' | 'unplugged' | 'fitted' | 'codes' | 'repair';

/** What a path can leave at a `stop`. */
export interface Left {
  /** Of the `stop`. */
  readonly index: number;
  readonly id: Id;
  readonly as: LeftAs;
  /** Whether every path to this stop leaves it so. */
  readonly always: boolean;
}

/** What the paths to each `stop` leave as it is. */
export function* whatIsLeft(
  procedure: Procedure,
  { graph, explore }: Explorer,
  watchers: SharedWatchers,
): Work<readonly Left[]> {
  const left: Left[] = [];
  const stops = [...graph.steps.entries()].flatMap(([index, { verb }]) => (verb === 'stop' ? [index] : []));
  if (stops.length === 0) return left;
  function* collect<S>(id: Id, watcher: Watcher<S>, as: (state: S) => LeftAs | null): Work<void> {
    const { around } = yield* explore(watcher);
    for (const index of stops) {
      const states = around(index).map(({ state }) => as(state));
      for (const one of new Set(states))
        if (one !== null) left.push({ index, id, as: one, always: states.every((other) => other === one) });
    }
  }
  for (const id of procedure.sources.keys())
    yield* collect(id, watchers.source(id), (connected) => (connected ? null : 'disconnected'));
  // Of a connector that takes a source away the source is told.
  for (const id of [...procedure.connectors.keys()].filter((one) => isolatedBy(procedure, one) === null))
    yield* collect(id, watchers.connector(id), ({ hardware }) => {
      const state = stateOf(hardware, id);
      return state === 'mated' ? null : state;
    });
  for (const id of procedure.loads.keys())
    yield* collect(id, watchers.load(id), ({ at }) => (at === null ? null : 'fitted'));
  for (const id of procedure.monitors.keys())
    for (const memory of watchers.memory(id))
      yield* collect(id, memory, ({ stored }) => (stored ? 'codes' : null));
  for (const id of replacedIn(procedure))
    yield* collect(id, watchers.repair(id), ({ pending }) => (pending ? 'repair' : null));
  for (const id of procedure.loops.keys()) {
    const opened = watchers.opened(id);
    if (opened !== null) yield* collect(id, opened, ({ pending }) => (pending ? 'repair' : null));
  }
  return merged(left);
}

/** A monitor's memory is watched by loop: what one of them leaves, the monitor leaves. */
function merged(left: readonly Left[]): readonly Left[] {
  const known = new Map<string, Left>();
  for (const one of left) {
    const key = `${one.index} ${one.id} ${one.as}`;
    known.set(key, { ...one, always: one.always || known.get(key)?.always === true });
  }
  return [...known.values()].sort((a, b) => a.index - b.index);
}
