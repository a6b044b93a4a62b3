import { isPartsFile } from '../format/file-kinds.ts';
import { circuitsOf } from '../bench/circuits.ts';
import type { Circuits } from '../bench/circuits.ts';
import { defaultBounds } from '../paths/explore.ts';
import type { Bounds } from '../paths/explore.ts';
import { leadsAstray, reachable, stepGraph } from '../paths/graph.ts';
import type { StepGraph } from '../paths/graph.ts';
import { clustersOf } from '../bench/clock.ts';
import type { Cluster } from '../bench/clock.ts';
import { explorerOf } from '../paths/run.ts';
import { TooMuchWork } from '../paths/effort.ts';
import { owedBy } from '../bench/owed.ts';
import { owedAfterSteps } from '../bench/owed-after.ts';
import type { OwedAfter } from '../bench/owed-after.ts';
import type { Owed } from '../bench/owed.ts';
import type { Work } from '../model/work.ts';
import { sharedWatchers } from '../readings/shared-watchers.ts';
import { whatIsLeft } from '../readings/left.ts';
import { printedProofs } from '../readings/proof.ts';
import type { PrintedProof } from '../readings/proof.ts';
import { joinedToProofs } from '../readings/joined-to-proof.ts';
import type { JoinedToProof } from '../readings/joined-to-proof.ts';
import type { Left } from '../readings/left.ts';
import { computeReadings, noReadings } from '../readings/reading.ts';
import { explainReading } from '../readings/explain.ts';
import type { Explanation } from '../readings/explain.ts';
import type { Readings } from '../readings/reading.ts';
import type { Context, Rule } from '../rules/rule.ts';
import { applyRules } from '../rules/apply.ts';
import { rules as allRules } from '../rules/rules.ts';
import { tooMuchWork } from '../rules/flow/too-much-work.ts';
import type { Checked, Finding, Stage } from '../model/finding.ts';
import { namesIn } from '../text/names.ts';
import type { Names } from '../text/names.ts';
import type { Id, Procedure, Step } from '../model/procedure.ts';
import { emptyProcedure, nothingRead, readProcedure } from '../text/read-procedure.ts';
import type { ReadFile } from '../text/read-procedure.ts';
import type { StepLines } from '../text/step-lines.ts';
import type { PlaceAt } from '../text/place-at.ts';
import type { Schema } from '../format/walker.ts';
import type { FileId, Path, Range, Where } from '../model/where.ts';
import { withConsequences } from '../rules/consequences.ts';
import { waiverFindings, withWaivers } from '../rules/waivers/waivers.ts';
import { inFile } from './elsewhere.ts';
import { fileId } from './file-names.ts';
import { failureNet, notChecked } from './net.ts';
import type { Failure } from './net.ts';
import { inOrder } from './sorting.ts';
import type { Snapshot, SourceFile } from './snapshot.ts';

/** What the order stage knows beside its findings. */
export interface Order {
  /** What the paths to each `stop` leave as it is. */
  readonly left: readonly Left[];
  /** The wait owed by each source of a live circuit. */
  readonly owed: readonly Owed[];
  /** Where a wait begins, and where one ends too early. */
  readonly owedAfter: readonly OwedAfter[];
  /** For which parts each proof holds. */
  readonly joined: readonly JoinedToProof[];
}

/**
 * The one door to everything that is known of a file. It belongs to one snapshot; stages are computed once. Nothing that
 * fails comes through it: a stage that does is empty and not complete, and `findings` says that the file is not checked.
 */
export interface Analysis {
  readonly file: FileId;
  readonly snapshot: Snapshot;
  /** Stage text. */
  procedure(): Checked<Procedure>;
  /** Where each step leads. */
  graph(): StepGraph;
  /** What hangs together as built, and what of it is a hazard. */
  circuits(): Circuits;
  /** The hazards by the sources that they share. */
  clusters(): readonly Cluster[];
  /** What each proof of no voltage prints. */
  proofs(): readonly PrintedProof[];
  /** What each reading step reads. */
  windows(): Work<Checked<Readings>>;
  /** Whether the order is safe on every path. Includes the windows. */
  order(): Work<Checked<Order>>;
  /**
   * Where the window of a reading comes from: what the step at an index reads of a loop. With `draws` circuits are drawn
   * as well. null: there is no such reading, or it shows no number.
   */
  explain(index: number, of: Id, draws?: number): Work<Explanation | null>;
  /** All findings up to a stage, sorted by position. */
  findings(upTo: Exclude<Stage, 'diagnosis'>): Work<readonly Finding[]>;
  /** What went wrong inside Ohmwright itself, as far as the analysis has been asked; `findings` tells of it. */
  failure(): Failure | null;
  /** The only way to offsets. */
  range(where: Where): Range;
  /** What stands at an offset: a key or a value. */
  placeAt(offset: number): PlaceAt | null;
  /** The schema of what stands at a path, for its description; null: the format knows nothing there. */
  schemaOf(path: Path): Schema | null;
  /** What a step does, as a name that stays when lines move. */
  stepContent(step: Step): string;
  /** Where a step stands as lines, for edits; null where steps are not written so. */
  stepLines(step: Pick<Step, 'path'>): StepLines | null;
  /** The parts files that it uses, in the order in which they are read. */
  used(): readonly SourceFile[];
  /** All that is named in the file, also where its entry cannot be read yet. */
  names(): Names;
}

