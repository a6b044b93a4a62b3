import { measuredMeanwhile, watchable, wiggleForm } from '../format/words.ts';
import type { ActionReader } from './action-reader.ts';
import { lookUp } from './names.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Action, ByHand, ByMonitor, Moved } from '../model/procedure.ts';
import { positive } from './quantities.ts';
import { hasSide } from './read-circuit.ts';
import { judgedOf } from './read-judged.ts';
import { measuredOf } from './read-measure.ts';
import { ids } from './read-sources.ts';
import type { WrittenId } from './read-sources.ts';
import type { Reader } from './reader.ts';
import { entryOf } from './tree.ts';
import type { MapNode } from './tree.ts';
import type { Path } from '../model/where.ts';

type Values = Readonly<Record<string, unknown>>;

/** The definition that a `wiggle` step is written by; null: it watches two things or none, and that has been reported. */
export function wiggleFormOf(
  item: MapNode,
  path: Path,
  report: Reader['report'],
): 'step-wiggle' | 'step-wiggle-measured' | null {
  const has = (key: string): boolean => entryOf(item, key) !== undefined;
  const beside = has('watch') ? measuredMeanwhile.find(has) : undefined;
  if (beside !== undefined) {
    const message =
      'One thing is watched while something is moved: a loop by `watch`, or what is measured by hand by `quantity`, `across` and `with`. Both are written here; remove one of them.';
    report({ rule: 'wrong-value', at: keyAt([...path, beside]), message, subject: beside });
    return null;
  }
  const form = wiggleForm(has);
  if (form !== null) return form;
  const message =
    'Say what is watched while it is moved: `watch` with a loop that its monitor reads, or `quantity`, `across` and `with` as in `measure`.';
  report({ rule: 'missing-key', at: keyAt([...path, 'wiggle']), message });
  return null;
}

/** null: something that it names could not be read, and a finding says so. */
export function readWiggle(values: Values, context: ActionReader): Action | null {
  const { path, reader } = context;
  const moved = movedOf(values.wiggle, context);
  const written = typeof values.for === 'string' ? values.for : undefined;
  const seconds = positive(written, 'time', [...path, 'for'], reader.report);
  const quantity = watchable.find((one) => one === values.quantity);
  if (quantity === undefined) {
    const watched = watchedBy(values, context);
    if (moved === null || seconds === null || watched === null) return null;
    return { verb: 'wiggle', by: 'monitor', moved, seconds, ...watched };
  }
  const measured: ByHand | null = measuredOf(quantity, values, context);
  if (moved === null || seconds === null || measured === null) return null;
  return { verb: 'wiggle', by: 'hand', moved, seconds, ...measured };
}

function watchedBy(values: Values, context: ActionReader): ByMonitor | null {
  const { path, reader, bench } = context;
  const loop = typeof values.watch === 'string' ? values.watch : '';
  const at = valueAt([...path, 'watch']);
  const judged = judgedOf(values, 'resistance', context);
  if (lookUp(reader.names, loop, ['loops'], at, reader.report) === null || !bench.loops.has(loop))
    return null;
  return judged === null ? null : { loops: [loop], ...judged };
}

/** Each that is moved; null where one could not be read. Every one is looked at, so that each mistake is seen at once. */
function movedOf(written: unknown, context: ActionReader): readonly Moved[] | null {
  const named = ids(written as string | readonly string[], [...context.path, 'wiggle']);
  const found = named.map((one) => oneMoved(one, context));
  const known = found.filter((one) => one !== null);
  return known.length < found.length ? null : known;
}

function oneMoved(
  { id: written, path }: WrittenId,
  { reader, bench, path: step }: ActionReader,
): Moved | null {
  const [id = '', side] = written.split('.');
  const wanted = side === undefined ? (['parts', 'connectors'] as const) : (['connectors'] as const);
  const section = lookUp(reader.names, id, wanted, valueAt(path, [0, id.length]), reader.report);
  if (section === null) return null;
  const place = path.slice(step.length);
  if (section === 'parts') return bench.parts.has(id) ? { id, place } : null;
  const connector = bench.connectors.get(id);
  if (connector === undefined) return null;
  if (side === undefined) return { id, place };
  return hasSide(connector, side, path, reader.report) ? { id, side, place } : null;
}
