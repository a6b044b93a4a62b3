import { greatestOf } from '../quantity/extremes.ts';
import type { Id, Procedure, Reserve, Source } from '../model/procedure.ts';

/** How long after a source is off its circuits may still be charged, in seconds, and what says so. */
export interface Owed {
  readonly source: Id;
  readonly seconds: number;
  /** The maker's stated wait; null where none is stated. */
  readonly stated: number | null;
  /** What the reserve needs to run down; null where none is given. */
  readonly discharge: number | null;
}

/**
 * R C ln(V0/Vsafe), in seconds, with R, C and V0 at most and Vsafe at least: the time a capacitor needs to fall to the
 * safe voltage through its bleed resistor. Zero where it starts below it.
 */
export function dischargeTime(reserve: Reserve): number {
  const { bleed, capacitance, chargedTo, safeBelow } = reserve;
  if (chargedTo.most <= safeBelow.least) return 0;
  return bleed.most * capacitance.most * Math.log(chargedTo.most / safeBelow.least);
}

/** V0 exp(-t / R C), in volts, with R, C and V0 at most: the most that a reserve can still hold after so many seconds. */
export function voltageLeft({ bleed, capacitance, chargedTo }: Reserve, seconds: number): number {
  return chargedTo.most * Math.exp(-seconds / (bleed.most * capacitance.most));
}

/** The longer of the two; a value that could not be read counts as none, its own finding stands for it. */
export function owedBy(source: Source): Owed {
  const stated = typeof source.wait === 'number' ? source.wait : null;
  const readable = source.reserve !== null && source.reserve !== 'unstated';
  const discharge = readable ? dischargeTime(source.reserve) : null;
  return { source: source.id, stated, discharge, seconds: Math.max(stated ?? 0, discharge ?? 0) };
}

/** The longest over the sources that feed a circuit, in seconds. */
export function owedByAll(procedure: Procedure, sources: readonly Id[]): number {
  const owed = sources
    .map((id) => procedure.sources.get(id))
    .map((source) => (source === undefined ? 0 : owedBy(source).seconds));
  return greatestOf(owed, 0);
}