const known = new WeakMap<Snapshot, Map<FileId, Analysis>>();

/** The analysis of one file of a snapshot; the same one for the same question. One by other bounds or rules is made anew. */
export function analyse(
  snapshot: Snapshot,
  named: FileId,
  bounds: Bounds = defaultBounds,
  rules: readonly Rule[] = allRules,
): Analysis {
  const file = fileId(named);
  if (bounds !== defaultBounds || rules !== allRules) return newAnalysis(snapshot, file, bounds, rules);
  const ofSnapshot = known.get(snapshot) ?? new Map<FileId, Analysis>();
  known.set(snapshot, ofSnapshot);
  const analysis = ofSnapshot.get(file) ?? newAnalysis(snapshot, file, bounds, rules);
  ofSnapshot.set(file, analysis);
  return analysis;
}

interface Base {
  /** What is analysed: nothing of a parts file, and nothing where the text is broken and steps may be missing. */
  readonly procedure: Procedure;
  readonly graph: StepGraph;
  readonly circuits: Circuits;
  readonly clusters: readonly Cluster[];
}

function structureOf(procedure: Procedure): Base {
  const circuits = circuitsOf(procedure);
  return { procedure, graph: stepGraph(procedure), circuits, clusters: clustersOf(procedure, circuits) };
}

interface UpToWindows {
  readonly checked: Checked<Readings>;
  readonly onward: Context | null;
}

