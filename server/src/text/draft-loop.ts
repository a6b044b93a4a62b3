import type { Id, Loop } from '../model/procedure.ts';
import type { Path } from '../model/where.ts';

/** A loop as it is written, before loops are held against each other. */
export interface DraftLoop {
  readonly id: Id;
  readonly path: Path;
  readonly monitor: Id | null;
  readonly elements: readonly (Loop['elements'][number] & { readonly at: Path })[];
  complete: boolean;
  /** Those that are written, with their place. */
  readonly pins: ReadonlyMap<Id, { readonly pins: readonly [string, string]; readonly at: Path }>;
}
