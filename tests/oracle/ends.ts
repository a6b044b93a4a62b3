import type { Id, Procedure } from '../../server/src/text/procedure.ts';
import { connectorsOf, feedersOf, isOff, liveLoops, loadsIn, openConnectors } from './world.ts';
import type { World, Wrong } from './world.ts';

/* What is wrong with a bench that a path ends on. */

/** Sources away, connectors not mated, loads fitted. */
const notAsAtStart = (world: World): Id[] => [
  ...Object.keys(world.connected).filter((id) => world.connected[id] === false),
  ...Object.keys(world.connectors).filter((id) => world.connectors[id] !== 'mated'),
  ...Object.keys(world.loads).filter((id) => world.loads[id] !== null),
];

/** Everything that an end leaves behind, by the names that `leaves` has for it. */
export function leftBehind(world: World): Id[] {
  const holding = Object.values(world.stored).some((held) => held);
  return [
    ...notAsAtStart(world),
    ...world.opened,
    ...(holding ? ['codes'] : []),
    ...(world.pending.length > 0 || world.opened.length > 0 ? ['repair'] : []),
  ];
}

/** What is wrong with ending here; `leaves` is empty behind the last step. */
export function atEnd(procedure: Procedure, world: World, leaves: readonly Id[]): Wrong[] {
  const wrongs: Wrong[] = [];
  for (const subject of notAsAtStart(world))
    if (!leaves.includes(subject)) wrongs.push({ rule: 'not-restored', subject });
  for (const loop of liveLoops(procedure)) {
    if (feedersOf(procedure, loop).every((source) => isOff(world, source))) continue;
    for (const subject of [...openConnectors(world, loop), ...loadsIn(world, loop)])
      wrongs.push({ rule: 'not-restored', subject, grave: true });
  }
  if (!leaves.includes('codes'))
    for (const subject of Object.keys(world.stored))
      if (world.stored[subject] === true) wrongs.push({ rule: 'codes-not-cleared', subject });
  if (leaves.includes('repair')) return wrongs;
  for (const subject of world.pending) wrongs.push({ rule: 'repair-not-verified', subject });
  for (const subject of world.opened) {
    const loop = procedure.loops.get(subject);
    const named = loop === undefined ? [] : [subject, ...connectorsOf(loop)];
    if (!named.some((id) => leaves.includes(id))) wrongs.push({ rule: 'loop-not-verified', subject });
  }
  return wrongs;
}
