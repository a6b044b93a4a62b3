import type { Quantity } from './procedure.ts';

/** What is so for all that is measured of a quantity. */
interface QuantityFacts {
  /** Behind an article: `no insulation resistance`. */
  readonly named: string;
  readonly dimension: 'resistance' | 'voltage' | 'current';
  readonly unit: 'Ω' | 'V' | 'A';
  /** It lies on either side of zero. */
  readonly isSigned: boolean;
  /** The instrument sends a current of its own through the circuit: it says something only where nothing else drives one. */
  readonly byOwnCurrent: boolean;
  /** What it shows within its window says how good the circuit itself is, and that nothing of it is open. */
  readonly showsCircuit: boolean;
  /** What is shown beyond the range. */
  readonly beyond: 'open' | 'no number';
}

export const quantityFacts: Readonly<Record<Quantity, QuantityFacts>> = {
  resistance: {
    named: 'resistance',
    dimension: 'resistance',
    unit: 'Ω',
    isSigned: false,
    byOwnCurrent: true,
    showsCircuit: true,
    beyond: 'open',
  },
  voltage: {
    named: 'voltage',
    dimension: 'voltage',
    unit: 'V',
    isSigned: true,
    byOwnCurrent: false,
    showsCircuit: true,
    beyond: 'no number',
  },
  current: {
    named: 'current',
    dimension: 'current',
    unit: 'A',
    isSigned: true,
    byOwnCurrent: false,
    showsCircuit: true,
    beyond: 'no number',
  },
  insulation: {
    named: 'insulation resistance',
    dimension: 'resistance',
    unit: 'Ω',
    isSigned: false,
    byOwnCurrent: true,
    showsCircuit: false,
    beyond: 'open',
  },
};
