import type { Decimal } from './decimal.ts';
import type { Dimension } from './dimensions.ts';

/** A unit as the program writes it, and what it is worth in the base unit of its dimension. */
export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly factor: Decimal;
}

interface Family {
  readonly dimension: Dimension;
  readonly symbol: string;
  /** Further spellings of equal rank. */
  readonly spellings: readonly string[];
  readonly prefixes: readonly Prefix[];
}

type Prefix = keyof typeof prefixes;

/** SI prefixes by their power of ten. `u` is the ASCII spelling of µ. */
const prefixes = { p: -12, n: -9, µ: -6, u: -6, m: -3, c: -2, '': 0, k: 3, M: 6, G: 9 } as const;

const families: readonly Family[] = [
  {
    dimension: 'resistance',
    symbol: 'Ω',
    spellings: ['ohm'],
    prefixes: ['µ', 'u', 'm', '', 'k', 'M', 'G'],
  },
  { dimension: 'voltage', symbol: 'V', spellings: [], prefixes: ['µ', 'u', 'm', '', 'k'] },
  { dimension: 'current', symbol: 'A', spellings: [], prefixes: ['n', 'µ', 'u', 'm', '', 'k'] },
  { dimension: 'capacitance', symbol: 'F', spellings: [], prefixes: ['p', 'n', 'µ', 'u', 'm', ''] },
  { dimension: 'time', symbol: 's', spellings: [], prefixes: ['µ', 'u', 'm', ''] },
  { dimension: 'length', symbol: 'm', spellings: [], prefixes: ['µ', 'u', 'm', 'c', '', 'k'] },
  { dimension: 'temperature', symbol: '°C', spellings: ['degC'], prefixes: [''] },
  { dimension: 'kelvin', symbol: 'K', spellings: [], prefixes: [''] },
  { dimension: 'wire-size', symbol: 'mm²', spellings: ['mm2'], prefixes: [''] },
  { dimension: 'power', symbol: 'W', spellings: [], prefixes: ['µ', 'u', 'm', '', 'k'] },
];

const bySpelling: ReadonlyMap<string, Unit> = collectUnits();

/** The unit that a word names, letter by letter; prefixes are case-exact. */
export function unitNamed(word: string): Unit | undefined {
  return bySpelling.get(withOneCodePoint(word));
}

/** A unit as a word could have meant it. */
export interface Meant {
  /** As it is to be written. */
  readonly spelling: string;
  readonly unit: Unit;
}

/**
 * Units of the dimension that the word would name if upper and lower case were the same. Who writes a small `m` means
 * milli: of units that differ in their prefix, mega is no answer to it.
 */
export function unitsButForCase(word: string, dimension: Dimension): readonly Meant[] {
  const written = withOneCodePoint(word).normalize('NFKC');
  const folded = written.toLowerCase();
  const meant = [...bySpelling]
    .filter(([spelling, unit]) => unit.dimension === dimension && foldedSpelling(spelling) === folded)
    .map(([spelling, unit]) => ({ spelling, unit }));
  const milli = meant.filter(({ spelling }) => spelling.startsWith('m'));
  return written.startsWith('m') && milli.length > 0 ? milli : meant;
}

/** True where the word is an SI prefix with nothing behind it, as in `4.7 k`. */
export function isBarePrefix(word: string): boolean {
  return word !== '' && Object.hasOwn(prefixes, withOneCodePoint(word));
}

/** The units in which values of a dimension are printed. */
export interface PrintingUnits {
  /** The smallest first. */
  readonly ladder: readonly Unit[];
  readonly base: Unit;
  /** Values from here up to 1 are printed in the base unit: `0.3 Ω`, but `15 mΩ`. */
  readonly baseFrom: number;
}

export function printingUnits(dimension: Dimension): PrintingUnits {
  return printing[dimension];
}

const printing: Readonly<Record<Dimension, PrintingUnits>> = {
  resistance: printedIn('resistance', 'Ω', ['µ', 'm', '', 'k', 'M', 'G'], 0.1),
  voltage: printedIn('voltage', 'V', ['µ', 'm', '', 'k'], 0.1),
  current: printedIn('current', 'A', ['n', 'µ', 'm', '', 'k'], 1),
  capacitance: printedIn('capacitance', 'F', ['p', 'n', 'µ', 'm', ''], 1),
  time: printedIn('time', 's', ['µ', 'm', ''], 0.1),
  length: printedIn('length', 'm', ['µ', 'm', '', 'k'], 0.1),
  temperature: printedIn('temperature', '°C', [''], 0),
  kelvin: printedIn('kelvin', 'K', [''], 0),
  'wire-size': printedIn('wire-size', 'mm²', [''], 0),
  power: printedIn('power', 'W', ['µ', 'm', '', 'k'], 0.1),
  place: { ladder: [percentOfTrack()], base: percentOfTrack(), baseFrom: 0 },
};

function percentOfTrack(): Unit {
  return { symbol: '%', dimension: 'place', factor: { coefficient: 1n, exponent: -2 } };
}

function printedIn(
  dimension: Dimension,
  symbol: string,
  used: readonly Prefix[],
  baseFrom: number,
): PrintingUnits {
  const prefixed = (prefix: Prefix): Unit => ({
    symbol: prefix + symbol,
    dimension,
    factor: { coefficient: 1n, exponent: prefixes[prefix] },
  });
  return { ladder: used.map(prefixed), base: prefixed(''), baseFrom };
}

function collectUnits(): Map<string, Unit> {
  const units = new Map<string, Unit>();
  for (const { dimension, symbol, spellings, prefixes: allowed } of families) {
    for (const prefix of allowed) {
      const factor = { coefficient: 1n, exponent: prefixes[prefix] };
      const unit = { symbol: (prefix === 'u' ? 'µ' : prefix) + symbol, dimension, factor };
      for (const spelling of [symbol, ...spellings]) units.set(prefix + spelling, unit);
    }
  }
  units.set('min', { symbol: 'min', dimension: 'time', factor: { coefficient: 60n, exponent: 0 } });
  units.set('%', percentOfTrack());
  units.set('h', { symbol: 'h', dimension: 'time', factor: { coefficient: 3600n, exponent: 0 } });
  return units;
}

/** OHM SIGN is read as GREEK CAPITAL OMEGA, GREEK SMALL MU as MICRO SIGN. */
function withOneCodePoint(word: string): string {
  return word.replaceAll('\u2126', '\u03a9').replaceAll('\u03bc', '\u00b5');
}

function foldedSpelling(spelling: string): string {
  return spelling.normalize('NFKC').toLowerCase();
}
