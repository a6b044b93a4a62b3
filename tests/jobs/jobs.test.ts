import { describe, expect, test } from 'vitest';
import { bus } from './bus.ts';
import { heater } from './heater.ts';
import { insulation } from './insulation.ts';
import { intermittentSensor } from './intermittent-sensor.ts';
import { foundIn, mutated } from './job.ts';
import { lampEarth } from './lamp-earth.ts';
import { link48 } from './link-48.ts';
import { parasitic } from './parasitic.ts';
import { pedal } from './pedal.ts';
import { relayCoil } from './relay-coil.ts';
import { starterFeed } from './starter-feed.ts';
import { wheelSensor } from './wheel-sensor.ts';

describe.each([
  bus,
  link48,
  heater,
  insulation,
  lampEarth,
  parasitic,
  relayCoil,
  pedal,
  starterFeed,
  wheelSensor,
  intermittentSensor,
])('$name', (job) => {
  test('has no finding as it is written', () => {
    expect(foundIn(job.text)).toEqual([]);
  });
  test.each(job.mutants)('$story', (mutant) => {
    expect(foundIn(mutated(job, mutant))).toEqual(expect.arrayContaining([...mutant.finds]));
  });
});
