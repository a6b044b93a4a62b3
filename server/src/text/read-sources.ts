import type { Span } from '../quantity/span.ts';
import { checkEntry } from './check-entry.ts';
import { lookUp } from './names.ts';
import { valueAt } from './problem.ts';
import type { Spot } from './problem.ts';
import type {
  Battery,
  HighVoltage,
  Id,
  InnerResistance,
  Regulated,
  Reserve,
  Source,
} from '../model/procedure.ts';
import { aboveZero, exact, span } from './quantities.ts';
import { byId, entriesIn, kindOf } from './read-entries.ts';
import type { RawEntry } from './read-entries.ts';
import { isMonitor } from './read-instruments.ts';
import type { Instruments } from './read-instruments.ts';
import type { Reader } from './reader.ts';
import { isolatorOf } from '../model/source-kinds.ts';
import { entryOf, nodeAt, textOf } from './tree.ts';
import type { Path } from '../model/where.ts';

/** What sources feed and are isolated by, as far as it could be read. */
interface Fed extends Instruments {
  readonly parts: ReadonlyMap<Id, unknown>;
  readonly connectors: ReadonlyMap<Id, unknown>;
}

export function readSources(reader: Reader, fed: Fed): ReadonlyMap<Id, Source> {
  const { report } = reader;
  const sources = entriesIn('sources', reader).flatMap((entry): Source[] => {
    const kind = kindOf('sources', entry, report);
    switch (kind) {
      case 'battery':
        return [readBattery(entry, reader, fed)];
      case 'high-voltage':
        return [readHighVoltage(entry, reader, fed)];
      case 'regulated':
        // Read once these are known.
        return [];
      case null:
        return [];
    }
  });
  checkIsolatedOnce(sources, report);
  return byId(sources);
}

/** The regulated supplies, once the sources that they can run on are known. */
export function readRegulated(reader: Reader, sources: ReadonlyMap<Id, Source>): ReadonlyMap<Id, Regulated> {
  const { names, report } = reader;
  const supplies = entriesIn('sources', reader).filter(
    ({ node }) => textOf(entryOf(node, 'kind')?.value) === 'regulated',
  );
  return byId(
    supplies.map(({ id, path, node }): Regulated => {
      const { values } = checkEntry('regulated', node, path, { named: `The source \`${id}\`` }, report);
      const { from } = values;
      const at = valueAt([...path, 'from']);
      const isFound = from !== undefined && lookUp(names, from, ['sources'], at, report) !== null;
      if (isFound && isRegulated(from, reader)) {
        const message = `\`${from}\` is a regulated supply too; expected a battery or a high-voltage source.`;
        report({ rule: 'wrong-id', at, message, subject: from });
      }
      return {
        id,
        path,
        kind: 'regulated',
        voltage: span(values.voltage, 'voltage', [...path, 'voltage'], report),
        resistance: innerOf({ path, node }, values.resistance, report),
        from: isFound && sources.has(from) ? from : null,
        needsIgnition: values.needs === 'ignition-on',
        afterRun: afterRunOf(values, [...path, 'after-run'], report),
      };
    }),
  );
}

function afterRunOf(
  {
    needs,
    'after-run': written,
  }: { readonly needs?: string | undefined; readonly 'after-run'?: string | undefined },
  path: Path,
  report: Reader['report'],
): Regulated['afterRun'] {
  if (written === undefined) return 'unstated';
  if (needs === 'ignition-on') return exact(written, 'time', path, report);
  const message =
    'Only a supply with `needs: ignition-on` stays on after the ignition is off: add it, or remove `after-run`.';
  report({ rule: 'wrong-value', at: valueAt(path), message });
  return null;
}

function isRegulated(id: Id, { root }: Pick<Reader, 'root'>): boolean {
  return textOf(nodeAt(root, ['sources', id, 'kind'])) === 'regulated';
}

/** Whether a source is a regulated supply, which has no switch of its own; the problem has been reported. */
export function goesWithAnother(id: Id, at: Spot, { root, report }: Reader): boolean {
  if (!isRegulated(id, { root })) return false;
  const from = textOf(nodeAt(root, ['sources', id, 'from']));
  const source = from === undefined ? 'the source that it takes its energy from' : `\`${from}\``;
  const message = `\`${id}\` is a regulated supply and comes and goes with ${source}: name that one.`;
  report({ rule: 'wrong-id', at, message, subject: id });
  return true;
}

function readBattery({ id, path, node }: RawEntry, reader: Reader, fed: Fed): Battery {
  const { report } = reader;
  const { values } = checkEntry('battery', node, path, { named: `The source \`${id}\`` }, report);
  const states = (key: string) => entryOf(node, key) !== undefined;
  const { reserve } = values;
  // No capacitor ever falls to 0 V.
  const safeBelow = aboveZero(reserve?.['safe-below'], 'voltage', [...path, 'reserve', 'safe-below'], report);
  return {
    id,
    path,
    kind: 'battery',
    voltage: batteryVoltage(values.voltage, [...path, 'voltage'], report),
    resistance: innerOf({ path, node }, values.resistance, report),
    ...readFeeds(values.feeds, values.feeds !== undefined, [...path, 'feeds'], reader, fed),
    wait: states('wait') ? exact(values.wait, 'time', [...path, 'wait'], report) : 'unstated',
    reserve: states('reserve') ? readReserve(reserve, safeBelow, [...path, 'reserve'], report) : 'unstated',
  };
}

/** The limit between voltage classes A and B for DC: ISO 6469-3, ECE R100 (from memory). */
const classLimit = 60;

