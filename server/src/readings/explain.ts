import type { Work } from '../model/work.ts';
import {
  drawReadings,
  middlePart,
  rootSumSquare,
  sharesOfVoltage,
  sharesOfWidth,
  uncertainResistance,
  uncertainVoltage,
} from '../circuit/circuit.ts';
import type { ConditionRanges, Network, Uncertain } from '../circuit/circuit.ts';
import type { Id, Procedure, Quantity } from '../model/procedure.ts';
import { assumedOf, entriesFollowed } from './assumed.ts';
import type { Assumed } from './assumed.ts';
import { conditionsAtNominal } from './conditions.ts';
import type { Good } from './good.ts';
import { instrumentOf, voltmeterOf } from './instruments.ts';
import type { ReadBy } from './instruments.ts';
import type { LoopBench } from './loop-bench.ts';
import { causeOf, ownerOf } from './loop-network.ts';
import type { Reading } from './reading.ts';
import type { Seen } from './subject.ts';

/** Between these most sound circuits read. Ohms or volts, before the display step. */
export interface Likely {
  readonly least: number;
  readonly most: number;
}

/**
 * Where the window of a reading comes from, on the bench that is reached first, and where temperatures are entered with
 * the nominal one entered.
 */
export interface Explanation {
  readonly bench: LoopBench;
  /** What is entered, °C, of the entries that the reading depends on. */
  readonly entered: readonly { readonly entry: Id; readonly celsius: number }[];
  readonly quantity: Quantity;
  /** About 95 of 100 sound circuits. */
  readonly rootSumSquare: Likely;
  /** 95 of 100 circuits that were drawn; `most` is Infinity where that is open. null: none were asked for. */
  readonly drawn: (Likely & { readonly draws: number }) | null;
  /** How much of the width comes from each part, connector, load and instrument, the greatest first; they sum to 1. */
  readonly shares: readonly { readonly part: Id; readonly share: number }[];
  readonly assumed: readonly Assumed[];
}

/** The same draws each time, so that the same file says the same. */
const seed = 1;

/** null: the reading shows no number, or it is not known. */
export function* explainReading(
  procedure: Procedure,
  reading: Reading,
  draws: number,
): Work<Explanation | null> {
  const [nearest] = reading.good;
  const { instrument } = reading;
  if (nearest === undefined || instrument === null || nearest.missing.length > 0) return null;
  const bench = nearest.arrival.state;
  const seen = reading.seen(bench);
  const ranges = conditionsAtNominal(procedure);
  const weighed = seen === null ? null : weighedBy[reading.quantity](seen, instrument, nearest, ranges);
  if (weighed === null) return null;
  const likely = rootSumSquare(weighed.uncertain);
  if (likely === null) return null;
  const { carrying, shares } = weighed;
  const entries = entriesFollowed(carrying);
  return {
    bench,
    entered: [...ranges.entered].flatMap(([entry, { nominal }]) =>
      entries.has(entry) ? [{ entry, celsius: nominal }] : [],
    ),
    quantity: reading.quantity,
    rootSumSquare: { least: likely.least, most: likely.most },
    drawn: draws > 0 ? yield* drawn(weighed.uncertain, draws) : null,
    shares: sharesInOrder(shares),
    assumed: assumedOf(procedure, carrying, instrument),
  };
}

function* drawn(reading: Uncertain, draws: number): Work<Explanation['drawn']> {
  const drawing = drawReadings(reading, draws, seed);
  for (;;) {
    const next = drawing.next();
    if (next.done === true) return { draws, ...middlePart(next.value, 0.95) };
    yield { stage: 'windows', done: next.value };
  }
}

/** A reading with what its width comes from. */
interface Weighed {
  readonly uncertain: Uncertain;
  /** The elements that have a share: the rest is not on the way of the current. */
  readonly carrying: Network;
  /** By part, connector, load, source and instrument. */
  readonly shares: ReadonlyMap<Id, number>;
}

type Weigh = (seen: Seen, readBy: ReadBy, good: Good, ranges: ConditionRanges) => Weighed | null;

const weighedBy: Readonly<Record<Quantity, Weigh>> = {
  resistance: weighedOhms,
  insulation: weighedOhms,
  // Where most sound circuits read a current is not told.
  current: () => null,
  voltage: (seen, readBy, _, ranges) => weighedVoltage(seen, readBy, ranges),
};

function weighedOhms(
  { network, probes: [from, to] }: Seen,
  readBy: ReadBy,
  { circuit }: Good,
  ranges: ConditionRanges,
): Weighed | null {
  const instrument = instrumentOf(readBy, typeof circuit === 'string' ? 0 : circuit.nominal);
  if (instrument === null) return null;
  const uncertain = uncertainResistance({ network, from, to, ranges, instrument, causeOf });
  const found = sharesOfWidth(network, from, to, ranges, instrument);
  if (found === null) return { uncertain, carrying: network, shares: new Map() };
  const others = [
    [readBy.id, found.instrument],
    [`leads of ${readBy.id}`, found.leads],
  ] as const;
  return { uncertain, ...ofElements(network, found.elements, others) };
}

function weighedVoltage(
  { network, sources, probes: [from, to] }: Seen,
  readBy: ReadBy,
  ranges: ConditionRanges,
): Weighed | null {
  const meter = voltmeterOf(readBy);
  if (meter === null) return null;
  const reading = { network, sources, from, to, ranges, meter, causeOf };
  const uncertain = uncertainVoltage(reading);
  const found = uncertain.worst === null ? null : sharesOfVoltage(reading);
  if (found === null) return { uncertain, carrying: network, shares: new Map() };
  const ofSources = sources.map(({ id }, index) => [id, found.sources[index] ?? 0] as const);
  const others = [[readBy.id, found.instrument] as const, ...ofSources];
  return { uncertain, ...ofElements(network, found.elements, others) };
}

function ofElements(
  network: Network,
  elements: readonly number[],
  others: readonly (readonly [Id, number])[],
): Pick<Weighed, 'carrying' | 'shares'> {
  const shares = new Map<Id, number>(others);
  for (const [index, element] of network.entries()) {
    const owner = ownerOf(element);
    shares.set(owner, (shares.get(owner) ?? 0) + (elements[index] ?? 0));
  }
  return { carrying: network.filter((_, index) => (elements[index] ?? 0) > 0), shares };
}

function sharesInOrder(shares: Weighed['shares']): Explanation['shares'] {
  return [...shares]
    .map(([part, share]) => ({ part, share }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}
