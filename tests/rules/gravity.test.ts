import { expect, test } from 'vitest';
import { checkText } from '../../server/src/cli/check-text.ts';
import { checkFile } from '../../server/src/cli/checked.ts';
import { analyse } from '../../server/src/project/analysis.ts';
import { snapshotOf } from '../../server/src/project/snapshot.ts';
import { example, makeSafe } from '../../server/src/rules/examples.ts';
import { grave } from '../../server/src/rules/gravity.ts';
import { rules } from '../../server/src/rules/rules.ts';
import { textRules } from '../../server/src/text/rules.ts';
import { fakeTerminal } from '../cli/fake-terminal.ts';

/** Those that guard the proof, and hurt nobody by themselves. */
const harmless = ['too-many-states', 'not-restored', 'waiver-refused'];

test('every rule that no waiver takes has its place among the grave ones, or hurts nobody', () => {
  const names = [...rules, ...textRules].map(({ name }) => name);
  expect(grave.filter((name) => !names.includes(name))).toEqual([]);
  const immune = rules.flatMap(({ name, immune }) => (immune === true ? [name] : []));
  const placed = [...grave, ...harmless];
  expect(immune.filter((name) => !placed.includes(name))).toEqual([]);
});

/* A wait without effect stands before the touch, and the touch is what a reader has to see first. */
test('the terminal shows first what can hurt somebody, then the rest as it stands in the file', () => {
  const written = `- wait: 1 min
- ignition: on
- read: driver-loop
- ignition: off
- unplug: K30
  warning: Stay clear of the front of the airbag.
- plug: K30
${makeSafe}`;
  const { text } = example('a touch behind a wait', written);
  const { terminal } = fakeTerminal();
  const analysis = analyse(snapshotOf([{ id: 'a.procedure.yaml', text }]), 'a.procedure.yaml');
  const checked = checkFile(analysis);
  const told = [...checkText(terminal, [checked])].join('');
  const shown = [...told.matchAll(/^a\.procedure\.yaml:(\d+):\d+: \w+ ([\w-]+)/gm)].map(([, line, rule]) => ({
    line: Number(line),
    rule: rule ?? '',
  }));
  expect(shown.length).toBeGreaterThan(1);
  expect(shown[0]?.rule).toBe('live-touch');
  const others = shown.filter(({ rule }) => !grave.includes(rule)).map(({ line }) => line);
  expect(others).toEqual([...others].sort((one, other) => one - other));
  // In the list itself they stand as they do in the file, for editors and programs.
  expect(checked.findings[0]?.rule).not.toBe('live-touch');
});
