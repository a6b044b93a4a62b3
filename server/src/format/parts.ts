import * as z from 'zod';
import { flag, group, keyword, kind, quantity, resistance, yes } from './values.ts';
import type { FormName, Kind } from './words.ts';

/* Parts, and the loads that are put in their place: one definition a kind, or one for each way of stating its resistance. */

const opensShortingBar = flag(
  'A keyed adapter: it needs the mating face of the connector and opens the shorting bar on its side.',
  true,
).optional();

const withstands = quantity(
  'an exact voltage',
  'The voltage of an insulation tester that it bears between any of its conductors and ground. Not stated: none.',
  '1000 V',
).optional();

const rated = quantity(
  'a rating of voltage and power',
  'Its rating. Under power its resistance follows from it and from the voltage across it. The cold resistance, which an ohmmeter shows, is estimated from it, widely.',
  '13.5 V 5 W',
);

/** For what is stated cold. */
const hot = quantity(
  'a resistance with its spread, or `same`',
  'Its resistance under power, as hot as it gets there: voltages are computed with it. `same`: it has the same hot and cold. Not stated: a voltage that depends on it has no window.',
  '6.2..7.4 Ω',
  'same',
).optional();

const preferredSeries = keyword(
  ['E6', 'E12', 'E24', 'E48', 'E96', 'E192'],
  'The series of preferred values (IEC 60063) that it is from. Where `resistance` has no spread, it has the usual tolerance of the series.',
  'E24',
).optional();

/** For parts that follow a temperature. */
const temperature = quantity(
  'a temperature range or an id of `entries`',
  'Its temperature: a range, or the id of an entry that is measured before reading. Not stated: the ambient temperature.',
  '60..90 °C',
  'coolant',
).optional();

const lampLoadByResistance = z
  .strictObject({
    kind: kind('lamp', 'A filament lamp.'),
    resistance: resistance('Its resistance, measured cold.'),
    hot,
    'opens-shorting-bar': opensShortingBar,
    withstands,
  })
  .meta({
    id: 'lamp-load-by-resistance',
    description: "A lamp, measured cold, that is fitted in a part's place.",
  });

const lampLoadByRating = z
  .strictObject({
    kind: kind('lamp', 'A filament lamp.'),
    rated,
    'opens-shorting-bar': opensShortingBar,
    withstands,
  })
  .meta({
    id: 'lamp-load-by-rating',
    description: "A lamp of this rating that is fitted in a part's place.",
  });

const resistorLoad = z
  .strictObject({
    kind: kind('resistor', 'A resistor.'),
    resistance: resistance('Its resistance.'),
    series: preferredSeries,
    'opens-shorting-bar': opensShortingBar,
    withstands,
  })
  .meta({ id: 'resistor-load', description: "A resistor that is fitted in a part's place." });

const cableBySize = z
  .strictObject({
    kind: kind('cable', 'A pair of conductors.'),
    wire: quantity('a wire size', 'The cross-section of each conductor, copper.', '0.5 mm²', 'AWG 20'),
    length: quantity('a length', 'The length of each of the two conductors.', '1.2 m'),
    temperature,
    withstands,
  })
  .meta({ id: 'cable-by-size', description: 'A pair of copper conductors of this size and length.' });

const cableByResistance = z
  .strictObject({
    kind: kind('cable', 'A pair of conductors.'),
    resistance: resistance('The resistance of each of the two conductors.'),
    withstands,
  })
  .meta({ id: 'cable-by-resistance', description: 'A pair of conductors of this resistance each.' });

const rotaryCoupling = z
  .strictObject({
    kind: kind('rotary-coupling', 'The coiled flat cable between steering column and wheel.'),
    resistance: resistance('The resistance of each of its two conductors.'),
    withstands,
  })
  .meta({ id: 'rotary-coupling', description: 'The coiled flat cable between steering column and wheel.' });

const series = z
  .strictObject({
    kind: kind('series', 'Any other part with two conductors.'),
    resistance: resistance('The resistance of each of its two conductors.'),
    withstands,
  })
  .meta({ id: 'series', description: 'Any other part with two conductors: a filter, a splice pack.' });

