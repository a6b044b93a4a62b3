import { expect, test } from 'vitest';
import { analysed } from '../readings/analysed.ts';

/*
 * Two resistors of 120 Ω side by side, each behind a plug, and one of 30 kΩ behind a third. By hand: with K1 or K2 open
 * 119.5 Ω are left of 60 Ω, far outside; with K3 open 60.00 Ω instead of 59.88 Ω, which the limits of the parts cover.
 */

function told(moved: string, more = 'across: [high, ground]'): readonly string[] {
  const text = `format: 1
title: Moved
conditions: { ambient: 20..20 °C }
instruments:
  meter: { kind: multimeter, zeroed: true, resistance: { range: 0..400 Ω, accuracy: 1 %, resolution: 0.1 Ω } }
parts:
  one: { kind: resistor, resistance: 120 Ω ± 1 % }
  two: { kind: resistor, resistance: 120 Ω ± 1 % }
  three: { kind: resistor, resistance: 30 kΩ ± 1 % }
  lone: { kind: resistor, resistance: 10 Ω ± 1 % }
connectors:
  K1: { contact: 10 mΩ }
  K2: { contact: 10 mΩ }
  K3: { contact: 10 mΩ }
  K4: { contact: 10 mΩ }
network:
  - { connector: K1, pin: 1, between: [high, high-one] }
  - { part: one, between: [high-one, ground] }
  - { connector: K2, pin: 1, between: [high, high-two] }
  - { part: two, between: [high-two, ground] }
  - { connector: K3, pin: 1, between: [high, high-three] }
  - { part: three, between: [high-three, ground] }
  - { connector: K4, pin: 1, between: [elsewhere, elsewhere-on] }
  - { part: lone, between: [elsewhere-on, elsewhere] }
steps:
  - { wiggle: ${moved}, quantity: resistance, ${more}, with: meter, for: 1 min, outcomes: { within: next, else: bad } }
  - stop: Nothing comes and goes.
  - { stop: It comes and goes., id: bad }
`;
  return analysed(text).findings.flatMap(({ rule, message }) => (rule === 'moved-unseen' ? [message] : []));
}

test('what the reading shows may be moved', () => {
  expect(told('[K1, K2, one, two]')).toEqual([]);
  expect(told('K1.end')).toEqual([]);
});

test('what opens without a trace is told, all of it at once', () => {
  expect(told('K3')).toEqual([
    'If K3 opens while it is moved, the resistance across high..ground can stay `within`, and nobody sees it. Watch a reading that it changes, or do not name it in `wiggle`.',
  ]);
  expect(told('[K1, K3, three]')[0]).toContain('If K3 or three opens');
});

test('so is what does not stand in the circuit at all', () => {
  expect(told('[K1, lone]')[0]).toContain('If lone opens');
  expect(told('K4.monitor')[0]).toContain('If K4.monitor opens');
});

test('a stated window counts as it is', () => {
  expect(told('K1', 'across: [high, ground], expect: 50..200 Ω')[0]).toContain('If K1 opens');
});
