/** What a quantity measures. Each dimension has one base unit: Ω, V, A, F, s, m, °C, K, mm², W; of a place the whole track. */
export type Dimension =
  | 'resistance'
  | 'voltage'
  | 'current'
  | 'capacitance'
  | 'time'
  | 'length'
  | 'temperature'
  | 'kelvin'
  | 'wire-size'
  | 'power'
  | 'place';

/** How a quantity is written: the shapes of one string that a key can take. */
export type Shape = 'exact' | 'ranged' | 'limit' | 'accuracy';

interface Wording {
  readonly named: string;
  readonly exact: string;
  readonly ranged: string;
  readonly limit: string;
  readonly accuracy: string;
}

const wordings: Readonly<Record<Dimension, Wording>> = {
  resistance: {
    named: 'a resistance',
    exact: '`0.01 Ω`',
    ranged: '`2.0 Ω ± 10 %` or `1.7..2.3 Ω`',
    limit: '`below 1.0 Ω` or `above 4.5 Ω`',
    accuracy: '`3 % + 0.1 Ω` or `0.8 % + 3 digits`',
  },
  voltage: {
    named: 'a voltage',
    exact: '`12.6 V`',
    ranged: '`12.6 V` or `11..14.5 V`',
    limit: '`below 2 V` or `above 10 V`',
    accuracy: '`0.5 % + 2 digits`',
  },
  current: {
    named: 'a current',
    exact: '`40 mA`',
    ranged: '`40 mA` or `30..40 mA`',
    limit: '`below 40 mA` or `above 1 A`',
    accuracy: '`1 % + 1 mA`',
  },
  capacitance: {
    named: 'a capacitance',
    exact: '`6.8 mF`',
    ranged: '`6.8 mF ± 20 %`',
    limit: '`below 1 mF` or `above 1 mF`',
    accuracy: '`5 % + 3 digits`',
  },
  time: {
    named: 'a time',
    exact: '`3 min` or `45 s`',
    ranged: '`3 min` or `45..60 s`',
    limit: '`below 10 s` or `above 3 min`',
    accuracy: '`1 % + 1 s`',
  },
  length: {
    named: 'a length',
    exact: '`1.2 m`',
    ranged: '`1.2 m` or `1.1..1.3 m`',
    limit: '`below 2 m` or `above 2 m`',
    accuracy: '`1 % + 1 mm`',
  },
  temperature: {
    named: 'a temperature',
    exact: '`20 °C`',
    ranged: '`20 °C ± 5 °C` or `10..35 °C`',
    limit: '`below 35 °C` or `above 10 °C`',
    accuracy: '`1 °C`',
  },
  kelvin: {
    named: 'a temperature in kelvin',
    exact: '`3380 K`',
    ranged: '`3380 K` or `3380 K ± 1 %`',
    limit: '`below 3500 K` or `above 3300 K`',
    accuracy: '`1 % + 10 K`',
  },
  'wire-size': {
    named: 'a wire size',
    exact: '`0.5 mm²`',
    ranged: '`0.5 mm²` or `0.5 mm² ± 5 %`',
    limit: '`below 1 mm²` or `above 1 mm²`',
    accuracy: '`1 % + 0.01 mm²`',
  },
  power: {
    named: 'a power',
    exact: '`5 W`',
    ranged: '`5 W ± 10 %`',
    limit: '`below 5 W` or `above 5 W`',
    accuracy: '`1 % + 0.1 W`',
  },
  place: {
    named: 'a place on a track',
    exact: '`50 %`',
    ranged: '`10..90 %` or `50 % ± 5 %`',
    limit: '`below 90 %` or `above 10 %`',
    accuracy: '`1 %`',
  },
};

const shapeWords: Readonly<Record<Shape, string>> = {
  exact: '',
  ranged: '',
  limit: ' as a limit',
  accuracy: ' as an accuracy',
};

/** `a resistance`, with its article. */
export function nameOf(dimension: Dimension): string {
  return wordings[dimension].named;
}

/** What is expected, for messages and hovers: `a resistance, such as `2.0 Ω ± 10 %` or `1.7..2.3 Ω``. */
export function describeQuantity(shape: Shape, dimension: Dimension): string {
  const wording = wordings[dimension];
  return `${wording.named}${shapeWords[shape]}, such as ${wording[shape]}`;
}

export const wireDescription = 'a wire size, such as `0.5 mm²` or `AWG 20`';
export const ratingDescription = 'a rating of voltage and power, such as `13.5 V 5 W`';

/** Only temperatures in °C go below zero; for the same reason a percentage of one means nothing. */
export function hasZeroAsLeast(dimension: Dimension): boolean {
  return dimension !== 'temperature';
}
