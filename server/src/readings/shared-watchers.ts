import { remember } from '../bench/circuits.ts';
import type { Circuits } from '../bench/circuits.ts';
import type { Watcher } from '../paths/explore.ts';
import { connectorItem, poweredLoadItem, sourceItem } from '../bench/items.ts';
import type { PoweredConnector, PoweredLoad } from '../bench/items.ts';
import { openedLoopWatcher, repairWatcher } from '../bench/verification.ts';
import type { Unverified } from '../bench/verification.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import { memoryWatchers } from './code-memory.ts';
import type { Memory } from './code-memory.ts';
import { provesBy } from './proves.ts';
import type { Readings } from './reading.ts';

/** The automata of which both the rules and what is left at a stop ask, each made once so that it is explored once. */
export interface SharedWatchers {
  readonly source: (id: Id) => Watcher<boolean>;
  readonly connector: (id: Id) => Watcher<PoweredConnector>;
  readonly load: (id: Id) => Watcher<PoweredLoad>;
  readonly memory: (monitor: Id) => readonly Watcher<Memory>[];
  readonly repair: (id: Id) => Watcher<Unverified>;
  /** null: no such loop could be read. */
  readonly opened: (loop: Id) => Watcher<Unverified> | null;
}

export function sharedWatchers(procedure: Procedure, circuits: Circuits, readings: Readings): SharedWatchers {
  const proves = provesBy(procedure, readings);
  return {
    source: remember(sourceItem),
    connector: remember((id) => connectorItem(circuits, id)),
    load: remember((id) => poweredLoadItem(circuits, id)),
    memory: remember((id) => memoryWatchers(procedure, readings, id)),
    repair: remember((id) => repairWatcher(procedure, id, proves)),
    opened: remember((id) => {
      const loop = procedure.loops.get(id);
      return loop === undefined ? null : openedLoopWatcher(procedure, loop, proves);
    }),
  };
}
