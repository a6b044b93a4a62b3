import { thingsAt } from '../model/mentioned.ts';
import type { Id, Mentioned, Moved, Place, Probe, Side, Step } from '../model/procedure.ts';
import { whereMeasured } from '../model/step-in-words.ts';
import type { Path } from '../model/where.ts';

/** Hands on something: a connector, part, monitor or node, with the place in the step that names it. */
export interface Touch {
  readonly id: Id;
  /** Of a connector, where hands come to one side of it alone. */
  readonly side?: Side;
  readonly place: Path;
  /** Whether the thing itself is in the hands: worked on, taken out or carried. Otherwise hands only come to it. */
  readonly inHands: boolean;
  /** It is moved while power may be on: a stage that hangs there has a rule of its own. */
  readonly isMoved?: true;
  /** What this very step takes away or gives back: what it feeds cannot be dead before. */
  readonly switches?: Id;
}

/**
 * What hands touch by each verb. Taking a load off touches the connector that it sits on, which depends on the path. A
 * proof is no touch: rules of its own guard it.
 */
export function touchesOf(step: Step, placeOf: (load: Id) => Place | undefined): readonly Touch[] {
  switch (step.verb) {
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [at(step.connector, step.verb)];
    case 'fit':
      return [sideOf(step.at, 'at')];
    case 'remove':
      return leaving(step.load, placeOf, 'remove');
    case 'move':
      return [...leaving(step.load, placeOf, 'move'), sideOf(step.to, 'to')];
    case 'disconnect':
    case 'reconnect': {
      const { verb, connector, source } = step;
      return connector === null ? [] : [{ ...at(connector, verb), switches: source }];
    }
    case 'measure':
      return pointsTouched(step.across, whereMeasured(step.carrying));
    case 'wiggle':
      return [
        ...step.moved.map(moved),
        ...(step.by === 'hand' ? pointsTouched(step.across, whereMeasured(step.carrying)) : []),
      ];
    case 'replace':
      return step.what.flatMap((what) => handsOn(what, true));
    case 'do':
      return thingsAt(step.at).flatMap((thing) => handsOn(thing, true));
    case 'inspect':
      return thingsAt(step.at).flatMap((thing) => handsOn(thing, false));
    case 'ignition':
    case 'wait':
    case 'prove-dead':
    case 'read':
    case 'read-codes':
    case 'clear-codes':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return [];
  }
}

function at(id: Id, key: string): Touch {
  return { id, place: [key], inHands: false };
}

function moved(one: Moved): Touch {
  return { ...one, inHands: false, isMoved: true };
}

function sideOf({ connector, side }: Place, key: string): Touch {
  return { ...at(connector, key), side };
}

/** The sides of connectors and the nodes that probes touch, each once. */
function pointsTouched(across: readonly Probe[], key: string): readonly Touch[] {
  const touches = across.map((probe) =>
    'node' in probe ? at(probe.node, key) : { ...at(probe.connector, key), side: probe.side },
  );
  return [...new Map(touches.map((touch) => [`${touch.id}.${touch.side ?? ''}`, touch])).values()];
}

/** Hands on an assembly are on all that it is made of. */
function handsOn({ members, place }: Mentioned, inHands: boolean): readonly Touch[] {
  return members.map((id) => ({ id, place, inHands }));
}

function leaving(load: Id, placeOf: (load: Id) => Place | undefined, key: string): readonly Touch[] {
  const place = placeOf(load);
  return place === undefined ? [] : [sideOf(place, key)];
}
