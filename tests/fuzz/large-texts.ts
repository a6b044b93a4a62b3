import { readFileSync } from 'node:fs';
import { largestFile } from '../../server/src/text/problems/file.ts';

/*
 * Texts that are as large as a file may be, each of one thing again and again: whatever takes a time that grows faster
 * than the text takes it here.
 */

export interface LargeText {
  readonly name: string;
  readonly make: (size: number) => string;
}

const shipped = readFileSync('procedures/driver-airbag-resistance.procedure.yaml', 'utf8');
const stepsAt = shipped.indexOf('\nsteps:\n') + '\nsteps:\n'.length;
const [head, steps] = [shipped.slice(0, stepsAt), shipped.slice(stepsAt)];
const withoutOutcomes = steps
  .replaceAll(/^ +(?:id|outcomes): .*\n/gm, '')
  .replaceAll(/^ {2}- go: .*\n/gm, '');

const circuit = `format: 1
title: Large
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [unit], wait: 1 min }
instruments:
  unit: { kind: monitor, range: 0..10 Ω, accuracy: 3 % + 0.1 Ω, resolution: 0.01 Ω }
`;
const loop = `connectors:
  K1: { contact: 2 mΩ }
parts:
  stage: { kind: initiator, resistance: 2 Ω, no-fire: 400 mA, live: true }
loops:
  first: { path: [unit, K1, stage] }
`;

/** One thing until the text is full. */
function filled(start: string, size: number, piece: (at: number) => string, end = ''): string {
  const pieces = [start];
  let length = start.length + end.length;
  for (let at = 0; ; at += 1) {
    const next = piece(at);
    if (length + next.length > size) return pieces.join('') + end;
    pieces.push(next);
    length += next.length;
  }
}

function of(name: string, piece: string, start = '', end = ''): LargeText {
  return { name, make: (size) => filled(start, size, () => piece, end) };
}

function each(name: string, piece: (at: number) => string, start = '', end = ''): LargeText {
  return { name, make: (size) => filled(start, size, piece, end) };
}

const signs: readonly LargeText[] = [
  '\n',
  '\t',
  ' ',
  '-',
  '[',
  '{',
  ':',
  '"',
  "'",
  '#',
  'a',
  '?',
  '|',
  '>',
  '&',
  '*',
  '!',
  '%',
  '@',
  ',',
  ']',
  '}',
  '\\',
  '.',
  '0',
  '\r\n',
  '\u00A0',
  '\uFEFF',
  '\u2028',
  '\u{1F50C}',
  'a\u0301',
  ': ',
  ' :',
  '- ',
  ' -',
  '? ',
  '# ',
  ' #',
  '[[',
  '{a: ',
  '[a, ',
  '{a: b},',
  'a: b: ',
  'a ',
  'a\n',
  'a\n\n',
  'a:\n',
  '- a\n',
  '? a\n',
  ': a\n',
  '  - a\n',
  '- - - a\n',
  '-\n',
  '--- \n',
  '---\na: 1\n',
  '...\n',
  '%YAML 1.2\n',
  '&a b\n',
  '- &a b\n',
  '- *a\n',
  '- !t b\n',
  '- |\n',
  '- |\n  a\n',
  '- >\n  a\n\n',
  'a: "\n',
  "a: '\n",
  '"a\\n',
  '"a" ',
  '\\"',
  "''",
  '\t\n',
  ' \n',
  '\ta: 1\n',
  ' a: 1\n',
  'a:b\n',
  'a: [\n',
  'a: {\n',
  '}\n',
  ']\n',
  'a: ]\n',
  'a\r\n\r\n',
  'a: b\r\n',
  'a: #b\n',
  'a: b #c\n',
  '#\n',
  'format: 1\n',
  'x: {a: b\n',
].map((piece) => of(JSON.stringify(piece), piece));

/** Behind the start of a procedure, so that more than the parser sees it. */
const inSteps: readonly LargeText[] = [
  '\n',
  ' ',
  '\t\n',
  '  - a\n',
  '  - \n',
  '  - unplug: K1\n',
  '  - unplug: K2\n',
  '  - unplug: stage\n',
  '  - unplg: K1\n',
  '  - unplug: K1\n    plug: K1\n',
  '  - unplug: [K1, K1]\n',
  '  - unplug:\n',
  '  - wait: 1 min\n',
  '  - wait: 1 mn\n',
  '  - read: first\n',
  '  - read: first\n    outcomes: { within: next, else: next }\n',
  '  - read: first\n    outcomes: { within: nxt, else: x }\n',
  '  - read-codes: unit\n    outcomes: { none: end, else: end }\n',
  '  - go: end\n',
  '  - ignition: on\n  - ignition: off\n',
  '  - disconnect: battery\n  - reconnect: battery\n',
  '  - do: Unplug K1 and then plug K1.\n',
  '  - do: "\\u0041\\\n      b"\n',
  '  - do: |\n      Look.\n\n',
  '  - section: A\n',
  '  - section: A\n  - do: B\n',
  '  - stop: A\n',
  '  - stop: A\n    leaves: [K1]\n',
  '  - unplug: K1 #x\n',
  '  - unplug: &a K1\n',
  '  - {unplug: K1, unplug: K1}\n',
  '  - [unplug]\n',
  '  - "\n',
  '  - a: [\n',
  '  - a: b: c\n',
  '\t- a: b\n',
  '   - a: b\n',
  '  a: b\n',
  'a: b\n',
  'K1: { contact: 2 mΩ }\n',
  '  - replace: K1\n    at: K1\n',
  '  - unplug: K1\n  - read: first\n  - plug: K1\n',
  '  - run: x\n',
  '  - do: \u{1F50C}\u{1F50C}\n',
  '  - do: ""\n',
  '  - ? unplug\n    : K1\n',
  '  - unplug: K1\n    note: Plug K1, unplug K1; pull K1!\n',
].map((piece) => of(`steps: ${JSON.stringify(piece)}`, piece, `${circuit}${loop}steps:\n`));

