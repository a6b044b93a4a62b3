import { isPartsFile } from '../format/file-kinds.ts';
import { neededSections } from '../format/words.ts';
import { joined } from './documents.ts';
import type { Documents } from './documents.ts';
import { expanded } from './expand.ts';
import type { Finding, Thrown } from '../model/finding.ts';
import { findingsFrom } from './findings.ts';
import { namesIn } from './names.ts';
import type { Names } from './names.ts';
import { placeAt } from './place-at.ts';
import type { PlaceAt } from './place-at.ts';
import type { Problem } from './problem.ts';
import type { Id, Procedure } from '../model/procedure.ts';
import { span } from './quantities.ts';
import { rangeOf } from './range.ts';
import { documentOf } from './read-document.ts';
import type { Document, SourceFile } from './read-document.ts';
import type { Reader } from './reader.ts';
import { readAssemblies } from './read-assemblies.ts';
import { readConnectors } from './read-circuit.ts';
import { readEntered } from './read-entered.ts';
import { readInstruments } from './read-instruments.ts';
import { readLoops } from './read-loops.ts';
import { readLoads, readParts } from './read-parts.ts';
import { readRoutines, routineReader } from './read-routines.ts';
import { readNetwork } from './read-network.ts';
import { readRegulated, readSources } from './read-sources.ts';
import { readSteps, stepListAt } from './read-steps.ts';
import { readWaivers } from './read-waivers.ts';
import { schemaOfPlace } from './schema-at.ts';
import type { Schema } from '../format/walker.ts';
import { contentsOf } from './step-content.ts';
import { stepLines } from './step-lines.ts';
import type { StepLines } from './step-lines.ts';
import { entryOf, withEntries } from './tree.ts';
import { followUses } from './uses.ts';
import type { FindFile } from './uses.ts';
import type { FileId, Path, Range, Where } from '../model/where.ts';

export type { SourceFile };

export interface ReadFile {
  readonly procedure: Procedure;
  /** In the order of the file. */
  readonly findings: readonly Finding[];
  /**
   * False where the text itself is broken or of another format: steps and entries may then be missing from the
   * procedure without a trace, and nothing should be concluded from it.
   */
  readonly whole: boolean;
  /** The parts files that it uses, with the entry of `uses` that leads to each. */
  readonly used: readonly { readonly file: SourceFile; readonly by: Path }[];
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
  /** What was thrown on the way: the findings are those before it, and the procedure is empty. */
  readonly thrown: Thrown | null;
}

/** The ambient temperature where none is stated: the standard range for tests, IEC 60068-1 (from memory). */
const defaultAmbient = { least: 15, nominal: 25, most: 35, assumed: true };

/**
 * Reads a procedure with the parts files that it uses, or a parts file by itself: then there are no steps. Never throws:
 * what cannot be read is left out and stands in the findings.
 */
export function readProcedure(file: SourceFile, find: FindFile = nothingToFind): ReadFile {
  const own = documentOf(file);
  if (own.map === null) return result(alone(own), own.problems, emptyProcedure(file.id), false);
  const problems: Problem[] = [];
  const report = (one: Problem): void => void problems.push(one);
  try {
    const followed = followUses(own, find, report);
    const documents = joined(own, own.map, followed.used, report);
    for (const problem of own.problems)
      if (!standsElsewhere(problem, documents, followed.complete)) report(problem);
    const procedure = readRoot(documents, followed.complete, report);
    const whole = own.whole && followed.complete && procedure !== null;
    return result(documents, problems, procedure ?? emptyProcedure(file.id), whole);
  } catch (error) {
    const documents = { ...alone(own), root: own.map };
    const found = [...new Set([...own.problems, ...problems])];
    return { ...result(documents, found, emptyProcedure(file.id), false), thrown: { error } };
  }
}

/** A file of which nothing is known, not even its text. */
export function nothingRead({ id }: SourceFile, thrown: Thrown): ReadFile {
  const own: Document = { id, text: '', root: null, map: null, head: {}, problems: [], whole: false };
  return { ...result(alone(own), [], emptyProcedure(id), false), thrown };
}

/** A section that the file itself does not have: it stands in a parts file, or may stand in one that cannot be had. */
function standsElsewhere(problem: Problem, { root }: Documents, complete: boolean): boolean {
  const { rule, at, subject = '' } = problem;
  if (rule !== 'missing-key' || !('path' in at) || at.path.length > 0) return false;
  if (!neededSections.some((section) => section === subject)) return false;
  return !complete || entryOf(root, subject) !== undefined;
}

/** A file of which nothing more is looked at. */
function alone(own: Document): Documents {
  const root = withEntries({ range: { from: 0, to: 0 } }, []);
  return { own, used: [], root, elsewhere: new Map(), ownerOf: () => own };
}

const nothingToFind: FindFile = (_, name) => ({ problem: `There is no file \`${name}\`.` });

