import type { Id, Mentioned, Place, Step } from '../text/procedure.ts';
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
      return step.what.flatMap(handsOn);
    case 'do':
    case 'inspect':
      return step.at.flatMap(handsOn);
    default:
      return [];
  }
}

/** Hands on an assembly are on all that it is made of. */
function handsOn({ members, place }: Mentioned): readonly Touch[] {
  return members.map((id) => ({ id, place }));
}

function leaving(load: Id, placeOf: (load: Id) => Place | undefined, key: string): readonly Touch[] {
  const place = placeOf(load);
  return place === undefined ? [] : [{ id: place.connector, place: [key] }];
}
