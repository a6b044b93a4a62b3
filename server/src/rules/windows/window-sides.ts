import type { GoodOnBench, Reading } from '../../readings/reading.ts';
import { benchInWords } from '../../readings/bench-in-words.ts';
import { traceOf, wayInWords } from '../../paths/trace.ts';
import type { Related } from '../../model/finding.ts';
import type { Step } from '../../model/procedure.ts';
import type { Path } from '../../model/where.ts';
import type { Context, Seen } from '../rule.ts';

/* What the rules about windows share: the benches of a reading, and how a finding tells of them. */

export function byReading(
  context: Context,
  look: (context: Context, reading: Reading) => Seen | null,
): readonly Seen[] {
  return context.readings.readings.flatMap((reading) => look(context, reading) ?? []);
}

/** A bench of which it is known what a sound circuit shows on it. */
export type Side = GoodOnBench & { readonly indication: NonNullable<GoodOnBench['indication']> };

/** Nearest first. */
export function known(reading: Reading): readonly Side[] {
  return reading.good.filter((one): one is Side => one.indication !== null);
}

/** Whether the author states a window. */
export function expects(context: Context, reading: Reading): boolean {
  const step = context.graph.steps[reading.index];
  return step !== undefined && 'expect' in step && step.expect !== null;
}

/** The key that says what is read or measured. */
function whatIsAsked(step: Step | undefined): Path {
  if (step?.verb === 'wiggle') return [step.by === 'monitor' ? 'watch' : 'quantity'];
  return step === undefined ? [] : [step.verb];
}

/** A finding about a reading, with the ways to the benches that it speaks of; the first one's is its path. */
export function seen(
  context: Context,
  reading: Reading,
  rule: string,
  message: string,
  sides: readonly Side[],
  underline?: Path,
): Seen {
  const { graph } = context;
  const related = sides.flatMap((side): Related[] => {
    const trace = traceOf(graph, side.arrival.way);
    const last = graph.steps[reading.index];
    if (last === undefined) return [];
    const at = { file: last.file, path: last.path, part: 'value' as const };
    return [{ at, message: `${benchInWords(side.arrival.state)}: ${wayInWords(trace)}` }];
  });
  const [first] = sides;
  return {
    index: reading.index,
    issue: {
      rule,
      subject: reading.of,
      underline: underline ?? whatIsAsked(graph.steps[reading.index]),
      message,
      related,
    },
    ...(first === undefined ? {} : { way: first.arrival.way }),
  };
}
