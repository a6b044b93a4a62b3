import { describe, expect, test } from 'vitest';
import { rules } from '../../server/src/rules/rules.ts';
import { ran } from './fake-terminal.ts';

const circuit = rules[0]?.examples.passes.text.split('\nsteps:\n')[0] ?? '';

/** The lines of the path to the one touch that is not safe, in the terminal. */
function pathTo(steps: string, colours = false): readonly string[] {
  const { out } = ran(['check', '-', '--name', 'x.yaml'], `${circuit}\nsteps:\n${steps}`, { colours });
  const block = out.split('\n\n').find((one) => one.includes('live-touch') && one.includes('shortest way'));
  const lines = block?.split('\n') ?? [];
  return lines.slice(lines.findIndex((line) => line.includes('The shortest way there:')) + 1);
}

const long = 'Look at the plug from all sides, and '.repeat(20);

describe('a path in the terminal', () => {
  test('stays within 80 columns, cut in the words and never in the way', () => {
    const steps = `  - ignition: on
  - inspect: ${long}
    outcomes: { ok: touch, defect: touch }
  - do: Not on this path.
  - unplug: K30
    id: touch
`;
    const lines = pathTo(steps);
    expect(lines).toHaveLength(3);
    expect(lines[1]).toMatch(/^ {4}2 {2}inspect: Look at the plug .*…: (ok|defect)$/);
    // The word that is cut may leave its space behind.
    expect([79, 80]).toContain(lines[1]?.length);
    expect(lines[2]).toBe('    4  unplug K30');
  });

  test('has one line for a step of many, and nothing that steers the terminal', () => {
    const steps = `  - ignition: on
  - do: "one\\ntwo\\e[2J\\u202ethree"
  - unplug: K30
`;
    expect(pathTo(steps)).toEqual([
      '    1  ignition on',
      '    2  do: one two[U+001B][2J[U+202E]three',
      '    3  unplug K30',
    ]);
  });

  test('folds what lies between, and says how many steps', () => {
    const steps = `  - ignition: on\n${'  - do: Look.\n'.repeat(7)}  - unplug: K30\n`;
    expect(pathTo(steps)).toEqual([
      '    1       ignition on',
      '    2 to 8  7 steps',
      '    9       unplug K30',
    ]);
  });

  test('says the same in colours', () => {
    const steps =
      '  - ignition: on\n  - read: driver-loop\n    outcomes: { else: touch }\n  - unplug: K30\n    id: touch\n';
    // ECMA-48 (from memory): select graphic rendition.
    const plain = pathTo(steps, true).map((line) => line.replace(/\u001b\[\d+m/g, ''));
    expect(plain).toEqual(pathTo(steps));
    expect(pathTo(steps, true)).not.toEqual(plain);
  });
});

test('where the path has no place of its own, on a card, it follows the message', () => {
  const steps = `${circuit}\nsteps:\n  - ignition: on\n  - unplug: K30\n`;
  const words = ['card', '-', '--name', 'x.yaml', '-o', 'x.html', '--draft'];
  expect(ran(words, steps).written.get('x.html')).toContain('Path: steps 1, 2.');
});

test('a finding says nothing that would steer the terminal, whatever stands in the file', () => {
  const steps = '  - unplug: "K\\e[2J\\u202e30"\n    "\\u009b31m": 1\n';
  const { out } = ran(['check', '-', '--name', 'x\u001b[2J.yaml'], `${circuit}\nsteps:\n${steps}`);
  expect(out).toContain('x[U+001B][2J.yaml:');
  expect(out).toContain('`K[U+001B][2J[U+202E]30`');
  expect(out).not.toMatch(/[^\P{Cc}\n]|\p{Cf}/u);
});
