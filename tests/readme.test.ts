import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analysed } from './readings/analysed.ts';

const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8');

describe('the first file of the readme', () => {
  const text = /```yaml\n([\s\S]*?)```/.exec(readme)?.[1] ?? '';

  test('is complete, without a finding', () => {
    expect(analysed(text).findings).toEqual([]);
    expect(analysed(text).procedure.steps.length).toBeGreaterThan(10);
  });

  test('reads what the readme says', () => {
    const said = /with the lamp should show (\S+ Ω)/.exec(readme)?.[1];
    expect(said).toBe(analysed(text).readings.readings[0]?.printed);
  });

  test('is unsafe without its wait, as the readme says', () => {
    const without = text.replace('  - wait: 3 min\n', '');
    const [finding] = analysed(without).findings;
    expect(finding?.rule).toBe('short-wait');
    expect(finding?.message).toContain('This step touches K30');
  });
});

test('the network of the readme has nothing to find, and one under power has', () => {
  const [, network = ''] = [...readme.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, text = '']) => text);
  const text = `format: 1\ntitle: The pump\n${network}`;
  expect(analysed(text).findings).toEqual([]);
  expect(analysed(text).readings.readings).toHaveLength(1);
  const idle = text.replace('shorted: short, else: faulty', 'shorted: next, else: next');
  expect(analysed(idle).findings.map(({ rule }) => rule)).toContain('no-difference');
  const powered = text.replace('  - disconnect: battery\n', '').replace('  - reconnect: battery\n', '');
  expect(analysed(powered).findings.map(({ rule, severity }) => `${severity} ${rule}`)).toContain(
    'error powered-measurement',
  );
});
