import type { Order } from '../project/analysis.ts';
import { formatWait } from '../quantity/quantity.ts';
import type { Readings } from '../readings/reading.ts';
import { listed } from '../rules/words.ts';
import type { Step } from '../model/procedure.ts';
import { markdown } from './markdown.ts';
import type { Markdown } from './markdown.ts';

/** The wait that is owed after a step. */
export function describeOwed({ owedAfter }: Order, index: number, { verb }: Step): readonly Markdown[] {
  return owedAfter
    .filter((one) => one.index === index)
    .map(({ sources, highVoltage, seconds }) =>
      verb === 'wait'
        ? markdown`After this wait ${formatWait(seconds)} more is owed by ${listed(sources)}.`
        : markdown`From here ${listed(sources)} is off: wait ${formatWait(seconds)} before hands touch what it feeds${
            highVoltage.length === 0
              ? ''
              : `, and verify that the circuit of ${listed(highVoltage)} is without voltage`
          }.`,
    );
}

/** Codes that the bench itself sets here. */
export function describeCodes({ codes }: Readings, index: number): readonly Markdown[] {
  const here = codes.find((one) => one.index === index)?.codes ?? [];
  return here.map(({ loop, code, certain }) =>
    certain
      ? markdown`Expect a code for ${loop}: ${code}.`
      : markdown`A code for ${loop} is possible: ${code}.`,
  );
}
