import { place } from './completion-places.ts';

/** What a quantity can go on as. It replaces the text from the number on. */
export interface Form {
  readonly label: string;
  readonly detail: string;
  /** How many of the characters that are typed it replaces. */
  readonly replaces: number;
  /** With places to fill in. */
  readonly written: string;
}

interface Measure {
  /** The usual one first. */
  readonly units: readonly string[];
  /** What a spread is written with; without it the value is exact or a range. */
  readonly spread?: string;
  readonly isRange?: boolean;
  readonly isAccuracy?: boolean;
}

const ohms = ['Ω', 'mΩ', 'kΩ'];
const percent = '5 %';

/** By the words with which the format says what it expects. */
const measures: Readonly<Record<string, Measure>> = {
  'a resistance with its spread': { units: ohms, spread: percent, isRange: true },
  'a resistance': { units: ohms, spread: percent, isRange: true },
  'a resistance with its spread, or `same`': { units: ohms, isRange: true },
  'a resistance range': { units: ohms, isRange: true },
  'an exact resistance': { units: ohms },
  '`below` and a resistance': { units: ohms },
  '`above` and a resistance': { units: ohms },
  'a range, a limit or `open`': { units: ohms, isRange: true },
  'an accuracy': { units: ['Ω', 'mΩ', 'digits'], isAccuracy: true },
  'an accuracy of a voltage': { units: ['V', 'mV', 'digits'], isAccuracy: true },
  'a voltage': { units: ['V'], isRange: true },
  'a voltage range': { units: ['V'], isRange: true },
  'an exact voltage': { units: ['V', 'mV'] },
  'a current': { units: ['mA', 'A'] },
  'a capacitance': { units: ['mF', 'µF'], spread: '20 %' },
  'a duration': { units: ['min', 's'] },
  'a length': { units: ['m', 'cm'] },
  'a wire size': { units: ['mm²'] },
  'a rating of voltage and power': { units: ['V', 'W'] },
  'a temperature in kelvin': { units: ['K'], spread: '1 %' },
  'a place on the track': { units: ['%'], isRange: true },
  'a percentage or a temperature': { units: ['%', '°C'] },
  'an exact temperature': { units: ['°C'] },
  'a temperature range': { units: ['°C'], isRange: true },
  'a temperature range or an id of `entries`': { units: ['°C'], isRange: true },
  'a temperature with its spread': { units: ['°C'], spread: '5 °C', isRange: true },
};

export function isQuantity(expected: string): boolean {
  return Object.hasOwn(measures, expected);
}

/** No quantity is longer. */
const longest = 200;

const behindNumber = /(^|[\s.±+])(\d+(?:\.\d+)?) *([\p{L}°][\p{L}²°]*)? *$/u;
const behindPercent = /(?:^|\s)(\d+(?:\.\d+)?) *% *$/;

/** Units and what may follow them, behind a number that has been typed; empty: nothing belongs there. */
export function formsOf(written: string, expected: string): readonly Form[] {
  const typed = written.slice(-longest);
  const measure = measures[expected];
  if (measure === undefined) return [];
  const accuracy = measure.isAccuracy === true && !typed.includes('+') ? behindPercent.exec(typed) : null;
  const constant = `0.1 ${measure.units[0] ?? ''}`;
  if (accuracy !== null)
    return [form(typed, accuracy[1] ?? '', `+ ${constant}`, `% + ${place(1, constant)}`)];
  const match = behindNumber.exec(typed);
  if (match === null) return [];
  const [, , number = '', unit] = match;
  const before = typed.slice(0, match.index) + (match[1] ?? '');
  if (/AWG\s*$/.test(before)) return [];
  const units = unit !== undefined && typed.endsWith(' ') ? [] : measure.units;
  const listed = units.map((one) => form(typed, number, one, one));
  if (measure.isAccuracy === true && before.trim() === '')
    return [form(typed, number, '% + ', `% + ${place(1, constant)}`), ...listed];
  if (/±\s*$/.test(before)) {
    // The tolerance is in the unit of the value.
    const used = /([\p{L}°][\p{L}²°]*) *± *$/u.exec(before)?.[1] ?? measure.units[0];
    const same = listed.filter(({ label }) => label === used);
    return measure.spread?.endsWith('%') === true ? [form(typed, number, '%', '%'), ...same] : same;
  }
  if (before.includes('..') || before.includes('±')) return listed;
  return [...listed, ...spreads(typed, number, unit, measure)];
}

function spreads(typed: string, number: string, unit: string | undefined, measure: Measure): readonly Form[] {
  const { spread, isRange = false, units } = measure;
  const [usual = ''] = units;
  const written = units.find((one) => one === unit) ?? usual;
  const forms: Form[] = [];
  if (unit !== undefined && unit !== written) return forms;
  if (spread !== undefined) {
    const [amount = '', of = ''] = spread.split(' ');
    forms.push(form(typed, number, `${written} ± ${spread}`, `${written} ± ${place(1, amount)} ${of}`));
  }
  if (isRange && unit === undefined) {
    const to = {
      ...form(typed, number, `..${number} ${written}`, ''),
      label: `.. ${written}`,
      detail: 'from … to …',
    };
    forms.push({ ...to, written: `${number}..${place(1, number)} ${written}` });
  }
  return forms;
}

function form(typed: string, number: string, label: string, written: string): Form {
  const replaces = typed.length - typed.lastIndexOf(number);
  return { label, detail: `${number} ${label.trim()}`, replaces, written: `${number} ${written}` };
}
