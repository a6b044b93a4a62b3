import { edits } from './edit-kind.ts';
import { large } from './large-kind.ts';
import { protocol } from './protocol-kind.ts';
import { same, structure, text } from './text-kinds.ts';
import type { Kind } from './kind.ts';
import { planted } from './planted-kind.ts';

/** All that is tried. */
export const kinds: readonly Kind[] = [text, structure, same, edits, protocol, large];

/** Also those that are only tried when they are named. */
export function kindNamed(name: string): Kind | undefined {
  return [...kinds, planted].find((one) => one.name === name);
}
