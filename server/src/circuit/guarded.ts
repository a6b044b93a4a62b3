import type { Span } from '../quantity/quantity.ts';
import type { Instrument } from './instrument.ts';

/**
 * The numbers, in ohms and before the display step, that prove the circuit itself to lie between its least and its most:
 * no error of the instrument can make one of them out of a circuit outside. null: it can of every number, the instrument
 * is too coarse for these limits.
 *
 * It is the guard band of JCGM 106 with the whole error limit as its width. A circuit that may be 0 Ω has no least
 * value to guard, one that may be open no greatest.
 */
export function guardedWindow(
  circuit: Span,
  { range, accuracy, resolution }: Instrument,
): { readonly least: number; readonly most: number } | null {
  const constant = accuracy.constant + accuracy.digits * resolution;
  const least = circuit.least > 0 ? circuit.least * (1 + accuracy.fraction) + constant : 0;
  const most = circuit.most * (1 - accuracy.fraction) - constant;
  // The least of the range is shown for everything below it, so it proves nothing; one step above it is a number of its own.
  const firstProving = least > 0 && least <= range.least ? range.least + resolution : range.least;
  const inRange = { least: Math.max(least, firstProving), most: Math.min(most, range.most) };
  return inRange.least > inRange.most ? null : inRange;
}
