import type { Span } from '../quantity/quantity.ts';
import { hotResistance } from './lamp.ts';

/**
 * How far a heating element may lie from the resistance that its rating gives, as a part of it. The watts may be 5 % more
 * to 10 % less than rated (IEC 60335-1, from memory), and the alloys of heating wire have up to 8 % less cold than
 * glowing.
 */
export const heaterSpread = 0.12;

/** Ohms of a heating element from its rated volts and watts, cold and at every voltage. */
export function ratedHeaterResistance(volts: number, watts: number): Span {
  const nominal = hotResistance(volts, watts);
  return { least: nominal * (1 - heaterSpread), nominal, most: nominal * (1 + heaterSpread) };
}
