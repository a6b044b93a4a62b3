import type { Quantity } from './procedure.ts';

/** What is so for all that is measured of a quantity. */
interface QuantityFacts {
  readonly unit: 'Ω' | 'V';
  /** It lies on either side of zero. */
  readonly isSigned: boolean;
  /**
   * The instrument sends a current of its own through the circuit: what it shows says how good the circuit itself is, and
   * only where nothing else drives a current there.
   */
  readonly byOwnCurrent: boolean;
  /** What is shown beyond the range. */
  readonly beyond: 'open' | 'no number';
}

export const quantityFacts: Readonly<Record<Quantity, QuantityFacts>> = {
  resistance: { unit: 'Ω', isSigned: false, byOwnCurrent: true, beyond: 'open' },
  voltage: { unit: 'V', isSigned: true, byOwnCurrent: false, beyond: 'no number' },
};
