import { isMeant, thingsAt } from '../../model/mentioned.ts';
import type { Id, Procedure, Step } from '../../model/procedure.ts';
import { adviceTo, hasOwnStep, isDoneTo, onlyOne, subjectOf } from './hands-advice.ts';
import { handsInHeadings } from './hands-in-headings-check.ts';
import { handsInNotes } from './hands-in-notes-check.ts';
import type { Context, Seen } from '../rule.ts';
import { sentencesOf } from './sentences.ts';
import type { Said } from './sentences.ts';
import { switchOrders } from './switch-orders-check.ts';
import type { Meaning } from './text-names.ts';

/* Hands hidden in a sentence: what a `do` or `inspect` names and does not say that it touches, what a text beside a step
 * tells the reader to do, and orders to switch something. */

export function handsInText({ procedure, graph }: Context): readonly Seen[] {
  const said = sentencesOf(procedure);
  const ofSteps = graph.steps.flatMap((step, index) => [
    ...handsInDeeds(procedure, step, index, said),
    ...handsInNotes(procedure, step, index, said),
  ]);
  const orders = switchOrders(procedure, graph.steps, said);
  return [...ofSteps, ...handsInHeadings(procedure, graph.steps, said), ...orders];
}

/** What reads a step that says in words what is done. */
export type Worded = Step & { readonly verb: 'do' | 'inspect' };

function handsInDeeds(
  procedure: Procedure,
  step: Step,
  index: number,
  said: (text: string) => Said,
): readonly Seen[] {
  if (step.verb !== 'do' && step.verb !== 'inspect') return [];
  const { names, commands, deeds } = said(step.text);
  const found = new Map<string, string>();
  for (const { name, meaning } of names) {
    if (meaning.as !== 'id' || isTouched(procedure, step, meaning) || isLookedAt(procedure, step, meaning))
      continue;
    const id = onlyOne(meaning);
    found.set(id ?? name, `The text names ${name}, ${adviceOn(procedure, step, id ?? name)}.`);
  }
  for (const command of commands) {
    const { doing, name, meaning } = command;
    const subject = subjectOf(command);
    if (found.has(subject) || !isDoneTo(procedure, command)) continue;
    const isSaid = isTouched(procedure, step, meaning);
    if (isSaid && !hasOwnStep(procedure, doing, onlyOne(meaning))) continue;
    const why = isSaid
      ? 'a sentence changes and measures nothing that is checked'
      : isLookedAt(procedure, step, meaning)
        ? '`of` says that it is only looked at'
        : '`at` does not say that hands touch it';
    const advice = adviceTo(procedure, doing, onlyOne(meaning));
    found.set(subject, `The text says to ${doing.base} ${name}, but ${why}: ${advice}.`);
  }
  const [held] = deeds.filter(({ doing, names: near }) => doing === null && near.length > 0);
  const [at] = held?.names ?? [];
  if (found.size === 0 && held !== undefined && at !== undefined)
    found.set(
      onlyOne(at.meaning) ?? at.name,
      `The text says "${held.said}", and a sentence measures nothing that is checked: write a \`measure\` step.`,
    );
  return [...found].map(([subject, message]) => ({
    index,
    issue: { rule: 'hands-in-text', subject, message },
  }));
}

function isTouched({ assemblies }: Procedure, { at }: Worded, { ids }: Meaning): boolean {
  const things = thingsAt(at);
  return ids.some(
    (id) =>
      isMeant(things, id) || assemblies.get(id)?.members.every((member) => isMeant(things, member)) === true,
  );
}

export function isLookedAt({ assemblies }: Procedure, { of }: Pick<Worded, 'of'>, { ids }: Meaning): boolean {
  return ids.some(
    (id) => isMeant(of, id) || assemblies.get(id)?.members.every((member) => isMeant(of, member)) === true,
  );
}

function adviceOn({ sources, loads }: Procedure, { at }: Worded, id: Id): string {
  const seen = `\`of: ${id}\` where it is only looked at`;
  if (sources.has(id))
    return `but a sentence switches nothing: write a step \`disconnect: ${id}\` or \`reconnect: ${id}\`, or add ${seen}`;
  if (loads.has(id))
    return `but a sentence fits nothing: write a step \`fit: ${id}\` or \`remove: ${id}\`, or add ${seen}`;
  return at === 'nothing'
    ? `and the step says \`at: nothing\`: add ${seen}, or write \`at: ${id}\` where hands touch it`
    : `but \`at\` does not say that hands touch it: add \`at: ${id}\`, or ${seen}`;
}
