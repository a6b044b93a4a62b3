import type { FormName } from '../format/words.ts';
import { checkEntry } from './check-entry.ts';
import type { CheckedEntry } from './check-entry.ts';
import type { EntryRules } from './entry-rules.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Entry, Id } from '../model/procedure.ts';
import { aboveZero, sensorTolerance } from './quantities.ts';
import type { RawEntry } from './read-entries.ts';
import { temperatureOf } from './read-temperature.ts';
import type { Reader } from './reader.ts';
import type { Resistance, SensorCurve, SensorTolerance } from '../model/resistance.ts';

type Form = FormName<'parts', 'thermistor'>;

interface Common {
  readonly tolerance?: string | undefined;
  readonly temperature?: string | undefined;
}

/** An NTC thermistor in one of its two forms. */
export function readThermistor(
  form: Form,
  entry: RawEntry,
  rules: EntryRules,
  reader: Reader,
  entries: ReadonlyMap<Id, Entry>,
): Resistance | null {
  const { path, node } = entry;
  const { report } = reader;
  const read = (curve: SensorCurve | null, checked: CheckedEntry<Common>): Resistance | null => {
    const { values, bad } = checked;
    const tolerance = sensorTolerance(values.tolerance, [...path, 'tolerance'], report);
    const temperature = temperatureOf(checked, path, reader, entries);
    const isMissing = bad.has('tolerance') || (values.tolerance !== undefined && tolerance === null);
    if (curve === null || temperature === null || isMissing) return null;
    return isSpread(curve, tolerance, entry, report)
      ? { kind: 'thermistor', curve, tolerance, temperature }
      : null;
  };
  if (form === 'thermistor-by-coefficients') {
    const checked = checkEntry(form, node, path, rules, report);
    return read(coefficients(checked.values.coefficients, entry, report), checked);
  }
  const checked = checkEntry(form, node, path, rules, report);
  const r25 = aboveZero(checked.values.r25, 'resistance', [...path, 'r25'], report);
  const beta = aboveZero(checked.values.beta, 'kelvin', [...path, 'beta'], report);
  return read(r25 === null || beta === null ? null : { r25, beta }, checked);
}

/** No two thermistors are the same: one of the three values has a spread. */
function isSpread(
  curve: SensorCurve,
  tolerance: SensorTolerance | null,
  { id, path }: RawEntry,
  report: Reader['report'],
): boolean {
  if (tolerance !== null || 'coefficients' in curve) return true;
  const { r25, beta } = curve;
  if (r25.least < r25.most || beta.least < beta.most) return true;
  const message = `The part \`${id}\` needs \`tolerance\`, such as \`3 %\` or \`1 °C\`, or a spread on \`r25\` or \`beta\`.`;
  report({ rule: 'missing-key', at: keyAt(path), message, subject: 'tolerance' });
  return false;
}

/** With B above zero and C not below, the resistance falls with temperature everywhere, and there is one for each. */
function coefficients(
  written: readonly number[] | undefined,
  { path }: RawEntry,
  report: Reader['report'],
): SensorCurve | null {
  const [a, b, c] = written ?? [];
  if (a === undefined || b === undefined || c === undefined) return null;
  const refuse = (index: number, message: string): null => {
    report({ rule: 'wrong-value', at: valueAt([...path, 'coefficients', index]), message });
    return null;
  };
  if (b <= 0) return refuse(1, 'B is above zero: else the resistance would not fall with temperature.');
  if (c < 0) return refuse(2, 'C is not below zero: else the curve would turn round.');
  return { coefficients: [a, b, c] };
}
