import type { Work } from '../bench/work.ts';
import type { Analysis } from '../project/analysis.ts';
import { benchInWords } from '../readings/bench-in-words.ts';
import { assumedInWords, likelyInWords, shareBars } from '../readings/explanation-in-words.ts';
import { entriesInWords, rowInWords } from '../readings/by-entry-in-words.ts';
import { guardedInWords } from '../readings/guarded.ts';
import type { GoodOnBench, Reading } from '../readings/reading.ts';
import { amountInWords, remarksInWords, shownInWords } from '../readings/shown-in-words.ts';
import type { Quantity } from '../text/procedure.ts';

/** The windows of a reading step, bench by bench, how likely their values are, and what they come from. */
export function* describeReading(analysis: Analysis, index: number): Work<readonly string[]> {
  const { readings } = (yield* analysis.windows()).value;
  const blocks: (readonly string[])[] = [];
  for (const reading of readings.filter((one) => one.index === index)) {
    blocks.push([
      `${headOf(reading)} reads **${reading.printed === '' ? 'not known' : reading.printed}**${origin(reading)}`,
      reading.good
        .map((good) => `- ${benchInWords(good.arrival.state)}: ${shown(good, reading.quantity)}`)
        .join('\n'),
      ...table(reading),
      ...guarded(reading),
      ...(yield* explained(analysis, reading)),
    ]);
  }
  return blocks.flat();
}

function headOf({ of, loop, quantity }: Reading): string {
  return loop === null ? `The ${quantity} across **${of}**` : `**${of}**`;
}

function origin({ accepted }: Reading): string {
  if (accepted === null || accepted === 'open') return '';
  return accepted.from === 'expect' ? ' (as stated)' : ' (computed)';
}

function guarded(reading: Reading): readonly string[] {
  const words = guardedInWords(reading);
  return words === null ? [] : [`${words.charAt(0).toUpperCase()}${words.slice(1)}.`];
}

/** The window for what is entered, row by row. */
function table(reading: Reading): readonly string[] {
  if (reading.byEntry.length === 0) return [];
  const rows = reading.byEntry.map((row) => `- ${rowInWords(row)}`).join('\n');
  return [`By what is entered for ${entriesInWords(reading)}:\n\n${rows}`];
}

function shown(good: GoodOnBench, quantity: Quantity): string {
  const { indication } = good;
  const nominal = indication?.value?.nominal;
  const words = shownInWords(indication, quantity);
  const number =
    nominal === undefined ? words : `worst case ${words}, nominal ${amountInWords(nominal, quantity)}`;
  return `${number}${remarksInWords(good)}`;
}

function* explained(analysis: Analysis, { index, of, good }: Reading): Work<readonly string[]> {
  const explanation = yield* analysis.explain(index, of);
  if (explanation === null) return [];
  const where = good.length > 1 ? `, ${benchInWords(explanation.bench)}` : '';
  const bars = shareBars(explanation);
  return [
    ...likelyInWords(explanation).map((line) => `${line.charAt(0).toUpperCase()}${line.slice(1)}${where}.`),
    ...(bars.length === 0 ? [] : ['Its width comes from', ['```text', ...bars, '```'].join('\n')]),
    `Assumed:\n${assumedInWords(explanation)
      .map((line) => `- ${line}`)
      .join('\n')}`,
  ];
}
