import { laterKeys } from '../format/later.ts';
import { sections } from '../format/words.ts';
import { checkEntry } from './check-entry.ts';
import { parseDocument } from './document.ts';
import type { Finding } from './finding.ts';
import { findingsFrom, stepContents } from './findings.ts';
import { namesIn } from './names.ts';
import type { Names } from './names.ts';
import { valueAt } from './problem.ts';
import type { Problem } from './problem.ts';
import { checkBytes } from './problems/file.ts';
import type { Procedure } from './procedure.ts';
import { span } from './quantities.ts';
import { rangeOf } from './range.ts';
import type { Reader } from './reader.ts';
import { readConnectors } from './read-circuit.ts';
import { readEntered } from './read-entered.ts';
import { readInstruments } from './read-instruments.ts';
import { readLoops } from './read-loops.ts';
import { readLoads, readParts } from './read-parts.ts';
import { readSources } from './read-sources.ts';
import { readSteps } from './read-steps.ts';
import { placeAt } from './place-at.ts';
import type { PlaceAt } from './place-at.ts';
import { schemaOfPlace } from './schema-at.ts';
import type { Schema } from '../format/walker.ts';
import { stepLines } from './step-lines.ts';
import type { StepLines } from './step-lines.ts';
import { entryOf, textOf } from './tree.ts';
import type { MapNode, Node } from './tree.ts';
import type { FileId, Path, Range, Where } from './where.ts';

export interface SourceFile {
  readonly id: FileId;
  readonly text: string;
}

export interface ReadFile {
  readonly procedure: Procedure;
  /** In the order of the file. */
  readonly findings: readonly Finding[];
  /**
   * False where the text itself is broken or of another format: steps and entries may then be missing from the
   * procedure without a trace, and nothing should be concluded from it.
   */
  readonly whole: boolean;
  /** Where something stands, in UTF-16 offsets: inside the file and never longer than a line. */
  readonly range: (where: Where) => Range;
  /** The id of a step, or its verb and what follows it: `unplug K30`. The same when lines move. For keys of findings. */
  readonly stepContent: (path: Path) => string;
  /** What stands at an offset: a key or a value. */
  readonly placeAt: (offset: number) => PlaceAt | null;
  /** The schema of what stands at a path, for its description; null: the format knows nothing there. */
  readonly schemaOf: (path: Path) => Schema | null;
  /** Where a step stands as lines; null where steps are not written so. */
  readonly stepLines: (path: Path) => StepLines | null;
  /** All that is named in the file, also where its entry cannot be read yet. */
  readonly names: () => Names;
}

/** The ambient temperature where none is stated: the standard range for tests, IEC 60068-1 (from memory). */
const defaultAmbient = { least: 15, nominal: 25, most: 35, assumed: true };

/** Reads a procedure file. Never throws: what cannot be read is left out of the procedure and stands in the findings. */
export function readProcedure(file: SourceFile): ReadFile {
  const problem = checkBytes(file.text);
  if (problem !== null) return result(file, null, [problem], emptyProcedure(file.id), false);
  const { root, problems } = parseDocument(file.text);
  const whole = problems.every(({ rule }) => rule !== 'yaml');
  const unfit = checkRoot(root, problems.length > 0);
  if (unfit !== null)
    return result(file, root, unfit === 'said' ? problems : [unfit], emptyProcedure(file.id), false);
  const found: Problem[] = [...problems];
  const procedure = readRoot(file.id, root as MapNode, (one) => found.push(one));
  return result(file, root, found, procedure, whole);
}

function result(
  file: SourceFile,
  root: Node | null,
  problems: readonly Problem[],
  procedure: Procedure,
  whole: boolean,
): ReadFile {
  const contents = stepContents(root);
  return {
    procedure,
    findings: findingsFrom(problems, { file: file.id, text: file.text, root }),
    whole,
    range: (where) => rangeOf(root, file.text, where),
    stepContent: (path) => contents[Number(path[1])] ?? '',
    placeAt: (offset) => placeAt(root, offset),
    schemaOf: (path) => schemaOfPlace(root, path),
    stepLines: (path) => stepLines(root, file.text, path),
    names: () => namesIn(root, () => undefined),
  };
}

/** Another version is refused with one sentence and never guessed at. `said`: the text is broken, and that is said. */
function checkRoot(root: Node | null, broken: boolean): Problem | 'said' | null {
  if (root?.kind !== 'map') {
    if (broken) return 'said';
    const message =
      'A procedure starts with `format: 1` and goes on with `title: …`; this file has no such keys.';
    return { rule: 'file', at: { path: [], part: 'value' }, message };
  }
  const format = entryOf(root, 'format')?.value;
  const version = textOf(format) ?? '';
  if (!/^\d+(?:\.\d+)?$/.test(version) || version === '1') return null;
  const message = `This file is written in format ${version}, and this version of Ohmwright reads format 1 only.`;
  return { rule: 'file', at: valueAt(['format']), message, subject: version };
}

function readRoot(file: FileId, root: MapNode, report: Reader['report']): Procedure {
  const reader: Reader = { root, report, names: namesIn(root, report) };
  const rules = { named: 'The file', later: laterKeys, isOpen: isEntry };
  const { values } = checkEntry('shell', root, [], rules, report);
  const ambient = span(values.conditions?.ambient, 'temperature', ['conditions', 'ambient'], report);
  const instruments = readInstruments(reader);
  const entries = readEntered(reader);
  const loads = readLoads(reader);
  const parts = readParts(reader, entries);
  const connectors = readConnectors(reader);
  const circuit = { ...instruments, parts, connectors };
  const sources = readSources(reader, circuit);
  const loops = readLoops(reader, circuit);
  const steps = readSteps(reader, { ...circuit, sources, loads, loops });
  return {
    ...emptyProcedure(file),
    title: values.title ?? '',
    appliesTo: values['applies-to'] ?? null,
    revision: values.revision ?? null,
    purpose: values.purpose ?? null,
    requires: {
      training: values.requires?.training ?? [],
      protective: values.requires?.protective ?? [],
      information: values.requires?.information ?? [],
    },
    ...(ambient === null ? {} : { ambient: { ...ambient, assumed: false } }),
    sources,
    entries,
    loads,
    ...circuit,
    loops,
    steps,
  };
}

/** An item of a section or of the steps. */
function isEntry(path: Path): boolean {
  return path.length === 2 && (path[0] === 'steps' || sections.some((section) => section === path[0]));
}

/** A procedure of which nothing could be read. */
export function emptyProcedure(file: FileId): Procedure {
  return {
    file,
    title: '',
    appliesTo: null,
    revision: null,
    purpose: null,
    requires: { training: [], protective: [], information: [] },
    ambient: defaultAmbient,
    sources: new Map(),
    entries: new Map(),
    monitors: new Map(),
    multimeters: new Map(),
    loads: new Map(),
    parts: new Map(),
    connectors: new Map(),
    loops: new Map(),
    steps: [],
  };
}
