import { laterEntryKeys } from '../format/later.ts';
import { checkEntry } from './check-entry.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Connector, Load, Monitor, Part, ShortingBar } from './procedure.ts';
import { accuracy, limitOn, positive, range, span, wire } from './quantities.ts';
import { byId, entriesIn, kindOf } from './read-entries.ts';
import type { RawEntry } from './read-entries.ts';
import type { Reader } from './reader.ts';
import { entryOf } from './tree.ts';
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

export function readLoads(reader: Reader): ReadonlyMap<string, Load> {
  const { report } = reader;
  return byId(
    entriesIn('loads', reader).flatMap((entry): Load[] => {
      const { id, path, node } = entry;
      const kind = kindOf('loads', entry, report);
      if (kind === null) return [];
      const rules = { named: `The load \`${id}\``, later: laterEntryKeys.loads };
      const { values } = checkEntry(
        kind === 'lamp' ? 'lamp-load' : 'resistor-load',
        node,
        path,
        rules,
        report,
      );
      const resistance = span(values.resistance, 'resistance', [...path, 'resistance'], report);
      return [{ id, path, kind, resistance, opensShortingBar: values['opens-shorting-bar'] ?? false }];
    }),
  );
}

export function readParts(reader: Reader): ReadonlyMap<string, Part> {
  return byId(entriesIn('parts', reader).flatMap((entry) => readPart(entry, reader) ?? []));
}

function readPart(entry: RawEntry, reader: Reader): Part | null {
  const { report } = reader;
  const { id, path, node } = entry;
  const kind = kindOf('parts', entry, report);
  if (kind === null) return null;
  const at = [...path, 'resistance'];
  const rules = { named: `The part \`${id}\``, later: laterEntryKeys.parts };
  const common = { id, path, kind, live: false, statedInert: false, noFire: null };
  switch (kind) {
    case 'cable':
      return { ...common, form: 'two-conductor', resistance: readCable(entry, reader) };
    case 'rotary-coupling':
    case 'series': {
      const { values } = checkEntry(kind, node, path, rules, report);
      return {
        ...common,
        form: 'two-conductor',
        resistance: span(values.resistance, 'resistance', at, report),
      };
    }
    case 'resistor':
    case 'lamp': {
      const { values } = checkEntry(kind, node, path, rules, report);
      return { ...common, form: 'end', resistance: span(values.resistance, 'resistance', at, report) };
    }
    case 'initiator': {
      const { values } = checkEntry('initiator', node, path, rules, report);
      return {
        ...common,
        form: 'end',
        resistance: span(values.resistance, 'resistance', at, report),
        live: values.live ?? false,
        statedInert: values.live === false,
        noFire: span(values['no-fire'], 'current', [...path, 'no-fire'], report),
      };
    }
  }
}

/** A cable is copper of a size and a length, or has a resistance: one of the two. */
function readCable({ id, path, node }: RawEntry, { report }: Reader): Part['resistance'] {
  const rules = { named: `The cable \`${id}\``, later: laterEntryKeys.parts };
  const has = (key: string) => entryOf(node, key) !== undefined;
  const bySize = has('wire') || has('length');
  if (bySize && has('resistance')) {
    const message =
      'A cable has either `wire` and `length`, or `resistance`. Both are written here; remove one of them.';
    report({ rule: 'wrong-value', at: keyAt([...path, 'resistance']), message, subject: id });
    return null;
  }
  if (bySize) {
    const { values } = checkEntry('cable-by-size', node, path, rules, report);
    const size = wire(values.wire, [...path, 'wire'], report);
    const length = span(values.length, 'length', [...path, 'length'], report);
    return size === null || length === null ? null : { wire: size, length };
  }
  if (!has('resistance') && node.entries.every(({ key }) => key === 'kind')) {
    const message = `The cable \`${id}\` needs \`wire\` and \`length\`, such as \`0.5 mm²\` and \`1.2 m\`, or \`resistance\`.`;
    report({ rule: 'missing-key', at: keyAt(path), message, subject: id });
    return null;
  }
  const { values } = checkEntry('cable-by-resistance', node, path, rules, report);
  return span(values.resistance, 'resistance', [...path, 'resistance'], report);
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
