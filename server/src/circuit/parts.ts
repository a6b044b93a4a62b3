import type { Span, Wire } from '../quantity/quantity.ts';
import type { ConditionRanges, Conditions, Temperature } from './conditions.ts';
import { exactly, temperatureAt, temperatureWithin } from './conditions.ts';
import { ratedHeaterResistance } from './heater.ts';
import { fuseResistance } from './fuse.ts';
import { coldResistance } from './lamp.ts';
import { coilFactor, copper, copperPerMetre, temperatureFactor } from './materials.ts';
import type { PlatinumClass } from './platinum.ts';
import { platinumResistance } from './platinum.ts';
import type { PreferredSeries } from './preferred-values.ts';
import { preferredResistance } from './preferred-values.ts';
import type { ThermistorCurve, ThermistorTolerance } from './thermistor.ts';
import { thermistorResistance } from './thermistor.ts';

/**
 * How a part's resistance comes about. A part is a function from conditions to an interval, never a stored interval:
 * only so do parts that share a temperature stay together. Ohms, metres, °C, volts, watts.
 */
export type PartModel = ConstantModel | FollowingModel | TrackModel;

/** The same at every temperature. */
export type ConstantModel =
  /** `hot`: what it has under power, where that is another. */
  | { readonly kind: 'stated'; readonly resistance: Span; readonly hot?: Span | 'unstated' }
  | { readonly kind: 'preferred'; readonly resistance: Span; readonly series: PreferredSeries }
  /** Cold; under power it follows the voltage across it. */
  | { readonly kind: 'lamp-rating'; readonly volts: number; readonly watts: number }
  | { readonly kind: 'heater-rating'; readonly volts: number; readonly watts: number }
  | { readonly kind: 'fuse-rating'; readonly amperes: number };

/** Follows a temperature, always in one direction. */
export type FollowingModel = { readonly temperature: Temperature } & (
  | { readonly kind: 'copper-wire'; readonly wire: Wire; readonly length: Span }
  /** `resistance` is stated at the temperature `at`. */
  | { readonly kind: 'copper-coil'; readonly resistance: Span; readonly at: number }
  | {
      readonly kind: 'thermistor';
      readonly curve: ThermistorCurve;
      readonly tolerance: ThermistorTolerance | null;
    }
  | { readonly kind: 'platinum'; readonly r0: number; readonly class: PlatinumClass }
);

/** What lies between one end of the track of a potentiometer and its wiper. Both of them share the track and the wiper. */
export interface TrackModel {
  readonly kind: 'track';
  /** Ohms of the whole track. */
  readonly track: Span;
  readonly end: 'first' | 'second';
  readonly wiper: Wiper;
}

export interface Wiper {
  /** Of the potentiometer. */
  readonly id: string;
  /** Where it may stand, as a part of the track from its first end. */
  readonly place: Span;
}

/** Which temperature or wiper a part shares with others, and what its resistance does when that rises. */
export interface Dependence {
  readonly on: SharedQuantity;
  readonly trend: Trend;
}

export type SharedQuantity = 'ambient' | { readonly entry: string } | { readonly wiper: string };

export type Trend = 'rises' | 'falls';

/** null: constant, or its temperature is its own. */
export function dependenceOf(model: PartModel): Dependence | null {
  if (model.kind === 'track')
    return { on: { wiper: model.wiper.id }, trend: model.end === 'first' ? 'rises' : 'falls' };
  if (!('temperature' in model)) return null;
  const { temperature } = model;
  if (temperature !== 'ambient' && 'stated' in temperature) return null;
  return { on: temperature, trend: trends[model.kind] };
}

const trends: Readonly<Record<FollowingModel['kind'], Trend>> = {
  'copper-wire': 'rises',
  'copper-coil': 'rises',
  thermistor: 'falls',
  platinum: 'rises',
};

/**
 * The resistance of a part in ohms under conditions of one moment: the spread is what remains then, of its tolerance and,
 * where the part has a range of temperatures of its own, of that.
 */
export function resistanceAt(model: PartModel, conditions: Conditions): Span {
  if (model.kind === 'track') {
    const place = conditions.wipers?.get(model.wiper.id);
    return alongTrack(model, place === undefined ? model.wiper.place : exactly(place));
  }
  if (!('temperature' in model)) return constant(model);
  return following(model, temperatureAt(model.temperature, conditions));
}

/** The resistance of a part in ohms under all conditions within the ranges. */
export function resistanceWithin(model: PartModel, ranges: ConditionRanges): Span {
  if (model.kind === 'track') return alongTrack(model, model.wiper.place);
  if (!('temperature' in model)) return constant(model);
  return following(model, temperatureWithin(model.temperature, ranges));
}

/** The same track and wiper, so far as each is at an end of its range; both sides of it together. */
export function atEndOf(model: TrackModel, what: 'track' | 'wiper', end: keyof Span): number {
  const place = exactly(model.wiper.place[what === 'wiper' ? end : 'nominal']);
  return alongTrack(model, place)[what === 'track' ? end : 'nominal'];
}

function alongTrack({ track, end }: TrackModel, place: Span): Span {
  const part =
    end === 'first' ? place : { least: 1 - place.most, nominal: 1 - place.nominal, most: 1 - place.least };
  return {
    least: track.least * part.least,
    nominal: track.nominal * part.nominal,
    most: track.most * part.most,
  };
}

function constant(model: ConstantModel): Span {
  switch (model.kind) {
    case 'stated':
      return model.resistance;
    case 'preferred':
      return preferredResistance(model.resistance, model.series);
    case 'lamp-rating':
      return coldResistance(model.volts, model.watts);
    case 'heater-rating':
      return ratedHeaterResistance(model.volts, model.watts);
    case 'fuse-rating':
      return fuseResistance(model.amperes);
  }
}

/** The ends lie at the ends of the temperature, since resistance goes one way with it. */
function following(model: FollowingModel, celsius: Span): Span {
  const [low, high] =
    trends[model.kind] === 'rises' ? [celsius.least, celsius.most] : [celsius.most, celsius.least];
  return {
    least: atTemperature(model, low).least,
    nominal: atTemperature(model, celsius.nominal).nominal,
    most: atTemperature(model, high).most,
  };
}

function atTemperature(model: FollowingModel, celsius: number): Span {
  switch (model.kind) {
    case 'copper-wire': {
      const { least, nominal, most } = copperPerMetre(model.wire);
      const { length } = model;
      const factor = temperatureFactor(copper.coefficient, copper.referenceCelsius, celsius);
      return {
        least: least * length.least * factor,
        nominal: nominal * length.nominal * factor,
        most: most * length.most * factor,
      };
    }
    case 'copper-coil': {
      const { least, nominal, most } = model.resistance;
      const factor = coilFactor(model.at, celsius);
      return { least: least * factor, nominal: nominal * factor, most: most * factor };
    }
    case 'thermistor':
      return thermistorResistance(model.curve, model.tolerance, celsius);
    case 'platinum':
      return platinumResistance(model.r0, model.class, celsius);
  }
}
