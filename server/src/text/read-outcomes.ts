import type { OutcomeName } from '../model/finding.ts';
import { outcomeNamesOf } from '../model/outcome-kinds.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Outcome, Target } from '../model/procedure.ts';
import type { ActionReader } from './action-reader.ts';
import type { WrittenId } from './read-sources.ts';
import { someOf } from './some-of.ts';
import { entryOf, textOf } from './tree.ts';
import type { MapNode, Node } from './tree.ts';
import type { Path } from '../model/where.ts';

const classesOfOne: readonly OutcomeName[] = [...outcomeNamesOf('reading'), 'else'];

const names: readonly OutcomeName[] = [
  ...classesOfOne,
  ...outcomeNamesOf('read-codes'),
  ...outcomeNamesOf('inspect'),
  ...outcomeNamesOf('prove-dead'),
];

/** The outcomes of a step that has one reading, in written order; null where it states none. */
export function outcomesOfOne(context: ActionReader): readonly Outcome[] | null {
  const map = outcomesMap(context);
  return map === null ? null : listed(map, [...context.path, 'outcomes'], undefined, context);
}

/** Outcomes by loop. `unreadable`: one belongs to no loop of the list. */
export function outcomesOfSeveral(
  loops: readonly WrittenId[],
  context: ActionReader,
): readonly Outcome[] | null | 'unreadable' {
  const map = outcomesMap(context);
  if (map === null) return null;
  const { report } = context.reader;
  const known = new Set(loops.map(({ id }) => id));
  const outcomes: Outcome[] = [];
  let readable = true;
  for (const { key, value } of map.entries) {
    const path = [...context.path, 'outcomes', key];
    if (key === 'within' || key === 'else') {
      outcomes.push(outcome(key, value, path, undefined, context));
    } else if (known.has(key)) {
      if (value.kind === 'map') for (const one of listed(value, path, key, context)) outcomes.push(one);
    } else {
      readable = false;
      const { sentence, meant } = context.reader.names.guess(key, () => [...known, 'within', 'else']);
      const message = `\`${key}\` is not one of the loops that are read here.${sentence}`;
      const elsewhere = context.reader.names.things.get(key)?.section === 'loops';
      const rule = elsewhere ? 'wrong-id' : 'unknown-id';
      report({ rule, at: keyAt(path), message, subject: key, ...meant });
    }
  }
  return readable ? outcomes : 'unreadable';
}

function outcomesMap({ item }: ActionReader): MapNode | null {
  const value = entryOf(item, 'outcomes')?.value;
  return value?.kind === 'map' ? value : null;
}

function listed(map: MapNode, path: Path, of: string | undefined, context: ActionReader): readonly Outcome[] {
  const isRead = ['read', 'measure', 'wiggle'].some((verb) => entryOf(context.item, verb) !== undefined);
  const known = isRead ? classesOfOne : names;
  return map.entries.flatMap(({ key, value }): readonly Outcome[] => {
    const name = known.find((one) => one === key);
    const at = [...path, key];
    if (name !== undefined) return [outcome(name, value, at, of, context)];
    return of === undefined ? windowOutcome(key, value, at, context) : [];
  });
}

/** An outcome by the name of a window of the step; any other word is reported. */
function windowOutcome(key: string, value: Node, path: Path, context: ActionReader): readonly Outcome[] {
  const written = entryOf(context.item, 'windows')?.value;
  const windows: ReadonlyMap<string, unknown> = written?.kind === 'map' ? written.byKey : new Map();
  if (windows.has(key)) return [{ ...outcome('window', value, path, undefined, context), window: key }];
  const {
    report,
    names: { guess },
  } = context.reader;
  const { sentence, meant } = guess(key, () => [...classesOfOne, ...windows.keys()]);
  const listed = someOf([...classesOfOne, ...windows.keys()].map((one) => `\`${one}\``));
  const message = `\`${key}\` is no outcome of a reading and no name below \`windows\`.${sentence} Known here: ${listed}.`;
  report({ rule: 'unknown-key', at: keyAt(path), message, subject: key, ...meant });
  return [];
}

function outcome(
  name: OutcomeName,
  value: Node,
  path: Path,
  of: string | undefined,
  context: ActionReader,
): Outcome {
  const target = targetOf(textOf(value) ?? '', path, context);
  return of === undefined ? { name, target, path } : { name, of, target, path };
}

/** The step that an id names. null with a finding where nothing carries it: the step itself stays readable. */
export function targetOf(id: string, at: Path, { reader, bench, index }: ActionReader): Target {
  if (id === 'next') return index + 1 < bench.stepCount ? index + 1 : 'end';
  const item = reader.names.steps.get(id);
  const step = item === undefined ? null : bench.stepAt(item);
  if (step !== null) return step;
  const { guess, steps } = reader.names;
  const { sentence, meant } = guess(id, () => [...steps.keys(), 'next']);
  const message = `No step has the id \`${id}\`.${sentence}`;
  reader.report({ rule: 'unknown-id', at: valueAt(at), message, subject: id, ...meant });
  return null;
}
