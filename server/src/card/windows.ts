import type { OutcomeName } from '../model/finding.ts';
import type { Quantity } from '../model/procedure.ts';
import type { CardReading, CardRow } from './model.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

/**
 * A window cut out of its one printed form, so that no digit is made twice. An end that is null does not exist, or the
 * window is not known.
 */
export interface PrintedWindow {
  readonly quantity: Quantity;
  readonly known: boolean;
  /** As it stands large on the card. */
  readonly large: string;
  readonly least: string | null;
  readonly most: string | null;
  /** No number belongs to the window. */
  readonly onlyOpen: boolean;
  /** Where there is no upper limit, a loop that reads open is within. */
  readonly openIsWithin: boolean;
  /** There is one for each row of a table, with an upper limit in all of them or in some only. */
  readonly byRow: 'all-limited' | 'some-limited' | null;
}

const base = {
  quantity: 'resistance',
  known: true,
  least: null,
  most: null,
  onlyOpen: false,
  openIsWithin: false,
  byRow: null,
} as const;

export function windowOf(reading: CardReading | undefined): PrintedWindow {
  if (reading === undefined) return { ...base, known: false, large: 'not known' };
  if (reading.rows.length > 0) return windowByRow(reading.rows);
  return printedWindow(reading.printed, reading.quantity);
}

function windowByRow(rows: readonly CardRow[]): PrintedWindow {
  const open = rows.filter(({ printed }) => printedWindow(printed, 'resistance').openIsWithin).length;
  const byRow = open === 0 ? 'all-limited' : 'some-limited';
  return { ...base, known: false, large: 'by the table', openIsWithin: open === rows.length, byRow };
}

/** One printed window, taken apart. */
export function printedWindow(large: string, quantity: Quantity): PrintedWindow {
  const window = { ...base, quantity };
  if (large === '') return { ...window, known: false, large: 'not known' };
  if (large === 'open')
    return { ...window, large: noNumber[quantity].alone, onlyOpen: true, openIsWithin: true };
  const [, from, to, unit] = /^(-?[\d.]+?)\.\.(-?[\d.]+)\s+(\S+)$/.exec(large) ?? [];
  if (from !== undefined && to !== undefined && unit !== undefined)
    return { ...window, large, least: `${from} ${unit}`, most: `${to} ${unit}` };
  const [, limit, value] = /^(below|above)\s+(.+)$/.exec(large) ?? [];
  if (value === undefined) return { ...window, large, openIsWithin: large === 'any value' };
  if (limit === 'below') return { ...window, large, most: value };
  return { ...window, large: `${large}, or ${noNumber[quantity].short}`, least: value, openIsWithin: true };
}

const noReading = {
  alone: 'no number (beyond its range)',
  reads: 'shows no number (beyond its range)',
  short: 'no number',
};

const open = { alone: 'open (no number)', reads: 'reads open (no number)', short: 'open' };

/** What a display shows that has no number: an ohmmeter then says open, a voltmeter only that it is beyond its range. */
const noNumber: Readonly<Record<Quantity, Record<'alone' | 'reads' | 'short', string>>> = {
  resistance: open,
  insulation: open,
  voltage: noReading,
  current: noReading,
};

/** A class of reading as what the display shows. */
export function classWords(name: OutcomeName, window: PrintedWindow): string {
  const words = plainClassWords(name, window);
  if (window.byRow === null) return words;
  const inRow = words.replace('the window', 'the window of its row');
  if (window.byRow === 'all-limited') return inRow;
  if (name === 'within') return `${inRow}, or open where the row says so`;
  return name === 'open' ? `${inRow}, where the row does not say so` : inRow;
}

function plainClassWords(name: OutcomeName, window: PrintedWindow): string {
  switch (name) {
    case 'within':
      if (!window.known) return 'shows a number within the window';
      return window.onlyOpen ? noNumber[window.quantity].reads : `shows ${window.large}`;
    case 'below':
      if (window.onlyOpen) return 'shows a number';
      return window.least === null ? 'shows a number below the window' : `shows less than ${window.least}`;
    case 'above':
      return window.most === null ? 'shows a number above the window' : `shows more than ${window.most}`;
    case 'open':
      return noNumber[window.quantity].reads;
    case 'leak':
      return 'reports a leak to ground or to a supply';
    case 'outside':
      return window.known
        ? `shows anything else than ${window.large}`
        : 'shows anything else than within the window';
    case 'else':
    case 'none':
    case 'stored':
    case 'present':
    case 'ok':
    case 'defect':
    case 'dead':
    case 'live':
    case 'window':
      return 'shows anything else';
  }
}

/** The same where several are listed; `beside`: next to a line for what is within, so that no number is said twice. */
export function classShort(name: OutcomeName, window: PrintedWindow, beside: boolean): string {
  if (name === 'leak') return 'a leak';
  if (beside && name === 'below' && !window.onlyOpen) return 'less';
  if (beside && name === 'above') return 'more';
  if (name === 'open' && window.byRow !== 'some-limited') return noNumber[window.quantity].short;
  return classWords(name, window).replace(/^(shows|reads) /, '');
}

/** Whether a reading can fall into a class at all, held against its window. */
export function canShow(name: OutcomeName, window: PrintedWindow): boolean {
  switch (name) {
    case 'below':
      return (
        !window.known ||
        window.onlyOpen ||
        (window.least !== null &&
          (quantityFacts[window.quantity].isSigned || Number.parseFloat(window.least) > 0))
      );
    case 'above':
      return !window.known || window.most !== null;
    case 'open':
      return !window.openIsWithin;
    case 'within':
    case 'leak':
    case 'outside':
    case 'else':
    case 'none':
    case 'stored':
    case 'present':
    case 'ok':
    case 'defect':
    case 'dead':
    case 'live':
    case 'window':
      return true;
  }
}
