import type { Names } from './names.ts';
import type { Problem } from './problem.ts';
import type { Node } from './tree.ts';

/** What every part of the reading works with. */
export interface Reader {
  readonly root: Node | null;
  readonly names: Names;
  readonly report: (problem: Problem) => void;
}
