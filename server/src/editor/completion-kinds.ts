import type { Id, Procedure, Source } from '../model/procedure.ts';
import type { KnownIds } from './completion-ids.ts';

/** Ids by the kind of their entry; one whose entry cannot be read yet may be of any. */
export interface IdsOfKind {
  readonly monitors: readonly Id[];
  readonly multimeters: readonly Id[];
  readonly batteries: readonly Id[];
  readonly highVoltage: readonly Id[];
  /** Sources that are taken away by themselves: all but regulated supplies. */
  readonly takenAway: readonly Id[];
  /** Connectors that take no source away: only these are unplugged by their own name. */
  readonly unplugged: readonly Id[];
}

export function idsOfKind(procedure: Procedure, { instruments, sources, connectors }: KnownIds): IdsOfKind {
  const { monitors, multimeters } = procedure;
  const isOf = (kind: Source['kind'], id: Id): boolean => {
    const source = procedure.sources.get(id);
    return source === undefined ? !procedure.regulated.has(id) : source.kind === kind;
  };
  const isolators = new Set([...procedure.sources.values()].map(isolatorOf));
  return {
    monitors: instruments.filter((id) => !multimeters.has(id)),
    multimeters: instruments.filter((id) => !monitors.has(id)),
    batteries: sources.filter((id) => isOf('battery', id)),
    takenAway: sources.filter((id) => !procedure.regulated.has(id)),
    highVoltage: sources.filter((id) => isOf('high-voltage', id)),
    unplugged: connectors.filter((id) => !isolators.has(id)),
  };
}

function isolatorOf(source: Source): Id | null {
  return source.kind === 'high-voltage' ? source.isolatedBy : null;
}