function newAnalysis(snapshot: Snapshot, file: FileId, bounds: Bounds, rules: readonly Rule[]): Analysis {
  const source = snapshot.files.get(file) ?? { id: file, text: '' };
  const net = failureNet();

  const read = once((): ReadFile => {
    const found = net.hold(
      'text',
      () => readProcedure(source, snapshot.find),
      (error) => nothingRead(source, { error }),
    );
    if (found.thrown !== null) net.catch('text', found.thrown.error);
    return found;
  });

  const look = <T>(ask: (read: ReadFile) => T, instead: T): T =>
    net.hold(
      'text',
      () => ask(read()),
      () => instead,
    );

  /** Of all that could be read, whether that is the whole text or not. */
  const asRead = once((): Base =>
    look(({ procedure }) => structureOf(procedure), structureOf(emptyProcedure(file))),
  );

  const base = once((): Base => {
    const { whole } = read();
    return whole && !isPartsFile(file) ? asRead() : structureOf(emptyProcedure(file));
  });

  /** null: something failed on the way to it, or it would take too much. */
  const context = onceWorked(() =>
    net.holdWork<Context | 'too-much' | null>(
      'windows',
      worked(function* () {
        const { findings, stepContent, thrown } = read();
        if (thrown !== null) return null;
        const { procedure, graph, circuits, clusters } = base();
        const explorer = explorerOf(graph, bounds);
        const readings = yield* computeReadings(procedure, explorer, circuits);
        const watchers = sharedWatchers(procedure, circuits, readings);
        const left = yield* whatIsLeft(procedure, explorer, watchers);
        const reached = reachable(graph);
        const astray = reached.some((isReached, index) => isReached && leadsAstray(graph, index));
        const bench = { graph, explorer, watchers, circuits, clusters, readings, left };
        const isWhole = !findings.some(isErrorOfText);
        return { procedure, isWhole, stepContent, ...bench, reached, astray };
      }),
      () => null,
    ),
  );

  /** `onward` is what the next stage goes on with; null: this one failed, and nothing behind it is checked. */
  const upToWindows = onceWorked(function* (): Work<UpToWindows> {
    const known = yield* context();
    if (known === null || known === 'too-much') {
      const value = noReadings(emptyProcedure(file));
      const findings = known === null ? [] : [tooMuchWork(base().procedure, 'windows')];
      return { checked: { value, findings, complete: false }, onward: null };
    }
    const { readings: value } = known;
    const { findings, complete, thrown, isTooMuch } = yield* applyRules(known, 'windows', rules);
    if (thrown !== null) net.catch('windows', thrown.error);
    return {
      checked: { value, findings, complete: complete && value.complete },
      onward: thrown === null && !isTooMuch ? known : null,
    };
  });

  function* windows(): Work<Checked<Readings>> {
    return (yield* upToWindows()).checked;
  }

  const order = onceWorked(function* (): Work<Checked<Order>> {
    const { checked, onward } = yield* upToWindows();
    if (onward === null) return { value: emptyOrder, findings: [], complete: false };
    const { findings, complete, thrown, isTooMuch } = yield* applyRules(onward, 'order', rules);
    if (thrown !== null) net.catch('order', thrown.error);
    const value = yield* net.holdWork<Order | 'too-much' | null>(
      'order',
      worked(() => orderOf(onward)),
      () => null,
    );
    const isUnsaid = value === 'too-much' && !isTooMuch;
    const isKnown = value !== null && value !== 'too-much';
    return {
      value: isKnown ? value : emptyOrder,
      findings: isUnsaid ? [...findings, tooMuchWork(onward.procedure, 'order')] : findings,
      complete: complete && checked.complete && isKnown,
    };
  });

  const procedure = (): Checked<Procedure> => {
    const { procedure: value, findings, whole } = read();
    return { value, findings, complete: whole };
  };

  return {
    file,
    snapshot,
    procedure,
    graph: () => asRead().graph,
    circuits: () => asRead().circuits,
    clusters: () => asRead().clusters,
    proofs: () => look(({ procedure: read }) => printedProofs(read), []),
    windows,
    order,
    explain: (index, of, draws = 0) =>
      net.holdWork<Explanation | null>(
        'windows',
        function* () {
          const { value } = yield* windows();
          const reading = value.at(index, of);
          return reading === undefined ? null : yield* explainReading(base().procedure, reading, draws);
        },
        () => null,
      ),
    *findings(upTo) {
      const found = [
        ...read().findings,
        ...(upTo === 'text' ? [] : (yield* windows()).findings),
        ...(upTo === 'order' ? (yield* order()).findings : []),
      ];
      const placed = net.hold(
        upTo,
        () => {
          const isWhole = net.failure() === null && !found.some(isErrorOfText);
          const ofWaivers = upTo === 'order' ? waiverFindings(found, base().procedure, isWhole) : [];
          const all = [...withConsequences(withWaivers(found, base().procedure)), ...ofWaivers];
          return inOrder(
            all.map((one) => inFile(file, one, read())),
            read().range,
          );
        },
        () => found,
      );
      const failure = net.failure();
      return failure === null ? placed : [notChecked(source, failure), ...placed];
    },
    failure: net.failure,
    range: (where) => look(({ range }) => range(where), { from: 0, to: 0 }),
    placeAt: (offset) => look(({ placeAt }) => placeAt(offset), null),
    schemaOf: (path) => look(({ schemaOf }) => schemaOf(path), null),
    stepContent: ({ path }) => look(({ stepContent }) => stepContent(path), ''),
    stepLines: ({ path }) => look(({ stepLines }) => stepLines(path), null),
    used: () => read().used.map((one) => one.file),
    names: () => look(({ names }) => names(), noNames),
  };
}

function isErrorOfText({ stage, severity }: Finding): boolean {
  return stage === 'text' && severity === 'error';
}

const noNames = namesIn(null, false, () => undefined);

const emptyOrder: Order = { left: [], owed: [], owedAfter: [], joined: [] };

function* orderOf({ procedure, explorer, circuits, clusters, left }: Context): Work<Order> {
  const live = new Set(circuits.hazards.flatMap(({ sources }) => sources));
  const owed = [...procedure.sources.values()].filter(({ id }) => live.has(id)).map(owedBy);
  const owedAfter = yield* owedAfterSteps(explorer.renewed(), clusters);
  const joined = yield* joinedToProofs(explorer.renewed(), clusters);
  return { left, owed, owedAfter, joined };
}

/** Work that says so where it would take too much. */
function worked<T>(work: () => Work<T>): () => Work<T | 'too-much'> {
  return function* () {
    try {
      return yield* work();
    } catch (error) {
      if (error instanceof TooMuchWork) return 'too-much';
      throw error;
    }
  };
}

function once<T>(compute: () => T): () => T {
  let value: { readonly of: T } | null = null;
  return () => (value ??= { of: compute() }).of;
}

/** Like `once`, for work that may be abandoned half way: only a finished result is kept. */
function onceWorked<T>(compute: () => Work<T>): () => Work<T> {
  let value: { readonly of: T } | null = null;
  return function* () {
    value ??= { of: yield* compute() };
    return value.of;
  };
}
