import type { Id, Procedure, Step } from '../../server/src/text/procedure.ts';
import { feedersOfMonitor, isPowered, loadsAt } from './world.ts';
import type { World } from './world.ts';

/* What cannot be done on the bench as it stands. */

export function monitorsRead(procedure: Procedure, step: Step): Id[] {
  if (step.verb === 'read-codes' || step.verb === 'clear-codes') return [step.monitor];
  if (step.verb !== 'read') return [];
  const found = step.loops.map((loop) => procedure.loops.get(loop)?.monitor ?? null);
  return [...new Set(found)].filter((id) => id !== null);
}

/** What the verb acts on, where it cannot. */
export function impossible(procedure: Procedure, world: World, step: Step): Id[] {
  const cannotFit = (load: Id, connector: Id): boolean =>
    procedure.loads.get(load)?.opensShortingBar === true && world.connectors[connector] !== 'unplugged';
  const fitted = (load: Id): boolean => (world.loads[load] ?? null) !== null;
  switch (step.verb) {
    case 'unlock':
      return world.connectors[step.connector] === 'mated' ? [] : [step.connector];
    case 'unplug':
    case 'plug': {
      const already = world.connectors[step.connector] === (step.verb === 'plug' ? 'mated' : 'unplugged');
      return already || loadsAt(world, step.connector).length > 0 ? [step.connector] : [];
    }
    case 'fit':
      return fitted(step.load) || cannotFit(step.load, step.at.connector) ? [step.load] : [];
    case 'remove':
      return fitted(step.load) ? [] : [step.load];
    case 'move':
      return !fitted(step.load) || cannotFit(step.load, step.to.connector) ? [step.load] : [];
    case 'disconnect':
      return world.connected[step.source] === true ? [] : [step.source];
    case 'reconnect':
      return world.connected[step.source] === true ? [step.source] : [];
    case 'read':
    case 'read-codes':
    case 'clear-codes':
      return monitorsRead(procedure, step).filter(
        (monitor) => feedersOfMonitor(procedure, monitor).length > 0 && !isPowered(procedure, world, monitor),
      );
    default:
      return [];
  }
}
