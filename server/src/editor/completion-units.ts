import type { Schema } from '../format/walker.ts';

/** Units by a word of what the format says it expects. */
const unitsBy: readonly (readonly [RegExp, readonly string[]])[] = [
  [/accuracy|error/i, ['% + ', 'Ω']],
  [/resistance/i, ['Ω', 'mΩ', 'kΩ']],
  [/voltage/i, ['V']],
  [/current/i, ['mA', 'A']],
  [/capacitance/i, ['mF', 'µF']],
  [/length/i, ['m', 'cm']],
  [/cross-section|wire/i, ['mm²']],
  [/temperature/i, ['°C']],
  [/time|wait|duration/i, ['min', 's']],
];

/** Units that can follow a number that has been typed, with the space before them; empty: none belong there. */
export function unitsAfter(typed: string, schema: Schema | null): readonly string[] {
  if (!/\d\s*$/.test(typed) || schema === null) return [];
  const [expected, description] = [schema['x-expected'], schema.description].map((word) =>
    typeof word === 'string' ? word : '',
  );
  const fits = (words = ''): readonly string[] | undefined =>
    unitsBy.find(([pattern]) => pattern.test(words))?.[1];
  const gap = /\s$/.test(typed) ? '' : ' ';
  return (fits(expected) ?? fits(description) ?? []).map((unit) => gap + unit);
}
