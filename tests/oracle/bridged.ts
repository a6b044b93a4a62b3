import type { Id, Procedure } from '../../server/src/model/procedure.ts';
import type { World } from './world.ts';

/* Loads that a closed shorting bar bridges. */

/** Whether a load shares its two pins with the closed bar of its connector, there or through contacts that touch. */
export function isBridged(procedure: Procedure, world: World, load: Id): boolean {
  const place = world.loads[load] ?? null;
  if (place?.loop == null) return false;
  const bar = procedure.connectors.get(place.connector)?.shortingBar ?? null;
  const mating = world.connectors[place.connector];
  const pins: readonly string[] = procedure.loops.get(place.loop)?.pins.get(place.connector) ?? [];
  if (bar === null || mating === 'mated' || mating === undefined) return false;
  if (mating === 'unlocked' && bar.closes === 'unplugged') return false;
  if (bar.pins !== null && !bar.pins.every((pin) => pins.includes(pin))) return false;
  const heldOpen = Object.entries(world.loads).some(
    ([other, at]) =>
      at?.connector === place.connector &&
      at.side === bar.side &&
      procedure.loads.get(other)?.opensShortingBar === true,
  );
  return !heldOpen && (mating === 'unlocked' || bar.side === place.side);
}

/** Loads that a step has brought under a closed bar, or from one to another. */
export function newlyBridged(procedure: Procedure, before: World, after: World): Id[] {
  const isMoved = (load: Id): boolean => before.loads[load]?.connector !== after.loads[load]?.connector;
  return [...procedure.loads.keys()].filter(
    (load) => isBridged(procedure, after, load) && (isMoved(load) || !isBridged(procedure, before, load)),
  );
}
