import type { TextRule } from './rules.ts';
import type { Path, Range } from '../model/where.ts';

/** What is found on the way, before it becomes a finding: at a node, or at a stretch of the file. */
export type Spot =
  | { readonly path: Path; readonly part: 'key' | 'value'; readonly within?: readonly [number, number] }
  | { readonly range: Range };

export interface Problem {
  readonly rule: TextRule;
  readonly at: Spot;
  readonly message: string;
  readonly subject?: string;
  /** The word that was probably meant where it is found. */
  readonly suggestion?: string;
  /** The parser lost its place here: what stands in the lines below may have been taken for something else. */
  readonly misplaces?: boolean;
  /** Something that is written here is not in the tree, so that what names it is no mistake. */
  readonly loses?: boolean;
  readonly related?: readonly { readonly at: Spot; readonly message: string }[];
}

export function keyAt(path: Path): Spot {
  return { path, part: 'key' };
}

export function valueAt(path: Path, within?: readonly [number, number]): Spot {
  return within === undefined ? { path, part: 'value' } : { path, part: 'value', within };
}
