import { describe, expect, test } from 'vitest';
import { readProcedure } from '../../server/src/text/read-procedure.ts';
import { expectMarked } from './marked.ts';

/* An interlock loop whose connectors lead a high voltage beside it. */

const sound = `format: 1
title: Interlock
sources:
  battery: { kind: battery, voltage: 12.6 V, feeds: [vehicle-unit], wait: 1 min }
  traction:
    kind: high-voltage
    voltage: 320..410 V
    feeds: [inverter-input]
    isolated-by: S1
    wait: 5 min
    reserve: { capacitance: 500 µF ± 10 %, charged-to: 410 V, bleed: 100 kΩ ± 5 % }
    safe-below: 50 V
instruments:
  vehicle-unit: { kind: monitor, range: 0..400 Ω, accuracy: 2 % + 1 Ω, resolution: 1 Ω }
  hand-meter:
    kind: multimeter
    resistance: { range: 0..400 Ω, accuracy: 0.8 % + 3 digits, resolution: 0.1 Ω, test-current: 1 mA }
    voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ }
    leads: 0.1..0.3 Ω
parts:
  end-resistor: { kind: resistor, resistance: 120 Ω ± 1 % }
  inverter-input: { kind: hv-section, voltage: 320..410 V, resistance: 100 kΩ ± 5 %, live: true }
connectors:
  S1: { contact: 2..15 mΩ }
  K7: { contact: 2..15 mΩ, carries: [traction] }
  K8: { contact: 2..15 mΩ }
loops:
  interlock: { path: [vehicle-unit, S1, K7, end-resistor] }
  input: { path: [vehicle-unit, K8, inverter-input] }
steps:
  - disconnect: traction
  - wait: 5 min
  - prove-dead: traction
    at: K7.end
    with: hand-meter
    known: battery
    outcomes: { live: leave }
  - unplug: K7
  - plug: K7
  - reconnect: traction
  - stop: Done.
  - stop: It is live.
    id: leave
`;

/** The same with a passage written otherwise; marks stand in what is put in. */
function instead(passage: string, other: string): string {
  if (sound.split(passage).length !== 2) throw new Error(`stands not once: ${passage}`);
  return sound.replace(passage, () => other);
}

const { procedure, findings } = readProcedure({ id: 'high-voltage', text: sound });

describe('as the engine sees it', () => {
  test('without a finding', () => {
    expect(findings).toEqual([]);
  });

  test('the source, in SI units; its reserve is safe where it is', () => {
    const traction = procedure.sources.get('traction');
    expect(traction).toMatchObject({
      kind: 'high-voltage',
      voltage: { least: 320, most: 410 },
      feeds: ['inverter-input'],
      isolatedBy: 'S1',
      wait: 300,
      safeBelow: { least: 50 },
      reserve: { chargedTo: { most: 410 }, safeBelow: { least: 50 } },
    });
  });

  test('without `safe-below`: 60 V DC, the end of voltage class A (ISO 6469-3, from memory)', () => {
    const read = readProcedure({ id: 'other', text: instead('    safe-below: 50 V\n', '') });
    expect(read.findings).toEqual([]);
    expect(read.procedure.sources.get('traction')).toMatchObject({
      safeBelow: { least: 60, most: 60 },
      reserve: { safeBelow: { least: 60 } },
    });
  });

  test('the multimeter: what it measures, and its leads', () => {
    expect(procedure.multimeters.get('hand-meter')).toMatchObject({
      kind: 'multimeter',
      resistance: { range: { most: 400 }, accuracy: { digits: 3 }, testCurrent: { nominal: 0.001 } },
      voltage: { range: { most: 600 }, resolution: 0.1, input: { nominal: 10e6 } },
      leads: { least: 0.1, most: 0.3 },
      zeroed: false,
    });
    expect([...procedure.monitors.keys()]).toEqual(['vehicle-unit']);
  });

  test('what carries it and what is fed by it', () => {
    expect(procedure.connectors.get('K7')?.carries).toEqual(['traction']);
    expect(procedure.connectors.get('S1')?.carries).toEqual([]);
    expect(procedure.parts.get('inverter-input')).toMatchObject({
      form: 'end',
      live: true,
      statedInert: false,
      voltage: { most: 410 },
    });
  });

  test('taking it away and giving it back say which connector that is', () => {
    expect(procedure.steps[0]).toMatchObject({ verb: 'disconnect', source: 'traction', connector: 'S1' });
    expect(procedure.steps[5]).toMatchObject({ verb: 'reconnect', source: 'traction', connector: 'S1' });
    const battery = readProcedure({
      id: 'other',
      text: instead('  - disconnect: traction\n', '  - disconnect: battery\n'),
    });
    expect(battery.procedure.steps[0]).toMatchObject({ source: 'battery', connector: null });
  });

  test('a proof, at a side or between two terminals, with the outcomes that are written', () => {
    expect(procedure.steps[2]).toMatchObject({
      verb: 'prove-dead',
      source: 'traction',
      at: { connector: 'K7', side: 'end' },
      with: 'hand-meter',
      known: 'battery',
      outcomes: [{ name: 'live', target: 7 }],
    });
    const pair = readProcedure({
      id: 'other',
      text: instead('    at: K7.end\n', '    at: [K7.end.A, S1.monitor.01]\n'),
    });
    expect(pair.findings).toEqual([]);
    expect(pair.procedure.steps[2]).toMatchObject({
      at: [
        { connector: 'K7', side: 'end', pin: 'A' },
        { connector: 'S1', side: 'monitor', pin: '01' },
      ],
    });
  });
});

