import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import { indicate, withError, withLeads, withinRange } from './instrument.ts';
import type { Instrument } from './instrument.ts';
import { networkWindow } from './network.ts';
import type { Element, Network } from './network.ts';
import { numbered } from './numbered.ts';
import { resistanceAt } from './parts.ts';
import { wipersIn } from './shared-quantities.ts';
import { resistanceBetween } from './solver.ts';

/** A reading of a network, with what is needed to say how likely its values are. */
export interface UncertainReading {
  readonly network: Network;
  readonly from: string;
  readonly to: string;
  readonly ranges: ConditionRanges;
  readonly instrument: Instrument;
  /** Elements of the same cause vary together, as the two conductors of one cable do; causes vary by themselves. */
  readonly causeOf: (element: Element) => string;
}

/** A reading as a function of independent quantities, and what its instrument makes of it. Ohms or volts. */
export interface Uncertain {
  /** Worst case, after the error; null: no number can be shown. */
  readonly worst: Span | null;
  readonly reckoned: Reckoned;
  /** What the display can say of a number. */
  readonly shown: (amount: number) => number;
  readonly isBeyond: (amount: number) => boolean;
}

export function uncertainResistance(reading: UncertainReading): Uncertain {
  const { network, from, to, ranges, instrument } = reading;
  return {
    worst: indicate(networkWindow(network, from, to, ranges).value, instrument).value,
    reckoned: reckoned(reading),
    shown: (ohms) => withinRange(ohms, instrument),
    isBeyond: (ohms) => ohms > instrument.range.most,
  };
}

export interface Reckoned {
  /**
   * How many independent quantities there are: the temperature of the place, the temperatures that are entered, the leads,
   * the error of the instrument, each cause, and the wiper of each potentiometer.
   */
  readonly quantities: number;
  /**
   * What the instrument reckons before its range and its display step, in ohms or volts, from where each quantity stands in its
   * range: 0 at the least, 1 at the most. Infinity: no path.
   */
  readonly at: (places: ArrayLike<number>) => number;
}

/** The reading as a function of its independent quantities. */
function reckoned({ network, from, to, ranges, instrument, causeOf }: UncertainReading): Reckoned {
  const entries = [...ranges.entered];
  const leads = withLeads({ least: 0, nominal: 0, most: 0 }, instrument);
  const causes = [...new Set(network.map(causeOf))];
  const [leadsAt, errorAt, causesAt] = [1 + entries.length, 2 + entries.length, 3 + entries.length];
  const wipers = wipersIn(network);
  const wipersAt = causesAt + causes.length;
  const placeOf = network.map((element) => causesAt + causes.indexOf(causeOf(element)));
  const whole = numbered(network, from, to);
  const at = (places: ArrayLike<number>): number => {
    const conditions = {
      ambient: between(ranges.ambient, places[0]),
      entered: new Map(entries.map(([id, range], index) => [id, between(range, places[1 + index])])),
      wipers: new Map(wipers.map(({ id, place }, index) => [id, between(place, places[wipersAt + index])])),
    };
    const edges = whole.edgesWith(({ part }, index) =>
      between(resistanceAt(part, conditions), places[placeOf[index] ?? 0]),
    );
    const circuit = resistanceBetween(edges, whole.nodes, whole.from, whole.to);
    const ohms = circuit + between(leads, places[leadsAt]);
    return ohms === Infinity ? ohms : between(withError(ohms, instrument), places[errorAt]);
  };
  return { quantities: wipersAt + wipers.length, at };
}

/** A number so far along its range: 0 at the least, 1 at the most. */
export function between({ least, most }: Pick<Span, 'least' | 'most'>, place: number | undefined): number {
  return least + (place ?? NaN) * (most - least);
}
