import type { Hands, Id, Mentioned } from './procedure.ts';

/** All that a list of mentioned things means, each once. */
export function membersOf(mentioned: readonly Mentioned[]): readonly Id[] {
  return [...new Set(mentioned.flatMap(({ members }) => members))];
}

/** Whether something is meant, by its own name or as part of an assembly. */
export function isMeant(mentioned: readonly Mentioned[], id: Id): boolean {
  return mentioned.some((one) => one.id === id || one.members.includes(id));
}

/** The things that hands touch. */
export function thingsAt(hands: Hands): readonly Mentioned[] {
  return typeof hands === 'string' ? [] : hands;
}
