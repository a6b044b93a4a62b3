import type { Section } from '../format/words.ts';
import type { Assembly, Id, Loop, Network, Routine, Source } from '../model/procedure.ts';
import type { LoopElements } from './read-loops.ts';
import type { Reader } from './reader.ts';
import type { MapNode } from './tree.ts';
import type { Path } from '../model/where.ts';

/** What steps act on, as far as it could be read. */
export interface Circuit extends LoopElements {
  readonly sources: ReadonlyMap<Id, Source>;
  readonly loads: ReadonlyMap<Id, unknown>;
  readonly assemblies: ReadonlyMap<Id, Assembly>;
  readonly loops: ReadonlyMap<Id, Loop>;
  readonly network: Network;
  readonly routines: ReadonlyMap<Id, Routine>;
}

/** The same, and the list that the step stands in. */
export interface Bench extends Circuit {
  readonly stepCount: number;
  /** The index of the step that an item of the written list is. */
  readonly stepAt: (item: number) => number | null;
}

/** What an action is read with. */
export interface ActionReader {
  readonly reader: Reader;
  readonly bench: Bench;
  readonly item: MapNode;
  readonly path: Path;
  /** Of this step in the procedure. */
  readonly index: number;
}

export function entriesOf(section: Section, bench: Circuit): ReadonlyMap<Id, unknown> {
  switch (section) {
    case 'sources':
      return bench.sources;
    case 'instruments':
      return new Map<Id, unknown>([...bench.monitors, ...bench.multimeters]);
    case 'loads':
      return bench.loads;
    case 'parts':
      return bench.parts;
    case 'connectors':
      return bench.connectors;
    case 'assemblies':
      return bench.assemblies;
    case 'loops':
      return bench.loops;
    case 'entries':
      // No step acts on one.
      return new Map();
  }
}
