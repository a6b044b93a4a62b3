import type { Expect, Id, Loop, MeterRange, NamedWindow, Outcome } from '../../server/src/model/procedure.ts';
import type { Procedure, Step } from '../../server/src/model/procedure.ts';
import { asReading } from './wiggled.ts';
import { shownAcross } from './measured.ts';
import { shownOf } from './values.ts';
import type { Interval, Shown } from './values.ts';
import { seenOf } from './world.ts';
import type { World } from './world.ts';

/* What a step reads, by a monitor or by hand. */

export type Reading = Extract<Step, { readonly verb: 'read' | 'measure' }>;

/** What shows a number, as far as windows are concerned. */
export interface Display extends MeterRange {
  readonly leakBelow: number | null;
  /** The least that it can show. */
  readonly floor: number;
  /** Ohms that it shows beside those of the circuit. */
  readonly leads: Interval;
}

export interface Read {
  /** The loop, or where the probes are. */
  readonly of: Id;
  readonly loop: Loop | null;
  readonly display: Display | null;
  readonly expect: Expect | null;
  readonly windows: readonly NamedWindow[];
  readonly outcomes: readonly Outcome[] | null;
  /** By a sound circuit on a bench, before the display step. null: not known. */
  readonly shown: (world: World) => Shown | null;
}

export const isReading = (step: Step): step is Reading => step.verb === 'read' || step.verb === 'measure';

/** What currents are is computed nowhere here: of such a step only its place in the order is looked at. */
export const isOfCurrent = (step: Step): boolean => step.verb === 'measure' && step.quantity === 'current';

const none: Interval = { least: 0, most: 0 };

function displayOf(procedure: Procedure, loop: Loop | null, step: Reading): Display | null {
  if (step.verb === 'read') {
    const monitor = procedure.monitors.get(loop?.monitor ?? '');
    return monitor === undefined ? null : { ...monitor, floor: monitor.range?.least ?? 0, leads: none };
  }
  const meter = procedure.multimeters.get(step.with);
  const scale = meter?.[step.quantity] ?? null;
  if (meter === undefined || scale === null) return null;
  const { range } = scale;
  const floor = step.quantity === 'voltage' ? -(range?.most ?? 0) : (range?.least ?? 0);
  return { ...scale, leakBelow: null, floor, leads: meter.zeroed ? none : (meter.leads ?? none) };
}

export function readsOf(procedure: Procedure, taken: Step): Read[] {
  const step = asReading(taken);
  if (!isReading(step) || isOfCurrent(step)) return [];
  const { expect, windows, outcomes } = step;
  const ids = step.verb === 'read' ? step.loops : [step.of];
  return ids.map((of): Read => {
    const loop = step.verb === 'read' ? (procedure.loops.get(of) ?? null) : null;
    const known = new Map<string, Shown | null>();
    const shown = (world: World): Shown | null => {
      if (step.verb === 'measure') return shownAcross(procedure, world, step);
      return loop === null ? null : shownOf(procedure, world, loop);
    };
    return {
      of,
      loop,
      display: displayOf(procedure, loop, step),
      expect,
      windows,
      outcomes,
      shown: (world) => {
        const key = seenOf(world);
        if (!known.has(key)) known.set(key, shown(world));
        return known.get(key) ?? null;
      },
    };
  });
}
