import type { Id, Probed, Procedure, Side } from '../model/procedure.ts';
import { isolatorOf } from '../model/source-kinds.ts';
import { stateOf } from './hardware.ts';
import type { Hardware } from './hardware.ts';
import type { Touch } from './touch.ts';

/*
 * The poles of a source that connectors lead past the pins of their circuits. No file draws what joins them: while all are mated they
 * hang together, and an open one parts its halves from each other and, for all that is known, from every other connector.
 */

/** One half of a connector, with the poles that it carries. */
export interface Half {
  readonly connector: Id;
  readonly side: Side;
}

/** A half as a proof keeps it. */
export type HalfKey = `${Id} ${Side}`;

export function halfKey({ connector, side }: Half): HalfKey {
  return `${connector} ${side}`;
}

/** The connectors that carry a source, without the one that isolates it: in its seat nothing is ever proven. */
export function carriersOf(procedure: Procedure, source: Id): readonly Id[] {
  const isolator = isolatorOf(procedure.sources.get(source));
  return [...procedure.connectors.values()].flatMap(({ id, carries }) =>
    carries.includes(source) && id !== isolator ? [id] : [],
  );
}

/** The halves that a proof at a place shows on this bench. */
export function halvesShown(
  procedure: Procedure,
  source: Id,
  at: Probed,
  hardware: Hardware,
): readonly Half[] {
  const carriers = carriersOf(procedure, source);
  if (!isParted(procedure, source, hardware)) return carriers.flatMap((id) => halvesOf(procedure, id));
  const probed = halfProbed(at);
  return probed === null || !carriers.includes(probed.connector)
    ? []
    : halvesOf(procedure, probed.connector, isOpen(hardware, probed.connector) ? probed.side : undefined);
}

/** Whether the poles of a source no longer hang together on this bench, so that it matters where they are looked at. */
export function isParted(procedure: Procedure, source: Id, hardware: Hardware): boolean {
  return carriersOf(procedure, source).some((id) => isOpen(hardware, id));
}

/** The halves of carried poles that hands come to; none where a thing carries nothing of the source. */
export function halvesTouched(
  procedure: Procedure,
  source: Id,
  { id, side }: Pick<Touch, 'id' | 'side'>,
  hardware: Hardware,
): readonly Half[] {
  if (!carriersOf(procedure, source).includes(id)) return [];
  return halvesOf(procedure, id, isOpen(hardware, id) ? side : undefined);
}

export function isOpen(hardware: Hardware, connector: Id): boolean {
  return stateOf(hardware, connector) === 'unplugged';
}

/** Of two probes that are not both on one half nobody knows what is between them. */
function halfProbed(at: Probed): Half | null {
  if ('connector' in at) return at;
  const [one, other] = at;
  return one.connector === other.connector && one.side === other.side ? one : null;
}

function halvesOf({ connectors }: Procedure, id: Id, only?: Side): readonly Half[] {
  const sides = connectors.get(id)?.sides ?? [];
  return sides
    .filter((side) => only === undefined || side === only)
    .map((side): Half => ({ connector: id, side }));
}
