import type { ActionReader, Bench } from './action-reader.ts';
import { lookUp } from './names.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Action, Id, Probed, Quantity, Source, Terminal } from '../model/procedure.ts';
import { hasSide } from './read-circuit.ts';
import { outcomesOfOne } from './read-outcomes.ts';
import { goesWithAnother } from './read-sources.ts';
import { remembered } from '../model/remembered.ts';
import { isolatorOf } from '../model/source-kinds.ts';
import { nodeAt } from './tree.ts';
import type { Path } from '../model/where.ts';

/** By connector the source that it takes away, the first where there are several. */
const isolatedBy = remembered((sources: Bench['sources']): ReadonlyMap<Id, Source> => {
  const found = new Map<Id, Source>();
  for (const source of sources.values()) {
    const connector = isolatorOf(source);
    if (connector !== null && !found.has(connector)) found.set(connector, source);
  }
  return found;
});

/**
 * Whether a connector takes a source away: then the verbs of the source are the ones for it, since one act has one
 * name. The problem has been reported.
 */
export function isolates(
  connector: Id,
  verb: 'unlock' | 'unplug' | 'plug' | 'stop',
  at: Path,
  { reader, bench }: ActionReader,
): boolean {
  const found = isolatedBy(bench.sources).get(connector);
  if (found === undefined) return false;
  const source = found.id;
  const effect =
    verb === 'plug' ? `mating it is \`reconnect: ${source}\`` : `opening it is \`disconnect: ${source}\``;
  const advice =
    verb === 'stop' ? `what stays is the source: write \`${source}\`` : `${effect}, so write that`;
  reader.report({
    rule: 'wrong-id',
    at: valueAt(at),
    message: `\`${connector}\` takes \`${source}\` away; ${advice}.`,
    subject: connector,
    related: relatedTo(found),
  });
  return true;
}

/** null: something that it names could not be read, and a finding says so. */
export function readProof(values: Readonly<Record<string, unknown>>, context: ActionReader): Action | null {
  const { path } = context;
  const source = sourceOf(values['prove-dead'], 'high-voltage', [...path, 'prove-dead'], context);
  const known = sourceOf(values.known, 'battery', [...path, 'known'], context);
  const at = probedAt(values.at, [...path, 'at'], context);
  const meter = meterOf(values.with, 'voltage', [...path, 'with'], context);
  const outcomes = outcomesOfOne(context) ?? [];
  if (source === null || known === null || at === null || meter === null) return null;
  return { verb: 'prove-dead', source, at, with: meter, known, outcomes };
}

const kindWords: Readonly<Record<Source['kind'], string>> = {
  battery: 'a battery',
  'high-voltage': 'a high-voltage source',
};

function sourceOf(id: unknown, kind: Source['kind'], path: Path, context: ActionReader): Id | null {
  const { reader, bench } = context;
  if (typeof id !== 'string') return null;
  const at = valueAt(path);
  if (lookUp(reader.names, id, ['sources'], at, reader.report) === null) return null;
  if (goesWithAnother(id, at, reader)) return null;
  const source = bench.sources.get(id);
  if (source === undefined) return null;
  if (source.kind === kind) return id;
  const message = `\`${id}\` is ${kindWords[source.kind]}; expected ${kindWords[kind]}.`;
  reader.report({ rule: 'wrong-id', at, message, subject: id, related: relatedTo(source) });
  return null;
}

/** A multimeter that measures a quantity; null: it is none, which has been reported. */
export function meterOf(
  id: unknown,
  quantity: Quantity | 'clamp',
  path: Path,
  { reader, bench }: ActionReader,
): Id | null {
  if (typeof id !== 'string') return null;
  const at = valueAt(path);
  if (lookUp(reader.names, id, ['instruments'], at, reader.report) === null) return null;
  const meter = bench.multimeters.get(id);
  if (meter === undefined) {
    const monitor = bench.monitors.get(id);
    if (monitor === undefined) return null;
    const message = `\`${id}\` is a monitor; expected a multimeter.`;
    const related = [{ at: keyAt(monitor.path), message: `\`${id}\` is named here.` }];
    reader.report({ rule: 'wrong-id', at, message, subject: id, related });
    return null;
  }
  if (nodeAt(reader.root, [...meter.path, quantity]) !== undefined) return id;
  const message = `\`${id}\` ${quantity === 'clamp' ? 'has no clamp' : `measures no ${quantity}`}: its entry has no \`${quantity}\`.`;
  const related = [{ at: keyAt(meter.path), message: `\`${id}\` is named here.` }];
  reader.report({ rule: 'wrong-id', at, message, subject: id, related });
  return null;
}

function probedAt(written: unknown, path: Path, context: ActionReader): Probed | null {
  if (typeof written === 'string') {
    const terminal = terminalOf(written, path, context);
    return terminal === null ? null : { connector: terminal.connector, side: terminal.side };
  }
  const [one, other] = Array.isArray(written) ? (written as unknown[]) : [];
  if (typeof one !== 'string' || typeof other !== 'string') return null;
  const pair = [terminalOf(one, [...path, 0], context), terminalOf(other, [...path, 1], context)];
  if (one === other) {
    const message = 'A voltage stands between two different terminals.';
    context.reader.report({ rule: 'wrong-value', at: valueAt([...path, 1]), message, subject: other });
    return null;
  }
  const [first = null, second = null] = pair;
  return first === null || second === null ? null : [first, second];
}

/** The pins of a connector that carries a source are not those of its loops, so any pin may be named. */
function terminalOf(written: string, path: Path, { reader, bench }: ActionReader): Terminal | null {
  const [connector = '', side, pin = ''] = written.split('.');
  const at = valueAt(path, [0, connector.length]);
  if (lookUp(reader.names, connector, ['connectors'], at, reader.report) === null) return null;
  if (side === undefined) {
    const message = `A voltage is looked for on one side of a connector: \`${connector}.monitor\` or \`${connector}.end\`.`;
    reader.report({ rule: 'wrong-value', at: valueAt(path), message, subject: connector });
    return null;
  }
  const found = bench.connectors.get(connector);
  if (found === undefined || !hasSide(found, side, path, reader.report)) return null;
  return { connector, side, pin };
}

function relatedTo(source: Source | undefined) {
  return source === undefined ? [] : [{ at: keyAt(source.path), message: `\`${source.id}\` is named here.` }];
}
