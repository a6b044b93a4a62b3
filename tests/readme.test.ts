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

test('what the readme moves by hand is moved without a finding with the lamp in, and refused with the stage in', () => {
  const [first = '', , moved = ''] = [...readme.matchAll(/```yaml\n([\s\S]*?)```/g)].map(
    ([, text = '']) => text,
  );
  const step = moved.replace(/^/gm, '  ').trimEnd();
  const read = '  - read: driver-loop\n    outcomes: { within: next, else: harness }';
  expect(first.split(read)).toHaveLength(2);
  expect(analysed(first.replace(read, step)).findings).toEqual([]);
  const before = '  - read-codes: control-unit\n';
  const early = step.replace('next, else: harness', 'next, else: faulty');
  const found = analysed(first.replace(before, `${before}${early}\n`)).findings;
  expect(found.filter(({ rule }) => rule === 'moved-with-stage')).toHaveLength(2);
});
