import { quantityFacts } from '../model/quantity-kinds.ts';
import { whereMeasured } from '../model/step-in-words.ts';
import type { Work } from '../model/work.ts';
import type { Analysis } from '../project/analysis.ts';
import { windowsOver } from '../readings/at-entered.ts';
import { benchInWords } from '../readings/bench-in-words.ts';
import { assumedInWords, likelyInWords, shareBars } from '../readings/explanation-in-words.ts';
import { entriesInWords, rowInWords } from '../readings/by-entry-in-words.ts';
import { guardedInWords } from '../readings/guarded.ts';
import type { GoodOnBench, Reading } from '../readings/reading.ts';
import { amountInWords, remarksInWords, shownInWords } from '../readings/shown-in-words.ts';
import type { Procedure, Quantity } from '../model/procedure.ts';
import { codeBlock, markdown, markdownLines, markdownList } from './markdown.ts';
import type { Markdown } from './markdown.ts';

/** The windows of a reading step, bench by bench, how likely their values are, and what they come from. */
export function* describeReading(analysis: Analysis, index: number): Work<readonly Markdown[]> {
  const { readings } = (yield* analysis.windows()).value;
  const blocks: (readonly Markdown[])[] = [];
  for (const reading of readings.filter((one) => one.index === index)) {
    blocks.push([
      markdown`${headOf(reading)} reads **${reading.printed === '' ? 'not known' : reading.printed}**${origin(reading)}`,
      markdownList(
        reading.good.map((good) => `${benchInWords(good.arrival.state)}: ${shown(good, reading.quantity)}`),
      ),
      ...overEntered(analysis.procedure().value, reading),
      ...guarded(reading),
      ...(yield* explained(analysis, reading)),
    ]);
  }
  return blocks.flat();
}

function headOf({ of, loop, quantity, carrying }: Reading): Markdown {
  if (loop !== null) return markdown`**${of}**`;
  return markdown`The ${quantityFacts[quantity].named} ${whereMeasured(carrying)} **${of}**`;
}

function origin({ accepted, exact }: Reading): string {
  if (accepted === null || accepted === 'open') return '';
  if (accepted.from === 'expect') return ' (as stated)';
  return exact ? ' (computed)' : ' (computed, an outer bound)';
}

function guarded(reading: Reading): readonly Markdown[] {
  const words = guardedInWords(reading);
  return words === null ? [] : [markdown`${capital(words)}.`];
}

/** The window at some values that may be entered. */
function overEntered(procedure: Procedure, reading: Reading): readonly Markdown[] {
  if (reading.byEntry.length === 0) return [];
  return [
    markdown`By what is entered for ${entriesInWords(reading)}, for example:`,
    markdownList(windowsOver(procedure, reading).map(rowInWords)),
  ];
}

function shown(good: GoodOnBench, quantity: Quantity): string {
  const { indication } = good;
  const nominal = indication?.value?.nominal;
  const words = shownInWords(indication, quantity);
  const number =
    nominal === undefined ? words : `worst case ${words}, nominal ${amountInWords(nominal, quantity)}`;
  return `${number}${remarksInWords(good)}`;
}

function* explained(analysis: Analysis, { index, of, good }: Reading): Work<readonly Markdown[]> {
  const explanation = yield* analysis.explain(index, of);
  if (explanation === null) return [];
  const where = good.length > 1 ? `, ${benchInWords(explanation.bench)}` : '';
  const bars = shareBars(explanation);
  return [
    ...likelyInWords(explanation).map((line) => markdown`${capital(line)}${where}.`),
    ...(bars.length === 0
      ? []
      : [
          markdown`
Its width comes from
          `,
          codeBlock(bars),
        ]),
    markdownLines([
      markdown`
Assumed:
      `,
      markdownList(assumedInWords(explanation)),
    ]),
  ];
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
