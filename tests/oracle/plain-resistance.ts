import type { Resistance, Series, Temperature } from '../../server/src/model/resistance.ts';
import { plainSpan } from './plain-procedure.ts';

/* What a part or load of a plain procedure says of its resistance, by the keys that it has. */

type Plain = Readonly<Record<string, unknown>>;

const span = (value: unknown) => plainSpan(value as string);

const temperatureOf = ({ temperature }: Plain): Temperature =>
  temperature === undefined ? 'ambient' : { stated: span(temperature) };

export function plainResistance(plain: Plain): Resistance | null {
  if (plain.kind === 'rtd')
    return {
      kind: 'platinum',
      r0: span(plain.r0).nominal,
      class: plain.class as 'AA' | 'A' | 'B',
      temperature: temperatureOf(plain),
    };
  if (plain.kind === 'thermistor')
    return {
      kind: 'thermistor',
      curve: { r25: span(plain.r25), beta: span(plain.beta) },
      tolerance: { fraction: Number((plain.tolerance as string).replace(' %', '')) / 100 },
      temperature: temperatureOf(plain),
    };
  if (plain.wire !== undefined)
    return {
      kind: 'copper-wire',
      wire: { squareMillimetres: Number((plain.wire as string).replace(' mm²', '')) },
      length: span(plain.length),
      temperature: temperatureOf(plain),
    };
  if (plain.resistance === undefined) return null;
  const resistance = span(plain.resistance);
  return plain.series === undefined
    ? { kind: 'stated', resistance }
    : { kind: 'preferred', resistance, series: plain.series as Series };
}
