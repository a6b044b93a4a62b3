import { greatestOf, leastOf } from '../quantity/extremes.ts';
import { roundOutward } from '../quantity/quantity.ts';
import type { Span } from '../quantity/quantity.ts';
import { passesEnd, withError, withLeads, withinRange } from './instrument.ts';
import type { Indication, Instrument } from './instrument.ts';

/** What a meter that takes its range by itself can show: before its display step, and rounded outward to it. */
export interface RangedIndication extends Indication {
  readonly displayed: { readonly least: number; readonly most: number } | null;
}

/**
 * A meter with several ranges, least first, of which it takes the first that holds its reading. Where the error lets a
 * circuit fall on either side of a range's end both ranges can show it, each with its own error and its own steps. Leads,
 * if any, stand in each range alike.
 */
export function indicateInRanges(circuit: Span | 'open', ranges: readonly Instrument[]): RangedIndication {
  if (circuit === 'open') return { value: null, canBeOpen: true, displayed: null };
  const shown = ranges.flatMap((range, index) => shownIn(circuit, range, ranges[index - 1]));
  const [first] = shown;
  const last = ranges.at(-1);
  const canBeOpen =
    last === undefined || passesEnd(withError(withLeads(circuit, last).most, last).most, last);
  if (first === undefined) return { value: null, canBeOpen: true, displayed: null };
  const least = leastOf(shown.map((one) => one.least));
  const most = greatestOf(shown.map((one) => one.most));
  const nominal = shown.find((one) => one.nominal !== null)?.nominal ?? most;
  return {
    value: { least, nominal: Math.min(Math.max(nominal, least), most), most },
    canBeOpen,
    displayed: {
      least: leastOf(shown.map((one) => one.displayed.least)),
      most: greatestOf(shown.map((one) => one.displayed.most)),
    },
  };
}

interface ShownInRange {
  readonly least: number;
  readonly most: number;
  /** null: the nominal circuit is beyond this range. */
  readonly nominal: number | null;
  readonly displayed: { readonly least: number; readonly most: number };
}

/** What a range can show of those circuits that it may be taken for; nothing where there are none. */
function shownIn(circuit: Span, range: Instrument, before: Instrument | undefined): readonly ShownInRange[] {
  const whole = withLeads(circuit, range);
  const from = before === undefined ? whole.least : Math.max(whole.least, overflowsAt(before));
  const to = Math.min(whole.most, heldUpTo(range));
  if (from > to) return [];
  const least = withinRange(withError(from, range).least, range);
  const most = withinRange(withError(to, range).most, range);
  const outward = roundOutward({ least, most }, range.resolution);
  const displayed =
    outward === 'open' ? { least, most } : { least: outward.least ?? least, most: outward.most ?? most };
  return [{ least, most, nominal: whole.nominal <= range.range.most ? whole.nominal : null, displayed }];
}

/** The least circuit, leads included, whose reading can pass the end of a range. */
function overflowsAt({ range, accuracy, resolution }: Instrument): number {
  return (range.most - accuracy.constant - accuracy.digits * resolution) / (1 + accuracy.fraction);
}

/** The greatest circuit, leads included, whose reading can still be inside a range. */
function heldUpTo({ range, accuracy, resolution }: Instrument): number {
  return (range.most + accuracy.constant + accuracy.digits * resolution) / (1 - accuracy.fraction);
}