test('a battery beyond 60 V DC is one (ISO 6469-3, from memory)', () => {
  const at = (volts: string): string => instead('voltage: 12.6 V', `voltage: ${volts} V`);
  expect(readProcedure({ id: 'other', text: at('36..60') }).findings).toEqual([]);
  expect(readProcedure({ id: 'other', text: at('36..61') }).findings).toMatchObject([
    { rule: 'wrong-value', at: { path: ['sources', 'battery', 'voltage'] } },
  ]);
});

describe('a high-voltage source', () => {
  test('needs its wait and what takes it away', () => {
    expectMarked(
      instead('    wait: 5 min\n', '').replace(
        '  traction:\n',
        '  traction:\n  ^^^^^^^^ missing-key: The source `traction` needs `wait`: a duration, such as `5 min`.\n',
      ),
    );
    expectMarked(
      instead('    isolated-by: S1\n', '').replace(
        '  traction:\n',
        '  traction:\n  ^^^^^^^^ missing-key: The source `traction` needs `isolated-by`: a connector id\n',
      ),
    );
  });

  test('is taken away by a connector', () => {
    expectMarked(
      instead(
        'isolated-by: S1\n',
        'isolated-by: end-resistor\n                 ^^^^^^^^^^^^ wrong-id: `end-resistor` is a part; expected a connector.\n',
      ),
    );
    expectMarked(
      instead(
        'isolated-by: S1\n',
        'isolated-by: S2\n                 ^^ unknown-id: Nothing is named `S2`; expected a connector. Did you mean `S1`?\n',
      ),
    );
  });

  test('shares that connector with no other source', () => {
    expectMarked(
      instead(
        'instruments:\n',
        '  second:\n    kind: high-voltage\n    voltage: 400 V\n    isolated-by: S1\n                 ^^ wrong-id: `S1` takes `traction` away already.\n    wait: 5 min\ninstruments:\n',
      ),
    );
  });

  test('is never safe above the limit of voltage class A', () => {
    expectMarked(
      instead(
        'safe-below: 50 V\n',
        'safe-below: 70 V\n                ^^^^ quantity: Above 60 V DC nothing counts as safe to touch\n',
      ),
    );
    expectMarked(
      instead('safe-below: 50 V\n', 'safe-below: 0 V\n                ^^^ quantity: more than zero\n'),
    );
  });

  test('states what is safe once, not in its reserve', () => {
    expectMarked(
      instead(
        'bleed: 100 kΩ ± 5 % }\n',
        'bleed: 100 kΩ ± 5 %, safe-below: 60 V }\n                                                                                   ^^^^^^^^^^ unknown-key: `safe-below` is not a key that is known here.\n',
      ),
    );
  });

  test('has an hv-section that is live in so many words', () => {
    expectMarked(
      instead(
        'live: true }\n',
        'live: false }\n                                                                                           ^^^^^ wrong-value: `live` takes `true`, not `false`.\n',
      ),
    );
  });
});

