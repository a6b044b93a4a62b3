import {
  shipped,
  circuit,
  loop,
  each,
  filled,
  good,
  of,
  withoutOutcomes,
  head,
  steps,
} from './large-pieces.ts';
import type { LargeText } from './large-pieces.ts';

const word = (at: number): string =>
  at.toString(36).replaceAll(/\d/g, (digit) => 'ghijklmnop'[Number(digit)] ?? '');

export const many: readonly LargeText[] = [
  each('unknown names', (at) => `  - unplug: K${at}x\n`, `${circuit}${loop}steps:\n`),
  each(
    'unknown names of letters',
    (at) => `  - unplug: ${word(at)}-connector\n`,
    `${circuit}${loop}steps:\n`,
  ),
  {
    name: 'as many names as unknown names',
    make: (size) =>
      filled(
        filled(`${circuit}connectors:\n`, size / 2, (at) => `  K${at}: { contact: 2 mΩ }\n`, 'steps:\n'),
        size,
        (at) => `  - unplug: K${at}x\n`,
      ),
  },
  {
    name: 'as many names of letters as unknown names',
    make: (size) =>
      filled(
        filled(`${circuit}connectors:\n`, size / 2, (at) => `  k${word(at)}: {}\n`, 'steps:\n'),
        size,
        (at) => `  - unplug: j${word(at)}\n`,
      ),
  },
  {
    name: 'as many step ids as unknown steps',
    make: (size) =>
      filled(`${circuit}${loop}steps:\n`, size, (at) => `  - go: q${word(at)}\n    id: p${word(at)}\n`),
  },
  {
    name: 'as many routines as unknown routines',
    make: (size) =>
      filled(
        filled(
          `${circuit}${loop}routines:\n`,
          size / 2,
          (at) => `  k${word(at)}: { steps: [{ do: a }] }\n`,
          'steps:\n',
        ),
        size,
        (at) => `  - run: j${word(at)}\n`,
      ),
  },
  each('unknown keys of the file', (at) => `step${word(at)}: 1\n`, `${circuit}${loop}steps:\n  - do: a\n`),
  each(
    'unknown keys of one part',
    (at) => `    k${word(at)}: 1\n`,
    `${circuit}parts:\n  a:\n    kind: resistor\n`,
  ),
  each(
    'unknown keys of parts',
    (at) => `  a${at}: { kind: resistor, resistence: 2 Ω }\n`,
    `${circuit}parts:\n`,
  ),
  each('unknown kinds', (at) => `  a${at}: { kind: resistr }\n`, `${circuit}parts:\n`),
  each('parts in no loop', (at) => `  a${at}: { kind: resistor, resistance: 2 Ω }\n`, `${circuit}parts:\n`),
  each(
    'live parts in no loop',
    (at) => `  a${at}: { kind: initiator, live: true, no-fire: 1 A, resistance: 2 Ω }\n`,
    `${circuit}parts:\n`,
  ),
  each('connectors', (at) => `  K${at}: { contact: 2 mΩ }\n`, `${circuit}connectors:\n`),
  each('empty connectors', (at) => `  K${at}:\n`, `${circuit}connectors:\n`),
  each('names that are no ids', (at) => `  ${at}: {}\n`, `${circuit}connectors:\n`),
  each(
    'sources',
    (at) => `  b${at}: { kind: battery, voltage: 12 V, feeds: [unit], wait: 1 min }\n`,
    circuit,
  ),
  each(
    'monitors',
    (at) => `  m${at}: { kind: monitor, range: 0..10 Ω, accuracy: 3 %, resolution: 0.01 Ω }\n`,
    circuit,
  ),
  each('one key again and again', () => 'title: a\n', circuit),
  each('one id again and again', () => '  K1: { contact: 2 mΩ }\n', `${circuit}connectors:\n`),
  each('one step id again and again', () => '  - do: a\n    id: b\n', `${circuit}${loop}steps:\n`),
  each('steps with ids', (at) => `  - do: a\n    id: s${at}\n`, `${circuit}${loop}steps:\n`),
  each('jumps ahead', (at) => `  - go: s${at + 1}\n    id: s${at}\n`, `${circuit}${loop}steps:\n`),
  each(
    'readings that lead anywhere',
    (at) =>
      `  - read: first\n    id: s${at}\n    outcomes: { within: s${at + 7}, else: s${Math.floor(at / 2)} }\n`,
    `${circuit}${loop}steps:\n`,
  ),
  each(
    'readings with windows that differ',
    (at) => `  - read: first\n    expect: ${at}..${at + 1} Ω\n`,
    `${circuit}${loop}steps:\n`,
  ),
  each(
    'one list of leaves',
    (at) => `K${at}, `,
    `${circuit}${loop}steps:\n  - stop: a\n    leaves: [`,
    ']\n',
  ),
  each('loops of one connector', (at) => `  l${at}: { path: [unit, K1, stage] }\n`, `${circuit}${loop}`),
  each(
    'pins of one connector',
    (at) => `${at}, `,
    `${circuit}${loop.trimEnd().replace(' }', ', pins: { K1: [')}`,
    '] } }\n',
  ),
  each(
    'pin keys of one loop',
    (at) => `K${at}: [1, 2], `,
    `${circuit}${loop.trimEnd().replace(/ }$/, ', pins: { ')}`,
    '} }\n',
  ),
  each('unknown names on a path', (at) => `K${at}, `, `${circuit}loops:\n  a: { path: [unit, `, '] }\n'),
  each(
    'one name on a path again and again',
    () => `K1, `,
    `${circuit}${loop.replace('[unit, ', '[unit, ').replace(/K1, stage.*\n$/, '')}`,
    'stage] }\n',
  ),
  {
    name: 'connectors of one loop',
    make: (size) => {
      const ids = filled('', size / 4, (at) => `K${at}, `)
        .split(', ')
        .slice(0, -1);
      return `${circuit}parts:\n  stage: { kind: initiator, resistance: 2 Ω, no-fire: 400 mA, live: true }\nconnectors:\n${ids.map((id) => `  ${id}: { contact: 2 mΩ }\n`).join('')}loops:\n  a: { path: [unit, ${ids.join(', ')}, stage] }\nsteps:\n  - read: a\n`;
    },
  },
  each('loops of their own', (at) => `  l${at}: { path: [unit, a${at}] }\n`, `${circuit}loops:\n`),
  {
    name: 'loops with their parts',
    make: (size) =>
      filled(
        filled(
          `${circuit}parts:\n`,
          size / 2,
          (at) => `  a${at}: { kind: resistor, resistance: 2 Ω }\n`,
          'loops:\n',
        ),
        size,
        (at) => `  l${at}: { path: [unit, a${at}] }\n`,
        'steps:\n  - do: a\n',
      ),
  },
  each('assemblies', (at) => `  a${at}: [K1, stage]\n`, `${circuit}${loop}assemblies:\n`),
  each('members of one assembly', (at) => `K${at}, `, `${circuit}${loop}assemblies: { a: [`, '] }\n'),
  each(
    'elements of the network',
    (at) => `  - { part: stage, between: [n${at}, n${at + 1}] }\n`,
    `${circuit}${loop}network:\n`,
  ),
  each(
    'elements of the network in a star',
    (at) => `  - { part: stage, between: [ground, n${at + 1}] }\n`,
    `${circuit}${loop}network:\n`,
  ),
  each(
    'elements of the network with errors',
    (at) => `  - { part: x${at}, between: [n${at}] }\n`,
    `${circuit}${loop}network:\n`,
  ),
  each(
    'waivers',
    (at) => `  - { rule: no-wait, at: s${at}, reason: a }\n`,
    `${circuit}${loop}steps:\n  - do: a\nwaivers:\n`,
  ),
  each(
    'waivers of one step',
    () => `  - { rule: hands-in-text, at: a, reason: b }\n`,
    `${circuit}${loop}steps:\n  - do: Unplug K1.\n    id: a\nwaivers:\n`,
  ),
  each('uses', (at) => `  - a${at}.parts.yaml\n`, 'format: 1\nuses:\n'),
  each('uses of no parts files', (at) => `  - a${at}.yaml\n`, 'format: 1\nuses:\n'),
  each('routines', (at) => `  r${at}: { steps: [{ do: a }] }\n`, `${circuit}${loop}routines:\n`),
  each(
    'routines in a chain',
    (at) => `  r${at}: { steps: [{ run: r${at + 1} }] }\n`,
    `${circuit}${loop}steps:\n  - run: r0\nroutines:\n`,
  ),
  each(
    'routines in a circle',
    (at) => `  r${at}: { steps: [{ run: r${at === 0 ? 0 : at - 1} }, { run: r0 }] }\n`,
    `${circuit}${loop}steps:\n  - run: r0\nroutines:\n`,
  ),
  each(
    'calls',
    () => `  - run: a\n    given: { x: K1 }\n`,
    `${circuit}${loop}routines:\n  a: { needs: { x: connector }, steps: [{ unplug: x }, { plug: x }] }\nsteps:\n`,
  ),
  each(
    'calls with wrong names',
    (at) => `  - run: a\n    given: { x: K${at} }\n`,
    `${circuit}${loop}routines:\n  a: { needs: { x: connector }, steps: [{ unplug: x }, { plug: x }] }\nsteps:\n`,
  ),
  each(
    'needs',
    (at) => `n${at}: connector, `,
    `${circuit}${loop}steps:\n  - run: a\nroutines:\n  a: { steps: [{ do: b }], needs: { `,
    '} }\n',
  ),
  each(
    'outcomes of one reading',
    (at) => `w${at}: next, `,
    `${circuit}${loop}steps:\n  - read: first\n    outcomes: { `,
    '}\n',
  ),
  each(
    'windows of one measurement',
    (at) => `w${at}: ${at}..${at + 1} Ω, `,
    `${circuit}${loop}steps:\n  - measure: resistance\n    across: [K1.monitor.1, K1.monitor.2]\n    windows: { `,
    '}\n',
  ),
  each(
    'training',
    (at) => `a${at}, `,
    `${circuit}${loop}requires: { training: [`,
    '] }\nsteps: [{ do: a }]\n',
  ),
  each('sections', (at) => `  - section: S${at}\n  - do: a\n`, `${circuit}${loop}steps:\n`),
  each(
    'errors of YAML',
    (at) => (at % 2 === 0 ? `  - unplug: K1: a\n` : '  - do: a\n'),
    `${circuit}${loop}steps:\n`,
  ),
  each('errors of YAML on every line', (at) => `  - a: b: c${at}\n`, `${circuit}${loop}steps:\n`),
  each('lines with a tab before', (at) => `\t- do: a${at}\n`, `${circuit}${loop}steps:\n`),
  each('lines without a colon', (at) => `abc${at}\n`, `${circuit}${loop}steps:\n`),
  each(
    'lines indented further and further',
    (at) => `${' '.repeat(at % 1000)}- a\n`,
    `${circuit}${loop}steps:\n`,
  ),
  each('keys nested deeper and deeper', (at) => `${' '.repeat(at)}a:\n`, ''),
  each(
    'keys nested deeper and deeper in a step',
    (at) => `${' '.repeat(at + 4)}a:\n`,
    `${circuit}${loop}steps:\n  - do: a\n`,
  ),
  good,
  of('the steps of the shipped procedure, ids and all', steps, head),
  of('the whole shipped procedure', shipped),
  {
    name: 'the shipped procedure with carriage returns',
    make: (size) =>
      filled(head.replaceAll('\n', '\r\n'), size, () => withoutOutcomes.replaceAll('\n', '\r\n')),
  },
  {
    name: 'the shipped procedure as JSON in one line',
    make: (size) =>
      filled(`{"format": 1, "title": "a", "steps": [`, size, () => '{"unplug": "K30"}, ', '{"do": "a"}]}'),
  },
];
