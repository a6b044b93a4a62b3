import { chanceFrom } from './chance.ts';
import type { Chance } from './chance.ts';
import type { PlainProcedure, PlainStep } from './plain-procedure.ts';

/*
 * A procedure that is drawn already, in some of which insulation is measured as well: what bears a tester says so, and what
 * the tester leaves is waited for, proven gone, or neither. The draws are of a sequence of their own.
 */

type Entries = PlainProcedure['parts'];

/** What it is drawn into. */
export interface Tested {
  readonly instruments: Entries;
  readonly loads: Entries;
  readonly parts: Entries;
  readonly connectors: Entries;
  readonly steps: readonly PlainStep[];
}

/** Where it may be measured, and a proof of high voltage where there is any. */
export interface Testable {
  /** Nodes and terminals, ground left out. */
  readonly points: readonly string[];
  readonly sides: readonly string[];
  readonly proof: (() => PlainStep) | null;
}

const withTester = {
  tester: {
    kind: 'multimeter',
    insulation: { range: '0..2 GΩ', accuracy: '3 % + 5 digits', resolution: '10 kΩ', discharge: '10 s' },
  },
  plain: {
    kind: 'multimeter',
    insulation: { range: '0..200 MΩ', accuracy: '3 %', resolution: '10 kΩ' },
  },
};

function bearing(chance: Chance, entries: Entries): Entries {
  return Object.fromEntries(
    Object.entries(entries).map(([id, entry]) => {
      const volts = chance.pick(['1000 V', '1000 V', '1000 V', '500 V', '50 V', null]);
      const bears = volts === null || entry.kind === 'initiator' ? {} : { withstands: volts };
      return [id, { ...entry, ...bears }];
    }),
  );
}

function insulation(chance: Chance, { points, sides }: Testable): PlainStep {
  const one = chance.pick(points);
  const others = points.filter((point) => point !== one);
  const pair = [one, chance.happens(0.6) ? 'ground' : chance.pick(others)];
  const volts = chance.pick(['50 V', '50 V', '59.9 V', '60 V', '500 V', '500 V', '1000 V']);
  const isLow = volts === '50 V' || volts === '59.9 V';
  return {
    measure: 'insulation',
    across: chance.happens(0.15) ? chance.pick(sides) : pair,
    'at-voltage': volts,
    with: chance.pick(['tester', 'tester', 'plain']),
    ...(isLow && chance.happens(0.25) ? { discharged: true } : {}),
    ...(chance.happens(0.8) ? { expect: chance.pick(['above 1 MΩ', 'above 500 kΩ', 'open']) } : {}),
    ...(chance.happens(0.3) ? { outcomes: { within: 'next', else: 'next' } } : {}),
  };
}

/** `share` of the procedures have any. */
export function withTesters<T extends Tested>(
  seed: number,
  share: number,
  testable: Testable,
  procedure: T,
): T {
  const chance = chanceFrom(seed + 917_000);
  if (!chance.happens(share)) return procedure;
  const steps = [...procedure.steps];
  for (let more = chance.whole(1, 2); more > 0; more -= 1) {
    const between: PlainStep[] = [{ wait: chance.pick(['5 s', '9 s', '10 s', '1 min']) }];
    const after = testable.proof !== null && chance.happens(0.5) ? [testable.proof()] : between;
    steps.splice(
      chance.whole(0, steps.length),
      0,
      insulation(chance, testable),
      ...(chance.happens(0.6) ? after : []),
    );
  }
  return {
    ...procedure,
    instruments: { ...procedure.instruments, ...withTester },
    loads: bearing(chance, procedure.loads),
    parts: bearing(chance, procedure.parts),
    connectors: bearing(chance, procedure.connectors),
    steps,
  };
}
