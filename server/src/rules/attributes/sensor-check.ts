import {
  nearestPreferred,
  platinumRange,
  resistanceWithin,
  temperatureWithin,
} from '../../circuit/circuit.ts';
import { formatQuantity, formatSpan } from '../../quantity/quantity.ts';
import type { Span } from '../../quantity/quantity.ts';
import { conditionsOf } from '../../readings/conditions.ts';
import { temperatureInWords } from '../../readings/resistance-in-words.ts';
import type { Load, Part, Procedure } from '../../model/procedure.ts';
import { followsTemperature } from '../../model/resistance.ts';
import type { FollowingResistance } from '../../model/resistance.ts';
import type { Context, Finder, Seen } from '../rule.ts';

/* Parts of which a published table or formula says more than the file does. */

export const notPreferredFinder: Finder = { check: notPreferred };
export const outsideValidityFinder: Finder = { check: outsideValidity };

function notPreferred({ procedure }: Context): readonly Seen[] {
  return [...procedure.parts.values(), ...procedure.loads.values()].flatMap(seriesOf);
}

function seriesOf({ id, path, resistance }: Part | Load): readonly Seen[] {
  if (resistance?.kind !== 'preferred') return [];
  const { series } = resistance;
  const { nominal } = resistance.resistance;
  const nearest = nearestPreferred(nominal, series);
  if (nearest === nominal) return [];
  const message = `${formatQuantity(nominal, 'resistance')} is not a value of ${series}; the nearest is ${formatQuantity(nearest, 'resistance')}.`;
  const place = { path: [...path, 'resistance'], part: 'value' as const };
  return [{ issue: { rule: 'not-preferred', subject: id, place, message } }];
}

function outsideValidity({ procedure }: Context): readonly Seen[] {
  return [...procedure.parts.values()].flatMap((part): readonly Seen[] => {
    const { id, path, resistance } = part;
    if (resistance === null || !followsTemperature(resistance)) return [];
    const message = whyOutside(procedure, resistance);
    if (message === null) return [];
    const key = resistance.temperature !== 'ambient' ? 'temperature' : 'kind';
    const place = { path: [...path, key], part: 'value' as const };
    return [{ issue: { rule: 'outside-validity', subject: id, place, message: `${id} ${message}` } }];
  });
}

/** What no thermistor has, at any temperature at which one is used, ohms: a slip in the coefficients gives such values. */
const plausible = { least: 0.1, most: 1e8 };

function whyOutside(procedure: Procedure, resistance: FollowingResistance): string | null {
  const conditions = conditionsOf(procedure);
  const celsius = temperatureWithin(resistance.temperature, conditions);
  switch (resistance.kind) {
    case 'platinum': {
      const { from, to } = platinumRange(resistance.class);
      if (celsius.least >= from && celsius.most <= to) return null;
      return `is at ${there(celsius, resistance)}, and class ${resistance.class} is defined from ${from} to ${to} °C only.`;
    }
    case 'thermistor': {
      const { least, most } = resistanceWithin(resistance, conditions);
      if (least >= plausible.least && most <= plausible.most) return null;
      const [low, high] = [least, most].map((ohms) =>
        formatQuantity(Number(ohms.toPrecision(3)), 'resistance'),
      );
      return `would have from ${low ?? ''} to ${high ?? ''} at ${there(celsius, resistance)}, which no thermistor has: look at its curve.`;
    }
    case 'copper-wire':
    case 'copper-coil':
      // Copper follows its law in any workshop.
      return null;
  }
}

function there(celsius: Span, { temperature }: FollowingResistance): string {
  const range = formatSpan(celsius, 'temperature');
  return temperature !== 'ambient' && 'stated' in temperature
    ? range
    : `${range} (${temperatureInWords(temperature)})`;
}
