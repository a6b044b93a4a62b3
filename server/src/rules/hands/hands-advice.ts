import { isolatedBy } from '../../bench/hazards.ts';
import { isVerb } from '../../format/words.ts';
import type { Verb } from '../../format/words.ts';
import type { Id, Procedure } from '../../model/procedure.ts';
import type { Command } from './commands-in.ts';
import type { DoingWord, Handled } from './doing-words.ts';
import type { Meaning } from './text-names.ts';

/* Which step to write in the place of a sentence that tells hands to do something. */

/** What a verb can be written for where a text gives it as a command; nothing where that is no work of hands. */
const handledBy: Readonly<Record<Verb, readonly Handled[]>> = {
  ignition: [],
  disconnect: ['sources'],
  reconnect: ['sources'],
  wait: [],
  'prove-dead': [],
  unlock: ['connectors'],
  unplug: ['connectors'],
  plug: ['connectors'],
  fit: ['loads'],
  move: ['loads'],
  remove: ['loads'],
  read: [],
  measure: [],
  wiggle: ['connectors', 'parts'],
  'read-codes': [],
  'clear-codes': [],
  inspect: [],
  do: [],
  replace: ['connectors', 'parts', 'monitors', 'assemblies'],
  conclude: [],
  go: [],
  stop: [],
  run: [],
};

/** Words that mean what a verb does. */
const meaningVerb: Readonly<Record<string, Verb>> = {
  mate: 'plug',
  replug: 'plug',
  unmate: 'unplug',
  demate: 'unplug',
  refit: 'fit',
  swap: 'replace',
  probe: 'measure',
  backprobe: 'measure',
  jiggle: 'wiggle',
  shake: 'wiggle',
  bend: 'wiggle',
  twist: 'wiggle',
  tug: 'wiggle',
  rock: 'wiggle',
  flex: 'wiggle',
};

/** `write a step \`unplug: K30\``: how to write as a step what a text says of one thing, or of none that is known. */
export function adviceTo(procedure: Procedure, { base }: Pick<DoingWord, 'base'>, id: Id | null): string {
  const source = id === null ? null : procedure.sources.has(id) ? id : isolatedBy(procedure, id);
  if (source !== null) {
    const isAway = ['unlock', 'unplug', 'disconnect', 'isolate', 'remove'].includes(base);
    const isBack = ['plug', 'connect', 'reconnect', 'energize', 'energise', 'fit'].includes(base);
    if (isAway) return `write a step \`disconnect: ${source}\``;
    if (isBack) return `write a step \`reconnect: ${source}\``;
  }
  const verb = verbFor(procedure, base, id);
  if (verb === 'measure') return 'write a `measure` step, which is checked';
  if (verb === 'wiggle')
    return `write a step \`wiggle${id === null ? '' : `: ${id}`}\` that says what is watched meanwhile`;
  if (verb !== null && id !== null) return `write a step \`${verb}: ${id}\``;
  if (verb !== null) return `write a step \`${verb}\` that names what it is done to`;
  if (base === 'switch' || base === 'turn') return 'write a step `ignition`, `disconnect` or `reconnect`';
  return id === null
    ? 'write it as a `do` whose `at` names what is touched'
    : `write it as a \`do\` with \`at: ${id}\``;
}

function verbFor(procedure: Procedure, base: string, id: Id | null): Verb | null {
  const verb = meaningVerb[base] ?? (isVerb(base) ? base : null);
  if (verb === 'measure') return verb;
  const isOf = (kind: Handled): boolean => id !== null && procedure[kind].has(id);
  const isConnector = isOf('connectors');
  if (isConnector && (base === 'connect' || base === 'reconnect')) return 'plug';
  if (isConnector && base === 'disconnect') return 'unplug';
  // Of what has no name of its own nobody knows whether it is a load, a wire or the vehicle.
  if (base === 'move' && id === null) return null;
  if (base === 'move' && (isConnector || isOf('parts'))) return 'wiggle';
  if (verb === null || handledBy[verb].length === 0) return null;
  return id === null || handledBy[verb].some(isOf) ? verb : null;
}

/** Whether a step of its own does what a word says: then a sentence that says it hides it, whatever `at` says. */
export function hasOwnStep(procedure: Procedure, { base }: Pick<DoingWord, 'base'>, id: Id | null): boolean {
  const isSource = id !== null && (procedure.sources.has(id) || isolatedBy(procedure, id) !== null);
  return !isSource && verbFor(procedure, base, id) !== null;
}

/** The one thing that a name means; null: none, or one of several. */
export function onlyOne({ ids }: Meaning): Id | null {
  return ids.length === 1 ? (ids[0] ?? null) : null;
}

/** What a finding about a name is about: the thing, or the name where it may be one of several. */
export function subjectOf({ name, meaning }: Pick<Command, 'name' | 'meaning'>): string {
  return onlyOne(meaning) ?? name.toLowerCase();
}

/** Whether a word can be done to what a name means. */
export function isDoneTo(procedure: Procedure, { doing, meaning }: Command): boolean {
  if (meaning.as === 'supply') return true;
  return meaning.ids.some((id) => doing.to.some((kind) => procedure[kind].has(id)));
}
