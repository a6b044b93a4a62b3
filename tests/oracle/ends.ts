import type { Id, Procedure } from '../../server/src/model/procedure.ts';
import { connectorsOf, dangers, isIsolator, isOff, isolatorOf, loadsIn } from './world.ts';
import type { World, Wrong } from './world.ts';

/* What is wrong with a bench that a path ends on. */

/** Sources away, connectors not mated, loads fitted. Of an isolating connector its source is told. */
const notAsAtStart = (procedure: Procedure, world: World): Id[] => [
  ...Object.keys(world.connected).filter((id) => world.connected[id] === false),
  ...Object.keys(world.connectors).filter(
    (id) => world.connectors[id] !== 'mated' && !isIsolator(procedure, id),
  ),
  ...Object.keys(world.loads).filter((id) => world.loads[id] !== null),
];

/** Everything that an end leaves behind, by the names that `leaves` has for it. */
export function leftBehind(procedure: Procedure, world: World): Id[] {
  const holding = Object.values(world.stored).some((held) => held);
  return [
    ...notAsAtStart(procedure, world),
    ...world.opened,
    ...(holding ? ['codes'] : []),
    ...(world.pending.length > 0 || world.opened.length > 0 ? ['repair'] : []),
  ];
}

/** What is wrong at every end, also where the work is left because something was found live. */
export function openUnderPower(procedure: Procedure, world: World): Wrong[] {
  return dangers(procedure)
    .filter(({ feeders }) => feeders.some((source) => !isOff(world, source)))
    .flatMap(({ connectors, loop }) => [
      ...connectors.filter((id) => world.connectors[id] !== 'mated'),
      ...(loop === null ? [] : loadsIn(world, loop)),
    ])
    .map((subject) => ({ rule: 'not-restored', subject, grave: true as const }));
}

/** What is wrong with ending here; `leaves` is empty behind the last step. */
export function atEnd(procedure: Procedure, world: World, leaves: readonly Id[]): Wrong[] {
  const wrongs = openUnderPower(procedure, world);
  for (const subject of notAsAtStart(procedure, world))
    if (!leaves.includes(subject)) wrongs.push({ rule: 'not-restored', subject });
  if (!leaves.includes('codes'))
    for (const subject of Object.keys(world.stored))
      if (world.stored[subject] === true) wrongs.push({ rule: 'codes-not-cleared', subject });
  if (leaves.includes('repair')) return wrongs;
  for (const subject of world.pending) wrongs.push({ rule: 'repair-not-verified', subject });
  for (const subject of world.opened) {
    const loop = procedure.loops.get(subject);
    const opened = loop === undefined ? [] : connectorsOf(loop);
    const away = [...procedure.sources.values()].filter((source) => {
      const isolator = isolatorOf(source);
      return isolator !== null && opened.includes(isolator);
    });
    const named = [subject, ...opened, ...away.map((source) => source.id)];
    if (!named.some((id) => leaves.includes(id))) wrongs.push({ rule: 'loop-not-verified', subject });
  }
  return wrongs;
}
