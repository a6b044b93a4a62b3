import { greatestOf, leastOf } from '../quantity/extremes.ts';
import type { Indication } from '../circuit/circuit.ts';
import { formatWindow, roundOutward } from '../quantity/quantity.ts';
import type { Expect, Quantity } from '../model/procedure.ts';
import { resolutionAt } from './instruments.ts';
import type { ReadBy } from './instruments.ts';
import { quantityFacts } from '../model/quantity-kinds.ts';

/** The window in which a reading is accepted, ohms or volts. A bound that is null does not exist; open lies above every number. */
export type Accepted =
  | { readonly least: number | null; readonly most: number | null; readonly from: 'expect' | 'computed' }
  | 'open';

/** What a step accepts: the author's window, else the hull of what sound circuits show, rounded outward. */
export function acceptedWindow(
  expect: Expect | null,
  indications: readonly Indication[],
  resolution: number,
): Accepted | null {
  return expect === null ? hull(indications, resolution) : stated(expect);
}

function stated(expect: Expect): Accepted {
  if (expect === 'open') return 'open';
  if ('below' in expect) return { least: null, most: expect.below, from: 'expect' };
  if ('above' in expect) return { least: expect.above, most: null, from: 'expect' };
  return { least: expect.least, most: expect.most, from: 'expect' };
}

function hull(indications: readonly Indication[], resolution: number): Accepted | null {
  if (indications.length === 0) return null;
  const numbers = indications.flatMap(({ value, displayed }) => (value === null ? [] : [displayed ?? value]));
  if (numbers.length === 0) return 'open';
  if (isMixture(indications)) return null;
  const least = leastOf(numbers.map((value) => value.least));
  const canBeOpen = indications.some((indication) => indication.canBeOpen);
  const most = canBeOpen ? null : greatestOf(numbers.map((value) => value.most));
  const rounded = roundOutward({ least, most }, resolution);
  return rounded === 'open' ? rounded : { ...rounded, from: 'computed' };
}

/** Open is within where the accepted window has no upper limit. */
export function openIsWithin(accepted: Accepted): boolean {
  return accepted === 'open' || accepted.most === null;
}

/** A number on one bench and open on another: no window can hold both. */
function isMixture(indications: readonly Indication[]): boolean {
  return indications.some(showsOnlyOpen) && indications.some(showsOnlyNumbers);
}

export function showsOnlyOpen({ value }: Indication): boolean {
  return value === null;
}

export function showsOnlyNumbers({ value, canBeOpen }: Indication): boolean {
  return value !== null && !canBeOpen;
}

/** The display step with which the greatest number of a window is shown, in ohms or volts. */
export function stepShowing(instrument: ReadBy | null, accepted: Accepted): number {
  const most = accepted === 'open' ? null : (accepted.most ?? accepted.least);
  return (instrument === null ? null : resolutionAt(instrument, most ?? 0)) ?? 0;
}

/** The one text that hints, cards and the command line print. */
export function printedWindow(accepted: Accepted, resolution: number, quantity: Quantity): string {
  return formatWindow(accepted, resolution, quantityFacts[quantity].dimension);
}
