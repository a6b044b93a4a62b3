import { laterEntryKeys } from '../format/later.ts';
import { checkEntry } from './check-entry.ts';
import { lookUp } from './names.ts';
import { suggestion } from './nearest.ts';
import { valueAt } from './problem.ts';
import type { Connector, Id, ShortingBar, Side } from '../model/procedure.ts';
import { span } from './quantities.ts';
import { byId, entriesIn } from './read-entries.ts';
import { goesWithAnother, ids } from './read-sources.ts';
import { withstood } from './read-withstands.ts';
import type { Reader } from './reader.ts';
import type { Path } from '../model/where.ts';

export function readConnectors(reader: Reader): ReadonlyMap<string, Connector> {
  const { report } = reader;
  return byId(
    entriesIn('connectors', reader).map(({ id, path, node }): Connector => {
      const rules = { named: `The connector \`${id}\``, later: laterEntryKeys.connectors };
      const { values } = checkEntry('connector', node, path, rules, report);
      const bar = values['shorting-bar'];
      const at = [...path, 'shorting-bar'];
      const sides = readSides(values.sides, [...path, 'sides'], report);
      return {
        id,
        path,
        contact: span(values.contact, 'resistance', [...path, 'contact'], report),
        shortingBar: bar === undefined ? null : readBar(bar, sides, at, report),
        sides,
        carries: readCarried(values.carries, [...path, 'carries'], reader),
        withstands: withstood(node, path, report),
      };
    }),
  );
}

const usualSides: Connector['sides'] = ['monitor', 'end'];

function readSides(
  written: readonly string[] | undefined,
  path: Path,
  report: Reader['report'],
): Connector['sides'] {
  const [one, other] = written ?? [];
  if (one === undefined || other === undefined) return usualSides;
  if (one !== other) return [one, other];
  const message = 'The two sides of a connector have different names.';
  report({ rule: 'wrong-value', at: valueAt([...path, 1]), message, subject: other });
  return usualSides;
}

/** Whether a connector has the side that is written behind its id, `K30.monitor`; otherwise the problem has been reported. */
export function hasSide({ id, sides }: Connector, side: Side, path: Path, report: Reader['report']): boolean {
  if (sides.includes(side)) return true;
  const from = id.length + 1;
  const at = valueAt(path, [from, from + side.length]);
  const message = `\`${id}\` has no side \`${side}\`; its sides are \`${sides.join('` and `')}\`.`;
  report({ rule: 'wrong-id', at, message, subject: side, ...suggestion(side, sides) });
  return false;
}

function readCarried(
  written: string | readonly string[] | undefined,
  path: Path,
  reader: Reader,
): readonly Id[] {
  const carried = written === undefined ? [] : ids(written, path);
  const known = carried.filter(
    ({ id, path: at }) =>
      lookUp(reader.names, id, ['sources'], valueAt(at), reader.report) !== null &&
      !goesWithAnother(id, valueAt(at), reader),
  );
  return [...new Set(known.map(({ id }) => id))];
}

interface RawBar {
  readonly side: Side;
  readonly closes: 'unlocked' | 'unplugged';
  readonly resistance: string;
  readonly pins?: readonly (string | number)[] | undefined;
}

function readBar(
  bar: RawBar,
  sides: Connector['sides'],
  path: Path,
  report: Reader['report'],
): ShortingBar | null {
  const pins = pinPair(bar.pins);
  if (pins !== null && pins[0] === pins[1]) {
    const message = 'A shorting bar bridges two different pins.';
    report({ rule: 'wrong-value', at: valueAt([...path, 'pins', 1]), message, subject: pins[1] });
  }
  if (!sides.includes(bar.side)) {
    const message = `A shorting bar sits on a side of its connector: \`${sides.join('` or `')}\`.`;
    const meant = suggestion(bar.side, sides);
    report({ rule: 'wrong-id', at: valueAt([...path, 'side']), message, subject: bar.side, ...meant });
    return null;
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
