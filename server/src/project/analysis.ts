import { circuitsOf } from '../bench/circuits.ts';
import type { Circuits } from '../bench/circuits.ts';
import { defaultBounds } from '../bench/explore.ts';
import type { Bounds } from '../bench/explore.ts';
import { leadsAstray, reachable, stepGraph } from '../bench/graph.ts';
import type { StepGraph } from '../bench/graph.ts';
import { clustersOf } from '../bench/clock.ts';
import { explorerOf } from '../bench/run.ts';
import { owedBy } from '../bench/owed.ts';
import { owedAfterSteps } from '../bench/owed-after.ts';
import type { OwedAfter } from '../bench/owed-after.ts';
import type { Owed } from '../bench/owed.ts';
import type { Work } from '../bench/work.ts';
import { sharedWatchers } from '../readings/shared-watchers.ts';
import { whatIsLeft } from '../readings/left.ts';
import type { Left } from '../readings/left.ts';
import { computeReadings } from '../readings/reading.ts';
import { explainReading } from '../readings/explain.ts';
import type { Explanation } from '../readings/explain.ts';
import type { Readings } from '../readings/reading.ts';
import type { Context } from '../rules/rule.ts';
import { applyRules } from '../rules/apply.ts';
import type { Checked, Finding, Stage } from '../text/finding.ts';
import type { Names } from '../text/names.ts';
import type { Id, Procedure, Step } from '../text/procedure.ts';
import { emptyProcedure, isPartsFile, readProcedure } from '../text/read-procedure.ts';
import type { ReadFile } from '../text/read-procedure.ts';
import type { StepLines } from '../text/step-lines.ts';
import type { PlaceAt } from '../text/place-at.ts';
import type { Schema } from '../format/walker.ts';
import type { FileId, Path, Range, Where } from '../text/where.ts';
import { waiverFindings, withWaivers } from '../rules/waivers.ts';
import { inFile } from './elsewhere.ts';
import { inOrder } from './sorting.ts';
import type { Snapshot, SourceFile } from './snapshot.ts';

/** What the order stage knows beside its findings. */
export interface Order {
  readonly graph: StepGraph;
  /** What the paths to each `stop` leave as it is. */
  readonly left: readonly Left[];
  /** The wait owed by each source of a live circuit. */
  readonly owed: readonly Owed[];
  /** Where a wait begins, and where one ends too early. */
  readonly owedAfter: readonly OwedAfter[];
}

/** The one door to everything that is known of a file. It belongs to one snapshot; stages are computed once. */
export interface Analysis {
  readonly file: FileId;
  readonly snapshot: Snapshot;
  /** Stage text. */
  procedure(): Checked<Procedure>;
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

/** The analysis of one file of a snapshot; the same one for the same question. Other bounds make one of their own. */
export function analyse(snapshot: Snapshot, file: FileId, bounds: Bounds = defaultBounds): Analysis {
  if (bounds !== defaultBounds) return newAnalysis(snapshot, file, bounds);
  const ofSnapshot = known.get(snapshot) ?? new Map<FileId, Analysis>();
  known.set(snapshot, ofSnapshot);
  const analysis = ofSnapshot.get(file) ?? newAnalysis(snapshot, file, bounds);
  ofSnapshot.set(file, analysis);
  return analysis;
}

interface Base {
  readonly read: ReadFile;
  /** What is analysed: nothing of a parts file, and nothing where the text is broken and steps may be missing. */
  readonly procedure: Procedure;
  readonly graph: StepGraph;
  readonly circuits: Circuits;
}

function newAnalysis(snapshot: Snapshot, file: FileId, bounds: Bounds): Analysis {
  const base = once((): Base => {
    const read = readProcedure(snapshot.files.get(file) ?? { id: file, text: '' }, snapshot.find);
    const procedure = read.whole && !isPartsFile(file) ? read.procedure : emptyProcedure(file);
    return { read, procedure, graph: stepGraph(procedure), circuits: circuitsOf(procedure) };
  });

  const readings = onceWorked(() => computeReadings(base().procedure, base().graph, base().circuits, bounds));

  const context = onceWorked(function* (): Work<Context> {
    const { read, procedure, graph, circuits } = base();
    const computed = yield* readings();
    const explorer = explorerOf(graph, bounds);
    const watchers = sharedWatchers(procedure, circuits, computed);
    const left = yield* whatIsLeft(procedure, explorer, watchers);
    const reached = reachable(graph);
    const astray = reached.some((isReached, index) => isReached && leadsAstray(graph, index));
    const { stepContent } = read;
    const bench = { graph, explorer, watchers, circuits, readings: computed, left };
    return { procedure, stepContent, ...bench, reached, astray };
  });

  const windows = onceWorked(function* (): Work<Checked<Readings>> {
    const known = yield* context();
    const { findings, complete } = yield* applyRules(known, 'windows');
    return { value: known.readings, findings, complete: complete && known.readings.complete };
  });

  const order = onceWorked(function* (): Work<Checked<Order>> {
    const earlier = yield* windows();
    const known = yield* context();
    const { findings, complete } = yield* applyRules(known, 'order');
    const live = new Set(known.circuits.hazards.flatMap(({ sources }) => sources));
    const owed = [...known.procedure.sources.values()].filter(({ id }) => live.has(id)).map(owedBy);
    const clusters = clustersOf(known.procedure, known.circuits);
    const owedAfter = yield* owedAfterSteps(known.graph, clusters, bounds);
    const value: Order = { graph: known.graph, left: known.left, owed, owedAfter };
    return { value, findings, complete: complete && earlier.complete };
  });

  const procedure = (): Checked<Procedure> => {
    const { read } = base();
    return { value: read.procedure, findings: read.findings, complete: read.whole };
  };

  return {
    file,
    snapshot,
    procedure,
    windows,
    order,
    *explain(index, of, draws = 0) {
      const { value } = yield* windows();
      const reading = value.at(index, of);
      return reading === undefined ? null : yield* explainReading(base().procedure, reading, draws);
    },
    *findings(upTo) {
      const { read, procedure: analysed } = base();
      const found = [...read.findings];
      if (upTo !== 'text') found.push(...(yield* windows()).findings);
      if (upTo === 'order') found.push(...(yield* order()).findings);
      const isWhole = !read.findings.some(({ severity }) => severity === 'error');
      const ofWaivers = upTo === 'order' ? waiverFindings(found, analysed, isWhole) : [];
      const all = [...withWaivers(found, analysed), ...ofWaivers].map((one) => inFile(file, one, read));
      return inOrder(all, read.range);
    },
    range: (where) => base().read.range(where),
    placeAt: (offset) => base().read.placeAt(offset),
    schemaOf: (path) => base().read.schemaOf(path),
    stepContent: (step) => base().read.stepContent(step.path),
    stepLines: (step) => base().read.stepLines(step.path),
    used: () => base().read.used.map((one) => one.file),
    names: () => base().read.names(),
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
