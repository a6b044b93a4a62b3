import { formatAccuracy } from '../quantity/quantity.ts';
import { benchInWords } from '../readings/bench-in-words.ts';
import type { GoodOnBench, Reading, Readings } from '../readings/reading.ts';
import { ohmsInWords, shownInWords } from '../readings/shown-in-words.ts';
import { contributions } from '../readings/width.ts';
import type { Procedure } from '../text/procedure.ts';

/** No more causes of the width than this are listed. */
const listedCauses = 5;

/** The window of a reading step, bench by bench, and where its width comes from. */
export function describeReading(
  procedure: Procedure,
  { readings }: Readings,
  index: number,
): readonly string[] {
  return readings
    .filter((reading) => reading.index === index)
    .flatMap((reading) => [
      `**${reading.loop.id}** reads **${reading.printed === '' ? 'not known' : reading.printed}**${origin(reading)}`,
      reading.good.map((good) => `- ${benchInWords(good.arrival.state)}: ${shown(good)}`).join('\n'),
      ...width(procedure, reading),
    ]);
}

function origin({ accepted }: Reading): string {
  if (accepted === null || accepted === 'open') return '';
  return accepted.from === 'expect' ? ' (as stated)' : ' (computed)';
}

function shown({ indication }: GoodOnBench): string {
  const nominal = indication?.value?.nominal;
  return nominal === undefined
    ? shownInWords(indication)
    : `${shownInWords(indication)}, nominal ${ohmsInWords(nominal)}`;
}

function width(procedure: Procedure, { good, loop, monitor }: Reading): readonly string[] {
  const [nearest] = good;
  if (nearest === undefined) return [];
  const causes = contributions(procedure, loop, nearest.arrival.state.hardware)
    .slice(0, listedCauses)
    .map(({ of, halfWidth }) => `${of} ±${ohmsInWords(halfWidth)}`);
  const accuracy = monitor?.accuracy ?? null;
  const error =
    accuracy === null || monitor === undefined
      ? []
      : [`${monitor.id} ${formatAccuracy(accuracy, 'resistance')}`];
  const all = [...causes, ...error];
  return all.length === 0 ? [] : [`Width, each alone: ${all.join('; ')}`];
}
