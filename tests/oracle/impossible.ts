import type { Id, Place, Procedure, Step } from '../../server/src/model/procedure.ts';
import { allLoops, feedersOfMonitor, isPowered, isolatorOf, loadsAt } from './world.ts';
import type { World } from './world.ts';
import { asReading, isAmbiguous } from './wiggled.ts';

/* What cannot be done on the bench as it stands. */

export function monitorsRead(procedure: Procedure, step: Step): Id[] {
  if (step.verb === 'read-codes' || step.verb === 'clear-codes') return [step.monitor];
  const read = asReading(step);
  if (read.verb !== 'read') return [];
  const found = read.loops.map((loop) => procedure.loops.get(loop)?.monitor ?? null);
  return [...new Set(found)].filter((id) => id !== null);
}

/** A load goes away with its connector, and with the part or unit that carries the half it sits on. */
function goesWith(procedure: Procedure, replaced: Id, { connector, side }: Place): boolean {
  if (replaced === connector) return true;
  return allLoops(procedure).some((loop) => {
    const row = [loop.monitor, ...loop.elements.map((element) => element.id)];
    const at = row.lastIndexOf(connector);
    return at > 0 && row[side === 'monitor' ? at - 1 : at + 1] === replaced;
  });
}

/** What the verb acts on, where it cannot. */
export function impossible(procedure: Procedure, world: World, step: Step): Id[] {
  const cannotFit = (load: Id, connector: Id): boolean =>
    procedure.loads.get(load)?.opensShortingBar === true && world.connectors[connector] !== 'unplugged';
  const fitted = (load: Id): boolean => (world.loads[load] ?? null) !== null;
  // The connector that is opened or mated with the source, while a load sits on it.
  const blocked = (source: Id): Id[] => {
    const isolator = isolatorOf(procedure.sources.get(source));
    return isolator !== null && loadsAt(world, isolator).length > 0 ? [isolator] : [];
  };
  const unpowered = (): Id[] =>
    monitorsRead(procedure, step).filter(
      (monitor) => feedersOfMonitor(procedure, monitor).length > 0 && !isPowered(procedure, world, monitor),
    );
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
    case 'replace':
      return step.what
        .flatMap(({ members }) => members)
        .filter((id) =>
          Object.values(world.loads).some((place) => place !== null && goesWith(procedure, id, place)),
        );
    case 'disconnect':
      return [...(world.connected[step.source] === true ? [] : [step.source]), ...blocked(step.source)];
    case 'reconnect':
      return [...(world.connected[step.source] === true ? [step.source] : []), ...blocked(step.source)];
    case 'read':
    case 'read-codes':
    case 'clear-codes':
      return unpowered();
    case 'wiggle':
      return [...step.moved.filter((one) => isAmbiguous(world, one)).map(({ id }) => id), ...unpowered()];
    case 'measure': {
      // The instrument stands in the place of a contact.
      const bridged = step.carrying?.kind === 'series' ? step.carrying.connector : null;
      return bridged === null || world.connectors[bridged] === 'unplugged' ? [] : [bridged];
    }
    case 'ignition':
    case 'wait':
    case 'prove-dead':
    case 'inspect':
    case 'do':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return [];
  }
}