const initiator = z
  .strictObject({
    kind: kind('initiator', 'A pyrotechnic stage.'),
    resistance: resistance('The resistance of its bridge.'),
    live: flag("Whether it can fire. `false` only for a trainer's inert part.", true, false),
    'no-fire': quantity('a current', 'The current at which it surely does not fire.', '400 mA').optional(),
  })
  .meta({ id: 'initiator', description: 'A pyrotechnic stage: one airbag or belt tensioner bridge.' });

const hvSection = z
  .strictObject({
    kind: kind('hv-section', 'A section of the high-voltage circuit that closes a loop.'),
    voltage: quantity('a voltage', 'The voltage between its poles while it is fed.', '400 V', '320..410 V'),
    resistance: resistance('The resistance between its poles.'),
    live: yes('It is live whenever it is fed. The word stands here so that everybody sees it.'),
    withstands,
  })
  .meta({ id: 'hv-section', description: 'A section above the voltage that is safe to touch.' });

const resistorPart = z
  .strictObject({
    kind: kind('resistor', 'A resistor that closes a loop.'),
    resistance: resistance('Its resistance.'),
    series: preferredSeries,
    withstands,
  })
  .meta({ id: 'resistor', description: 'A resistor that closes a loop.' });

const heaterByResistance = z
  .strictObject({
    kind: kind('heater', 'A heating element that closes a loop.'),
    resistance: resistance('Its resistance, cold.'),
    hot,
    withstands,
  })
  .meta({ id: 'heater-by-resistance', description: 'A heating element, measured cold, that closes a loop.' });

const heaterByRating = z
  .strictObject({
    kind: kind('heater', 'A heating element that closes a loop.'),
    rated: quantity(
      'a rating of voltage and power',
      'Its rating: volts squared by watts is its resistance, cold and at every voltage, within 12 %. A heater that regulates itself (PTC, glow plug) is stated by `resistance` and `hot`.',
      '12 V 90 W',
    ),
  })
  .meta({ id: 'heater-by-rating', description: 'A heating element of this rating that closes a loop.' });

const switchPart = z
  .strictObject({
    kind: kind('switch', 'A switch that closes a loop. It counts as closed.'),
    resistance: resistance('Its resistance while it is closed.'),
    withstands,
  })
  .meta({ id: 'switch', description: 'A switch that closes a loop. It counts as closed.' });

const coil = z
  .strictObject({
    kind: kind('coil', 'A coil wound of copper that closes a loop.'),
    resistance: resistance('Its resistance at the temperature `at`.'),
    at: quantity(
      'an exact temperature',
      'The temperature at which `resistance` is stated. Not stated: 20 °C.',
      '20 °C',
    ).optional(),
    temperature,
    withstands,
  })
  .meta({ id: 'coil', description: 'A coil wound of copper: its resistance rises with its temperature.' });

const thermistorTolerance = quantity(
  'a percentage or a temperature',
  'How far it may be from its curve, at every temperature: in percent of the resistance, or in °C.',
  '3 %',
  '1 °C',
);

const thermistorByBeta = z
  .strictObject({
    kind: kind('thermistor', 'A temperature sensor whose resistance falls with temperature (NTC).'),
    r25: resistance('Its resistance at 25 °C.'),
    beta: quantity('a temperature in kelvin', 'Its B value.', '3380 K', '3380 K ± 1 %'),
    tolerance: thermistorTolerance.optional(),
    temperature,
    withstands,
  })
  .meta({
    id: 'thermistor-by-beta',
    description: 'An NTC thermistor, from its resistance at 25 °C and B value.',
  });

const thermistorByCoefficients = z
  .strictObject({
    kind: kind('thermistor', 'A temperature sensor whose resistance falls with temperature (NTC).'),
    coefficients: group(
      z
        .array(z.number().meta({ 'x-expected': 'a number, such as `1.129e-3`' }))
        .min(3)
        .max(3),
      'three numbers',
      'The coefficients A, B, C of Steinhart and Hart: 1/T = A + B ln R + C (ln R)³, T in kelvin, R in ohms.',
      [1.129148e-3, 2.34125e-4, 8.76741e-8],
    ),
    tolerance: thermistorTolerance,
    temperature,
    withstands,
  })
  .meta({
    id: 'thermistor-by-coefficients',
    description: 'An NTC thermistor, from its Steinhart-Hart coefficients.',
  });

