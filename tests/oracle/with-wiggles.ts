import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import type { PlainStep } from './plain-procedure.ts';

/*
 * Readings and measurements of a procedure that is drawn already, in some of which something is moved by hand meanwhile.
 * The draws are of a sequence of their own.
 */

/** What can be moved, as it is written: parts, connectors and their sides. */
export type Movable = readonly string[];

function movedIn(chance: Chance, movable: Movable): string | string[] {
  if (chance.happens(0.6)) return chance.pick(movable);
  return [...new Set([chance.pick(movable), chance.pick(movable)])];
}

/** A step that reads one thing as one in which something is moved; null: it does not. */
function wiggled(chance: Chance, movable: Movable, step: PlainStep): PlainStep | null {
  const moving = { wiggle: movedIn(chance, movable), for: chance.pick(['30 s', '2 min', '2 s']) };
  if (typeof step.read === 'string') {
    const { read, ...rest } = step;
    return { ...moving, watch: read, ...rest };
  }
  if (step.measure !== 'resistance' && step.measure !== 'voltage') return null;
  const { measure, ...rest } = step;
  return { ...moving, quantity: measure, ...rest };
}

/** `share` of the procedures have any. */
export function withWiggles(
  seed: number,
  share: number,
  movable: Movable,
  steps: readonly PlainStep[],
): PlainStep[] {
  const chance = chanceFrom(seed + 563_000);
  if (!chance.happens(share)) return [...steps];
  return steps.flatMap((step): PlainStep[] => {
    const other = wiggled(chance, movable, step);
    if (other === null || chance.happens(0.5)) return [step];
    // A voltage takes brute force long enough once.
    if (other.quantity === 'voltage' || chance.happens(0.5)) return [other];
    // Jumps lead to the step that was there, and outcomes are its own.
    const before = Object.entries(other).filter(([key]) => key !== 'id' && key !== 'outcomes');
    return [Object.fromEntries(before), step];
  });
}

/** The sides of connectors, of which each has these two where nothing else is said. */
export function sidesIn(connectors: Readonly<Record<string, Readonly<Record<string, unknown>>>>): string[] {
  return Object.entries(connectors).flatMap(([id, { sides = ['monitor', 'end'] }]) =>
    (sides as string[]).map((side) => `${id}.${side}`),
  );
}