const inOne: readonly LargeText[] = [
  of('one line without a colon below a key', 'a ', 'format: 1\ntitle: a\nb\n', '\n'),
  of('one line of 1 MiB behind a colon', 'x', 'format: 1\ntitle: '),
  of('one line of words behind a nested colon', 'abc ', 'format: 1\ntitle: a: ', '\n'),
  of('one line of colons', 'a:', 'format: 1\ntitle: a: b', '\n'),
  of('a key in lines', 'abc\n', 'format: 1\n'),
  of('a quoted text with escapes', '\\u00e9\\n', 'format: 1\ntitle: "', '"\n'),
  of('a quoted text in lines', 'abc\n  ', 'format: 1\ntitle: "', '"\n'),
  of('a quoted text of backslashes', '\\\\', 'format: 1\ntitle: "', '"\n'),
  of('a quoted text of quotes', "''", "format: 1\ntitle: '", "'\n"),
  of('a block text', '  abc abc\n', 'format: 1\ntitle: |\n'),
  of('a block text of blank lines', '\n', 'format: 1\ntitle: |\n  a\n'),
  of('a folded text', '  abc abc\n\n', 'format: 1\ntitle: >\n'),
  of('a plain text in lines', '  abc abc\n', 'format: 1\ntitle: a\n'),
  of('a comment', 'abc ', 'format: 1 # '),
  of('a title of blanks', ' ', 'format: 1\ntitle: a', 'b\n'),
  of('a title of quoted blanks', ' ', 'format: 1\ntitle: "', '"\n'),
  of('a title of astral characters', '\u{1F50C}', 'format: 1\ntitle: '),
  of('a quantity of digits', '1', `${circuit}conditions: { ambient: `, ' }\n'),
  of('a quantity of digits and points', '1.', `${circuit}conditions: { ambient: `, ' }\n'),
  of('a quantity of words', 'Ω ', `${circuit}conditions: { ambient: `, ' }\n'),
  of('a quantity of numbers', '1 ', `${circuit}conditions: { ambient: `, ' }\n'),
  of('a quantity of minutes', '1 min ', `${circuit}${loop}steps:\n  - wait: `, '\n'),
  of('a quantity of signs', '± ', `${circuit}conditions: { ambient: `, ' }\n'),
  of('a format of digits', '1', 'format: '),
  of('a name of hyphens', '-', `${circuit}connectors:\n  K`, ': {}\n'),
  of('one map in brackets', 'a: b, ', 'format: 1\nsteps: [{', '}]\n'),
  of('one list in brackets', 'a, ', 'format: 1\nsteps: [', ']\n'),
  of('one list in brackets over lines', 'a,\n  ', 'format: 1\nsteps: [', ']\n'),
  of('one open map in brackets over lines', 'a: b,\n  ', 'format: 1\nx: {'),
  of('a file name', 'a', 'format: 1\nuses: [', '.parts.yaml]\n'),
  of('what a step does, of words', 'Unplug K1 and then ', `${circuit}${loop}steps:\n  - do: `, '\n'),
  of('what a step does, of full stops', 'a.', `${circuit}${loop}steps:\n  - do: `, '\n'),
  of('what a step does, of names', 'Unplug K1 K1 ', `${circuit}${loop}steps:\n  - do: `, '\n'),
  of('a note of hyphens', '-', `${circuit}${loop}steps:\n  - do: a\n    note: `, '\n'),
  of('a note of one word', 'a', `${circuit}${loop}steps:\n  - do: a\n    note: `, '\n'),
  of('a note of numbers', '1 Ω ', `${circuit}${loop}steps:\n  - do: a\n    note: `, '\n'),
  of('a note of digits', '1', `${circuit}${loop}steps:\n  - do: a\n    note: `, '\n'),
  of('a note of blanks', ' ', `${circuit}${loop}steps:\n  - do: a\n    note: "`, '"\n'),
  of('a note of line ends', '\\n', `${circuit}${loop}steps:\n  - do: a\n    note: "`, '"\n'),
];

const word = (at: number): string =>
  at.toString(36).replaceAll(/\d/g, (digit) => 'ghijklmnop'[Number(digit)] ?? '');

const many: readonly LargeText[] = [
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
    `${circuit}`,
  ),
  each(
    'monitors',
    (at) => `  m${at}: { kind: monitor, range: 0..10 Ω, accuracy: 3 %, resolution: 0.01 Ω }\n`,
    `${circuit}`,
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
  of('the steps of the shipped procedure', withoutOutcomes, head),
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

export const largeTexts: readonly LargeText[] = [...signs, ...inSteps, ...inOne, ...many];

/** As large as a file may be. */
export const fullSize = largestFile;