function result(
  documents: Documents,
  problems: readonly Problem[],
  procedure: Procedure,
  whole: boolean,
): ReadFile {
  const { own, root, ownerOf, used } = documents;
  const contents = contentsOf(root);
  const documentOfFile = new Map([own, ...used.map(({ document }) => document)].map((one) => [one.id, one]));
  return {
    procedure,
    findings: findingsFrom(problems, documents),
    whole,
    used: used.map(({ document, by }) => ({ file: { id: document.id, text: document.text }, by })),
    range: (where) => {
      const { root: tree, text } = documentOfFile.get(where.file) ?? own;
      return rangeOf(tree, text, where);
    },
    stepContent: contents,
    placeAt: (offset) => placeAt(own.root, offset),
    schemaOf: (path) => schemaOfPlace(root, path),
    stepLines: (path) => {
      const { root: tree, text } = ownerOf(path);
      return stepLines(tree, text, path);
    },
    names: () => namesIn(root, true, () => undefined),
    thrown: null,
  };
}

/** null: it has more steps than are followed, and that has been reported. */
function readRoot(documents: Documents, complete: boolean, report: Reader['report']): Procedure | null {
  const { own, root, elsewhere, ownerOf } = documents;
  const file = own.id;
  const fileOf = (path: Path): FileId => ownerOf(path).id;
  const reader: Reader = { root, report, names: namesIn(root, complete, report) };
  const head = readHead(documents, complete, report);
  const instruments = readInstruments(reader);
  const entries = readEntered(reader);
  const loads = readLoads(reader);
  const parts = readParts(reader, entries);
  const connectors = readConnectors(reader);
  const elements = { ...instruments, parts, connectors };
  const sources = readSources(reader, elements);
  const regulated = readRegulated(reader, sources);
  const loops = readLoops(reader, elements);
  const network = readNetwork(reader, { ...elements, loops });
  const assemblies = readAssemblies(assembliesIn(documents), reader, elements);
  const routines = readRoutines(reader);
  const circuit = { ...elements, sources, loads, assemblies, loops, network, routines };
  const readRoutine = routineReader(reader, circuit);
  const list = stepListAt(root, ['steps']);
  const listed = list === null ? [] : readSteps(list, reader, circuit);
  const waivers = readWaivers(reader);
  const steps = expanded(listed, { routines, readRoutine, fileOf, report });
  if (steps === null) return null;
  return { ...head, file, elsewhere, entries, regulated, ...circuit, waivers, steps };
}

type Head = Pick<
  Procedure,
  'title' | 'isExample' | 'appliesTo' | 'revision' | 'purpose' | 'requires' | 'ambient'
>;

/** What stands at the top of the file. */
function readHead({ own, root }: Documents, complete: boolean, report: Reader['report']): Head {
  const { head: values } = own;
  const { title, isExample, appliesTo, revision, purpose, requires, ambient } = emptyProcedure(own.id);
  if (isPartsFile(own.id))
    return { title: values.title ?? title, isExample, appliesTo, revision, purpose, requires, ambient };
  if (complete && entryOf(root, 'loops') === undefined && entryOf(root, 'network') === undefined) {
    const message = 'The file needs `loops` or `network`: the circuits that the steps act on.';
    report({ rule: 'missing-key', at: { path: [], part: 'key' }, message, subject: 'loops' });
  }
  const stated = span(values.conditions?.ambient, 'temperature', ['conditions', 'ambient'], report);
  return {
    title: values.title ?? title,
    isExample: values.example ?? isExample,
    appliesTo: values['applies-to'] ?? null,
    revision: values.revision ?? null,
    purpose: values.purpose ?? null,
    requires: {
      training: values.requires?.training ?? [],
      protective: values.requires?.protective ?? [],
      information: values.requires?.information ?? [],
    },
    ambient: stated === null ? ambient : { ...stated, assumed: false },
  };
}

/** Of all files, those of the own one first; each from the file that it counts in. */
function assembliesIn({ own, used, ownerOf }: Documents): ReadonlyMap<Id, string | readonly string[]> {
  const found = [own, ...used.map(({ document }) => document)].flatMap((document) =>
    Object.entries(document.head.assemblies ?? {}).filter(([id]) => ownerOf(['assemblies', id]) === document),
  );
  return new Map(found);
}

/** A procedure of which nothing could be read. */
export function emptyProcedure(file: FileId): Procedure {
  return {
    file,
    elsewhere: new Map(),
    title: '',
    isExample: false,
    appliesTo: null,
    revision: null,
    purpose: null,
    requires: { training: [], protective: [], information: [] },
    ambient: defaultAmbient,
    sources: new Map(),
    regulated: new Map(),
    entries: new Map(),
    monitors: new Map(),
    multimeters: new Map(),
    loads: new Map(),
    parts: new Map(),
    connectors: new Map(),
    assemblies: new Map(),
    loops: new Map(),
    network: { elements: [], complete: true },
    routines: new Map(),
    waivers: [],
    steps: [],
  };
}
