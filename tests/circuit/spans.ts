import type { Instrument } from '../../server/src/circuit/circuit.ts';
import type { Span } from '../../server/src/quantity/quantity.ts';

/** One number, or a range around a nominal value. */
export function span(least: number, nominal = least, most = nominal): Span {
  return { least, nominal, most };
}

/** As a control unit of the trade reads its loops: 0..10 Ω, 3 % + 0.1 Ω, in steps of 0.01 Ω. */
export const monitor: Instrument = {
  range: span(0, 5, 10),
  accuracy: { fraction: 0.03, constant: 0.1, digits: 0 },
  resolution: 0.01,
};
