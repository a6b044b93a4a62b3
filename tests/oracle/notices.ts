import type { Id, Procedure, Step } from '../../server/src/model/procedure.ts';
import { netPieces } from './network.ts';
import { held, touchedIds } from './touch.ts';
import { allLoops, carriedBy, connectorsOf } from './world.ts';
import type { World, Wrong } from './world.ts';

/*
 * Notices that a step has to carry: hands on a stage, hands near one for the first time, high voltage for the first time,
 * and high voltage that comes back for the first time.
 */

function liveInitiators(procedure: Procedure): Id[] {
  return [...procedure.parts.values()]
    .filter((part) => part.kind === 'initiator' && part.live)
    .map(({ id }) => id);
}

const holds = (things: readonly (Id | null)[], one: Id, other: Id): boolean =>
  things.includes(one) && things.includes(other);

/** Stages that share a loop with something, the monitor of the loop counted. */
function stagesNear(procedure: Procedure, touched: Id): Id[] {
  const inPieces = netPieces(procedure).filter(({ members }) => members.has(touched));
  return liveInitiators(procedure).filter(
    (stage) =>
      inPieces.some(({ members }) => members.has(stage)) ||
      allLoops(procedure).some((loop) =>
        holds([loop.monitor, ...loop.elements.map(({ id }) => id)], touched, stage),
      ),
  );
}

/** Whether a load goes into a loop of which some connector leads high voltage, or takes it away. */
function isFittedBeside(procedure: Procedure, step: Step): boolean {
  const place = step.verb === 'fit' ? step.at : step.verb === 'move' ? step.to : null;
  const loop = procedure.loops.get(place?.loop ?? '');
  const leads = (id: Id): boolean => carriedBy(procedure, id).some(({ kind }) => kind === 'high-voltage');
  return loop !== undefined && connectorsOf(loop).some(leads);
}

/** What a step lacks, and what hands have come to after it. */
export function notices(
  procedure: Procedure,
  world: World,
  step: Step,
): { readonly wrongs: Wrong[]; readonly met: readonly Id[] } {
  const isDanger = step.danger !== undefined;
  const isWarned = isDanger || step.warning !== undefined;
  const inHands =
    step.verb === 'replace'
      ? step.what.flatMap(({ members }) => members)
      : step.verb === 'do'
        ? held(step.at)
        : [];
  const handled = liveInitiators(procedure).filter((stage) => inHands.includes(stage));
  const near = touchedIds(step, world).flatMap((id) => stagesNear(procedure, id));
  const isAway = step.verb === 'disconnect' || step.verb === 'prove-dead';
  const voltage = isAway && procedure.sources.get(step.source)?.kind === 'high-voltage' ? [step.source] : [];
  // To be near while it is dead is one thing, to be near as it comes back another.
  const back =
    step.verb === 'reconnect' && procedure.sources.get(step.source)?.kind === 'high-voltage'
      ? [`${step.source} back`]
      : [];
  const isNew = (id: Id): boolean => !world.met.includes(id);
  const lacks =
    (!isWarned && (handled.length > 0 || near.some(isNew))) ||
    (!isDanger && ([...voltage, ...back].some(isNew) || isFittedBeside(procedure, step)));
  return {
    wrongs: lacks ? [{ rule: 'missing-notice', subject: null }] : [],
    met: [...new Set([...world.met, ...near, ...voltage, ...back])].sort(),
  };
}
