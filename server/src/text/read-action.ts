import type { Section, Verb } from '../format/words.ts';
import { entriesOf } from './action-reader.ts';
import type { ActionReader, Bench } from './action-reader.ts';
import { lookUp } from './names.ts';
import { valueAt } from './problem.ts';
import type { Action, Id, Mentioned } from '../model/procedure.ts';
import { exact } from './quantities.ts';
import { judgedOf } from './read-judged.ts';
import { outcomesOfOne, outcomesOfSeveral, targetOf } from './read-outcomes.ts';
import { lookedAtBy, placeOf, touchedBy, unlessUnread } from './read-places.ts';
import { isMonitor } from './read-instruments.ts';
import { isolates, readProof } from './read-high-voltage.ts';
import { readMeasure } from './read-measure.ts';
import { readRun } from './read-run.ts';
import { readWiggle } from './read-wiggle.ts';
import { goesWithAnother, ids } from './read-sources.ts';
import type { WrittenId } from './read-sources.ts';
import type { Reader } from './reader.ts';
import { isolatorOf } from '../model/source-kinds.ts';
import { entryOf } from './tree.ts';
import type { MapNode } from './tree.ts';
import type { Path } from '../model/where.ts';

/** The values of a step that passed its definition: which keys are there depends on the verb. */
type Values = Readonly<Record<string, unknown>>;

/** null: something that it names could not be read, and a finding says so. */
export function readAction(
  verb: Verb,
  values: Values,
  item: MapNode,
  path: Path,
  index: number,
  reader: Reader,
  bench: Bench,
): Action | null {
  const context: ActionReader = { reader, bench, item, path, index };
  const at = [...path, verb];
  const word = text(values, verb);
  switch (verb) {
    case 'ignition':
      return word === 'on' || word === 'off' || word === 'cycle' ? { verb, to: word } : null;
    case 'disconnect':
    case 'reconnect': {
      const source = one(word, at, ['sources'], context);
      return source === null ? null : { verb, source, connector: isolatorOf(bench.sources.get(source)) };
    }
    case 'wait': {
      const seconds = exact(word, 'time', at, reader.report);
      return seconds === null ? null : { verb, seconds };
    }
    case 'prove-dead':
      return readProof(values, context);
    case 'unlock':
    case 'unplug':
    case 'plug': {
      const connector = one(word, at, ['connectors'], context);
      if (connector === null || isolates(connector, verb, at, context)) return null;
      return { verb, connector };
    }
    case 'fit':
    case 'move': {
      const load = one(word, at, ['loads'], context);
      const key = verb === 'fit' ? 'at' : 'to';
      const place = placeOf(text(values, key) ?? '', [...path, key], text(values, 'loop'), context);
      if (load === null || place === null) return null;
      return verb === 'fit' ? { verb, load, at: place } : { verb, load, to: place };
    }
    case 'remove': {
      const load = one(word, at, ['loads'], context);
      return load === null ? null : { verb, load };
    }
    case 'read':
      return readReading(values, context);
    case 'measure':
      return readMeasure(values, context);
    case 'wiggle':
      return readWiggle(values, context);
    case 'read-codes': {
      const monitor = one(word, at, ['instruments'], context);
      const outcomes = outcomesOfOne(context);
      return monitor === null ? null : { verb, monitor, outcomes };
    }
    case 'clear-codes': {
      const monitor = one(word, at, ['instruments'], context);
      return monitor === null ? null : { verb, monitor };
    }
    case 'inspect':
    case 'do': {
      const hands = touchedBy(written(values, 'at', path), context);
      const seen = lookedAtBy(written(values, 'of', path), context);
      if (hands === null || seen === null || word === undefined) return null;
      if (verb === 'do') return { verb, text: word, at: hands, of: seen };
      return { verb, text: word, at: hands, of: seen, outcomes: outcomesOfOne(context) };
    }
    case 'replace': {
      const what = mentioned(written(values, verb, path), context);
      return what === null ? null : { verb, what };
    }
    case 'conclude': {
      if (word === 'none') return { verb, what: 'none' };
      const what = mentioned(written(values, verb, path), context, ['none']);
      return what === null ? null : { verb, what };
    }
    case 'go':
      return { verb, to: targetOf(word ?? '', at, context) };
    case 'stop': {
      const named = written(values, 'leaves', path);
      const others = named.filter(({ id }) => id !== 'codes' && id !== 'repair');
      const found = all(others, ['sources', 'connectors', 'loads'], context, ['codes', 'repair']);
      const isolators = others.filter(({ id, path: place }) => isolates(id, verb, place, context));
      return found === null || isolators.length > 0 || word === undefined
        ? null
        : { verb, text: word, leaves: [...new Set(named.map(({ id }) => id))] };
    }
    case 'run':
      return readRun(word ?? '', values, context);
  }
}

function readReading(values: Values, context: ActionReader): Action | null {
  const named = written(values, 'read', context.path);
  const loops = all(named, ['loops'], context);
  if (entryOf(context.item, 'read')?.value.kind === 'list') {
    const outcomes = outcomesOfSeveral(named, context);
    if (loops === null || outcomes === 'unreadable') return null;
    return { verb: 'read', loops, expect: null, windows: [], outcomes };
  }
  const judged = judgedOf(values, 'resistance', context);
  return loops === null || judged === null ? null : { verb: 'read', loops, ...judged };
}

function text(values: Values, key: string): string | undefined {
  const value = values[key];
  return typeof value === 'string' ? value : undefined;
}

function written(values: Values, key: string, path: Path): readonly WrittenId[] {
  const value = values[key];
  if (typeof value !== 'string' && !Array.isArray(value)) return [];
  return ids(value as string | readonly string[], [...path, key]);
}

function one(
  id: string | undefined,
  at: Path,
  sections: readonly Section[],
  { reader, bench }: ActionReader,
  alsoKnown: readonly string[] = [],
): Id | null {
  if (id === undefined) return null;
  const section = lookUp(reader.names, id, sections, valueAt(at), reader.report, alsoKnown);
  if (section === 'instruments' && !isMonitor(id, bench, valueAt(at), reader.report)) return null;
  if (section === 'sources' && goesWithAnother(id, valueAt(at), reader)) return null;
  return section !== null && entriesOf(section, bench).has(id) ? id : null;
}

/** All of them, or null where one could not be read. Every one is looked at, so that each mistake is seen at once. */
function all(
  named: readonly WrittenId[],
  sections: readonly Section[],
  context: ActionReader,
  alsoKnown: readonly string[] = [],
): readonly Id[] | null {
  const found = named.map(({ id, path }) => one(id, path, sections, context, alsoKnown));
  const known = found.filter((id) => id !== null);
  return known.length === found.length ? [...new Set(known)] : null;
}

/** Parts, connectors, monitors and assemblies, each with what it means; null where one could not be read. */
function mentioned(
  named: readonly WrittenId[],
  context: ActionReader,
  alsoKnown: readonly string[] = [],
): readonly Mentioned[] | null {
  const sections = ['parts', 'connectors', 'instruments', 'assemblies'] as const;
  const found = named.map(({ id, path }): Mentioned | null => {
    if (one(id, path, sections, context, alsoKnown) === null) return null;
    const members = context.bench.assemblies.get(id)?.members ?? [id];
    return { id, members, place: path.slice(context.path.length) };
  });
  return unlessUnread(found);
}
