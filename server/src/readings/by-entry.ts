import type { Effort } from '../paths/effort.ts';
import type { ConditionRanges, Indication, Network } from '../circuit/circuit.ts';
import type { Span } from '../quantity/span.ts';
import type { Entry, Id, Procedure } from '../model/procedure.ts';
import { acceptedWindow, printedWindow, stepShowing } from './accepted.ts';
import type { Accepted } from './accepted.ts';
import { entriesFollowed } from './assumed.ts';
import { conditionsOf, widened } from './conditions.ts';
import { goodKey, goodReading, workOf } from './good.ts';
import type { LoopBench } from './loop-bench.ts';
import type { Subject } from './subject.ts';

/** What is entered for one row of the table, °C, both ends included. */
export interface Band {
  readonly entry: Id;
  readonly entered: Span;
}

/** The window of a reading where what is entered lies in these bands. */
export interface EntryRow {
  readonly bands: readonly Band[];
  /** null: not known. */
  readonly accepted: Accepted | null;
  readonly printed: string;
  /** Both ends are met by some circuit within the limits; else no circuit passes them. */
  readonly exact: boolean;
}

/** No more rows than this: beyond a few pages nobody looks a row up. */
const mostRows = 200;

/** Widths of a band, °C. The narrower a row, the less of a fault hides in its window. */
const widths = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/**
 * The windows of a reading as a table over the temperatures that are entered; empty where they make no difference. Each
 * row holds all that a sound circuit shows at any temperature there may be where a value of its band is entered.
 */
export function rowsByEntry(
  procedure: Procedure,
  subject: Subject,
  arrivedAt: readonly LoopBench[],
  resolution: number,
  { spend }: Effort,
): readonly EntryRow[] {
  if (procedure.entries.size === 0) return [];
  const benches = [...new Map(arrivedAt.map((bench) => [goodKey(subject, bench), bench])).values()];
  const entries = entriesIn(procedure, subject, benches);
  if (entries.length === 0) return [];
  const rows = bandsOf(entries).map((bands): EntryRow => {
    spend(workOf(subject) * benches.length);
    return rowOf(procedure, subject, benches, resolution, bands);
  });
  return rows.every(({ printed }) => printed === rows[0]?.printed) ? [] : rows;
}

/** What a sound circuit shows on these benches where what is entered lies in these bands. */
export function rowOf(
  procedure: Procedure,
  subject: Subject,
  benches: readonly LoopBench[],
  resolution: number,
  bands: readonly Band[],
): EntryRow {
  const ranges = conditionsFor(procedure, conditionsOf(procedure), bands);
  const good = benches.map((bench) => goodReading(subject, bench, ranges));
  const indications = good.map(({ indication }) => indication);
  const known = indications.filter((one): one is Indication => one !== null);
  const accepted = known.length < indications.length ? null : acceptedWindow(null, known, resolution);
  const printed =
    accepted === null
      ? ''
      : printedWindow(accepted, stepShowing(subject.instrument, accepted), subject.quantity);
  return { bands, accepted, printed, exact: good.every(({ exact }) => exact) };
}

/** The entries that a part of the circuit follows, on any of the benches, in the order of the file. */
function entriesIn(procedure: Procedure, subject: Subject, benches: readonly LoopBench[]): readonly Entry[] {
  const followed = new Set<Id>();
  for (const bench of benches) {
    const network: Network = subject.seen(bench)?.network ?? [];
    for (const entry of entriesFollowed(network)) followed.add(entry);
  }
  return [...procedure.entries.values()].filter(({ id }) => followed.has(id));
}

/**
 * Every combination of one band of each entry, with the narrowest bands that make a table of few enough rows; none where
 * so many are entered that there are no such bands.
 */
function bandsOf(entries: readonly Entry[]): readonly (readonly Band[])[] {
  for (const width of widths) {
    const cuts = entries.map(({ id, range }) => cut(range, width).map((entered) => ({ entry: id, entered })));
    if (cuts.reduce((rows, { length }) => rows * length, 1) > mostRows) continue;
    return cuts.reduce<readonly (readonly Band[])[]>(
      (rows, bands) => rows.flatMap((row) => bands.map((band) => [...row, band])),
      [[]],
    );
  }
  return [];
}

/** A range cut at the multiples of a width. */
function cut(range: Span | null, width: number): readonly Span[] {
  if (range === null) return [];
  const edges = [range.least, ...multiplesIn(range, width)];
  return edges.map((least, index) => {
    const most = edges[index + 1] ?? range.most;
    return { least, nominal: (least + most) / 2, most };
  });
}

/** The multiples of a width between the ends of a range. */
export function multiplesIn({ least, most }: Span, width: number): readonly number[] {
  const multiples: number[] = [];
  for (let one = (Math.floor(least / width) + 1) * width; one < most; one += width) multiples.push(one);
  return multiples;
}

/** The conditions where what is entered lies in these bands, or a little beyond by its accuracy. */
export function conditionsFor(
  { entries }: Procedure,
  { ambient, entered }: ConditionRanges,
  bands: readonly Band[],
): ConditionRanges {
  const narrowed = bands.map(
    (band) => [band.entry, widened(band.entered, entries.get(band.entry)?.accuracy ?? 0)] as const,
  );
  return { ambient, entered: new Map([...entered, ...narrowed]) };
}
