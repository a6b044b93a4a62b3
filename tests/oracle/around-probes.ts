import type { Id, Procedure } from '../../server/src/model/procedure.ts';
import { ohmsAcross, shownAcross, soundVolts } from './measured.ts';
import { namedIn } from './node-names.ts';
import type { Interval, Shown } from './values.ts';
import { allWays, asBuilt, hangingOn, isOn, joinedBySources, plain, pointsOf } from './ways.ts';
import type { Measuring, Way } from './ways.ts';
import type { World } from './world.ts';

/* What belongs to a measurement by hand: all that hangs together with its probes as built, and the faults there. */

/** Connectors there, monitors taken as insulators. */
export function connectorsAround(procedure: Procedure, world: World, step: Measuring): Id[] {
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
    const { a, b, thing } = way;
    const bridged = { ...plain, a, b, thing };
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
    circuit: (world: World): Interval | null => {
      if (leads === undefined || shownAcross(procedure, world, step) === null) return null;
      if (step.quantity === 'voltage') return soundVolts(procedure, world, step);
      return ohmsAcross(step, allWays(procedure, world)) ?? OPEN;
    },
    faults: (world: World): (Shown | null)[] =>
      faulty(procedure, allWays(procedure, world)).map((ways) => shownAcross(procedure, world, step, ways)),
  };
}

/** Whether parts and contacts join the probes, and a source that is on hangs together with them, ground taken out. */
export function couldFlow(procedure: Procedure, world: World, step: Measuring): boolean {
  const named = namedIn(procedure);
  const ways = allWays(procedure, world).filter(({ a, b }) => named(a) !== 'ground' && named(b) !== 'ground');
  const conducting = [...ways.filter(({ source, monitor }) => source === null && monitor === null)];
  const [from, to] = pointsOf(step);
  const piece = hangingOn(conducting, from);
  const plus = procedure.network.elements.filter(
    ({ kind, id }) => kind === 'source' && isOn(procedure, world, id),
  );
  return piece.has(to) && plus.some(({ between: [at] }) => piece.has(at));
}
