import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import type { CardModel, Words } from '../../server/src/card/model.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { plainWords } from '../../server/src/card/words.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { lampEarth } from '../jobs/lamp-earth.ts';
import { pedal } from '../jobs/pedal.ts';

/* The card of a procedure that measures a network by hand. */

const bus = readFileSync(new URL('../../procedures/two-wire-bus.procedure.yaml', import.meta.url), 'utf8');

function cardOf(text: string, draft = false): CardModel {
  const analysis = analyse(snapshotOf([{ id: 'bus.procedure.yaml', text }]), 'bus.procedure.yaml');
  const made = finish(card(analysis, { date: '1 March 2026', version: '0.0.0', draft }));
  if ('refused' in made) throw new Error(made.refused.map(({ message }) => message).join('\n'));
  return made.card;
}

const model = cardOf(bus);
const stepOf = (number: string) => {
  const found = model.steps.sections.flatMap(({ steps }) => steps).find((step) => step.number === number);
  if (found === undefined) throw new Error(`no step ${number}`);
  return found;
};
const lines = (words: readonly Words[]): readonly string[] => words.map(plainWords);

test('lists what stands between the points, and draws no loop', () => {
  expect(model.drawings.loops).toEqual([]);
  const rows = (model.network?.rows ?? []).map(
    ({ from, what, to }) => `${from} | ${plainWords(what)} | ${to}`,
  );
  expect(rows).toHaveLength(18);
  expect(rows).toEqual(
    expect.arrayContaining([
      'front-high | front-termination, resistor, 118..120..130 Ω | front-low',
      'front-high | K70, connector, pin 1, unit side to harness side | front-end-high',
      'front-end-high | front-wire-high, cable, one conductor, 2.2 m of 0.35 mm² copper | bus-high',
      'bias | bus-bias, source, 2.3..2.7 V, plus first | ground',
    ]),
  );
  const html = cardHtml(model);
  expect(html).toContain('<h2>The network</h2>');
  expect(html).not.toContain('Each loop is drawn');
});

test('says where the wiper of a potentiometer leads, and where it may stand', () => {
  const row = cardOf(pedal.text).network?.rows.find(({ what }) => plainWords(what).startsWith('pedal'));
  expect(row === undefined ? '' : `${row.from} | ${plainWords(row.what)} | ${row.to}`).toBe(
    'track-supply | pedal, potentiometer, wiper at wiper, track 0.8..1.2 kΩ, wiper at 12..88 % from its first end | track-ground',
  );
});

test('marks what is live', () => {
  const live = bus
    .replace(
      '  door-input: { kind: resistor, resistance: 20..50 kΩ }',
      '  door-input: { kind: hv-section, voltage: 400 V, resistance: 20..50 kΩ, live: true }',
    )
    .replace('feeds: [front-termination, rear-termination]', 'feeds: [door-input]\n    wait: 1 min');
  const row = cardOf(live, true).network?.rows.find(({ what }) => plainWords(what).startsWith('door-input'));
  expect(row === undefined ? '' : plainWords(row.what)).toContain(', LIVE');
});

test('says where each probe goes', () => {
  expect(plainWords(stepOf('3').action)).toBe(
    'Measure the DC voltage with hand-meter: red probe on point bus-high, black probe on ground.',
  );
  expect(plainWords(stepOf('6').action)).toBe(
    'Measure the resistance with hand-meter between point bus-high and point bus-low.',
  );
  expect(plainWords(stepOf('12').action)).toBe(
    'Measure the resistance with hand-meter at K70, unit side, between pins 1 and 2.',
  );
  expect(stepOf('6').windows.map(({ of, window }) => [plainWords(of), window])).toEqual([
    ['bus-high to bus-low', '58.1..66.2 Ω'],
  ]);
});

test('asks for the windows by name first', () => {
  const rows = stepOf('6').outcomes?.rows ?? [];
  expect(lines(rows.map(({ when }) => when))).toEqual([
    'Shows 110..140 Ω (one-end)',
    'Shows 58.1..66.2 Ω',
    'Reads open (no number)',
    'Shows more than 66.2 Ω',
    'Anything else (less than 58.1 Ω)',
  ]);
});

test('a voltmeter that shows no number is beyond its range, never open', () => {
  const rows = stepOf('3').outcomes?.rows ?? [];
  expect(lines(rows.map(({ when }) => when)).join(' ')).toBe(
    'Shows -0.10..0.10 V Anything else (less; more; no number)',
  );
  expect(cardHtml(model).split('id="step-3"')[1]?.split('id="step-4"')[0]).not.toContain('open');
});

test('says in the list of instruments what the windows assume of each', () => {
  const items = model.needs.groups.flatMap((group) => lines(group.items));
  expect(items).toContain(
    'hand-meter, a multimeter. The windows assume, at its worst: DC 0..40 V, an error up to 0.5 % + 2 digits, steps of 0.01 V; 0..400 Ω, an error up to 0.8 % + 3 digits, steps of 0.1 Ω; leads 0.1..0.3 Ω',
  );
});

test('parts of which the same is assumed share a line', () => {
  const facts = model.assumptions.facts.map(({ words }) => plainWords(words));
  expect(facts.filter((fact) => fact.startsWith('front-wire-high'))).toEqual([
    'front-wire-high and front-wire-low: 2.2 m of 0.35 mm² copper (annealed copper, 0.393 % per kelvin; IEC 60028; 5 % less to 20 % more, since IEC 60228 does not list this size)',
  ]);
});

test('what is typical is printed to the last digit of the display, as the window beside it', () => {
  expect(stepOf('3').windows[0]?.remark).toContain('typically 0.00 V;');
  expect(stepOf('12').windows[0]?.remark).toContain('typically 120.2 Ω;');
});

test('says what the windows assume of the meter and of the supply', () => {
  const facts = model.assumptions.facts.map(({ label, words }) => `${label}: ${plainWords(words)}`);
  expect(facts).toEqual(
    expect.arrayContaining([
      'Instrument: hand-meter on ohms: up to 400 Ω error at most 0.8 % + 3 digits, last digit 0.1 Ω; leads 0.1..0.3 Ω together; test current 1 mA',
      'Instrument: hand-meter on volts: error at most 0.5 % + 2 digits, last digit 0.01 V, 10 MΩ between its probes',
      'Supply: bus-bias: 2.3..2.7 V, on while battery is connected and the ignition is on; off, it counts as no connection',
    ]),
  );
});

test('says what a lamp is taken to have under power, and what is inside of the battery', () => {
  const facts = cardOf(lampEarth.text).assumptions.facts.map(({ words }) => plainWords(words));
  expect(facts).toContain('battery: 5..20 mΩ');
  expect(facts.find((fact) => fact.startsWith('tail-lamp'))).toContain(
    '6.86 Ω ± 10 % hot at 12 V, rising with the power 0.37 to 0.5 of the voltage',
  );
});