const rtd = z
  .strictObject({
    kind: kind('rtd', 'A platinum temperature sensor (IEC 60751).'),
    r0: quantity('an exact resistance', 'Its resistance at 0 °C.', '100 Ω', '1 kΩ'),
    class: keyword(['AA', 'A', 'B'], 'Its tolerance class (IEC 60751).', 'B'),
    temperature,
    withstands,
  })
  .meta({ id: 'rtd', description: 'A platinum temperature sensor: its resistance rises with temperature.' });

const lampByResistance = z
  .strictObject({
    kind: kind('lamp', 'A filament lamp that closes a loop.'),
    resistance: resistance('Its resistance, measured cold.'),
    hot,
    withstands,
  })
  .meta({ id: 'lamp-by-resistance', description: 'A filament lamp, measured cold, that closes a loop.' });

const lampByRating = z
  .strictObject({
    kind: kind('lamp', 'A filament lamp that closes a loop.'),
    rated,
    withstands,
  })
  .meta({ id: 'lamp-by-rating', description: 'A filament lamp of this rating that closes a loop.' });

const consumer = z
  .strictObject({
    kind: kind('consumer', 'Something of which only the current that it draws is known.'),
    draws: quantity(
      'a current',
      'The current that it draws while there is a voltage across it.',
      '7 mA ± 1 mA',
    ),
    always: yes(
      'It draws its current at every reading, not only at those that name it in `drawing`.',
    ).optional(),
    withstands,
  })
  .meta({ id: 'consumer', description: 'Something that draws a stated current: a unit at rest, a starter.' });

const potentiometer = z
  .strictObject({
    kind: kind('potentiometer', 'A resistance track with a wiper on it.'),
    track: quantity(
      'a resistance with its spread',
      'The resistance of the whole track, from end to end.',
      '1 kΩ ± 20 %',
    ),
    wiper: quantity(
      'a place on the track',
      'Where the wiper may stand, in percent of the track from its first end.',
      '10..90 %',
      '50 %',
    ),
    withstands,
  })
  .meta({
    id: 'potentiometer',
    description:
      'A resistance track with a wiper on it: a pedal or throttle sensor. It stands in the network, between one end, the wiper and the other end.',
  });

const fuseByResistance = z
  .strictObject({
    kind: kind('fuse', 'A fuse.'),
    resistance: resistance('Its resistance, cold.'),
    withstands,
  })
  .meta({ id: 'fuse-by-resistance', description: 'A fuse of this resistance.' });

const fuseByRating = z
  .strictObject({
    kind: kind('fuse', 'A fuse.'),
    rated: quantity(
      'a current',
      'Its rated current. The resistance of a blade fuse is estimated from it, widely.',
      '10 A',
    ),
    withstands,
  })
  .meta({ id: 'fuse-by-rating', description: 'A blade fuse of this rated current.' });

/** By name. The compiler asks for each that `words.ts` lists. */
export const loadDefinitions = {
  'lamp-load-by-resistance': lampLoadByResistance,
  'lamp-load-by-rating': lampLoadByRating,
  'resistor-load': resistorLoad,
} as const satisfies Readonly<Record<FormName<'loads', Kind<'loads'>>, z.ZodType>>;

/** By name. The compiler asks for each that `words.ts` lists. */
export const partDefinitions = {
  'cable-by-size': cableBySize,
  'cable-by-resistance': cableByResistance,
  'rotary-coupling': rotaryCoupling,
  series,
  initiator,
  'hv-section': hvSection,
  resistor: resistorPart,
  'heater-by-resistance': heaterByResistance,
  'heater-by-rating': heaterByRating,
  switch: switchPart,
  coil,
  'thermistor-by-beta': thermistorByBeta,
  'thermistor-by-coefficients': thermistorByCoefficients,
  rtd,
  'lamp-by-resistance': lampByResistance,
  'lamp-by-rating': lampByRating,
  consumer,
  potentiometer,
  'fuse-by-resistance': fuseByResistance,
  'fuse-by-rating': fuseByRating,
} as const satisfies Readonly<Record<FormName<'parts', Kind<'parts'>>, z.ZodType>>;
