import type { Work } from '../bench/work.ts';
import { drawReadings, middlePart, rootSumSquare, sharesOfWidth } from '../circuit/circuit.ts';
import type { UncertainReading } from '../circuit/circuit.ts';
import type { Id, Procedure } from '../text/procedure.ts';
import { assumedOf } from './assumed.ts';
import type { Assumed } from './assumed.ts';
import { conditionsOf } from './conditions.ts';
import { instrumentOf } from './good.ts';
import type { LoopBench } from './loop-bench.ts';
import { causeOf, loopNetwork, ownerOf } from './loop-network.ts';
import type { Reading } from './reading.ts';

/** Between these most sound circuits read. Ohms, before the display step. */
export interface Likely {
  readonly least: number;
  readonly most: number;
}

/** Where the window of a reading comes from, on the bench that is reached first. */
export interface Explanation {
  readonly bench: LoopBench;
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
  const { loop, monitor } = reading;
  const instrument = monitor === undefined ? null : instrumentOf(monitor);
  if (nearest === undefined || monitor === undefined || instrument === null) return null;
  const bench = nearest.arrival.state;
  const compiled = loopNetwork(procedure, loop, bench.hardware);
  if (compiled === null) return null;
  const { network, probes } = compiled;
  const ranges = conditionsOf(procedure);
  const uncertain = { network, from: probes[0], to: probes[1], ranges, instrument, causeOf };
  const likely = rootSumSquare(uncertain);
  if (likely === null) return null;
  return {
    bench,
    rootSumSquare: { least: likely.least, most: likely.most },
    drawn: draws > 0 ? yield* drawn(uncertain, draws) : null,
    shares: sharesOf(uncertain, monitor.id),
    assumed: assumedOf(procedure, network, monitor),
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

function sharesOf(reading: UncertainReading, monitor: Id): Explanation['shares'] {
  const { network, from, to, ranges, instrument } = reading;
  const shares = sharesOfWidth(network, from, to, ranges, instrument);
  if (shares === null) return [];
  const byOwner = new Map<Id, number>([
    [monitor, shares.instrument],
    [`leads of ${monitor}`, shares.leads],
  ]);
  for (const [index, element] of network.entries()) {
    const owner = ownerOf(element);
    byOwner.set(owner, (byOwner.get(owner) ?? 0) + (shares.elements[index] ?? 0));
  }
  return [...byOwner]
    .map(([part, share]) => ({ part, share }))
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}
