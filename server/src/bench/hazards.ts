import type { Id, Place, Probed, Procedure, Source } from '../model/procedure.ts';
import { isolatorOf } from '../model/source-kinds.ts';

/**
 * What must be dead before hands go there: a live circuit, or a source that connectors lead past the pins of their
 * loops.
 */
export interface Hazard {
  /** Of the loop, or of the source. */
  readonly id: Id;
  /** All of these have to be off. */
  readonly sources: readonly Id[];
  /** What is live: the stages and sections of the circuit, or the source itself. */
  readonly live: readonly Id[];
  /** The connectors that open it. */
  readonly connectors: readonly Id[];
  /** Whether nothing but stages makes it a hazard: no high voltage, and no source that is led past the pins. */
  readonly isOfStages: boolean;
  /** Whether it is named by its loop. */
  readonly isLoop: boolean;
  /** Whether a load that is fitted there sits in it. */
  readonly holds: (place: Place) => boolean;
  /** Whether hands on this very connector, part, monitor or node are hands on it. */
  readonly touches: (id: Id) => boolean;
}

/** The sources that connectors carry. */
export function carriedHazards(procedure: Procedure): readonly Hazard[] {
  return [...procedure.sources.values()].flatMap((source) => carriedHazard(procedure, source));
}

/** The connector that takes a source away carries it by nature; its opening is no opening under power. */
function carriedHazard(procedure: Procedure, source: Source): readonly Hazard[] {
  const { id } = source;
  const isolator = isolatorOf(source);
  const carriers = [...procedure.connectors.values()].filter(({ carries }) => carries.includes(id));
  const connectors = carriers.map((connector) => connector.id).filter((connector) => connector !== isolator);
  if (connectors.length === 0 && isolator === null) return [];
  return [
    {
      id,
      sources: [id],
      live: [id],
      connectors,
      isOfStages: false,
      isLoop: false,
      holds: () => false,
      touches: (connector) => connector === isolator || connectors.includes(connector),
    },
  ];
}

/** The source that the opening of a connector takes away; null: none. */
export function isolatedBy({ sources }: Procedure, connector: Id): Id | null {
  return [...sources.values()].find((source) => isolatorOf(source) === connector)?.id ?? null;
}

/** The connectors at which a voltage is measured. */
export function connectorsProbed(at: Probed): readonly Id[] {
  return 'connector' in at ? [at.connector] : [...new Set(at.map(({ connector }) => connector))];
}
