import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { buildCard } from '../../server/src/card/build.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import type { CardModel } from '../../server/src/card/model.ts';
import { circuit, example, readOnly } from '../../server/src/rules/examples.ts';
import { buildCardOf } from '../readings/card-of.ts';
import { input } from './halden.ts';

/*
 * The panel on the first page. ANSI Z535.6 (from memory): safety messages that stand together bear the gravest signal
 * word among them. That the current of a powered device can fire an initiator is common practice, no source.
 */

const powered =
  'Never connect an ohmmeter, a test lamp or any other powered device to an initiator (airbag or belt tensioner)';

function signed(notices: string): CardModel['hazard'] {
  const steps = readOnly.replace('- read: driver-loop\n', `- read: driver-loop\n${notices}`);
  return buildCardOf(example('', steps).text).model.hazard;
}

describe('the signal word of the first panel', () => {
  test.each([
    ['DANGER', '  danger: D.\n  notice: N.\n'],
    ['WARNING', '  warning: W.\n  caution: C.\n'],
    ['WARNING', '  notice: N.\n'],
    ['WARNING', ''],
  ])('is %s above %j', (word, notices) => {
    const panel = signed(notices);
    expect([panel.word, panel.signal]).toEqual([word, word.toLowerCase()]);
  });

  test('is printed as the gravest of all notices, before them', () => {
    const html = cardHtml(buildCard(input));
    const words = [...html.matchAll(/<p class="signal">.*?<strong>(\w+)<\/strong>/g)].map(([, word]) => word);
    expect(words.length).toBeGreaterThan(1);
    expect(words.slice(1)).toContain('DANGER');
    expect(words[0]).toBe('DANGER');
  });
});

describe('no powered device on an initiator', () => {
  test.each(['true', 'false'])('is said where the file has one, live: %s', (live) => {
    const parts = circuit.parts.replace('live: true', `live: ${live}`);
    const { lines } = buildCardOf(example('', readOnly, { parts }).text).model.hazard;
    expect(lines.some((line) => line.includes(powered))).toBe(true);
  });

  test('is not said where it has none', () => {
    const file = new URL('../../procedures/coolant-sensor.procedure.yaml', import.meta.url);
    const { lines } = buildCardOf(readFileSync(file, 'utf8')).model.hazard;
    expect(lines.some((line) => line.includes(powered))).toBe(false);
  });
});
