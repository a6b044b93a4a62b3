import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { finish } from '../../server/src/model/work.ts';
import { cardHtml } from '../../server/src/card/html.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { card } from '../../server/src/project/card.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';

const folder = new URL('../../procedures/', import.meta.url);
const shipped = readFileSync(
  new URL('../fixtures/driver-airbag-written-out.procedure.yaml', import.meta.url),
  'utf8',
);
const lines = shipped.split('\n');

/** Everything that is ever done with a text: it may find much, but it must not throw, and must say where. */
function survive(text: string): number {
  const analysis = analyse(snapshotOf([{ id: 'damaged', text }]), 'damaged');
  const findings = finish(analysis.findings('order'));
  for (const finding of findings) {
    const { from, to } = analysis.range(finding.at);
    expect(from).toBeGreaterThanOrEqual(0);
    expect(to).toBeGreaterThanOrEqual(from);
    expect(to).toBeLessThanOrEqual(text.length);
    expect(text.slice(from, to)).not.toMatch(/[\r\n]/);
    expect(finding.message).toMatch(/\S{3,}.*[.?)`]$/);
    for (const { at } of finding.related) expect(analysis.range(at).to).toBeLessThanOrEqual(text.length);
  }
  const options = { date: '2026-01-31', version: '0.0.0', draft: true };
  const made = finish(card(analysis, options));
  if ('card' in made) expect(cardHtml(made.card)).toContain('DRAFT');
  return findings.filter(({ severity }) => severity === 'error').length;
}

describe('a procedure that is damaged is analysed all the same, and a draft of its card written', () => {
  test('every prefix by lines; all but the last few have an error', () => {
    const withoutError: number[] = [];
    for (let count = 0; count < lines.length; count++)
      if (survive(lines.slice(0, count).join('\n')) === 0) withoutError.push(count);
    // Cut behind the first `stop`s nothing is missing but the steps that outcomes lead to; whole is whole.
    expect(withoutError.every((count) => count > lines.length - 5)).toBe(true);
  });

  test('every line with a key left out, of every shipped procedure', () => {
    for (const name of readdirSync(folder).filter((one) => one.endsWith('.procedure.yaml'))) {
      const all = readFileSync(new URL(name, folder), 'utf8').split('\n');
      for (const [at, line] of all.entries())
        if (/^ *(- )?[A-Za-z0-9-]+:/.test(line)) survive(all.toSpliced(at, 1).join('\n'));
    }
  });

  test('every key of a flow map left out', () => {
    const keys = [...shipped.matchAll(/[A-Za-z0-9-]+: [^,{}[\]\n]+(, )?/g)];
    expect(keys.length).toBeGreaterThan(100);
    for (const key of keys) survive(shipped.slice(0, key.index) + shipped.slice(key.index + key[0].length));
  });

  test('tabs, CRLF, a byte order mark, a second document, binary bytes, nothing at all', () => {
    expect(survive('')).toBeGreaterThan(0);
    expect(survive(shipped.replaceAll('    ', '\t'))).toBeGreaterThan(0);
    expect(survive(`${shipped}---\n${shipped}`)).toBeGreaterThan(0);
    expect(survive(`${shipped}\u0000\u0001`)).toBeGreaterThan(0);
    expect(survive(shipped.replaceAll('\n', '\r\n'))).toBe(0);
    expect(survive(`\uFEFF${shipped}`)).toBe(0);
  });
});
