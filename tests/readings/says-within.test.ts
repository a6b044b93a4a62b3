import { describe, expect, test } from 'vitest';
import { elseIsWithin, saysWithin } from '../../server/src/readings/says-within.ts';
import { circuit } from '../../server/src/rules/examples.ts';
import { analysed } from './analysed.ts';

/* `else` is what is left over: within the window where everything else has an outcome of its own. */

const meter = `  hand-meter:
    kind: multimeter
    zeroed: true
    resistance: { range: 0..40 Ω, accuracy: 1 %, resolution: 0.01 Ω }
    voltage: { range: 0..20 V, accuracy: 1 %, resolution: 0.01 V, input: 10 MΩ }
`;

const bench = {
  ...circuit,
  parts: `${circuit.parts}  lamp: { kind: lamp, resistance: 3.0 Ω ± 5 % }\n`,
  connectors: `${circuit.connectors}  K50: { contact: 2..15 mΩ }\n`,
  loops: `${circuit.loops}  lamp-loop: { path: [control-unit, K50, lamp] }\n`,
};

/** A step of one or several readings; each of them by what is read. */
function read(step: string, instruments: string = circuit.instruments) {
  const sections = Object.values({ ...bench, instruments: instruments + meter });
  const text = `format: 1\ntitle: x\n${sections.join('')}steps:\n${step}  - stop: Here.\n    id: out\n`;
  const { procedure, readings } = analysed(text);
  const [only] = procedure.steps;
  if (only?.verb !== 'read' && only?.verb !== 'measure') throw new Error('the step must read');
  const readingOf = (of: string) => {
    const reading = readings.at(0, of);
    if (reading === undefined) throw new Error(`${of} must be read`);
    return reading;
  };
  return { step: only, readingOf };
}

function left(outcomes: string, rest = '', instruments?: string): boolean {
  const { step, readingOf } = read(
    `  - read: driver-loop\n${rest}    outcomes: { ${outcomes} }\n`,
    instruments,
  );
  return elseIsWithin(step, readingOf('driver-loop'));
}

describe('`else` of one reading is within the window', () => {
  test('where below, above and open have outcomes, each by its name or all by `outside`', () => {
    expect(left('outside: out, else: next')).toBe(true);
    expect(left('below: out, above: out, open: out, else: next')).toBe(true);
    for (const two of ['below: out, above: out', 'below: out, open: out', 'above: out, open: out'])
      expect([two, left(`${two}, else: next`)]).toEqual([two, false]);
  });

  test('not where `within` has an outcome: then nothing is left', () => {
    expect(left('within: next, outside: out, else: out')).toBe(false);
    expect(left('within: next, else: out')).toBe(false);
  });

  test('not where the monitor looks for leaks and a leak has none', () => {
    const looking = circuit.instruments.replace('range: 0..10', 'leak: below 5 kΩ, range: 0..10');
    expect(left('below: out, above: out, open: out, else: next', '', looking)).toBe(false);
    expect(left('below: out, above: out, open: out, leak: out, else: next', '', looking)).toBe(true);
    expect(left('outside: out, else: next', '', looking)).toBe(true);
  });

  test('where a class has none because nothing can lie in it', () => {
    expect(left('above: out, open: out, else: next', '    expect: 0..3 Ω\n')).toBe(true);
    expect(left('above: out, open: out, else: next', '    expect: 1..3 Ω\n')).toBe(false);
    expect(left('below: out, else: next', '    expect: open\n')).toBe(true);
    expect(left('below: out, open: out, else: next', '    expect: 1..10 Ω\n')).toBe(true);
  });

  test('whatever lies in a window by name, which covers no class', () => {
    const windows = '    windows: { short: below 1 Ω, twice: 4..5 Ω }\n';
    expect(left('short: out, above: out, open: out, else: next', windows)).toBe(false);
    expect(left('short: out, twice: out, outside: out, else: next', windows)).toBe(true);
  });

  test('of a voltage also below zero', () => {
    const at = (outcomes: string): boolean => {
      const { step, readingOf } = read(
        `  - measure: voltage\n    across: K30.monitor\n    with: hand-meter\n    expect: 0..3 V\n    outcomes: { ${outcomes} }\n`,
      );
      return elseIsWithin(step, readingOf('K30.monitor'));
    };
    expect(at('above: out, open: out, else: next')).toBe(false);
    expect(at('below: out, above: out, open: out, else: next')).toBe(true);
  });

  test('of which the window is not known only where all of them have outcomes', () => {
    const unread = circuit.instruments.replace('resolution: 0.01 Ω', 'resolution: 0.01 furlongs');
    expect(left('above: out, open: out, else: next', '    expect: 0..3 Ω\n', unread)).toBe(false);
    expect(left('below: out, above: out, open: out, else: next', '', unread)).toBe(true);
  });
});

describe('of several readings', () => {
  const says = (outcomes: string, name: string, loop: string): boolean => {
    const { step, readingOf } = read(`  - read: [driver-loop, lamp-loop]\n    outcomes: { ${outcomes} }\n`);
    const outcome = step.outcomes?.find((one) => one.name === name && one.of === undefined);
    if (outcome === undefined) throw new Error(`${name} must be an outcome`);
    return saysWithin(step, outcome, readingOf(loop));
  };

  test('`else` says it of each of which all else has an outcome, and of no other', () => {
    const one = 'driver-loop: { outside: out }, else: next';
    expect(says(one, 'else', 'driver-loop')).toBe(true);
    expect(says(one, 'else', 'lamp-loop')).toBe(false);
    const both =
      'driver-loop: { outside: out }, lamp-loop: { below: out, above: out, open: out }, else: next';
    expect(says(both, 'else', 'driver-loop') && says(both, 'else', 'lamp-loop')).toBe(true);
  });

  test('`within` says it of all of them', () => {
    const both = 'within: next, else: out';
    expect(says(both, 'within', 'driver-loop') && says(both, 'within', 'lamp-loop')).toBe(true);
    expect(says(both, 'else', 'driver-loop') || says(both, 'else', 'lamp-loop')).toBe(false);
  });
});
