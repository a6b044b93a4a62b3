import type { Circuit } from './action-reader.ts';
import { callGraph } from './call-graph.ts';
import type { CallGraph } from './call-graph.ts';
import { checkEntry } from './check-entry.ts';
import { withGiven } from './given.ts';
import type { Given } from './given.ts';
import { stepNames } from './names.ts';
import type { Names } from './names.ts';
import { keyAt } from './problem.ts';
import type { Problem } from './problem.ts';
import type { Id, Routine } from '../model/procedure.ts';
import { byId, entriesIn } from './read-entries.ts';
import { sectionOfNeed } from './read-run.ts';
import { readSteps, stepListAt, verbsIn } from './read-steps.ts';
import type { ListedStep } from './read-steps.ts';
import type { Reader } from './reader.ts';
import { withMore } from './things.ts';
import type { Named } from './things.ts';
import type { Path } from '../model/where.ts';

/** The routines by id with what they need. Their steps are read once all of them are known. */
export function readRoutines(reader: Reader): ReadonlyMap<Id, Routine> {
  return byId(
    entriesIn('routines', reader).map(({ id, path, node }): Routine => {
      const rules = { named: `The routine \`${id}\``, isOpen: isStep };
      const { values } = checkEntry('routine', node, path, rules, reader.report);
      const needs = new Map(Object.entries(values.needs ?? {}));
      for (const need of needs.keys())
        if (reader.names.things.has(need))
          reader.report({
            rule: 'duplicate-id',
            at: keyAt([...path, 'needs', need]),
            message: `\`${need}\` is the name of something in the file. What a routine needs has a name of its own.`,
            subject: need,
          });
      const steps = stepListAt(reader.root, [...path, 'steps'])?.items ?? [];
      return { id, path, needs, verbs: steps.flatMap(verbsIn) };
    }),
  );
}

function isStep(path: Path): boolean {
  return path.length === 2 && path[0] === 'steps';
}

export interface RoutineReading {
  readonly steps: readonly ListedStep[];
  readonly problems: readonly Problem[];
}

export interface RoutineReader {
  /** Reads the steps of a routine as it is called; the problems are those that it has only as it is called. */
  readonly asCalled: (routine: Routine, given: ReadonlyMap<Id, string>) => RoutineReading;
  readonly calls: CallGraph;
}

/** Reads every routine by itself, so that its own mistakes are told once, and then as it is called. */
export function routineReader(reader: Reader, circuit: Circuit): RoutineReader {
  const alone = new Map<Id, RoutineReading>();
  for (const routine of circuit.routines.values()) {
    const things = withMore(needsAsNames(routine), reader.names.things);
    const reading = read(routine, asWritten(routine), { ...reader.names, things }, reader.root, circuit);
    for (const problem of reading.problems) reader.report(problem);
    alone.set(routine.id, reading);
  }
  const calls = callGraph(new Map([...alone].map(([id, { steps }]) => [id, steps])), reader.report);
  const known = new Map<string, RoutineReading>();
  const readAsCalled = (routine: Routine, given: ReadonlyMap<Id, string>): RoutineReading => {
    const own = alone.get(routine.id) ?? { steps: [], problems: [] };
    if (routine.needs.size === 0) return { steps: own.steps, problems: [] };
    const said = new Set(own.problems.map(placeOf));
    const { steps, problems } = read(routine, filled(routine, given), reader.names, reader.root, circuit);
    return { steps, problems: problems.filter((problem) => !said.has(placeOf(problem))) };
  };
  const asCalled: RoutineReader['asCalled'] = (routine, given) => {
    const key = JSON.stringify([routine.id, ...given]);
    const reading = known.get(key) ?? readAsCalled(routine, given);
    known.set(key, reading);
    return reading;
  };
  return { asCalled, calls };
}

function placeOf({ rule, at }: Problem): string {
  return `${rule} ${JSON.stringify('path' in at ? at.path : at.range)}`;
}

/** What a routine needs, as names that count as something of their kind. */
function needsAsNames({ path, needs }: Routine): ReadonlyMap<Id, Named> {
  return new Map(
    [...needs].map(([need, kind]) => [
      need,
      { section: sectionOfNeed(kind), path: [...path, 'needs', need] },
    ]),
  );
}

/** Each name stands for itself; for a side stands one of it, which is as good as the other. */
function asWritten({ needs }: Routine): ReadonlyMap<Id, Given> {
  return new Map(
    [...needs].map(([need, kind]) => [need, { kind, text: kind === 'side' ? `${need}.monitor` : need }]),
  );
}

function filled({ needs }: Routine, given: ReadonlyMap<Id, string>): ReadonlyMap<Id, Given> {
  return new Map([...needs].map(([need, kind]) => [need, { kind, text: given.get(need) ?? need }]));
}

function read(
  { path }: Routine,
  given: ReadonlyMap<Id, Given>,
  names: Names,
  root: Reader['root'],
  circuit: Circuit,
): RoutineReading {
  const problems: Problem[] = [];
  const report = (problem: Problem): void => void problems.push(problem);
  const list = stepListAt(root, [...path, 'steps']);
  if (list === null) return { steps: [], problems };
  const items = list.items.map((item) => (item.kind === 'map' ? withGiven(item, given) : item));
  const reader = { root, report, names: { ...names, steps: stepNames(root, list.path, report) } };
  return { steps: readSteps({ ...list, items }, reader, circuit), problems };
}
