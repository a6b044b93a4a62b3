import { formatQuantity, formatSpan, formatWire } from '../quantity/quantity.ts';
import type { Part } from '../model/procedure.ts';
import { followsTemperature } from '../model/resistance.ts';
import type { Resistance, SensorCurve, SensorTolerance, Temperature } from '../model/resistance.ts';

/** A resistance as the file states it: `1.7..2.3 Ω`, `1.2 m of 0.5 mm² copper`, `100 Ω at 0 °C, class B, at coolant`. */
export function resistanceInWords(resistance: Resistance): string {
  const value = valueInWords(resistance);
  if (!followsTemperature(resistance) || resistance.temperature === 'ambient') return value;
  return `${value}, at ${temperatureInWords(resistance.temperature)}`;
}

/** The same of a part; of a potentiometer the track and where its wiper may stand. null: not readable. */
export function partInWords({ resistance, wiper }: Pick<Part, 'resistance' | 'wiper'>): string | null {
  if (resistance === null) return null;
  const value = resistanceInWords(resistance);
  return wiper === null ? value : `track ${value}, wiper at ${formatSpan(wiper, 'place')} from its first end`;
}

/** `ambient temperature`, the id of an entry, or `60..90 °C`. */
export function temperatureInWords(temperature: Temperature): string {
  if (temperature === 'ambient') return 'ambient temperature';
  return 'entry' in temperature ? temperature.entry : formatSpan(temperature.stated, 'temperature');
}

function valueInWords(resistance: Resistance): string {
  switch (resistance.kind) {
    case 'stated':
      return statedInWords(resistance);
    case 'preferred':
      return `${formatSpan(resistance.resistance, 'resistance')} (${resistance.series})`;
    case 'lamp-rating':
    case 'heater-rating':
      return `${formatQuantity(resistance.volts, 'voltage')} ${formatQuantity(resistance.watts, 'power')}`;
    case 'fuse-rating':
      return `rated ${formatQuantity(resistance.amperes, 'current')}`;
    case 'copper-wire':
      return `${formatSpan(resistance.length, 'length')} of ${formatWire(resistance.wire)} copper`;
    case 'copper-coil':
      return `${formatSpan(resistance.resistance, 'resistance')} at ${formatQuantity(resistance.at, 'temperature')}, copper`;
    case 'thermistor':
      return `${curveInWords(resistance.curve)}${toleranceInWords(resistance.tolerance)}`;
    case 'platinum':
      return `platinum, ${formatQuantity(resistance.r0, 'resistance')} at 0 °C, class ${resistance.class}`;
  }
}

function statedInWords({ resistance, hot }: Extract<Resistance, { readonly kind: 'stated' }>): string {
  const value = formatSpan(resistance, 'resistance');
  return hot === undefined || hot === 'unstated'
    ? value
    : `${value} cold, ${formatSpan(hot, 'resistance')} hot`;
}

function curveInWords(curve: SensorCurve): string {
  if ('coefficients' in curve) return `NTC, Steinhart-Hart ${curve.coefficients.join(', ')}`;
  const { r25, beta } = curve;
  return `NTC, ${formatSpan(r25, 'resistance')} at 25 °C, B ${formatSpan(beta, 'kelvin')}`;
}

function toleranceInWords(tolerance: SensorTolerance | null): string {
  if (tolerance === null) return '';
  const off =
    'fraction' in tolerance ? percent(tolerance.fraction) : formatQuantity(tolerance.kelvin, 'temperature');
  return `, ± ${off}`;
}

function percent(fraction: number): string {
  return `${Number((100 * fraction).toPrecision(12))} %`;
}
