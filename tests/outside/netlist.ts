import type { Hardware } from '../../server/src/bench/hardware.ts';
import type { Span } from '../../server/src/quantity/span.ts';
import type { Connector, Loop, Part, Procedure } from '../../server/src/model/procedure.ts';
import type { Resistance } from '../../server/src/model/resistance.ts';
import type { OracleNetwork } from './ngspice.ts';

/*
 * A loop on a bench as a netlist, written for the tests from the meaning of the format alone: it shares no code with the
 * program's own network.
 */

export type Corner = keyof Span;

/** Which ends of the tolerances are taken, and the ambient temperature in °C that goes with them. */
export function netlist(procedure: Procedure, loop: Loop, bench: Hardware, corner: Corner): OracleNetwork {
  const edges: { a: number; b: number; ohms: number }[] = [];
  let nodes = 2;
  let [left, right] = [0, 1];
  const resistor = (a: number, b: number, ohms: number): void => void edges.push({ a, b, ohms });

  for (const { id } of loop.elements) {
    const part = procedure.parts.get(id);
    const connector = procedure.connectors.get(id);
    if (part?.form === 'end') resistor(left, right, partOhms(procedure, part, corner));
    else if (part !== undefined) {
      const [far, farther] = [nodes++, nodes++];
      resistor(left, far, partOhms(procedure, part, corner));
      resistor(right, farther, partOhms(procedure, part, corner));
      [left, right] = [far, farther];
    } else if (connector !== undefined) {
      const [far, farther] = [nodes++, nodes++];
      const sides = { monitor: [left, right], end: [far, farther] } as const;
      const state = bench.connectors.get(id) ?? 'mated';
      if (state !== 'unplugged') {
        resistor(left, far, connector.contact?.[corner] ?? NaN);
        resistor(right, farther, connector.contact?.[corner] ?? NaN);
      }
      const fitted = [...bench.loads].filter(([, place]) => place.connector === id);
      const heldOpen = fitted.some(
        ([load, place]) =>
          place.side === connector.shortingBar?.side && procedure.loads.get(load)?.opensShortingBar === true,
      );
      const bar = barOhms(connector, state, corner);
      if (bar !== null && connector.shortingBar !== null && !heldOpen)
        resistor(...sides[connector.shortingBar.side as 'monitor' | 'end'], bar);
      for (const [load, place] of fitted)
        if (place.loop === loop.id)
          resistor(
            ...sides[place.side as 'monitor' | 'end'],
            statedOhms(procedure.loads.get(load)?.resistance ?? null, corner),
          );
      [left, right] = [far, farther];
    }
  }
  return { edges, from: 0, to: 1 };
}

function barOhms(
  connector: Connector,
  state: 'mated' | 'unlocked' | 'unplugged',
  corner: Corner,
): number | null {
  const bar = connector.shortingBar;
  if (bar === null || state === 'mated') return null;
  const isClosed = bar.closes === 'unlocked' || state === 'unplugged';
  return isClosed ? (bar.resistance?.[corner] ?? NaN) : null;
}

/** Greatest resistance at 20 °C of a 0.5 mm² stranded conductor, IEC 60228 class 5, metal-coated: 40.1 Ω/km. */
const greatestPerMetre = new Map([[0.5, 40.1e-3]]);

function statedOhms(resistance: Resistance | null, corner: Corner): number {
  if (resistance === null) return NaN;
  // A tolerance that is stated stands before that of the series.
  if (resistance.kind === 'preferred' && resistance.resistance.least < resistance.resistance.most)
    return resistance.resistance[corner];
  if (resistance.kind !== 'stated') throw new Error(`this netlist does not know ${resistance.kind}`);
  return resistance.resistance[corner];
}

type Thermistor = Extract<Resistance, { readonly kind: 'thermistor' }>;

/** R25 exp(B (1/T - 1/298.15 K)): least where it is hottest, with the tolerance in percent of the resistance. */
function thermistorOhms(entries: Procedure['entries'], part: Thermistor, corner: Corner): number {
  const { curve, temperature, tolerance } = part;
  const entry =
    typeof temperature === 'object' && 'entry' in temperature ? entries.get(temperature.entry) : undefined;
  if (!('r25' in curve) || !entry?.range || entry.accuracy === null)
    throw new Error('no B value over an entry');
  if (tolerance === null || !('fraction' in tolerance)) throw new Error('no tolerance in percent');
  const { least, nominal, most } = entry.range;
  const celsius = { least: most + entry.accuracy, nominal, most: least - entry.accuracy }[corner];
  const factor = { least: 1 - tolerance.fraction, nominal: 1, most: 1 + tolerance.fraction }[corner];
  const ratio = Math.exp(curve.beta.nominal * (1 / (celsius + 273.15) - 1 / 298.15));
  return curve.r25.nominal * ratio * factor;
}

/** Annealed copper at 20 °C, IEC 60028: 1/58 Ω mm²/m, 0.00393 per kelvin. */
function partOhms({ ambient, entries }: Procedure, { resistance }: Part, corner: Corner): number {
  if (resistance?.kind === 'thermistor') return thermistorOhms(entries, resistance, corner);
  if (resistance?.kind !== 'copper-wire') return statedOhms(resistance, corner);
  if (!('squareMillimetres' in resistance.wire))
    throw new Error('this netlist knows square millimetres only');
  const { squareMillimetres: area } = resistance.wire;
  const perMetre = corner === 'most' ? (greatestPerMetre.get(area) ?? NaN) : 1 / (58 * area);
  return perMetre * resistance.length[corner] * (1 + 0.00393 * (ambient[corner] - 20));
}
