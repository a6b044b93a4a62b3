import type { ConditionRanges } from './conditions.ts';
import { errorOfVoltage, indicateSigned, inputOf, withinVoltageRange } from './instrument-voltage.ts';
import type { Voltmeter } from './instrument-voltage.ts';
import type { Element, Network } from './network.ts';
import { numbered } from './numbered.ts';
import { voltageBetween } from './operating-point.ts';
import type { Drive } from './operating-point.ts';
import { resistanceAt, resistanceWithin } from './parts.ts';
import type { Reckoned, Uncertain } from './uncertain.ts';
import { between } from './uncertain.ts';
import { voltageWindow } from './voltage-window.ts';
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
  return [...network, inputOf(meter, from, to)];
}

/** In volts; the quantities are the temperatures, the error of the instrument, each source, and each cause. */
function reckonedVoltage(reading: UncertainVoltage): Reckoned {
  const { sources, from, to, ranges, meter, causeOf } = reading;
  const network = loaded(reading);
  const entries = [...ranges.entered];
  const causes = [...new Set(network.map(causeOf))];
  const [errorAt, sourcesAt] = [1 + entries.length, 2 + entries.length];
  const causesAt = sourcesAt + sources.length;
  const placeOf = network.map((element) => causesAt + causes.indexOf(causeOf(element)));
  const whole = numbered(network, from, to, sources);
  const at = (places: ArrayLike<number>): number => {
    const conditions = {
      ambient: between(ranges.ambient, places[0]),
      entered: new Map(entries.map(([id, range], index) => [id, between(range, places[1 + index])])),
    };
    const edges = whole.edgesWith(({ part }, index) =>
      between(resistanceAt(part, conditions), places[placeOf[index] ?? 0]),
    );
    const drives = sources.map((source, index) =>
      driveOf(source, whole.numberOf, between(source.value, places[sourcesAt + index])),
    );
    const volts = voltageBetween(edges, drives, whole.nodes, whole.from, whole.to);
    const error = errorOfVoltage(volts, meter);
    return between({ least: volts - error, most: volts + error }, places[errorAt]);
  };
  return { quantities: causesAt + causes.length, at };
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

/**
 * The share of each is what the reading moves where it alone goes from its least to its most and all else is nominal.
 * null: nothing moves it.
 */
export function sharesOfVoltage(reading: UncertainVoltage): VoltageShares | null {
  const { sources, from, to, ranges, meter } = reading;
  const network = loaded(reading);
  const whole = numbered(network, from, to, sources);
  const nominal = (element: Element): number => resistanceWithin(element.part, ranges).nominal;
  const volts = (
    ohmsOf: (element: Element) => number,
    voltsOf: (source: Source) => number = ({ value }) => value.nominal,
  ): number => {
    const drives = sources.map((source) => driveOf(source, whole.numberOf, voltsOf(source)));
    return voltageBetween(whole.edgesWith(ohmsOf), drives, whole.nodes, whole.from, whole.to);
  };
  const moved = (end: (name: 'least' | 'most') => number): number => Math.abs(end('most') - end('least'));
  const ofElements = network.map((element) => {
    const range = resistanceWithin(element.part, ranges);
    if (range.least === range.most) return 0;
    return moved((name) => volts((one) => (one === element ? range[name] : nominal(one))));
  });
  const ofSources = sources.map((source) =>
    moved((name) => volts(nominal, (one) => (one === source ? one.value[name] : one.value.nominal))),
  );
  const ofInstrument = 2 * errorOfVoltage(volts(nominal), meter) + (ofElements.at(-1) ?? 0);
  const elements = ofElements.slice(0, -1);
  const sum = [...elements, ...ofSources].reduce((total, each) => total + each, ofInstrument);
  if (!(sum > 0)) return null;
  return {
    elements: elements.map((each) => each / sum),
    sources: ofSources.map((each) => each / sum),
    instrument: ofInstrument / sum,
  };
}
