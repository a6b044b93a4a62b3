import { indicate, indicateInRanges } from '../circuit/circuit.ts';
import type { Indication, Instrument, SignedMeter, Voltmeter } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Carrying, Id, MeterRange, Monitor, Multimeter, Quantity } from '../model/procedure.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

/** The instrument of a reading. What could not be read is null. */
export interface ReadBy {
  readonly id: Id;
  readonly quantity: Quantity;
  /** From the least that it shows in its first range to the most in its last. */
  readonly range: Span | null;
  /** Of its first range, which is the finest. */
  readonly accuracy: MeterRange['accuracy'];
  readonly resolution: number | null;
  /** The least first; it takes the first that holds its reading. */
  readonly ranges: readonly MeterRange[];
  /** Ohms of both leads; null: there are none, or they are zeroed. */
  readonly leads: Span | null;
  /** Of a voltmeter, the ohms between its terminals. */
  readonly input: Span | null;
  /** Of what carries a current, the ohms between its terminals. */
  readonly burden: Span | null;
  /** A monitor that sees paths to ground or a supply below this many ohms. */
  readonly leakBelow: number | null;
}

export function readByMonitor(monitor: Monitor): ReadBy {
  const { id, leakBelow } = monitor;
  return {
    ...overall([monitor]),
    id,
    quantity: 'resistance',
    leads: null,
    input: null,
    burden: null,
    leakBelow,
  };
}

/** null: it has no range for the quantity. */
export function readByMultimeter(
  meter: Multimeter,
  quantity: Quantity,
  carrying: Carrying | null = null,
): ReadBy | null {
  const { id, resistance, voltage, insulation, current, clamp, zeroed } = meter;
  const common = { id, quantity, leads: null, input: null, burden: null, leakBelow: null };
  switch (quantity) {
    case 'resistance': {
      const leads = zeroed ? null : meter.leads;
      return resistance && { ...overall([resistance, ...resistance.further]), ...common, leads };
    }
    case 'insulation':
      return insulation && { ...overall([insulation]), ...common };
    case 'current':
      if (carrying?.kind === 'clamp') return clamp && { ...overall([clamp]), ...common };
      return current && { ...overall([current]), ...common, burden: current.burden };
    case 'voltage':
      return voltage && { ...overall([voltage]), ...common, input: voltage.input };
  }
}

function overall(ranges: readonly MeterRange[]): Pick<ReadBy, keyof MeterRange | 'ranges'> {
  const [first] = ranges;
  const ends = ranges.map(({ range }) => range);
  const [least, most] = [ends[0] ?? null, ends.at(-1) ?? null];
  return {
    range: least === null || most === null ? null : { ...least, most: most.most },
    accuracy: first?.accuracy ?? null,
    resolution: first?.resolution ?? null,
    ranges,
  };
}

/** What reads resistance, the range for so many ohms; null: a value could not be read. */
export function instrumentOf(readBy: ReadBy, ohms = 0): Instrument | null {
  const instruments = instrumentsOf(readBy);
  return instruments?.find(({ range }) => ohms <= range.most) ?? instruments?.at(-1) ?? null;
}

/** All of its ranges; null: a value could not be read. */
function instrumentsOf({ quantity, ranges, leads }: ReadBy): readonly Instrument[] | null {
  if (quantityFacts[quantity].dimension !== 'resistance') return null;
  const read = ranges.flatMap(({ range, accuracy, resolution }): Instrument[] =>
    range === null || accuracy === null || resolution === null
      ? []
      : [{ range, accuracy, resolution, ...(leads === null ? {} : { leads }) }],
  );
  return read.length < ranges.length ? null : read;
}

/** What it can show of a circuit, before its display step; null: a value could not be read. */
export function indicationOf(circuit: Span | 'open', readBy: ReadBy): Indication | null {
  const instruments = instrumentsOf(readBy);
  const [only, second] = instruments ?? [];
  if (instruments === null || only === undefined) return null;
  return second === undefined ? indicate(circuit, only) : indicateInRanges(circuit, instruments);
}

/** The display step with which a number is shown; null: not readable. */
export function resolutionAt({ ranges, resolution }: ReadBy, amount: number): number | null {
  const holding =
    ranges.find(({ range }) => range !== null && Math.abs(amount) <= range.most) ?? ranges.at(-1);
  return holding?.resolution ?? resolution;
}

/** What reads voltage; null: a value could not be read. */
export function voltmeterOf({ quantity, range, accuracy, resolution, input }: ReadBy): Voltmeter | null {
  if (quantity !== 'voltage' || range === null || accuracy === null) return null;
  return resolution === null || input === null ? null : { range, accuracy, resolution, input };
}

/** What reads a current; null: a value could not be read. */
export function ammeterOf({ quantity, range, accuracy, resolution }: ReadBy): SignedMeter | null {
  if (quantity !== 'current' || range === null || accuracy === null) return null;
  return resolution === null ? null : { range, accuracy, resolution };
}