describe('the connector that takes a source away', () => {
  test.each([
    ['unplug', 'opening it is `disconnect: traction`'],
    ['unlock', 'opening it is `disconnect: traction`'],
    ['plug', 'mating it is `reconnect: traction`'],
  ])('is not worked by %s: one act has one name', (verb, says) => {
    const carets = ' '.repeat(verb.length + 6);
    const read = expectMarked(
      instead(
        '  - disconnect: traction\n',
        `  - ${verb}: S1\n${carets}^^ wrong-id: \`S1\` takes \`traction\` away; ${says}, so write that.\n`,
      ),
    );
    expect(read.procedure.steps[0]?.verb).toBe('broken');
  });

  test('is left under the name of the source', () => {
    expectMarked(
      instead(
        '  - stop: Done.\n',
        '  - stop: Done.\n    leaves: [K7, S1]\n                 ^^ wrong-id: what stays is the source: write `traction`.\n',
      ),
    );
  });
});

describe('carries', () => {
  test('names sources', () => {
    expectMarked(
      instead(
        'carries: [traction] }\n',
        'carries: [K8] }\n                                     ^^ wrong-id: `K8` is a connector; expected a source.\n',
      ),
    );
    expectMarked(
      instead(
        'carries: [traction] }\n',
        'carries: tracton }\n                                    ^^^^^^^ unknown-id: Did you mean `traction`?\n',
      ),
    );
  });
});

describe('a multimeter', () => {
  test('measures something', () => {
    expectMarked(
      instead(
        '  hand-meter:\n',
        '  spare: { kind: multimeter, zeroed: true }\n  ^^^^^ missing-key: needs `resistance`, `voltage`, `insulation`, `current` or `clamp`\n  hand-meter:\n',
      ),
    );
  });

  test('for resistance has leads, or has them taken out, and not both', () => {
    expectMarked(
      instead('    leads: 0.1..0.3 Ω\n', '').replace(
        '  hand-meter:\n',
        '  hand-meter:\n  ^^^^^^^^^^ missing-key: so it needs `leads`, such as `0.1..0.3 Ω`, or `zeroed: true`.\n',
      ),
    );
    expectMarked(
      instead(
        '    leads: 0.1..0.3 Ω\n',
        '    leads: 0.1..0.3 Ω\n    zeroed: true\n    ^^^^^^ wrong-value: write either `leads` or `zeroed: true`\n',
      ),
    );
    const zeroed = readProcedure({
      id: 'other',
      text: instead('    leads: 0.1..0.3 Ω\n', '    zeroed: true\n'),
    });
    expect(zeroed.findings).toEqual([]);
    expect(zeroed.procedure.multimeters.get('hand-meter')).toMatchObject({ leads: null, zeroed: true });
  });

  test('measures volts in volts', () => {
    expectMarked(
      instead('range: 0..600 V,', 'range: 0..600 Ω,').replace(
        'input: 10 MΩ }\n',
        'input: 10 MΩ }\n                             ^ quantity: expected\n',
      ),
    );
  });

  test('reads no loop and is no part of the vehicle', () => {
    expectMarked(
      instead('path: [vehicle-unit, S1,', 'path: [hand-meter, S1,').replace(
        'S1, K7, end-resistor] }\n',
        'S1, K7, end-resistor] }\n                      ^^^^^^^^^^ wrong-id: `hand-meter` is a multimeter; expected a monitor.\n',
      ),
    );
    expectMarked(
      instead(
        '  - plug: K7\n',
        '  - plug: K7\n  - replace: hand-meter\n             ^^^^^^^^^^ wrong-id: `hand-meter` is a multimeter; expected a monitor.\n',
      ),
    );
    expectMarked(
      instead(
        '  - plug: K7\n',
        '  - plug: K7\n  - do: Put it away.\n    at: hand-meter\n        ^^^^^^^^^^ wrong-id: `hand-meter` is a multimeter; expected a monitor.\n',
      ),
    );
    expectMarked(
      instead(
        '  - plug: K7\n',
        '  - plug: K7\n  - read-codes: hand-meter\n                ^^^^^^^^^^ wrong-id: `hand-meter` is a multimeter; expected a monitor.\n',
      ),
    );
    expectMarked(
      instead(
        'feeds: [vehicle-unit], wait: 1 min }\n',
        'feeds: [vehicle-unit, hand-meter], wait: 1 min }\n                                                                   ^^^^^^^^^^ wrong-id: `hand-meter` is a multimeter; expected a monitor.\n',
      ),
    );
  });
});

