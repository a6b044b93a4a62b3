import { loopsRead } from '../bench/asked.ts';
import { changesTo } from '../bench/changes.ts';
import { isPowered } from '../bench/power.ts';
import type { Limit } from '../quantity/span.ts';
import type { Id, Monitor, Step } from '../model/procedure.ts';
import type { Good, GoodReadings } from './good.ts';
import type { LoopAutomaton, LoopBench } from './loop-bench.ts';
import type { Subject } from './subject.ts';

export type CodeName = 'open' | 'too-low' | 'too-high' | 'leak';

/** A code that a monitor may store although nothing is faulty: because of what stands on the bench. */
export interface Code {
  readonly loop: Id;
  readonly code: CodeName;
  /** Whether it is stored on every path and for every sound circuit; else it is possible. */
  readonly certain: boolean;
}

/** Whether a monitor may look at one of its loops at this step. */
export function mayLook(step: Step): boolean {
  return isSwitched(step) || loopsRead(step).length > 0;
}

/** A monitor looks at its loops when the ignition is switched or a source comes back, and when one of its loops is read. */
export function looks(step: Step, automaton: LoopAutomaton, monitorOf: (loop: Id) => Id | null): boolean {
  return isSwitched(step) || loopsRead(step).some((loop) => monitorOf(loop) === automaton.loop.monitor);
}

function isSwitched(step: Step): boolean {
  return (
    changesTo('ignition', step).length > 0 || changesTo('source', step).some(({ isConnected }) => isConnected)
  );
}

/** The codes that the loop can set on a bench while its monitor is powered; none while it is not. */
export function codesSet(
  automaton: LoopAutomaton,
  monitor: Monitor | undefined,
  bench: LoopBench,
  subject: Subject,
  readings: GoodReadings,
): readonly Code[] {
  if (monitor === undefined || !isPowered(bench.power, automaton.feeding)) return [];
  const good = readings(subject, bench);
  return codesOf(good, monitor).map((code) => ({ loop: automaton.loop.id, ...code }));
}

function codesOf(good: Good, monitor: Monitor): readonly { code: CodeName; certain: boolean }[] {
  const { indication, leak } = good;
  if (indication === null) return [];
  if (leak === 'always') return [{ code: 'leak', certain: true }];
  const { value, canBeOpen } = indication;
  const codes: { code: CodeName; certain: boolean }[] = [];
  const canLeak = leak === 'sometimes';
  if (canLeak) codes.push({ code: 'leak', certain: false });
  const add = (code: CodeName, certain: boolean): void =>
    void codes.push({ code, certain: certain && !canBeOpen && !canLeak });
  if (canBeOpen) codes.push({ code: 'open', certain: value === null && !canLeak });
  if (value === null) return codes;
  if (monitor.tooLow !== null && beyond(value.least, monitor.tooLow))
    add('too-low', beyond(value.most, monitor.tooLow));
  if (monitor.tooHigh !== null && beyond(value.most, monitor.tooHigh))
    add('too-high', beyond(value.least, monitor.tooHigh));
  return codes;
}

function beyond(ohms: number, limit: Limit): boolean {
  return 'below' in limit ? ohms < limit.below : ohms > limit.above;
}
