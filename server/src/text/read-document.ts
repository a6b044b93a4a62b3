import { isJson, isPartsFile } from '../format/file-kinds.ts';
import { laterKeys } from '../format/later.ts';
import { mergedSections, partsFileKeys } from '../format/words.ts';
import { checkEntry } from './check-entry.ts';
import { parseDocument } from './document.ts';
import type { Problem } from './problem.ts';
import { checkBytes, otherVersion, withoutKeys } from './problems/file.ts';
import { notJson } from './problems/json.ts';
import { checkUnseen } from './problems/unseen.ts';
import { severityOf } from './rules.ts';
import { withEntries } from './tree.ts';
import type { MapNode, Node } from './tree.ts';
import type { FileId, Path } from '../model/where.ts';

export interface SourceFile {
  readonly id: FileId;
  readonly text: string;
}

type Values = ReturnType<typeof checkEntry<'shell'>>['values'];

/** What stands at the top of a file as far as it could be read. A parts file has some of the keys of a procedure. */
export type Head = {
  readonly [
    K in
      'title' | 'example' | 'applies-to' | 'revision' | 'purpose' | 'requires' | 'conditions' | 'assemblies'
  ]?: Values[K] | undefined;
};

/** One file as a tree, checked as a file: whatever it is used by, and whatever it uses. */
export interface Document extends SourceFile {
  /** For places in the text. */
  readonly root: Node | null;
  /** What may be read of it; null: it is no file of this format. */
  readonly map: MapNode | null;
  readonly head: Head;
  /** All that is wrong with it as a file. A section may be missing because it stands in a file that it uses. */
  readonly problems: readonly Problem[];
  /** False where the text itself is broken: things may then be missing from the tree without a trace. */
  readonly whole: boolean;
}

const known = new WeakMap<SourceFile, Document>();

/**
 * Reads and checks one file, once. The same for a file that is checked and for one that it uses, so that they cannot
 * differ.
 */
export function documentOf(file: SourceFile): Document {
  const document = known.get(file) ?? newDocument(file);
  known.set(file, document);
  return document;
}

function newDocument(file: SourceFile): Document {
  const isParts = isPartsFile(file.id);
  const refused = (root: Node | null, problems: readonly Problem[]): Document => ({
    ...file,
    root,
    map: null,
    head: {},
    problems,
    whole: false,
  });
  const unfit = checkBytes(file.text, isParts);
  if (unfit !== null) return refused(null, [unfit]);
  const { root, problems: ofYaml } = parseDocument(file.text);
  const problems = [...ofYaml, ...checkUnseen(root, file.text)];
  const isBroken = problems.some(({ rule }) => severityOf(rule) === 'error');
  if (root?.kind !== 'map') return refused(root, isBroken ? problems : [...problems, withoutKeys(isParts)]);
  const version = otherVersion(root);
  if (version !== null) return refused(root, [version]);
  const found = [...problems];
  const head = checkHead(root, isParts, (problem) => void found.push(problem));
  const stranger = isJson(file.id) && !isBroken ? notJson(file.text) : null;
  return {
    ...file,
    root,
    map: isParts ? knownIn(root) : root,
    head,
    problems: stranger === null ? found : [...found, stranger],
    whole: problems.every(({ rule }) => rule !== 'yaml'),
  };
}

/** Steps and what else a parts file cannot have are errors by their keys; nobody reads what stands below. */
function knownIn(root: MapNode): MapNode {
  return withEntries(
    root,
    root.entries.filter(({ key }) => partsFileKeys.includes(key)),
  );
}

/** What stands at the top of a file. Items of sections and lists are looked at one by one elsewhere. */
function checkHead(root: MapNode, isParts: boolean, report: (problem: Problem) => void): Head {
  const rules = { named: 'The file', later: laterKeys, isOpen: isEntry };
  return isParts
    ? checkEntry('parts-shell', root, [], rules, report).values
    : checkEntry('shell', root, [], rules, report).values;
}

/** An item of a section, of the steps or of the waivers. Assemblies are lists and have nothing to be looked into. */
function isEntry(path: Path): boolean {
  const [section] = path;
  if (path.length !== 2 || section === 'assemblies') return false;
  const isListed = section === 'steps' || section === 'waivers' || section === 'network';
  return isListed || mergedSections.includes(String(section));
}
