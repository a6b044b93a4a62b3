import { formatSpan } from '../../quantity/quantity.ts';
import { proofLimit, unfitFor } from '../../readings/proof.ts';
import type { HighVoltage, Multimeter, Procedure, Source } from '../../model/procedure.ts';
import { overloaded } from './overload-check.ts';
import type { Context, Finder, Seen } from '../rule.ts';
import { isHighVoltage } from '../../model/source-kinds.ts';

/* Guards of high voltage: a source that no touch would be held against, and instruments that could never prove anything. */

export const unguardedSourceFinder: Finder = { check: unguardedSources };
export const unfitMeterFinder: Finder = {
  check: (context) => [...unfitMeters(context), ...overloaded(context)],
};

function unguardedSources({ procedure, circuits }: Context): readonly Seen[] {
  if (!everyLoopIsRead(procedure)) return [];
  return highVoltageIn(procedure).flatMap(({ id, path, feedsComplete }): readonly Seen[] => {
    if (!feedsComplete) return [];
    const place = { path, part: 'key' as const };
    const seen = (message: string): Seen => ({
      issue: { rule: 'unguarded-source', subject: id, place, message },
    });
    const isFed = circuits.live.some(({ highVoltage }) => highVoltage.includes(id));
    const isCarried = [...procedure.connectors.values()].some(({ carries }) => carries.includes(id));
    if (isFed || isCarried) return [];
    return [
      seen(
        `${id} feeds no live circuit and no connector carries it, so no step would be checked against it. ` +
          `Add \`carries: ${id}\` to the connectors that lead it, or name in \`feeds\` what it supplies.`,
      ),
    ];
  });
}

function unfitMeters({ procedure, graph }: Context): readonly Seen[] {
  return graph.steps.flatMap((step, index): readonly Seen[] => {
    if (step.verb !== 'prove-dead') return [];
    const source = procedure.sources.get(step.source);
    const known = procedure.sources.get(step.known);
    const meter = procedure.multimeters.get(step.with);
    if (!isHighVoltage(source) || known === undefined || meter === undefined) return [];
    const why = unfitInWords(source, known, meter);
    if (why === null) return [];
    const message = `${meter.id} cannot show that the circuit of ${source.id} is without voltage: ${why}.`;
    return [{ index, issue: { rule: 'unfit-meter', subject: meter.id, underline: ['with'], message } }];
  });
}

function unfitInWords(source: HighVoltage, known: Source, meter: Multimeter): string | null {
  const range = meter.voltage?.range ?? null;
  const volts = range === null ? '' : formatSpan(range, 'voltage');
  switch (unfitFor(source, known, meter, proofLimit(source, meter))) {
    case 'range':
      return `its range, ${volts}, does not reach the voltage of the source`;
    case 'accuracy':
      return 'with its error no reading shows that the voltage is below the safe one';
    case 'known':
      return `it does not surely show ${known.id}, on which it is tested before and after`;
    case null:
      return null;
  }
}

export function everyLoopIsRead({ loops }: Procedure): boolean {
  return [...loops.values()].every(({ complete }) => complete);
}

export function highVoltageIn({ sources }: Procedure): readonly HighVoltage[] {
  return [...sources.values()].filter(isHighVoltage);
}
