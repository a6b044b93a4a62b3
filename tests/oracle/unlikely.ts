import type { Id, Procedure, Source, Step } from '../../server/src/model/procedure.ts';
import type { Told } from './oracle.ts';
import { asReading } from './wiggled.ts';
import { ohmsOf } from './resistance.ts';
import { allLoops, discharge, feedersOf, loadsAt } from './world.ts';
import type { World } from './world.ts';
import { netPieces } from './network.ts';

/* Values that no such system has, currents that nobody stated, and bars that look like what is measured. */

const stageIds = (procedure: Procedure): Id[] =>
  [...procedure.parts.values()].filter(({ kind }) => kind === 'initiator').map(({ id }) => id);

/** Whether a source feeds a circuit with a stage that can fire. */
function feedsStage(procedure: Procedure, source: Source): boolean {
  const live = stageIds(procedure).filter((id) => procedure.parts.get(id)?.live === true);
  const inLoops = allLoops(procedure).filter((loop) => feedersOf(procedure, loop).includes(source));
  return (
    inLoops.some(({ elements }) => elements.some(({ id }) => live.includes(id))) ||
    netPieces(procedure).some(
      ({ members, feeders }) => feeders.includes(source) && live.some((id) => members.has(id)),
    )
  );
}

/** What is unusual about how long it is waited for, and below what it counts as safe. */
function ofSource(procedure: Procedure, source: Source): boolean {
  const { wait, reserve } = source;
  const stated = typeof wait === 'number' ? wait : 0;
  const needs = typeof reserve === 'object' && reserve !== null ? discharge(source) : null;
  if (stated > 0) {
    if (needs !== null && stated * 10 <= needs) return true;
    if (source.kind === 'high-voltage' ? stated < 60 : stated < 10 && feedsStage(procedure, source))
      return true;
  }
  const [safe, from] =
    source.kind === 'high-voltage'
      ? [source.safeBelow?.most, source.voltage?.most]
      : typeof reserve === 'object' && reserve !== null
        ? [reserve.safeBelow.most, reserve.chargedTo.most]
        : [undefined, undefined];
  return safe !== undefined && from !== undefined && safe > from * 0.9 && safe < from;
}

export function unlikely(procedure: Procedure): Told[] {
  const of = (rule: string, subject: Id): Told => ({ rule, step: null, subject, shortest: null });
  const told = [...procedure.sources.values()]
    .filter((source) => ofSource(procedure, source))
    .map(({ id }) => of('unlikely-value', id));
  for (const id of stageIds(procedure)) {
    const ohms = ohmsOf(procedure, procedure.parts.get(id)?.resistance ?? null);
    if (ohms !== null && (ohms.least < 0.5 || ohms.most > 10)) told.push(of('unlikely-value', id));
  }
  for (const monitor of procedure.monitors.values()) {
    const reads = allLoops(procedure).filter((loop) => loop.monitor === monitor.id);
    const stages = reads
      .flatMap(({ elements }) => elements.map(({ id }) => id))
      .filter((id) => stageIds(procedure).includes(id));
    if (stages.length > 0 && (monitor.testCurrent?.most ?? 0) > 0.1)
      told.push(of('unlikely-value', monitor.id));
  }
  for (const step of procedure.steps)
    if (step.verb === 'wiggle' && (step.seconds < 5 || step.seconds > 3600))
      told.push({ rule: 'unlikely-value', step: step.number, subject: null, shortest: null });
  return told;
}

/** Currents of a reading through a live stage that are not stated, each once. */
export function unstatedCurrents(procedure: Procedure): Told[] {
  if (procedure.steps.some(({ verb }) => verb === 'broken')) return [];
  const missing = new Set<Id>();
  for (const loop of allLoops(procedure)) {
    const monitor = procedure.monitors.get(loop.monitor ?? '');
    // All that hangs together with the loop is read with it.
    const around = netPieces(procedure).filter(({ members }) =>
      loop.elements.some(({ id }) => members.has(id)),
    );
    const things = new Set([
      ...loop.elements.map(({ id }) => id),
      ...around.flatMap(({ members }) => [...members]),
    ]);
    for (const id of stageIds(procedure)) {
      const stage = procedure.parts.get(id);
      if (monitor === undefined || stage?.live !== true || !things.has(id)) continue;
      if (monitor.testCurrent === null) missing.add(monitor.id);
      if (stage.noFire === null) missing.add(id);
    }
  }
  return [...missing].map((subject) => ({
    rule: 'test-current-unknown',
    step: null,
    subject,
    shortest: null,
  }));
}

/** Loads that are fitted where the closed bar can have their resistance. */
export function barLike(procedure: Procedure): Told[] {
  return procedure.steps.flatMap((step): Told[] => {
    if (step.verb !== 'fit' && step.verb !== 'move') return [];
    const { connector } = step.verb === 'fit' ? step.at : step.to;
    const bar = procedure.connectors.get(connector)?.shortingBar?.resistance ?? null;
    const load = ohmsOf(procedure, procedure.loads.get(step.load)?.resistance ?? null);
    if (bar === null || load === null || load.least > bar.most || load.most < bar.least) return [];
    return [{ rule: 'load-like-a-bar', step: step.number, subject: step.load, shortest: null }];
  });
}

/** The connector across whose closed bar something is measured, and no window is stated. null: none. */
export function barMeasured(procedure: Procedure, world: World, taken: Step): Id | null {
  const step = asReading(taken);
  if (step.verb !== 'measure' || step.expect !== null) return null;
  const [one, other] = step.across;
  if ('node' in one || 'node' in other || one.connector !== other.connector) return null;
  const { connector: id } = one;
  const bar = procedure.connectors.get(id)?.shortingBar ?? null;
  const mating = world.connectors[id];
  if (bar === null || mating === 'mated' || mating === undefined) return null;
  if (mating === 'unlocked' && bar.closes === 'unplugged') return null;
  if (one.side !== bar.side || other.side !== bar.side) return null;
  const pairs: (readonly string[])[] =
    bar.pins !== null
      ? [bar.pins]
      : allLoops(procedure).flatMap(({ pins }) => (pins.has(id) ? [pins.get(id) ?? []] : []));
  const isPair = pairs.some((pins) => pins.includes(one.pin) && pins.includes(other.pin));
  if (pairs.length > 0 && !isPair) return null;
  const isHeldOpen = loadsAt(world, id).some(
    (load) => world.loads[load]?.side === bar.side && procedure.loads.get(load)?.opensShortingBar === true,
  );
  return isHeldOpen ? null : id;
}
