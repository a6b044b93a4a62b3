import type { Finding } from '../model/finding.ts';

/**
 * Rules by how directly somebody can be hurt where they find something, the gravest first: a file that is not checked at
 * all, hands or an instrument at what
 * can fire or bite, then proofs that prove nothing, then words and data on which hands are not followed. All others hurt
 * nobody by themselves.
 */
export const grave: readonly string[] = [
  'not-checked',
  'meter-across-live',
  'moved-with-stage',
  'live-touch',
  'short-wait',
  'not-proven-dead',
  'half-open',
  'insulation-on-electronics',
  'powered-measurement',
  'work-under-power',
  'proof-too-early',
  'proof-elsewhere',
  'unfit-meter',
  'test-current',
  'touch-not-said',
  'hands-in-text',
  'example-values',
  'no-wait',
  'unfed-circuit',
  'unfed-monitor',
  'unguarded-source',
  'in-no-circuit',
  'missing-notice',
  'inert-stage',
];

const ranks: ReadonlyMap<string, number> = new Map(grave.map((rule, rank) => [rule, rank]));

/** Where a finding stands among the grave ones, from 0; behind them all where it hurts nobody, or is waived. */
export function gravityOf({ rule, waived }: Pick<Finding, 'rule' | 'waived'>): number {
  return waived === undefined ? (ranks.get(rule) ?? grave.length) : grave.length;
}

/** The gravest first; those that hurt nobody in the order in which they come. */
export function gravestFirst(findings: readonly Finding[]): readonly Finding[] {
  return findings.toSorted((one, other) => gravityOf(one) - gravityOf(other));
}
