import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { plainWords } from '../../server/src/card/words.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { readText } from './well-formed.ts';

/* The card of a procedure that calls routines, and routines that call others. */

const text = readFileSync(
  new URL('../../procedures/driver-airbag-resistance.procedure.yaml', import.meta.url),
  'utf8',
);
const made = finish(
  card(analyse(snapshotOf([{ id: 'airbag.procedure.yaml', text }]), 'airbag.procedure.yaml'), {
    date: '1 March 2026',
    version: '0.0.0',
    draft: false,
  }),
);
if ('refused' in made) throw new Error(made.refused.map(({ message }) => message).join('\n'));
const model = made.card;
const steps = model.steps.sections.flatMap((section) => section.steps);
const html = cardHtml(model);

test('a call names the first and the last of its own steps', () => {
  const calls = steps.filter(({ kind }) => kind === 'call');
  const said = Object.fromEntries(calls.map(({ number, action }) => [number, plainWords(action)]));
  expect(said).toMatchObject({
    '6': 'make-safe: do steps 6.1 to 6.3.',
    '16': 'lamp-one-back: do steps 16.1 to 16.4.',
    '16.1': 'make-safe: do steps 16.1.1 to 16.1.3.',
    '62': 'power-up: do steps 62.1 to 62.2.',
  });
});

test('a call stays on the page of its first step', () => {
  expect(html).toMatch(/\.call \{[^}]*break-after: avoid/);
});

test('longer numbers are set smaller', () => {
  expect(html).toContain('<p class="number">16</p>');
  expect(html).toContain('<p class="number inner">16.1</p>');
  expect(html).toContain('<p class="number inmost">16.1.1</p>');
});

test('what codes to expect mean is said once, before the first step', () => {
  expect(readText(html).split('do not mean a new fault')).toHaveLength(2);
  expect(html.indexOf('do not mean a new fault')).toBeLessThan(html.indexOf('id="step-1"'));
});

test('the current that may not fire a stage is among the assumptions', () => {
  const facts = model.assumptions.facts.map(({ words }) => plainWords(words));
  expect(facts).toContain('stage-1 and stage-2: 1.7..2.3 Ω, no-fire current 400 mA');
});
