import type { Loop, Procedure } from '../../server/src/model/procedure.ts';
import { leastAddedIn } from './least-added.ts';
import { circuitOf, rungs } from './values.ts';
import type { Interval } from './values.ts';
import type { World } from './world.ts';

/* What the monitor has between its terminals where a loop has one of the faults that are typical of it. */

/** Nothing lies in parallel with all of the loop, and its first piece is there: an open there opens everything. */
function beginsInSeries(procedure: Procedure, world: World, loop: Loop): boolean {
  const [first] = loop.elements;
  if (first === undefined || first.kind === 'part') return first !== undefined;
  return (
    world.connectors[first.id] !== 'unplugged' &&
    rungs(procedure, world, loop, first.id, 'monitor')?.length === 0
  );
}

/** The loop as if the bar of a mated connector were closed. */
function withBarClosed(procedure: Procedure, world: World, loop: Loop, id: string): Interval | null {
  const connector = procedure.connectors.get(id);
  if (connector?.shortingBar == null || world.connectors[id] !== 'mated') return null;
  const closing = { ...connector, shortingBar: { ...connector.shortingBar, closes: 'unlocked' as const } };
  const connectors = new Map([...procedure.connectors, [id, closing]]);
  return circuitOf(
    { ...procedure, connectors },
    { ...world, connectors: { ...world.connectors, [id]: 'unlocked' } },
    loop,
  );
}

/** Open, the least added resistance that counts, bridged at the monitor, and bars that stay closed. */
export function faultsOf(procedure: Procedure, world: World, loop: Loop): Interval[] {
  const good = circuitOf(procedure, world, loop);
  if (good === null || good.least === Infinity || !beginsInSeries(procedure, world, loop)) return [];
  const added = leastAddedIn(procedure, loop.id);
  const bars = loop.elements.flatMap(({ id }): Interval[] => {
    const bridged = withBarClosed(procedure, world, loop, id);
    return bridged !== null && bridged.most < good.most ? [bridged] : [];
  });
  return [
    { least: Infinity, most: Infinity },
    { least: good.least + added, most: good.most + added },
    { least: 0, most: 0 },
    ...bars,
  ];
}