describe('a proof', () => {
  const step = '  - prove-dead: traction\n    at: K7.end\n    with: hand-meter\n    known: battery\n';

  test('is of a high-voltage source, on a battery as the known one', () => {
    expectMarked(
      instead(
        '  - prove-dead: traction\n',
        '  - prove-dead: battery\n                ^^^^^^^ wrong-id: `battery` is a battery; expected a high-voltage source.\n',
      ),
    );
    expectMarked(
      instead(
        '    known: battery\n',
        '    known: traction\n           ^^^^^^^^ wrong-id: `traction` is a high-voltage source; expected a battery.\n',
      ),
    );
    expectMarked(
      instead(
        '    known: battery\n',
        '    known: K8\n           ^^ wrong-id: `K8` is a connector; expected a source.\n',
      ),
    );
  });

  test('needs a place, an instrument and a known source', () => {
    for (const key of ['at', 'with', 'known']) {
      const without = step.replace(new RegExp(`    ${key}: .*\\n`), '');
      expectMarked(
        instead(step, without).replace(
          '  - prove-dead: traction\n',
          `  - prove-dead: traction\n    ^^^^^^^^^^ missing-key: \`prove-dead\` needs \`${key}\`\n`,
        ),
      );
    }
  });

  test('is taken with a multimeter that measures voltage', () => {
    expectMarked(
      instead(
        '    with: hand-meter\n',
        '    with: vehicle-unit\n          ^^^^^^^^^^^^ wrong-id: `vehicle-unit` is a monitor; expected a multimeter.\n',
      ),
    );
    expectMarked(
      instead(
        '    voltage: { range: 0..600 V, accuracy: 0.5 % + 2 digits, resolution: 0.1 V, input: 10 MΩ }\n',
        '',
      ).replace(
        '    with: hand-meter\n',
        '    with: hand-meter\n          ^^^^^^^^^^ wrong-id: `hand-meter` measures no voltage\n',
      ),
    );
  });

  test('is not held against an instrument whose voltage cannot be read', () => {
    expectMarked(
      instead('resolution: 0.1 V, input', 'resolution: 0.1 X, input').replace(
        'input: 10 MΩ }\n',
        'input: 10 MΩ }\n                                                                            ^ quantity: expected\n',
      ),
    );
  });

  test('is taken at a side, or between two different terminals', () => {
    expectMarked(
      instead(
        '    at: K7.end\n',
        '    at: K7\n        ^^ wrong-value: on one side of a connector: `K7.monitor` or `K7.end`\n',
      ),
    );
    expectMarked(
      instead(
        '    at: K7.end\n',
        '    at: [K7.end.1, K7.end.1]\n                   ^^^^^^^^ wrong-value: between two different terminals\n',
      ),
    );
    expectMarked(
      instead(
        '    at: K7.end\n',
        '    at: [K7.end.1, K9.end.1]\n                   ^^ unknown-id: Nothing is named `K9`\n',
      ),
    );
    expectMarked(
      instead('    at: K7.end\n', '    at: [K7.end.1]\n        ^^^^^^^^^^ wrong-value: not a list of 1\n'),
    );
  });

  test('ends in one of two ways', () => {
    expectMarked(
      instead(
        'outcomes: { live: leave }\n',
        'outcomes: { else: leave }\n                ^^^^ unknown-key: Known here: `dead`, `live`.\n',
      ),
    );
  });
});
