import type { Id, Loop, Procedure, Step } from '../../server/src/text/procedure.ts';
import { allLoops, feedersOf, isOff, liveLoops, loopsThrough } from './world.ts';
import type { World, Wrong } from './world.ts';

/* Where hands go in a step, and whether the live loops there are dead. */

/** Connectors that stand beside a part in one of its loops. */
function neighbours(procedure: Procedure, part: Id): Id[] {
  return loopsThrough(procedure, part).flatMap((loop) =>
    loop.elements
      .filter((element, at) => {
        const before = loop.elements[at - 1]?.id;
        const after = loop.elements[at + 1]?.id;
        return element.kind === 'connector' && (before === part || after === part);
      })
      .map((element) => element.id),
  );
}

function loopsTouchedBy(procedure: Procedure, id: Id): Loop[] {
  if (procedure.monitors.has(id)) return allLoops(procedure).filter((loop) => loop.monitor === id);
  if (procedure.connectors.has(id)) return loopsThrough(procedure, id);
  const touched = [id, ...neighbours(procedure, id)];
  return allLoops(procedure).filter((loop) => loop.elements.some((element) => touched.includes(element.id)));
}

function touchedIds(step: Step, world: World): Id[] {
  switch (step.verb) {
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [step.connector];
    case 'fit':
      return [step.at.connector];
    case 'remove':
      return [world.loads[step.load]?.connector].filter((id) => id !== undefined);
    case 'move':
      return [world.loads[step.load]?.connector, step.to.connector].filter((id) => id !== undefined);
    case 'inspect':
    case 'do':
      return step.at.flatMap(({ members }) => members);
    case 'replace':
      return step.what.flatMap(({ members }) => members);
    default:
      return [];
  }
}

/** What is unsafe about touching one loop: a source on, or the wait still owed. null: safe. */
function dangerOf(procedure: Procedure, world: World, loop: Loop): 'live-touch' | 'short-wait' | null {
  const notExcused = feedersOf(procedure, loop).filter(
    (source) => !world.excuses.some((excuse) => excuse.includes(source.id)),
  );
  if (notExcused.some((source) => !isOff(world, source))) return 'live-touch';
  return notExcused.length > 0 && (world.owed[loop.id] ?? 0) > 0 ? 'short-wait' : null;
}

/** Findings of a touch, and the sources that count as safe after it. */
export function touch(procedure: Procedure, world: World, step: Step): { wrongs: Wrong[]; excuse: Id[] } {
  const wrongs: Wrong[] = [];
  const excuse = new Set<Id>();
  const live = liveLoops(procedure);
  for (const id of touchedIds(step, world)) {
    for (const loop of loopsTouchedBy(procedure, id)) {
      if (!live.includes(loop)) continue;
      const rule = dangerOf(procedure, world, loop);
      if (rule === null) continue;
      wrongs.push({ rule, subject: id });
      for (const source of feedersOf(procedure, loop)) excuse.add(source.id);
    }
  }
  return { wrongs, excuse: [...excuse].sort() };
}
