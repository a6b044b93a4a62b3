import type { PartModel } from './parts.ts';

/** How the resistance of a part bends over its temperature, between two neighbouring kinks. */
export interface Curvature {
  /** `hollow` lies below each of its chords, `humped` above; `unknown` is only known to go one way. */
  readonly shape: 'straight' | 'hollow' | 'humped' | 'unknown';
  /** °C where it changes its law. */
  readonly kinks: readonly number[];
}

const straight: Curvature = { shape: 'straight', kinks: [] };

/** Holds for the least, the nominal and the most of a part alike. */
export function curvatureOf(model: PartModel): Curvature {
  switch (model.kind) {
    case 'stated':
    case 'preferred':
    case 'lamp-rating':
    case 'heater-rating':
    case 'fuse-rating':
    case 'copper-wire':
    case 'copper-coil':
    case 'track':
      // Copper is a straight line down to where it would have no resistance, far below any workshop; a track is one from end to end.
      return straight;
    case 'platinum':
      // The polynomial bends down everywhere; the tolerance grows away from 0 °C on both sides.
      return { shape: 'humped', kinks: [0] };
    case 'thermistor': {
      const off = model.tolerance !== null && 'kelvin' in model.tolerance ? model.tolerance.kelvin : 0;
      if (!('coefficients' in model.curve))
        // r exp(B/T) has the second derivative r exp(B/T) (B²/T⁴ + 2B/T³); which end of B counts changes at 25 °C.
        return { shape: 'hollow', kinks: off === 0 ? [25] : [25 - off, 25, 25 + off] };
      const [, b, c] = model.curve.coefficients;
      // With x = ln R the second derivative has the sign of x'²(1 - 6 C x x')/T⁴ + 2x'/T³, and 6 C x x' is at most √(3C/B).
      return { shape: 3 * c <= b ? 'hollow' : 'unknown', kinks: [] };
    }
  }
}
