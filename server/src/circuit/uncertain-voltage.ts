import type { Span } from '../quantity/quantity.ts';
import type { ConditionRanges } from './conditions.ts';
import { errorOfVoltage, indicateSigned, inputOf, withinVoltageRange } from './instrument-voltage.ts';
import type { Voltmeter } from './instrument-voltage.ts';
import type { Element, Network } from './network.ts';
import { numbered } from './numbered.ts';
import type { Drive } from './operating-point.ts';
import { atEndOf, resistanceAt, resistanceWithin } from './parts.ts';
import { wipersIn } from './shared-quantities.ts';
import type { Reckoned, Uncertain } from './uncertain.ts';
import { between } from './uncertain.ts';
import { filamentResistance } from './lamp.ts';
import { voltageWindow } from './lit-window.ts';
import { filamentsIn, litVoltageBetween, poweredNetwork } from './under-power.ts';
import type { Source } from './voltage-window.ts';

/** A reading of a voltage, with what is needed to say how likely its values are. */
export interface UncertainVoltage {
  readonly network: Network;
  readonly sources: readonly Source[];
  readonly from: string;
  readonly to: string;
  readonly ranges: ConditionRanges;
  readonly meter: Voltmeter;
  /** Elements of the same cause vary together; causes and sources vary by themselves. */
  readonly causeOf: (element: Element) => string;
}

export function uncertainVoltage(reading: UncertainVoltage): Uncertain {
  const { network, sources, from, to, ranges, meter } = reading;
  const window = voltageWindow(loaded(reading), sources, from, to, ranges);
  const worst = window.kind === 'number' ? indicateSigned(window.value, meter).value : null;
  return {
    worst,
    reckoned: reckonedVoltage({ ...reading, network }),
    shown: (volts) => withinVoltageRange(volts, meter),
    isBeyond: (volts) => Math.abs(volts) > meter.range.most,
  };
}

function loaded({ network, meter, from, to }: UncertainVoltage): Network {
  return [...poweredNetwork(network), inputOf(meter, from, to)];
}

/** In volts; the quantities are the temperatures, the error of the instrument, each source, each cause, and each wiper. */
function reckonedVoltage(reading: UncertainVoltage): Reckoned {
  const { sources, from, to, ranges, meter, causeOf } = reading;
  const network = loaded(reading);
  const entries = [...ranges.entered];
  const causes = [...new Set(network.map(causeOf))];
  const [errorAt, sourcesAt] = [1 + entries.length, 2 + entries.length];
  const causesAt = sourcesAt + sources.length;
  const wipers = wipersIn(network);
  const wipersAt = causesAt + causes.length;
  const placeOf = network.map((element) => causesAt + causes.indexOf(causeOf(element)));
  const whole = numbered(network, from, to, sources);
  const filaments = filamentsIn(network);
  const at = (places: ArrayLike<number>): number => {
    const conditions = {
      ambient: between(ranges.ambient, places[0]),
      entered: new Map(entries.map(([id, range], index) => [id, between(range, places[1 + index])])),
      wipers: new Map(wipers.map(({ id, place }, index) => [id, between(place, places[wipersAt + index])])),
    };
    const edges = whole.edgesWith(({ part }, index) =>
      between(resistanceAt(part, conditions), places[placeOf[index] ?? 0]),
    );
    const drives = sources.map((source, index) =>
      driveOf(source, whole.numberOf, between(source.value, places[sourcesAt + index])),
    );
    const lit = filaments.map(({ at: place, rated }) => ({
      at: place,
      ohms: (volts: number) => between(filamentResistance(rated, volts), places[placeOf[place] ?? 0]),
    }));
    const volts = litVoltageBetween(edges, lit, drives, whole.nodes, whole.from, whole.to);
    const error = errorOfVoltage(volts, meter);
    return between({ least: volts - error, most: volts + error }, places[errorAt]);
  };
  return { quantities: wipersAt + wipers.length, at };
}

function driveOf(
  { between: [plus, minus], kind }: Source,
  numberOf: (node: string) => number,
  value: number,
): Drive {
  return { a: numberOf(plus), b: numberOf(minus), kind, value };
}

/** How much of the width of a voltage comes from each element, each source and the instrument: all sum to 1. */
export interface VoltageShares {
  /** In the order of the network. */
  readonly elements: readonly number[];
  /** In the order of the sources. */
  readonly sources: readonly number[];
  readonly instrument: number;
}

/** What alone goes from its least to its most: of a potentiometer the track and the wiper, each with both sides. */
type Moved = Element | Source | { readonly track: string; readonly what: 'track' | 'wiper' };

/**
 * The share of each is what the reading moves where it alone goes from its least to its most and all else is nominal.
 * null: nothing moves it.
 */
export function sharesOfVoltage(reading: UncertainVoltage): VoltageShares | null {
  const { sources, from, to, ranges, meter } = reading;
  const network = loaded(reading);
  const whole = numbered(network, from, to, sources);
  type End = keyof Span;
  /** With one element, source, track or wiper at an end of its range, and all else nominal. */
  const volts = (one: Moved | null, end: End): number => {
    const endOf = (each: Element | Source): End => (each === one ? end : 'nominal');
    const ohmsOf = (element: Element): number =>
      element.part.kind === 'track' && one !== null && 'track' in one && one.track === element.part.wiper.id
        ? atEndOf(element.part, one.what, end)
        : resistanceWithin(element.part, ranges)[endOf(element)];
    const drives = sources.map((source) => driveOf(source, whole.numberOf, source.value[endOf(source)]));
    const edges = whole.edgesWith(ohmsOf);
    const lit = filamentsIn(network).map(({ at, element, rated }) => ({
      at,
      ohms: (across: number) => filamentResistance(rated, across)[endOf(element)],
    }));
    return litVoltageBetween(edges, lit, drives, whole.nodes, whole.from, whole.to);
  };
  const moved = (one: Moved): number => Math.abs(volts(one, 'most') - volts(one, 'least'));
  const ofElements = network.map((element) => {
    if (element.part.kind === 'track') {
      const { id: track } = element.part.wiper;
      // Of one side half of what moves both together.
      return (moved({ track, what: 'track' }) + moved({ track, what: 'wiper' })) / 2;
    }
    const range = resistanceWithin(element.part, ranges);
    return range.least === range.most ? 0 : moved(element);
  });
  const ofSources = sources.map(moved);
  const ofInstrument = 2 * errorOfVoltage(volts(null, 'nominal'), meter) + (ofElements.at(-1) ?? 0);
  const elements = ofElements.slice(0, -1);
  const sum = [...elements, ...ofSources].reduce((total, each) => total + each, ofInstrument);
  if (!(sum > 0)) return null;
  return {
    elements: elements.map((each) => each / sum),
    sources: ofSources.map((each) => each / sum),
    instrument: ofInstrument / sum,
  };
}
