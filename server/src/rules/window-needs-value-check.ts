import { benchInWords } from '../readings/bench-in-words.ts';
import type { Missing } from '../readings/good.ts';
import type { Reading } from '../readings/reading.ts';
import { subjectInWords } from '../readings/subject.ts';
import type { Id } from '../text/procedure.ts';
import type { Context, Finder, Seen } from './rule.ts';
import { byReading, expects, seen } from './window-sides.ts';
import { listed } from './words.ts';

export const windowNeedsValueFinder: Finder = { check: (context) => byReading(context, needsValue) };

function needsValue(context: Context, reading: Reading): Seen | null {
  const bench = reading.good.find(({ missing }) => missing.length > 0);
  if (bench === undefined || expects(context, reading)) return null;
  const message =
    `No window can be computed for ${subjectInWords(reading)} when ${benchInWords(bench.arrival.state)}. ` +
    whatIsMissing(bench.missing);
  return { ...seen(context, reading, 'window-needs-value', message, []), way: bench.arrival.way };
}

function whatIsMissing(missing: readonly Missing[]): string {
  const ids = [...new Set(missing.map(({ of }) => of))];
  const isInner = missing.some(({ value }) => value === 'inner');
  return isInner ? innerMissing(ids) : hotMissing(ids);
}

function innerMissing(ids: readonly Id[]): string {
  return (
    `It moves by more than a display step if there are 50 mΩ inside ${listed(ids)}, with what flows here. ` +
    `State \`resistance\` ${ids.length === 1 ? 'there' : 'at each'}, such as \`resistance: 5..20 mΩ\`, or \`0 Ω\` if it holds its voltage.`
  );
}

function hotMissing(ids: readonly Id[]): string {
  const [its, at] =
    ids.length === 1 ? ['its cold resistance is', 'there'] : ['their cold resistances are', 'at each'];
  return (
    `It depends on how hot ${listed(ids)} ${ids.length === 1 ? 'gets' : 'get'}, and only ${its} stated. ` +
    `State \`hot\` ${at}, the resistance under power, or \`hot: same\`; or \`rated\` in place of \`resistance\`.`
  );
}
