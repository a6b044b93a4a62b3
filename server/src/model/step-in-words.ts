import { formatWait } from '../quantity/quantity.ts';
import type { ByHand, Carrying, Mentioned, Moved, Step } from './procedure.ts';

/** A step in a few words, as it is written: `unplug K30`. */
export function stepInWords(step: Step): string {
  switch (step.verb) {
    case 'ignition':
      return `ignition ${step.to}`;
    case 'disconnect':
    case 'reconnect':
      return `${step.verb} ${step.source}`;
    case 'wait':
      return `wait ${formatWait(step.seconds)}`;
    case 'prove-dead':
      return `prove-dead ${step.source}`;
    case 'unlock':
    case 'unplug':
    case 'plug':
      return `${step.verb} ${step.connector}`;
    case 'fit':
      return `fit ${step.load} at ${step.at.connector}.${step.at.side}`;
    case 'move':
      return `move ${step.load} to ${step.to.connector}.${step.to.side}`;
    case 'remove':
      return `remove ${step.load}`;
    case 'read':
      return `read ${step.loops.join(', ')}`;
    case 'measure':
      return `measure ${measuredInWords(step)}`;
    case 'wiggle': {
      const watched = step.by === 'monitor' ? step.loops.join(', ') : measuredInWords(step);
      return `wiggle ${step.moved.map(movedInWords).join(', ')} for ${formatWait(step.seconds)}, watching ${watched}`;
    }
    case 'read-codes':
    case 'clear-codes':
      return `${step.verb} ${step.monitor}`;
    case 'inspect':
    case 'do':
    case 'stop':
      return `${step.verb}: ${step.text}`;
    case 'replace':
      return `replace ${namesOf(step.what)}`;
    case 'conclude':
      return `conclude ${step.what === 'none' ? 'none' : namesOf(step.what)}`;
    case 'run':
      return `run ${step.runs}`;
    case 'go':
      return 'go';
    case 'broken':
      return 'not readable';
  }
}

function measuredInWords({ quantity, carrying, of }: ByHand): string {
  return `${quantity} ${whereMeasured(carrying)} ${of}`;
}

/** `K30.monitor`, or the id alone. */
export function movedInWords({ id, side }: Moved): string {
  return side === undefined ? id : `${id}.${side}`;
}

/** The word between what is measured and where. */
export function whereMeasured(carrying: Carrying | null): 'across' | 'around' | 'in' {
  if (carrying === null) return 'across';
  return carrying.kind === 'clamp' ? 'around' : 'in';
}

function namesOf(things: readonly Mentioned[]): string {
  return things.map(({ id }) => id).join(', ');
}
