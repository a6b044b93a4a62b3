import { mergedSections } from '../format/words.ts';
import { keyAt } from './problem.ts';
import type { Problem } from './problem.ts';
import type { Document } from './read-document.ts';
import { entryOf, isEmpty, withEntries } from './tree.ts';
import type { Entry, MapNode, Node } from './tree.ts';
import { sectionAndId } from '../model/where.ts';
import type { FileId, Path } from '../model/where.ts';

/** A parts file that another one uses, directly or through others. */
export interface Used {
  readonly document: Document;
  /** The entry of `uses` in the first file that leads to it. */
  readonly by: Path;
}

/** A file and the parts files that it uses, as one tree. A path means one place in one of them. */
export interface Documents {
  readonly own: Document;
  readonly used: readonly Used[];
  /** The sections of all of them together; everything else is of the own file. */
  readonly root: MapNode;
  /** By section and id, `connectors/K30`: the files of what is not in the own one. */
  readonly elsewhere: ReadonlyMap<string, FileId>;
  readonly ownerOf: (path: Path) => Document;
}

/** Joins the sections of files by id. Of two things with one name the one of the own file stands. */
export function joined(
  own: Document,
  root: MapNode,
  used: readonly Used[],
  report: (problem: Problem) => void,
): Documents {
  const owners = new Map<string, Document>();
  const ownerOf = (path: Path): Document => owners.get(sectionAndId(path)) ?? own;
  if (used.length === 0) return { own, used, root, elsewhere: new Map(), ownerOf };
  const byKey = new Map(root.byKey);
  for (const section of mergedSections) {
    // What has another shape here is reported where it stands, and nothing may take its place but that of nothing.
    const written = root.byKey.get(section)?.value;
    if (written !== undefined && written.kind !== 'map' && !isEmpty(written)) continue;
    const merged = new Map(entriesOf(root, section).map((entry) => [entry.key, entry]));
    for (const { document, by } of used)
      for (const entry of entriesOf(document.map, section)) {
        if (merged.has(entry.key)) report(twice(entry.key, section, by, owners));
        else {
          merged.set(entry.key, entry);
          owners.set(`${section}/${entry.key}`, document);
        }
      }
    if (merged.size > 0) byKey.set(section, sectionOf(section, root, [...merged.values()]));
  }
  const elsewhere = new Map([...owners].map(([key, { id }]) => [key, id]));
  return { own, used, root: { ...root, entries: [...byKey.values()], byKey }, elsewhere, ownerOf };
}

function entriesOf(root: Node | null, section: string): readonly Entry[] {
  const value = entryOf(root, section)?.value;
  return value?.kind === 'map' ? value.entries : [];
}

function sectionOf(key: string, root: MapNode, entries: readonly Entry[]): Entry {
  const { range } = root;
  const written = root.byKey.get(key);
  const value = withEntries({ range: written?.value.range ?? range }, entries);
  return { key, keyRange: written?.keyRange ?? range, value };
}

function twice(id: string, section: string, by: Path, owners: ReadonlyMap<string, Document>): Problem {
  const first = owners.get(`${section}/${id}`);
  const message = `\`${id}\` is defined in this parts file and ${first === undefined ? 'in this file' : `in ${first.id}`} too. Every name is given once.`;
  const related = first === undefined ? [{ at: keyAt([section, id]), message: 'The other one.' }] : [];
  return { rule: 'duplicate-id', at: { path: by, part: 'value' }, message, subject: id, related };
}
