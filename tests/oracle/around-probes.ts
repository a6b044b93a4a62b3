import type { Id, Procedure } from '../../server/src/text/procedure.ts';
import { ohmsAcross, shownAcross } from './measured.ts';
import type { Interval, Shown } from './values.ts';
import { allWays, asBuilt, hangingOn, joinedBySources, pointsOf } from './ways.ts';
import type { Measuring, Way } from './ways.ts';
import type { World } from './world.ts';

/* What belongs to a measurement by hand: all that hangs together with its probes as built, and the faults there. */

/** Connectors there, monitors taken as insulators. */
function connectorsAround(procedure: Procedure, world: World, step: Measuring): Id[] {
  const ways = [...allWays(procedure, asBuilt(world)), ...joinedBySources(procedure)];
  const points = pointsOf(step).map((point) => hangingOn(ways, point));
  const here = ways.filter(({ monitor, a }) => monitor === null && points.some((all) => all.has(a)));
  const things = here.flatMap(({ thing }) => thing ?? []);
  return [...new Set(things.filter((id) => procedure.connectors.has(id)))];
}

const OPEN = { least: Infinity, most: Infinity };

/** The ways with each part open or bridged, and each contact open. */
function faulty(procedure: Procedure, ways: readonly Way[]): Way[][] {
  return ways.flatMap((way): Way[][] => {
    if (way.thing === null || way.isRung === true) return [];
    const others = ways.filter((one) => one !== way);
    const bridged = { ...way, ohms: { least: 0, most: 0 } };
    return procedure.parts.has(way.thing) ? [others, [...others, bridged]] : [others];
  });
}

export function aroundProbes(procedure: Procedure, step: Measuring) {
  const loads = (world: World): Id[] => {
    const here = connectorsAround(procedure, world, step);
    return Object.keys(world.loads).filter((load) => here.includes(world.loads[load]?.connector ?? ''));
  };
  const leads = procedure.multimeters.get(step.with);
  return {
    loads,
    open: (world: World): Id[] =>
      connectorsAround(procedure, world, step).filter((id) => world.connectors[id] !== 'mated'),
    circuit: (world: World): Interval | null =>
      step.quantity === 'voltage' || leads === undefined || shownAcross(procedure, world, step) === null
        ? null
        : (ohmsAcross(step, allWays(procedure, world)) ?? OPEN),
    // A voltage verifies nothing, so that no window of it can pass a fault as good.
    faults: (world: World): (Shown | null)[] =>
      step.quantity === 'voltage'
        ? []
        : faulty(procedure, allWays(procedure, world)).map((ways) =>
            shownAcross(procedure, world, step, ways),
          ),
  };
}