/** A battery above the limit would pass by all that guards high voltage. */
function batteryVoltage(written: string | undefined, path: Path, report: Reader['report']): Span | null {
  const voltage = span(written, 'voltage', path, report);
  if (voltage === null || voltage.most <= classLimit) return voltage;
  const message = `More than ${classLimit} V is high voltage: write \`kind: high-voltage\`, so that its circuit has to be verified to be without voltage.`;
  report({ rule: 'wrong-value', at: valueAt(path), message });
  return null;
}

function readHighVoltage({ id, path, node }: RawEntry, reader: Reader, fed: Fed): HighVoltage {
  const { report } = reader;
  const { values } = checkEntry('high-voltage', node, path, { named: `The source \`${id}\`` }, report);
  const states = (key: string) => entryOf(node, key) !== undefined;
  const written = states('safe-below') ? values['safe-below'] : `${classLimit} V`;
  const safeBelow = readSafeBelow(written, [...path, 'safe-below'], report);
  return {
    id,
    path,
    kind: 'high-voltage',
    voltage: span(values.voltage, 'voltage', [...path, 'voltage'], report),
    resistance: innerOf({ path, node }, values.resistance, report),
    ...readFeeds(
      values.feeds,
      values.feeds !== undefined || !states('feeds'),
      [...path, 'feeds'],
      reader,
      fed,
    ),
    isolatedBy: readIsolation(values['isolated-by'], [...path, 'isolated-by'], reader, fed),
    wait: exact(values.wait, 'time', [...path, 'wait'], report),
    reserve: states('reserve')
      ? readReserve(values.reserve, safeBelow, [...path, 'reserve'], report)
      : 'unstated',
    safeBelow,
  };
}

/** `written` is absent also where it is no text, which has been reported. */
function innerOf(
  { path, node }: Pick<RawEntry, 'path' | 'node'>,
  written: string | undefined,
  report: Reader['report'],
): InnerResistance {
  if (entryOf(node, 'resistance') === undefined) return 'unstated';
  return span(written, 'resistance', [...path, 'resistance'], report);
}

function readFeeds(
  feeds: string | readonly string[] | undefined,
  isRead: boolean,
  path: Path,
  reader: Reader,
  fed: Fed,
): Pick<Source, 'feeds' | 'feedsComplete'> {
  const { names, report } = reader;
  const written = feeds === undefined ? [] : ids(feeds, path);
  const known = written.flatMap(({ id, path: at }) => {
    const section = lookUp(names, id, ['instruments', 'parts', 'connectors'], valueAt(at), report);
    if (section === null || !isMonitor(id, fed, valueAt(at), report)) return [];
    return fed.monitors.has(id) || fed.parts.has(id) || fed.connectors.has(id) ? [id] : [];
  });
  return { feeds: [...new Set(known)], feedsComplete: isRead && known.length === written.length };
}

function readIsolation(id: string | undefined, at: Path, { names, report }: Reader, fed: Fed): Id | null {
  if (id === undefined || lookUp(names, id, ['connectors'], valueAt(at), report) === null) return null;
  return fed.connectors.has(id) ? id : null;
}

function readSafeBelow(
  text: string | undefined,
  at: Path,
  report: Reader['report'],
): HighVoltage['safeBelow'] {
  const found = aboveZero(text, 'voltage', at, report);
  if (found === null || text === undefined || found.most <= classLimit) return found;
  const message = `Above ${classLimit} V DC nothing counts as safe to touch; expected ${classLimit} V or less.`;
  report({ rule: 'quantity', at: valueAt(at, [0, text.length]), message });
  return null;
}

/** One connector takes away one source: its opening is the `disconnect` of that source. */
function checkIsolatedOnce(sources: readonly Source[], report: Reader['report']): void {
  const taken = new Map<Id, Source>();
  for (const source of sources) {
    const connector = isolatorOf(source);
    if (connector === null) continue;
    const earlier = taken.get(connector);
    if (earlier === undefined) {
      taken.set(connector, source);
      continue;
    }
    report({
      rule: 'wrong-id',
      at: valueAt([...source.path, 'isolated-by']),
      message: `\`${connector}\` takes \`${earlier.id}\` away already. A connector isolates one source.`,
      subject: connector,
      related: [{ at: valueAt([...earlier.path, 'isolated-by']), message: 'It is named here.' }],
    });
  }
}

interface RawReserve {
  readonly capacitance: string;
  readonly 'charged-to': string;
  readonly bleed: string;
}

/** `safe-below` stands in the reserve of a battery, and at a high-voltage source itself. */
function readReserve(
  raw: RawReserve | undefined,
  safeBelow: Span | null,
  path: Path,
  report: Reader['report'],
): Reserve | null {
  const capacitance = span(raw?.capacitance, 'capacitance', [...path, 'capacitance'], report);
  const chargedTo = span(raw?.['charged-to'], 'voltage', [...path, 'charged-to'], report);
  const bleed = span(raw?.bleed, 'resistance', [...path, 'bleed'], report);
  if (capacitance === null || chargedTo === null || bleed === null || safeBelow === null) return null;
  return { capacitance, chargedTo, bleed, safeBelow };
}

export interface WrittenId {
  readonly id: string;
  readonly path: Path;
}

/** One id or a list of ids, each with its place. */
export function ids(written: string | readonly string[], path: Path): readonly WrittenId[] {
  if (typeof written === 'string') return [{ id: written, path }];
  return written.map((id, index) => ({ id, path: [...path, index] }));
}
