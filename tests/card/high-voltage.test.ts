import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import type { CardModel, CardStep } from '../../server/src/card/model.ts';
import { plainWords } from '../../server/src/card/words.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { heater } from '../jobs/heater.ts';

/* The card of work on high voltage: three measurements in order, as NFPA 70E-2018, 120.5 asks (from memory). */

const file = new URL('../../procedures/interlock-open.procedure.yaml', import.meta.url);
const shipped = readFileSync(file, 'utf8');

function cardOf(text: string): CardModel {
  const analysis = analyse(snapshotOf([{ id: 'interlock', text }]), 'interlock');
  const made = finish(card(analysis, { date: '2031-01-01', version: '0', draft: true }));
  if ('refused' in made) throw new Error('no card');
  return made.card;
}

function steps(model: CardModel): readonly CardStep[] {
  return model.steps.sections.flatMap((section) => section.steps);
}

function saying(model: CardModel, words: string): CardStep {
  const found = steps(model).find(({ action }) => plainWords(action).includes(words));
  if (found === undefined) throw new Error(`no step says ${words}`);
  return found;
}

const model = cardOf(shipped);

describe('a proof', () => {
  const proof = saying(model, 'Verify with hand-meter');

  test('is three measurements, the known source first and last, each with what it must show', () => {
    expect(plainWords(proof.action)).toBe(
      'Verify with hand-meter, on DC volts, that the circuit of the high-voltage source traction is without voltage. Do all three measurements:',
    );
    expect(proof.details.map(plainWords)).toEqual([
      '1. Known source: measure the battery. It must show 11.9..13.1 V.',
      '2. Circuit: at the test points of K7, end side: pole to pole, then each pole to ground. Expected: near 0 V (at most 3.6 V left after 5 min). Stop unless every reading is between -59.5 V and +59.5 V.',
      '3. Known source again: measure the battery. It must show 11.9..13.1 V as before.',
    ]);
    expect(proof.blanks).toEqual([
      'Known source',
      'Pole to pole',
      'Pole 1 to ground',
      'Pole 2 to ground',
      'Known source again',
    ]);
  });

  test('goes on when it is dead, and ends the work when it is not', () => {
    const rows = proof.outcomes?.rows ?? [];
    expect(rows.map(({ when }) => plainWords(when))).toEqual(['All three as stated', 'Anything else']);
    expect(rows[0]).toMatchObject({ isNext: true });
    expect(rows[1]?.then).toMatch(/^stop work. Touch nothing/);
    expect(rows[1]?.to).toBeNull();
  });

  test('leads where its outcomes say', () => {
    const written = shipped.replace(
      '    known: battery\n    danger',
      '    known: battery\n    outcomes: { live: still-faulty }\n    danger',
    );
    const rows = saying(cardOf(written), 'Verify with hand-meter').outcomes?.rows ?? [];
    expect(rows[1]).toMatchObject({ then: 'go to step', to: { step: String(steps(model).length) } });
  });

  test('between two terminals names both', () => {
    const written = shipped.replace('    at: K7.end\n', '    at: [K7.end.1, S1.monitor.2]\n');
    const [, here] = saying(cardOf(written), 'Verify with hand-meter').details;
    expect(plainWords(here ?? [])).toContain(
      'of K7, end side, pin 1 and of S1, monitor side, pin 2: one to the other',
    );
  });

  test('without a stated reserve prints the limit alone', () => {
    const bare = shipped.replace(/\n {4}reserve: .*5 min.*|\n {4}reserve: .*/, '');
    expect(bare).not.toBe(shipped);
    const [, here] = saying(cardOf(bare), 'Verify with hand-meter').details;
    expect(plainWords(here ?? [])).toContain(
      'Expected: near 0 V. Stop unless every reading is between -59.5 V and +59.5 V.',
    );
  });

  test('prints its notices before it', () => {
    expect(proof.notices.map(({ word }) => word)).toEqual(['DANGER']);
  });
});

describe('what a proof is said to hold for', () => {
  const holds = (text: string): string => {
    const lines = saying(cardOf(text), 'Verify with hand-meter').details.map(plainWords);
    return lines.find((line) => line.startsWith('Valid only')) ?? '';
  };

  test('are the drawn parts that hang together with its test points', () => {
    expect(holds(heater.text)).toContain(
      'Valid only for link-plus-cable, link-minus-cable and element, joined as they are now.',
    );
  });

  test('are on several paths only those that do so on all of them', () => {
    const parted = heater.text.replace(
      '  - prove-dead: traction\n',
      `  - inspect: Is it wet?
    at: nothing
    outcomes: { ok: proof, defect: next }
  - unplug: K90
  - prove-dead: traction
    id: proof
`,
    );
    expect(holds(parted)).toContain(
      'Valid only for link-plus-cable and link-minus-cable, joined as they are now.',
    );
  });
});

test('taking the source away and giving it back name the service plug', () => {
  expect(saying(model, 'Disconnect the high-voltage source traction: open connector S1').kind).toBe('act');
  expect(saying(model, 'Reconnect the high-voltage source traction: close connector S1').kind).toBe('act');
});

test('what is left disconnected says which connector stands open', () => {
  const text = shipped.replace(
    '  - stop: The loop is still out of its window. Ask',
    '  - ignition: off\n    id: leave\n  - disconnect: traction\n  - stop: Leave it.\n    leaves: [traction, repair]\n  - stop: The loop is still out of its window. Ask',
  );
  const led = cardOf(text.replace('else: still-faulty', 'else: leave'));
  const left = saying(led, 'Leave it').left?.items.map(plainWords);
  expect(left).toContain('The high-voltage source traction is disconnected, connector S1 is open.');
});

test('where to probe, and what a proof holds for, stands before the steps', () => {
  const said = model.steps.explanations.find((line) => line.startsWith('Absence of voltage'));
  expect(said).toContain("only at the test points that the maker's service information gives");
  expect(said).toContain('A mated connector has no contacts to probe');
  expect(said).toContain('Verify each branch that can hold its own charge');
});

test('the end of the card is printed only where a path gets there', () => {
  expect(model.end).toBeNull();
});

test('the panel warns of what is there: high voltage, and stages only where there are some', () => {
  expect(model.hazard.lines.some((line) => line.startsWith('High voltage can cause death'))).toBe(true);
  expect(model.hazard.lines.some((line) => line.includes('pyrotechnic'))).toBe(false);
});

test('what is needed and assumed names the meter, the source and what leads it', () => {
  const needs = model.needs.groups.flatMap(({ items }) => items.map(plainWords));
  expect(needs).toContain(
    'hand-meter, a multimeter. The windows assume, at its worst: DC 0..600 V, an error up to 0.5 % + 2 digits, steps of 0.1 V',
  );
  const facts = model.assumptions.facts.map(({ label, words }) => `${label}: ${plainWords(words)}`);
  expect(facts).toContain(
    'High voltage: traction, 320..410 V, isolated by opening S1, carried by K7, its circuit counts as without voltage below 60 V',
  );
  expect(facts).toContain(
    'Instrument: hand-meter on volts: error at most 0.5 % + 2 digits, last digit 0.1 V, 10 MΩ between its probes',
  );
});

test('the drawing says at which connectors there is more than the loop', () => {
  const [drawing] = model.drawings.loops;
  expect(drawing?.description).toContain('carries traction (HIGH VOLTAGE, 320..410 V)');
  expect(drawing?.description).toContain('isolates traction (HIGH VOLTAGE, 320..410 V)');
});
