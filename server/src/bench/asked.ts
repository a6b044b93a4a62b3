import type { Id, Step } from '../model/procedure.ts';

export type LoopReading = Extract<Step, { readonly loops: readonly Id[] }>;
export type Measuring = Extract<Step, { readonly across: unknown }>;

/** What a step asks an instrument. */
export type Asked =
  /** The monitors of these loops read them. */
  | { readonly of: 'loops'; readonly step: LoopReading }
  /** A multimeter measures between two points. */
  | { readonly of: 'points'; readonly step: Measuring }
  /** A monitor says, or forgets, what is in its memory. */
  | { readonly of: 'memory'; readonly monitor: Id };

/** null: nothing that has a window or needs a monitor. What proves a source dead is judged by itself. */
export function askedBy(step: Step): Asked | null {
  switch (step.verb) {
    case 'read':
      return { of: 'loops', step };
    case 'measure':
      return { of: 'points', step };
    case 'wiggle':
      return step.by === 'monitor' ? { of: 'loops', step } : { of: 'points', step };
    case 'read-codes':
    case 'clear-codes':
      return { of: 'memory', monitor: step.monitor };
    case 'prove-dead':
    case 'ignition':
    case 'disconnect':
    case 'reconnect':
    case 'wait':
    case 'unlock':
    case 'unplug':
    case 'plug':
    case 'fit':
    case 'move':
    case 'remove':
    case 'inspect':
    case 'do':
    case 'replace':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return null;
  }
}

/** The loops that a step reads. */
export function loopsRead(step: Step): readonly Id[] {
  const asked = askedBy(step);
  return asked?.of === 'loops' ? asked.step.loops : [];
}

/** What a step has a window of: loops, or where the probes are. */
export function subjectsOf(step: Step): readonly string[] {
  const asked = askedBy(step);
  switch (asked?.of) {
    case 'loops':
      return asked.step.loops;
    case 'points':
      return [asked.step.of];
    case 'memory':
    case undefined:
      return [];
  }
}
