import { documentOf } from './documents.ts';
import type { Document, SourceFile, Used } from './documents.ts';
import { valueAt } from './problem.ts';
import type { Problem } from './problem.ts';
import { entryOf, textOf } from './tree.ts';
import type { FileId, Path } from './where.ts';

/** The file that a name in `uses` means, seen from the file that it stands in; or why there is none, as a sentence. */
export type FindFile = (from: FileId, name: string) => SourceFile | { readonly problem: string };

export const partsFileEnding = '.parts.yaml';

export interface Followed {
  /** Each file once, in the order in which they are first named, those that it uses before it. */
  readonly used: readonly Used[];
  /** False where one of them could not be had or is broken. */
  readonly complete: boolean;
}

/** Follows `uses` from a file through all others. What is wrong further on is reported where the first file leads there. */
export function followUses(own: Document, find: FindFile, report: (problem: Problem) => void): Followed {
  const used = new Map<FileId, Used>();
  let complete = true;
  const wrong = (by: Path, message: string, subject: string): void => {
    report({ rule: 'parts-file', at: valueAt(by), message, subject });
    complete = false;
  };
  const follow = (document: Document, by: Path | null, chain: readonly FileId[]): void => {
    for (const { name, index } of namesIn(document)) {
      const place = by ?? ['uses', index];
      const through = by === null ? '' : `${document.id} uses \`${name}\`: `;
      if (!name.endsWith(partsFileEnding)) {
        wrong(
          place,
          `${through}Only parts files can be used, and they are named \`NAME${partsFileEnding}\`.`,
          name,
        );
        continue;
      }
      const found = find(document.id, name);
      if ('problem' in found) {
        wrong(place, `${through}${found.problem}`, name);
        continue;
      }
      if (chain.includes(found.id)) {
        const circle = [...chain.slice(chain.indexOf(found.id)), found.id].join(' uses ');
        wrong(place, `Parts files must not use one another in a circle: ${circle}.`, name);
        continue;
      }
      if (used.has(found.id)) continue;
      const next = documentOf(found);
      complete &&= next.whole;
      follow(next, place, [...chain, found.id]);
      used.set(found.id, { document: next, by: place });
    }
  };
  follow(own, null, [own.id]);
  return { used: [...used.values()], complete };
}

function namesIn({ root }: Document): readonly { readonly name: string; readonly index: number }[] {
  const list = entryOf(root, 'uses')?.value;
  if (list?.kind !== 'list') return [];
  return list.items.flatMap((item, index) => {
    const name = textOf(item)?.trim() ?? '';
    return name === '' ? [] : [{ name, index }];
  });
}
