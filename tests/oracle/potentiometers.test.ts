import { expect, test } from 'vitest';
import { analysed } from '../readings/analysed.ts';
import { chanceFrom } from './chance.ts';
import { windowsOf } from './windows.ts';

/*
 * Random circuits around one potentiometer, powered, with what loads its wiper: the engine and the oracle accept the same
 * readings of each.
 */

const nodes = ['na', 'nb', 'nc', 'ground'];

function circuit(seed: number): string {
  const chance = chanceFrom(seed + 90_000);
  const wired = (id: string, resistance: string) => ({
    part: `${id}: { kind: resistor, resistance: ${resistance} }`,
    place: `{ part: ${id}, between: [${chance.pick(['na', 'nb'])}, ${chance.pick(['nc', 'ground'])}] }`,
  });
  const parts = [
    wired('one', chance.pick(['1..2 kΩ', '100..120 Ω', '90..110 kΩ'])),
    wired('other', chance.pick(['400..500 Ω', '10 kΩ ± 5 %', '0.1..0.2 Ω'])),
  ];
  const first = chance.pick(nodes);
  const wiper = chance.pick(nodes.filter((node) => node !== first));
  const second = chance.pick(nodes.filter((node) => node !== first && node !== wiper));
  const measured = ['voltage', 'voltage', 'resistance', 'resistance'].map((quantity) => {
    const one = chance.pick(nodes);
    const two = chance.pick(nodes.filter((node) => node !== one));
    return { quantity, text: `  - measure: ${quantity}\n    across: [${one}, ${two}]\n    with: meter\n` };
  });
  const of = (wanted: string): string =>
    measured.flatMap(({ quantity, text }) => (quantity === wanted ? [text] : [])).join('');
  return `format: 1
title: Potentiometer
conditions: { ambient: 20..20 °C }
sources:
  battery: { kind: battery, voltage: 12 V, feeds: [lone], wait: 0 s }
  five: { kind: regulated, voltage: 5 V ± 2 %, resistance: 0.1..0.3 Ω, from: battery }
instruments:
  meter:
    kind: multimeter
    leads: 0.1..0.3 Ω
    resistance: { range: 0..100 kΩ, accuracy: 0.1 % + 1 digits, resolution: 0.1 Ω }
    voltage: { range: 0..40 V, accuracy: 0.1 % + 1 digits, resolution: 0.0001 V, input: ${chance.pick(['10 MΩ', '10..20 kΩ'])} }
parts:
  pedal: { kind: potentiometer, track: ${chance.pick(['1 kΩ ± 20 %', '90..110 Ω', '5 kΩ ± 10 %'])}, wiper: ${chance.pick(['10..90 %', '5..50 %', '40 % ± 3 %', '0..100 %', '70 %'])} }
  lone: { kind: resistor, resistance: 1 kΩ }
  ${parts.map(({ part }) => part).join('\n  ')}
network:
  - { source: five, between: [na, ground] }
  - { part: lone, between: [apart, ground] }
  - { part: pedal, between: [${first}, ${wiper}, ${second}] }
  ${parts.map(({ place }) => `- ${place}`).join('\n  ')}
steps:
${of('voltage')}  - disconnect: battery
${of('resistance')}  - reconnect: battery
`;
}

test('the same readings are accepted as in brute force, of 60 circuits', () => {
  let [volts, ohms, outer] = [0, 0, 0];
  for (let seed = 1; seed <= 60; seed += 1) {
    const text = circuit(seed);
    const { procedure, readings, findings } = analysed(text);
    const unread = findings.filter(({ rule }) => ['quantity', 'wrong-value', 'wrong-id'].includes(rule));
    expect(unread, text).toEqual([]);
    const theirs = windowsOf(procedure);
    for (const { index, quantity, accepted, good, exact } of readings.readings) {
      const other = theirs.find(({ step }) => step.index === index);
      if (accepted === null || accepted === 'open' || other?.accepted == null || other.accepted === 'open')
        continue;
      expect(good.length, text).toBeGreaterThan(0);
      const resolution = quantity === 'voltage' ? 0.0001 : 0.1;
      for (const end of ['least', 'most'] as const) {
        const beyond = (accepted[end] ?? 0) - (other.accepted[end] ?? 0);
        // An outer bound may be wider, never narrower.
        const off = exact ? Math.abs(beyond) : end === 'least' ? beyond : -beyond;
        // What lies at a step of the display can be rounded to either side of it.
        expect(off, `step ${index}, ${end} of seed ${seed}:\n${text}`).toBeLessThan(1.01 * resolution);
      }
      if (!exact) outer += 1;
      if (quantity === 'voltage') volts += 1;
      else ohms += 1;
    }
  }
  expect(outer).toBeLessThan(volts / 5);
  expect(volts).toBeGreaterThan(40);
  expect(ohms).toBeGreaterThan(20);
});
