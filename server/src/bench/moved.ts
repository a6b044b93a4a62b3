import type { Moved, Step } from '../model/procedure.ts';
import type { FragmentIndex, Fragments } from './fragments.ts';
import { stateOf } from './hardware.ts';
import type { Hardware } from './hardware.ts';

/* What is moved by hand while something is watched. */

export function movedBy(step: Step): readonly Moved[] {
  return step.verb === 'wiggle' ? step.moved : [];
}

/** Whether it is a connector whose halves are apart, and nothing says which of them is meant. */
export function isOpenAsAWhole({ id, side }: Moved, hardware: Hardware): boolean {
  return side === undefined && stateOf(hardware, id) === 'unplugged';
}

/** What it is made of, or has terminals in. */
export function fragmentsMoved(fragments: Fragments, { id, side }: Moved): readonly FragmentIndex[] {
  return side === undefined ? fragments.of(id) : fragments.onSide(id, side);
}
