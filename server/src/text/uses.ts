import { endings, fileKindOf, isInAnotherCase } from '../format/file-kinds.ts';
import type { Used } from './documents.ts';
import { valueAt } from './problem.ts';
import type { Problem } from './problem.ts';
import { documentOf } from './read-document.ts';
import type { Document, SourceFile } from './read-document.ts';
import { entryOf, textOf } from './tree.ts';
import type { FileId, Path } from '../model/where.ts';

/** The file that a name in `uses` means, seen from the file that it stands in; or why there is none, as a sentence. */
export type FindFile = (from: FileId, name: string) => SourceFile | { readonly problem: string };

export interface Followed {
  /** Each file once, in the order in which they are first named, those that it uses before it. */
  readonly used: readonly Used[];
  /** False where one of them could not be had or is broken. */
  readonly complete: boolean;
}

/** A file uses no more parts files than this, those of others included: each of them is read for each file. */
export const mostUsed = 200;

/** A file on the way that is being followed, and how many of the names in it have been. */
interface Visit {
  readonly document: Document;
  /** The entry of `uses` in the first file that leads here; null: the first file itself. */
  readonly by: Path | null;
  readonly names: readonly Name[];
  next: number;
}

interface Name {
  readonly name: string;
  readonly index: number;
}

/**
 * Follows `uses` from a file through all others, however long the way is. What is wrong further on is reported where the
 * first file leads there.
 */
export function followUses(own: Document, find: FindFile, report: (problem: Problem) => void): Followed {
  const used = new Map<FileId, Used>();
  const named = new Map<FileId, Path>();
  const first = visit(own, null);
  const way = [first];
  const onWay = new Set([own.id]);
  let complete = first.complete;
  const wrong = (by: Path, message: string, subject: string): void => {
    report({ rule: 'parts-file', at: valueAt(by), message, subject });
    complete = false;
  };
  for (let here = way.at(-1); here !== undefined; here = way.at(-1)) {
    const { document, by } = here;
    const entry = here.names[here.next++];
    if (entry === undefined) {
      if (by !== null) used.set(document.id, { document, by });
      onWay.delete(document.id);
      way.pop();
      continue;
    }
    const { name, index } = entry;
    const place = by ?? ['uses', index];
    const through = by === null ? '' : `${document.id} uses \`${name}\`: `;
    if (fileKindOf(name) !== 'parts') {
      wrong(place, `${through}${notNamedSo(name)}`, name);
      continue;
    }
    const found = find(document.id, name);
    if ('problem' in found) {
      wrong(place, `${through}${found.problem}`, name);
      continue;
    }
    if (by === null && !named.has(found.id)) named.set(found.id, place);
    if (onWay.has(found.id)) {
      wrong(place, `Parts files must not use one another in a circle: ${circle(onWay, found.id)}.`, name);
      continue;
    }
    if (used.has(found.id)) continue;
    if (used.size + onWay.size > mostUsed) {
      wrong(
        place,
        `${through}More than ${mostUsed} parts files are used, and the others are not read.`,
        name,
      );
      break;
    }
    const next = visit(documentOf(found), place);
    complete &&= next.document.whole && next.complete;
    way.push(next);
    onWay.add(found.id);
  }
  // What the first file names itself is told there, also where another one has led to it before.
  const placed = [...used.values()].map(({ document, by }) => ({
    document,
    by: named.get(document.id) ?? by,
  }));
  return { used: placed, complete };
}

/** `complete` is false where something is written in `uses` that names no file. */
function visit(document: Document, by: Path | null): Visit & { readonly complete: boolean } {
  const list = entryOf(document.map, 'uses')?.value;
  const items = list?.kind === 'list' ? list.items : [];
  const names = items.flatMap((item, index) => {
    const name = textOf(item)?.trim() ?? '';
    return name === '' ? [] : [{ name, index }];
  });
  const complete = names.length === items.length && (list === undefined || list.kind === 'list');
  return { document, by, names, next: 0, complete };
}

function notNamedSo(name: string): string {
  const hint = isInAnotherCase(name) ? ' Write the ending in small letters.' : '';
  return `Only parts files can be used, and they are named \`NAME${endings.parts[0] ?? ''}\`.${hint}`;
}

/** No more names than this of a circle are written out. */
const mostNames = 8;

function circle(onWay: ReadonlySet<FileId>, back: FileId): string {
  const way = [...onWay];
  const names = [...way.slice(way.indexOf(back)), back];
  const left = names.length - mostNames;
  if (left <= 1) return names.join(' uses ');
  const half = mostNames / 2;
  return [...names.slice(0, half), `(${left} more)`, ...names.slice(-half)].join(' uses ');
}
