import type { Id, Place, Step } from '../text/procedure.ts';
import type { Path } from '../text/where.ts';

/** Hands on something: a connector, part or monitor, with the place in the step that names it. */
export interface Touch {
  readonly id: Id;
  readonly place: Path;
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
    case 'replace':
      return step.what.map((id, index) => ({ id, place: ['replace', index] }));
    case 'do':
    case 'inspect':
      return step.at.map((id, index) => ({ id, place: ['at', index] }));
    default:
      return [];
  }
}

function leaving(load: Id, placeOf: (load: Id) => Place | undefined, key: string): readonly Touch[] {
  const place = placeOf(load);
  return place === undefined ? [] : [{ id: place.connector, place: [key] }];
}
