import type { Id, Mentioned, Place, Probe, Step } from '../text/procedure.ts';
import type { Path } from '../text/where.ts';

/** Hands on something: a connector, part, monitor or node, with the place in the step that names it. */
export interface Touch {
  readonly id: Id;
  readonly place: Path;
  /** What this very step takes away or gives back: what it feeds cannot be dead before. */
  readonly switches?: Id;
}

/**
 * What a step's hands touch. Taking a load off touches the connector that it sits on, which depends on the path.
 */
export function touchesOf(step: Step, placeOf: (load: Id) => Place | undefined): readonly Touch[] {
  switch (step.verb) {
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [{ id: step.connector, place: [step.verb] }];
    case 'fit':
      return [{ id: step.at.connector, place: ['at'] }];
    case 'remove':
      return leaving(step.load, placeOf, 'remove');
    case 'move':
      return [...leaving(step.load, placeOf, 'move'), { id: step.to.connector, place: ['to'] }];
    case 'disconnect':
    case 'reconnect': {
      const { verb, connector, source } = step;
      return connector === null ? [] : [{ id: connector, place: [verb], switches: source }];
    }
    case 'measure':
      return pointsTouched(step.across).map((id) => ({ id, place: ['across'] }));
    case 'replace':
      return step.what.flatMap(handsOn);
    case 'do':
    case 'inspect':
      return step.at.flatMap(handsOn);
    default:
      return [];
  }
}

/** The connectors and nodes that probes touch, each once. */
function pointsTouched(across: readonly Probe[]): readonly Id[] {
  return [...new Set(across.map((probe) => ('node' in probe ? probe.node : probe.connector)))];
}

/** Hands on an assembly are on all that it is made of. */
function handsOn({ members, place }: Mentioned): readonly Touch[] {
  return members.map((id) => ({ id, place }));
}

function leaving(load: Id, placeOf: (load: Id) => Place | undefined, key: string): readonly Touch[] {
  const place = placeOf(load);
  return place === undefined ? [] : [{ id: place.connector, place: [key] }];
}
