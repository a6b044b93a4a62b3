import { greatestOf } from '../quantity/extremes.ts';
import { formatQuantity } from '../quantity/quantity.ts';
import type { Quantity } from '../model/procedure.ts';
import type { Explanation, Likely } from './explain.ts';
import { amountInWords } from './shown-in-words.ts';

/** Cells of a bar of the whole width. */
const barCells = 24;

/** Shares below this part are told together. */
const leastToldAlone = 0.005;

/** The root sum of squares, and what was drawn if it was. */
export function likelyInWords({ entered, quantity, rootSumSquare, drawn }: Explanation): readonly string[] {
  const { least, most } = rootSumSquare;
  const at = entered
    .map(({ entry, celsius }) => `, ${entry} ${formatQuantity(celsius, 'temperature')}`)
    .join('');
  return [
    `root sum of squares${at}: ${amountInWords(least, quantity)} to ${amountInWords(most, quantity)}, about 95 of 100 sound circuits`,
    ...(drawn === null
      ? []
      : [
          `of ${drawn.draws} sound circuits drawn at random, the middle 95 of 100${at}: ${drawnInWords(drawn, quantity)}`,
        ]),
  ];
}

function drawnInWords({ least, most }: Likely, quantity: Quantity): string {
  const end = most === Infinity ? 'open' : amountInWords(most, quantity);
  return least === Infinity ? 'open' : `${amountInWords(least, quantity)} to ${end}`;
}

/** A line with a bar for each share of the width, in characters of one width: they show in light and dark alike. */
export function shareBars({ shares }: Explanation): readonly string[] {
  const alone = shares.filter(({ share }) => share >= leastToldAlone);
  const rest = shares.slice(alone.length).reduce((sum, { share }) => sum + share, 0);
  const rows = [
    ...alone,
    ...(rest > 0 ? [{ part: alone.length === 0 ? 'everything' : 'the rest', share: rest }] : []),
  ];
  const widest = greatestOf(
    rows.map(({ part }) => part.length),
    0,
  );
  return rows.map(({ part, share }) => `${part.padEnd(widest)}  ${bar(share)}  ${percent(share)}`);
}

function bar(share: number): string {
  const halves = Math.round(2 * barCells * share);
  const full = '█'.repeat(Math.floor(halves / 2));
  return `${full}${halves % 2 === 1 ? '▌' : ''}`.padEnd(barCells);
}

function percent(share: number): string {
  return share < leastToldAlone ? ' <1 %' : `${Math.round(100 * share)} %`.padStart(5);
}

/** Things of which the same is assumed share a line. */
export function assumedInWords({ assumed }: Explanation): readonly string[] {
  const byText = new Map<string, string[]>();
  for (const { what, value, source } of assumed) {
    const text = `${value} (${source})`;
    byText.set(text, [...(byText.get(text) ?? []), what]);
  }
  return [...byText].map(([text, things]) => `${things.join(', ')}: ${text}`);
}
