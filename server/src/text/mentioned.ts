import type { Id, Mentioned } from './procedure.ts';

/** All that a list of mentioned things means, each once. */
export function membersOf(mentioned: readonly Mentioned[]): readonly Id[] {
  return [...new Set(mentioned.flatMap(({ members }) => members))];
}

/** Whether something is meant, by its own name or as part of an assembly. */
export function isMeant(mentioned: readonly Mentioned[], id: Id): boolean {
  return mentioned.some((one) => one.id === id || one.members.includes(id));
}
