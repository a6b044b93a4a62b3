import type { Procedure } from '../../server/src/model/procedure.ts';
import type { Resistance, Series, Temperature } from '../../server/src/model/resistance.ts';
import type { Interval } from './values.ts';

/* What a sound part measures, from what the file says of it: the kinds that the random and the shipped procedures use. */

type Of<Kind extends Resistance['kind']> = Extract<Resistance, { readonly kind: Kind }>;

/** In °C, all that may be where the part is. null: not known. */
function celsiusAt({ ambient, entries }: Procedure, temperature: Temperature): Interval | null {
  if (temperature === 'ambient') return ambient;
  if ('stated' in temperature) return temperature.stated;
  const entry = entries.get(temperature.entry);
  if (!entry?.range || entry.accuracy === null) return null;
  return { least: entry.range.least - entry.accuracy, most: entry.range.most + entry.accuracy };
}

/** Copper: 1/58 Ω mm²/m at 20 °C, 0.00393 per kelvin (IEC 60028). AWG diameters: 0.127 mm times 92^((36 - n)/39) (ASTM B258). */
function copper(procedure: Procedure, { wire, length, temperature }: Of<'copper-wire'>): Interval | null {
  const place = celsiusAt(procedure, temperature);
  if (place === null) return null;
  const area =
    'awg' in wire ? (Math.PI / 4) * (0.127 * 92 ** ((36 - wire.awg) / 39)) ** 2 : wire.squareMillimetres;
  const at = (celsius: number) => (1 / 58 / area) * (1 + 0.00393 * (celsius - 20));
  return { least: length.least * at(place.least), most: length.most * at(place.most) };
}

/** R25 exp(B (1/T - 1/298.15 K)), and a part more or less. */
function thermistor(procedure: Procedure, { curve, temperature, tolerance }: Of<'thermistor'>) {
  const place = celsiusAt(procedure, temperature);
  if (!('r25' in curve) || place === null || tolerance === null || !('fraction' in tolerance)) return null;
  const at = (celsius: number) =>
    curve.r25.nominal * Math.exp(curve.beta.nominal * (1 / (celsius + 273.15) - 1 / 298.15));
  const least = at(place.most) * (1 - tolerance.fraction);
  const most = at(place.least) * (1 + tolerance.fraction);
  return { least, most };
}

/** From memory of IEC 60751: kelvin at 0 °C and for each °C away from it, and where wire-wound sensors of the class hold. */
const PLATINUM = {
  AA: { at0: 0.1, each: 0.0017, holds: [-50, 250] },
  A: { at0: 0.15, each: 0.002, holds: [-100, 450] },
  B: { at0: 0.3, each: 0.005, holds: [-196, 600] },
} as const;

/** R0 (1 + A t + B t² + C (t - 100) t³), the last below 0 °C only (IEC 60751). */
function platinum(procedure: Procedure, { r0, class: named, temperature }: Of<'platinum'>): Interval | null {
  const place = celsiusAt(procedure, temperature);
  if (place === null) return null;
  const { at0, each } = PLATINUM[named];
  const off = (t: number) => at0 + each * Math.abs(t);
  const at = (t: number) =>
    r0 * (1 + 3.9083e-3 * t - 5.775e-7 * t ** 2 + (t < 0 ? -4.183e-12 * (t - 100) * t ** 3 : 0));
  return { least: at(place.least - off(place.least)), most: at(place.most + off(place.most)) };
}

/** Whether what is said of a sensor holds at every temperature there may be where it is. */
export function holdsThere(procedure: Procedure, resistance: Resistance): boolean {
  if (resistance.kind === 'platinum') {
    const place = celsiusAt(procedure, resistance.temperature);
    const [from, to] = PLATINUM[resistance.class].holds;
    return place === null || (place.least >= from && place.most <= to);
  }
  if (resistance.kind !== 'thermistor') return true;
  const ohms = thermistor(procedure, resistance);
  return ohms === null || (ohms.least >= 0.1 && ohms.most <= 100e6);
}

/** The tolerance that resistors of a series usually have (IEC 60063). */
const USUAL: Readonly<Record<Series, number>> = {
  E6: 0.2,
  E12: 0.1,
  E24: 0.05,
  E48: 0.02,
  E96: 0.01,
  E192: 0.005,
};

function preferred({ resistance, series }: Of<'preferred'>): Interval {
  if (resistance.least < resistance.most) return resistance;
  const share = USUAL[series];
  return { least: resistance.nominal * (1 - share), most: resistance.nominal * (1 + share) };
}

/** Of E6, E12 and E24 by agreement; the finer ones are the powers of ten, rounded to three digits, but for one of them. */
const E24 = '10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68 75 82 91'.split(' ').map(Number);

/** Whether the nominal value is one of the series, in any decade. */
export function isPreferred({ resistance, series }: Of<'preferred'>): boolean {
  const count = Number(series.slice(1));
  const values =
    count <= 24
      ? E24.filter((_, at) => at % (24 / count) === 0).map((value) => value * 10)
      : Array.from({ length: count }, (_, at) => Math.round(100 * 10 ** (at / count)));
  if (series === 'E192') values[values.indexOf(919)] = 920;
  if (resistance.nominal === 0) return false;
  const decade = Math.floor(Math.log10(resistance.nominal) + 1e-12);
  const digits = resistance.nominal / 10 ** (decade - 2);
  return values.some((value) => Math.abs(digits - value) < 1e-6);
}

/** Ohms of each conductor, by its curve also where that does not hold: `outside-validity` stands for it. null: not known. */
export function ohmsOf(procedure: Procedure, resistance: Resistance | null): Interval | null {
  switch (resistance?.kind) {
    case 'stated':
      return resistance.resistance;
    case 'preferred':
      return preferred(resistance);
    case 'copper-wire':
      return copper(procedure, resistance);
    case 'thermistor':
      return thermistor(procedure, resistance);
    case 'platinum':
      return platinum(procedure, resistance);
    case 'copper-coil':
    case 'lamp-rating':
    case 'heater-rating':
    case 'fuse-rating':
    case undefined:
      return null;
  }
}
