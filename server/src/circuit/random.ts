/** Draws evenly from 0 to 1, both excluded. */
export type Random = () => number;

/**
 * The enhanced generator of Wichmann and Hill that JCGM 101:2008, annex C.3, proposes for uncertainty: four
 * multiplicative generators with prime moduli, their sum without its whole part. The same seed gives the same draws on
 * every machine: only whole numbers below 2^53 are used.
 */
export function seededRandom(seed: number): Random {
  const states = generators.map(({ modulus }, index) => {
    // Spreads neighbouring seeds: multiplied by odd numbers that differ, never zero.
    const spread = (Math.abs(Math.trunc(seed)) % modulus) * (2 * index + 3) + 12_345 * (index + 1);
    return 1 + (spread % (modulus - 1));
  });
  const next = (): number => {
    let sum = 0;
    for (const [index, { factor, modulus }] of generators.entries()) {
      const state = times(factor, states[index] ?? 1, modulus);
      states[index] = state;
      sum += state / modulus;
    }
    return sum - Math.floor(sum);
  };
  return () => {
    for (;;) {
      const drawn = next();
      if (drawn > 0) return drawn;
    }
  };
}

/** Source: JCGM 101:2008, table C.1, from memory; that the moduli are prime and fit the factors is tested. */
export const generators = [
  { factor: 11_600, modulus: 2_147_483_579 },
  { factor: 47_003, modulus: 2_147_483_543 },
  { factor: 23_000, modulus: 2_147_483_423 },
  { factor: 33_000, modulus: 2_147_483_123 },
] as const;

/** Both factors below 2^31 and the first below 2^16: the product is exact in a double. */
function times(factor: number, state: number, modulus: number): number {
  return (factor * state) % modulus;
}
