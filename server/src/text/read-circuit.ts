import { laterEntryKeys } from '../format/later.ts';
import { checkEntry } from './check-entry.ts';
import { valueAt } from './problem.ts';
import type { Connector, Monitor, ShortingBar } from './procedure.ts';
import { accuracy, limitOn, positive, range, span } from './quantities.ts';
import { byId, entriesIn, kindOf } from './read-entries.ts';
import type { Reader } from './reader.ts';
import type { Path } from './where.ts';

export function readMonitors(reader: Reader): ReadonlyMap<string, Monitor> {
  const { report } = reader;
  return byId(
    entriesIn('instruments', reader).flatMap((entry): Monitor[] => {
      const { id, path, node } = entry;
      if (kindOf('instruments', entry, report) === null) return [];
      const { values } = checkEntry('monitor', node, path, { named: `The monitor \`${id}\`` }, report);
      const at = (...keys: string[]) => [...path, ...keys];
      const leak = limitOn('below', values.leak, at('leak'), report);
      return [
        {
          id,
          path,
          kind: 'monitor',
          range: range(values.range, 'resistance', at('range'), report),
          accuracy: accuracy(values.accuracy, at('accuracy'), report),
          resolution: positive(values.resolution, 'resistance', at('resolution'), report),
          testCurrent: span(values['test-current'], 'current', at('test-current'), report),
          tooLow: limitOn('below', values.codes?.['too-low'], at('codes', 'too-low'), report),
          tooHigh: limitOn('above', values.codes?.['too-high'], at('codes', 'too-high'), report),
          leakBelow: leak !== null && 'below' in leak ? leak.below : null,
        },
      ];
    }),
  );
}

export function readConnectors(reader: Reader): ReadonlyMap<string, Connector> {
  const { report } = reader;
  return byId(
    entriesIn('connectors', reader).map(({ id, path, node }): Connector => {
      const rules = { named: `The connector \`${id}\``, later: laterEntryKeys.connectors };
      const { values } = checkEntry('connector', node, path, rules, report);
      const bar = values['shorting-bar'];
      const at = [...path, 'shorting-bar'];
      return {
        id,
        path,
        contact: span(values.contact, 'resistance', [...path, 'contact'], report),
        shortingBar: bar === undefined ? null : readBar(bar, at, report),
      };
    }),
  );
}

interface RawBar {
  readonly side: 'monitor' | 'end';
  readonly closes: 'unlocked' | 'unplugged';
  readonly resistance: string;
  readonly pins?: readonly (string | number)[] | undefined;
}

function readBar(bar: RawBar, path: Path, report: Reader['report']): ShortingBar {
  const pins = pinPair(bar.pins);
  if (pins !== null && pins[0] === pins[1]) {
    const message = 'A shorting bar bridges two different pins.';
    report({ rule: 'wrong-value', at: valueAt([...path, 'pins', 1]), message, subject: pins[1] });
  }
  return {
    side: bar.side,
    closes: bar.closes,
    resistance: span(bar.resistance, 'resistance', [...path, 'resistance'], report),
    pins,
  };
}

/** Two pins as they are written. */
export function pinPair(pins: readonly (string | number)[] | undefined): readonly [string, string] | null {
  const [first, second] = pins ?? [];
  return first === undefined || second === undefined ? null : [String(first), String(second)];
}
