import { describe, expect, test } from 'vitest';
import { cardHtml } from '../../server/src/card/html.ts';
import { template } from '../../server/src/editor/template.ts';
import { finish } from '../../server/src/model/work.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { writtenTemplate as written } from '../editor/written-template.ts';

/* A new procedure is a draft until its values are the manufacturer's. */

const analysisOf = (text: string) =>
  analyse(snapshotOf([{ id: 'new.procedure.yaml', text }]), 'new.procedure.yaml');

function found(text: string): readonly string[] {
  const findings = finish(analysisOf(text).findings('order'));
  expect(findings.every(({ rule, severity }) => rule === 'example-values' && severity === 'error')).toBe(
    true,
  );
  return findings.map(({ subject = '' }) => subject);
}

function cardOf(text: string, draft: boolean) {
  return finish(card(analysisOf(text), { date: '2031-04-17', version: '0', draft }));
}

describe('a new procedure', () => {
  test('has this error for its values and for each text that is to be written, and no other finding', () => {
    expect([...found(template)].sort()).toEqual(['applies-to', 'example', 'purpose', 'title']);
  });

  test('has no finding once all is written', () => {
    expect(found(written)).toEqual([]);
    expect('card' in cardOf(written, false)).toBe(true);
  });

  test.each([
    ['the values are still said to be examples', written.replace('format: 1', 'format: 1\nexample: true')],
    ['a text still says TODO', written.replace('Halden V4', 'TODO')],
  ])('gives no card while %s', (_, text) => {
    expect(found(text)).toHaveLength(1);
    expect('refused' in cardOf(text, false)).toBe(true);
  });

  test('gives a draft that says on every page that the values are examples', () => {
    const made = cardOf(template, true);
    if (!('card' in made)) throw new Error('a draft is never refused');
    expect(made.card.draft).toBe('DRAFT - DO NOT USE: EXAMPLE VALUES');
    expect(made.card.hazard.lines.at(-1)).toContain('The values on this card are invented examples');
    expect(cardHtml(made.card)).toMatch(/@top-center [^}]*EXAMPLE VALUES/);
  });
});

test.each([
  ['stop: The loop is sound.', 'stop: TODO', 'stop'],
  ['warning: If the cable', 'warning: TODO', 'warning'],
  ['training: [restraint systems]', 'training: [TODO]', 'requires/training'],
])('TODO is found in %j', (before, after, subject) => {
  expect(written).toContain(before);
  expect(found(written.replace(before, after))).toEqual([subject]);
});

test('no waiver holds against it', () => {
  const waived = written.replace(
    'format: 1',
    'format: 1\nexample: true\nwaivers:\n  - { rule: example-values, reason: The lesson is invented. }',
  );
  const findings = finish(analysisOf(waived).findings('order'));
  expect(findings.map(({ rule }) => rule).sort()).toEqual(['example-values', 'waiver-refused']);
  expect(findings.every((finding) => finding.waived === undefined)).toBe(true);
});

test('a word that only looks like it is none', () => {
  expect(found(written.replace('Halden V4', 'Todo V4, TODOS 2'))).toEqual([]);
});
