import type { Procedure, Source, Step } from '../../server/src/model/procedure.ts';
import type { Told } from './oracle.ts';
import { asReading } from './wiggled.ts';
import { namedIn } from './node-names.ts';
import { holdsThere, isPreferred } from './resistance.ts';
import { pointsOf } from './ways.ts';
import { barLike, unlikely, unstatedCurrents } from './unlikely.ts';
import { dangers, discharge } from './world.ts';

/* What is to be said of the entries of a file, whatever its steps do with them. */

const of = (rule: string, subject: string): Told => ({ rule, step: null, subject, shortest: null });

/** Sources that hands have to be safe from. */
function feedingDanger(procedure: Procedure): Source[] {
  const feeders = new Set(dangers(procedure).flatMap((danger) => danger.feeders));
  return [...procedure.sources.values()].filter((source) => feeders.has(source));
}

/** A wait that is not known, and one that is said to be nothing. */
function waits(procedure: Procedure): Told[] {
  const guarded = feedingDanger(procedure);
  const asked = [...procedure.sources.values()].filter(
    (source) => guarded.includes(source) || (source.voltage?.most ?? 0) > 30,
  );
  return asked.flatMap((source) => {
    const { id, wait, reserve } = source;
    if (wait === 'unstated' && reserve === 'unstated') return [of('no-wait', id)];
    const isNothing = wait === 'unstated' ? discharge(source) === 0 : wait === 0;
    return isNothing ? [of('zero-wait', id)] : [];
  });
}

/** Stages of trainers, resistors that nobody makes, sensors where nothing is known of them. */
function parts(procedure: Procedure): Told[] {
  const told = [...procedure.parts.values()].flatMap(({ id, statedInert }) =>
    statedInert ? [of('inert-stage', id)] : [],
  );
  for (const { id, resistance } of [...procedure.parts.values(), ...procedure.loads.values()]) {
    if (resistance?.kind === 'preferred' && !isPreferred(resistance)) told.push(of('not-preferred', id));
    if (resistance !== null && !holdsThere(procedure, resistance)) told.push(of('outside-validity', id));
  }
  return told;
}

/** Names at which one element of the network ends and no probe is put. */
function nodes(procedure: Procedure): Told[] {
  const { network, steps } = procedure;
  const ends = network.elements.flatMap(({ between }) => between);
  const named = namedIn(procedure);
  const probed = steps.map(asReading).flatMap((step) =>
    // A clamp is put around a part, and to no point.
    step.verb === 'measure' && step.carrying?.kind !== 'clamp' ? pointsOf(step).map(named) : [],
  );
  const isName = (node: string): boolean => node !== 'ground' && !node.includes('.');
  return ends
    .filter(
      (node) =>
        isName(node) && !probed.includes(node) && ends.filter((one) => named(one) === node).length < 2,
    )
    .map((node) => of('dangling-node', node));
}

/**
 * The meter does not bear the source; or shows nothing of what is just below the voltage that is safe; or shows the known
 * source beyond its range, or perhaps as no more than a dead wire.
 */
function isUnfit(procedure: Procedure, step: Extract<Step, { readonly verb: 'prove-dead' }>): boolean {
  const source = procedure.sources.get(step.source);
  const volts = procedure.multimeters.get(step.with)?.voltage;
  if (source?.kind !== 'high-voltage' || volts === undefined || volts === null) return false;
  const { range, accuracy, resolution } = volts;
  if (range === null || accuracy === null || resolution === null) return false;
  if (source.voltage !== null && range.most < source.voltage.most) return true;
  const safe = source.safeBelow?.least ?? 60;
  const shown = safe * (1 - accuracy.fraction) - accuracy.constant - accuracy.digits * resolution;
  if (Math.floor(shown / resolution + 1e-9) <= 0) return true;
  const known = procedure.sources.get(step.known)?.voltage ?? null;
  if (known === null) return false;
  const error = accuracy.constant + accuracy.digits * resolution;
  return known.most > range.most || known.least * (1 - accuracy.fraction) - error <= error;
}

export function ofEntries(procedure: Procedure): Told[] {
  const meters = procedure.steps.flatMap((step): Told[] =>
    step.verb === 'prove-dead' && isUnfit(procedure, step)
      ? [{ rule: 'unfit-meter', step: step.number, subject: step.with, shortest: null }]
      : [],
  );
  return [
    ...waits(procedure),
    ...parts(procedure),
    ...nodes(procedure),
    ...meters,
    ...unlikely(procedure),
    ...unstatedCurrents(procedure),
    ...barLike(procedure),
  ];
}
