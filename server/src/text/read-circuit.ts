import { laterEntryKeys } from '../format/later.ts';
import { checkEntry } from './check-entry.ts';
import { lookUp } from './names.ts';
import { valueAt } from './problem.ts';
import type { Connector, Id, ShortingBar } from './procedure.ts';
import { span } from './quantities.ts';
import { byId, entriesIn } from './read-entries.ts';
import { ids } from './read-sources.ts';
import type { Reader } from './reader.ts';
import type { Path } from './where.ts';

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
        carries: readCarried(values.carries, [...path, 'carries'], reader),
      };
    }),
  );
}

function readCarried(
  written: string | readonly string[] | undefined,
  path: Path,
  { names, report }: Reader,
): readonly Id[] {
  const carried = written === undefined ? [] : ids(written, path);
  const known = carried.filter(
    ({ id, path: at }) => lookUp(names, id, ['sources'], valueAt(at), report) !== null,
  );
  return [...new Set(known.map(({ id }) => id))];
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
