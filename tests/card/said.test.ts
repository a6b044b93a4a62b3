import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { plainWords } from '../../server/src/card/words.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { buildCardOf } from '../readings/card-of.ts';
import { readText } from './well-formed.ts';

/*
 * Words that can hurt. A circuit is verified to be without voltage: a high-voltage source never is, and whoever is told
 * that it is dead takes its terminals for safe. Common practice, no source.
 */

const folder = new URL('../../procedures/', import.meta.url);
const shipped = readdirSync(folder).filter((name) => name.endsWith('.procedure.yaml'));

const forbidden: readonly RegExp[] = [
  /\bprove[sdn]?\b[^.]* dead\b/i,
  /\b(?:is|are|counts? as|be|known to be) dead\b/i,
  /\bdead (?:is|below)\b/i,
  /\bdead:/i,
  /\bhigh voltage kills\b/i,
];

function wrongs(text: string): readonly string[] {
  return forbidden.flatMap((pattern) => pattern.exec(text)?.[0] ?? []);
}

test('there are procedures to look at', () => {
  expect(shipped.length).toBeGreaterThan(3);
});

describe.each(shipped)('%s', (name) => {
  const text = readFileSync(new URL(name, folder), 'utf8');

  test('prints a card that calls nothing dead', () => {
    expect(wrongs(readText(buildCardOf(text).html))).toEqual([]);
  });

  // Step 1 takes it that every source is connected, every connector plugged and no load fitted.
  test('sends nobody back to step 1 before all is restored', () => {
    const { model } = buildCardOf(text);
    const stops = model.steps.sections.flatMap(({ steps }) => steps.filter(({ kind }) => kind === 'stop'));
    expect(stops.length).toBeGreaterThan(1);
    for (const { action, left } of stops.filter((stop) => /\bstep 1\b/.test(plainWords(stop.action)))) {
      const items = [...(left?.items ?? []), ...(left?.sometimes?.items ?? [])].map(plainWords);
      expect([
        plainWords(action),
        items.filter((item) => !/not (?:cleared|verified)|^Nothing is left open/.test(item)),
      ]).toEqual([plainWords(action), []]);
    }
  });

  // ANSI Z535.6 (from memory): what can kill is never told at less than it is.
  test('says at each load beside high voltage that the interlock protects nobody', () => {
    const { model } = buildCardOf(text);
    const fitted = model.steps.sections
      .flatMap(({ steps }) => steps)
      .filter(({ action }) => /^(?:Fit|Move) load-plug/.test(plainWords(action)));
    expect(fitted.length > 0).toBe(/\bcarries:/.test(text));
    for (const { notices } of fitted) {
      const danger = notices.find(({ signal }) => signal === 'danger')?.lines.join(' ') ?? '';
      expect(danger).toContain('closes the interlock circuit. The interlock no longer protects you.');
      expect(danger).toContain('Keep all persons away while the ignition is on');
    }
  });

  test('says at each battery that its cable is insulated once it is off', () => {
    const { model } = buildCardOf(text);
    const off = model.steps.sections
      .flatMap(({ steps }) => steps)
      .filter(({ action }) => plainWords(action).startsWith('Disconnect the battery'));
    expect(off.length > 0).toBe(text.includes('disconnect: battery'));
    for (const { action } of off) expect(plainWords(action)).toMatch(/, then insulate its cable end\.$/);
  });

  test('has no CAUTION about damage alone', () => {
    for (const [, said = ''] of text.matchAll(/^ *caution: (.*)$/gm))
      expect(said).toMatch(/\b(?:burn|cut|hurt|injur|bruise|pinch|irritat)/i);
  });
});

test.each(rules)('the page of $name calls no circuit or source dead', ({ meaning, why, examples }) => {
  const texts = [meaning, why, examples.triggers.shows, examples.passes.shows];
  expect(texts.flatMap(wrongs)).toEqual([]);
});

test('nor does the description of a key', () => {
  const schema = readFileSync(new URL('../../schemas/procedure.schema.json', import.meta.url), 'utf8');
  const described = [...schema.matchAll(/"(?:description|\$comment)": "((?:[^"\\]|\\.)*)"/g)];
  expect(described.length).toBeGreaterThan(100);
  expect(described.flatMap(([, text = '']) => wrongs(text))).toEqual([]);
});

test.each(['traction is dead', 'is proven dead', 'Dead is below 59.5 V', 'dead: below 59.5 V'])(
  'such a text is found: %s',
  (text) => {
    expect(wrongs(text)).not.toEqual([]);
  },
);
