import type { Id, Procedure, Source, Step } from '../../server/src/model/procedure.ts';
import { isolatorOf } from '../../server/src/model/source-kinds.ts';
import type { World } from './world.ts';

/*
 * Poles that a connector leads past its pins. Nobody has drawn what is between two such connectors. While none of them is
 * open they are one; after that every half stands for itself.
 */

const halves = (procedure: Procedure, id: Id): string[] =>
  (procedure.connectors.get(id)?.sides ?? []).map((side) => `poles in ${id}.${side}`);

const leading = (procedure: Procedure, source: Source): Id[] =>
  [...procedure.connectors.values()]
    .filter(({ id, carries }) => carries.includes(source.id) && isolatorOf(source) !== id)
    .map(({ id }) => id);

const isOpen = (world: World, id: Id): boolean => world.connectors[id] === 'unplugged';

/** The halves that a proof shows to be without voltage. */
export function polesShown(
  procedure: Procedure,
  world: World,
  { at, source: id }: Extract<Step, { readonly verb: 'prove-dead' }>,
): string[] {
  const source = procedure.sources.get(id);
  if (source === undefined) return [];
  const all = leading(procedure, source);
  if (!all.some((one) => isOpen(world, one))) return all.flatMap((one) => halves(procedure, one));
  const probed = 'connector' in at ? [at] : at;
  const sides = new Set(probed.map(({ connector, side }) => `${connector}.${side}`));
  const [{ connector, side }] = probed as [{ connector: Id; side: string }];
  if (sides.size > 1 || !all.includes(connector)) return [];
  return isOpen(world, connector) ? [`poles in ${connector}.${side}`] : halves(procedure, connector);
}

/** The halves that hands come to, on sides of a thing or on all of it (null). */
export function polesTouched(
  procedure: Procedure,
  world: World,
  thing: Id,
  sides: readonly string[] | null,
  source: Source,
): string[] {
  if (!leading(procedure, source).includes(thing)) return [];
  if (sides === null || !isOpen(world, thing)) return halves(procedure, thing);
  return sides.map((side) => `poles in ${thing}.${side}`);
}
