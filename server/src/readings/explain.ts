import type { Work } from '../bench/work.ts';
import { drawReadings, middlePart, rootSumSquare, sharesOfWidth } from '../circuit/circuit.ts';
import type { Network, UncertainReading } from '../circuit/circuit.ts';
import type { Id, Procedure } from '../text/procedure.ts';
import { assumedOf, entriesFollowed } from './assumed.ts';
import type { Assumed } from './assumed.ts';
import { conditionsAtNominal } from './conditions.ts';
import { instrumentOf } from './instruments.ts';
import type { LoopBench } from './loop-bench.ts';
import { causeOf, ownerOf } from './loop-network.ts';
import type { Reading } from './reading.ts';

/** Between these most sound circuits read. Ohms, before the display step. */
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
  const readBy = reading.instrument;
  if (nearest === undefined || readBy === null) return null;
  const { circuit } = nearest;
  const instrument = instrumentOf(readBy, typeof circuit === 'string' ? 0 : circuit.nominal);
  if (instrument === null) return null;
  const bench = nearest.arrival.state;
  const seen = reading.seen(bench);
  if (seen === null) return null;
  const { network, probes } = seen;
  const ranges = conditionsAtNominal(procedure);
  const uncertain = { network, from: probes[0], to: probes[1], ranges, instrument, causeOf };
  const likely = rootSumSquare(uncertain);
  if (likely === null) return null;
  const { carrying, shares } = sharesOf(uncertain, readBy.id);
  const entries = entriesFollowed(carrying);
  return {
    bench,
    entered: [...ranges.entered].flatMap(([entry, { nominal }]) =>
      entries.has(entry) ? [{ entry, celsius: nominal }] : [],
    ),
    rootSumSquare: { least: likely.least, most: likely.most },
    drawn: draws > 0 ? yield* drawn(uncertain, draws) : null,
    shares,
    assumed: assumedOf(procedure, carrying, readBy),
  };
}

function* drawn(reading: UncertainReading, draws: number): Work<Explanation['drawn']> {
  const drawing = drawReadings(reading, draws, seed);
  for (;;) {
    const next = drawing.next();
    if (next.done === true) return { draws, ...middlePart(next.value, 0.95) };
    yield { stage: 'windows', done: next.value };
  }
}

/** The shares by what the elements belong to, and the elements that have one: the rest is not on the way of the current. */
function sharesOf(
  reading: UncertainReading,
  monitor: Id,
): { readonly carrying: Network; readonly shares: Explanation['shares'] } {
  const { network, from, to, ranges, instrument } = reading;
  const found = sharesOfWidth(network, from, to, ranges, instrument);
  if (found === null) return { carrying: network, shares: [] };
  const byOwner = new Map<Id, number>([
    [monitor, found.instrument],
    [`leads of ${monitor}`, found.leads],
  ]);
  for (const [index, element] of network.entries()) {
    const owner = ownerOf(element);
    byOwner.set(owner, (byOwner.get(owner) ?? 0) + (found.elements[index] ?? 0));
  }
  const shares = [...byOwner]
    .map(([part, share]) => ({ part, share }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
  return { carrying: network.filter((_, index) => (found.elements[index] ?? 0) > 0), shares };
}
