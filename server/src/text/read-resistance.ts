import { checkEntry } from './check-entry.ts';
import type { CheckedEntry } from './check-entry.ts';
import type { EntryRules } from './entry-rules.ts';
import type { Entry, Id, PartKind } from '../model/procedure.ts';
import { valueAt } from './problem.ts';
import { aboveZero, exact, positive, rating, span, wire } from './quantities.ts';
import type { RawEntry } from './read-entries.ts';
import { formOf } from './read-form.ts';
import { temperatureOf } from './read-temperature.ts';
import { readThermistor } from './read-thermistor.ts';
import type { Reader } from './reader.ts';
import type { Resistance, Series } from '../model/resistance.ts';
import type { Path } from '../model/where.ts';

type Report = Reader['report'];

/** The temperature in °C at which the resistance of a coil is stated, where it does not say. */
const coilReference = '20 °C';

/** The resistance of a part that is no stage, in the form in which it is written. */
export function readResistance(
  kind: Exclude<PartKind, 'initiator' | 'hv-section' | 'consumer' | 'potentiometer'>,
  entry: RawEntry,
  rules: EntryRules,
  reader: Reader,
  entries: ReadonlyMap<Id, Entry>,
): Resistance | null {
  const { report } = reader;
  const { path, node } = entry;
  const at = (key: string): Path => [...path, key];
  const form = formOf('parts', kind, entry, report);
  switch (form) {
    case null:
      return null;
    case 'rotary-coupling':
    case 'series':
    case 'switch':
    case 'cable-by-resistance':
    case 'fuse-by-resistance':
      return stated(checkEntry(form, node, path, rules, report).values.resistance, path, report);
    case 'lamp-by-resistance':
    case 'heater-by-resistance':
      return statedCold(checkEntry(form, node, path, rules, report), path, report);
    case 'lamp-by-rating':
      return rated('lamp-rating', checkEntry(form, node, path, rules, report), path, report);
    case 'heater-by-rating':
      return rated('heater-rating', checkEntry(form, node, path, rules, report), path, report);
    case 'fuse-by-rating':
      return fuseRating(checkEntry(form, node, path, rules, report).values.rated, path, report);
    case 'resistor':
      return ofSeries(checkEntry(form, node, path, rules, report), path, report);
    case 'cable-by-size': {
      const checked = checkEntry(form, node, path, rules, report);
      const size = wire(checked.values.wire, at('wire'), report);
      const length = span(checked.values.length, 'length', at('length'), report);
      const temperature = temperatureOf(checked, path, reader, entries);
      if (size === null || length === null || temperature === null) return null;
      return { kind: 'copper-wire', wire: size, length, temperature };
    }
    case 'coil': {
      const checked = checkEntry(form, node, path, rules, report);
      const { values, bad } = checked;
      const resistance = span(values.resistance, 'resistance', at('resistance'), report);
      const reference = exact(
        bad.has('at') ? undefined : (values.at ?? coilReference),
        'temperature',
        at('at'),
        report,
      );
      const temperature = temperatureOf(checked, path, reader, entries);
      if (resistance === null || reference === null || temperature === null) return null;
      return { kind: 'copper-coil', resistance, at: reference, temperature };
    }
    case 'thermistor-by-beta':
    case 'thermistor-by-coefficients':
      return readThermistor(form, entry, rules, reader, entries);
    case 'rtd': {
      const checked = checkEntry(form, node, path, rules, report);
      const r0 = positive(checked.values.r0, 'resistance', at('r0'), report);
      const temperature = temperatureOf(checked, path, reader, entries);
      const name = checked.values.class;
      if (r0 === null || name === undefined || temperature === null) return null;
      return { kind: 'platinum', r0, class: name, temperature };
    }
  }
}

export function stated(text: string | undefined, path: Path, report: Report): Resistance | null {
  const resistance = span(text, 'resistance', [...path, 'resistance'], report);
  return resistance === null ? null : { kind: 'stated', resistance };
}

/** What gets hot under power: stated cold, and hot beside it, which may be `same`. */
export function statedCold(
  { values, bad }: CheckedEntry<{ readonly resistance?: string; readonly hot?: string | undefined }>,
  path: Path,
  report: Report,
): Resistance | null {
  const cold = stated(values.resistance, path, report);
  if (cold?.kind !== 'stated' || bad.has('hot')) return null;
  if (values.hot === 'same') return cold;
  if (values.hot === undefined) return { ...cold, hot: 'unstated' };
  const hot = aboveZero(values.hot, 'resistance', [...path, 'hot'], report);
  return hot === null ? null : { ...cold, hot };
}

export function rated(
  kind: 'lamp-rating' | 'heater-rating',
  { values }: CheckedEntry<{ readonly rated?: string }>,
  path: Path,
  report: Report,
): Resistance | null {
  const found = rating(values.rated, [...path, 'rated'], report);
  return found === null ? null : { kind, ...found };
}

/** The rated currents of blade fuses up to 40 A, in ampere (ISO 8820-3). */
const fuseRatings = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40];

function fuseRating(text: string | undefined, path: Path, report: Report): Resistance | null {
  const at = [...path, 'rated'];
  const amperes = positive(text, 'current', at, report);
  if (amperes === null) return null;
  if (fuseRatings.includes(amperes)) return { kind: 'fuse-rating', amperes };
  const message = `Blade fuses are rated ${fuseRatings.join(', ')} A. Measure any other fuse and state its \`resistance\`.`;
  report({ rule: 'wrong-value', at: valueAt(at), message });
  return null;
}

/** A resistor, of a series or not. */
export function ofSeries(
  { values, bad }: CheckedEntry<{ readonly resistance?: string; readonly series?: Series | undefined }>,
  path: Path,
  report: Report,
): Resistance | null {
  if (bad.has('series')) return null;
  if (values.series === undefined) return stated(values.resistance, path, report);
  // No series has a value of 0 Ω.
  const resistance = aboveZero(values.resistance, 'resistance', [...path, 'resistance'], report);
  return resistance === null ? null : { kind: 'preferred', resistance, series: values.series };
}
