import type { Span, Wire } from '../quantity/quantity.ts';
import { copper, copperPerMetre, temperatureFactor } from './materials.ts';

/** What holds for a whole reading. */
export interface Conditions {
  /** °C. */
  readonly ambient: Span;
}

/**
 * How a part's resistance comes about. A part is a function from conditions to an interval, never a stored interval:
 * only so do parts that share a temperature stay together.
 */
export type PartModel =
  | { readonly kind: 'stated'; readonly resistance: Span }
  | { readonly kind: 'copper-wire'; readonly wire: Wire; readonly length: Span };

/** The resistance of a part at one temperature, in ohms. Stated resistances hold at every ambient temperature. */
export function resistanceAt(model: PartModel, celsius: number): Span {
  switch (model.kind) {
    case 'stated':
      return model.resistance;
    case 'copper-wire': {
      const { ideal, most } = copperPerMetre(model.wire);
      const factor = temperatureFactor(copper.coefficient, copper.referenceCelsius, celsius);
      return {
        least: ideal * model.length.least * factor,
        nominal: ideal * model.length.nominal * factor,
        most: most * model.length.most * factor,
      };
    }
  }
}
