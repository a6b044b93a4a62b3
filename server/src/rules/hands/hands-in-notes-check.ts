import { askedBy } from '../../bench/asked.ts';
import type { Measuring } from '../../bench/asked.ts';
import { connectorsProbed } from '../../bench/hazards.ts';
import { thingsAt } from '../../model/mentioned.ts';
import { isStage } from '../../model/part-kinds.ts';
import type { Id, Procedure, Step } from '../../model/procedure.ts';
import { adviceTo, isDoneTo, onlyOne, subjectOf } from './hands-advice.ts';
import type { Seen } from '../rule.ts';
import type { Said } from './sentences.ts';
import type { Meaning } from './text-names.ts';

/* Commands beside a step: a note that says to unplug something is done by its reader and checked by nobody. */

const keys = ['note', 'why', 'notice', 'caution', 'warning', 'danger', 'see'] as const;

/** The texts beside what a step does, with the keys that they stand at. */
export function textsBeside(step: Step): readonly (readonly [key: string, text: string])[] {
  const texts = keys.flatMap((key): [string, string][] => {
    const text = step[key];
    return text === undefined ? [] : [[key, text]];
  });
  return step.verb === 'stop' ? [['stop', step.text], ...texts] : texts;
}

export function handsInNotes(
  procedure: Procedure,
  step: Step,
  index: number,
  said: (text: string) => Said,
): readonly Seen[] {
  return textsBeside(step).flatMap(([key, text]) =>
    said(text)
      .commands.filter((command) => isDoneTo(procedure, command) && !isOwn(procedure, step, command.meaning))
      .map((command): Seen => {
        const message = `This ${key} says to ${command.doing.base} ${command.name}, but only steps are checked: ${adviceTo(procedure, command.doing, onlyOne(command.meaning))}.`;
        const issue = { rule: 'hands-in-text', subject: subjectOf(command), underline: [key], message };
        return { index, issue };
      }),
  );
}

/** Whether a step itself acts on what a name in its texts means: a note may say how. */
export function isOwn(procedure: Procedure, step: Step, { as, ids }: Meaning): boolean {
  const own = namedBy(step);
  if (ids.some((id) => own.includes(id))) return true;
  if (as === 'id' || ids.some((id) => isStage(procedure.parts.get(id)))) return false;
  // The terminals of a source, and the points that probes touch, have no ids.
  const isSwitched = step.verb === 'disconnect' || step.verb === 'reconnect';
  return isSwitched || (askedBy(step)?.of === 'points' && ids.some((id) => procedure.connectors.has(id)));
}

/** The connectors that probes touch. */
function connectorsAcross({ across }: Measuring): readonly Id[] {
  return across.flatMap((probe) => ('node' in probe ? [] : [probe.connector]));
}

/** What the step itself acts on. */
export function namedBy(step: Step): readonly Id[] {
  switch (step.verb) {
    case 'disconnect':
    case 'reconnect':
      return step.connector === null ? [step.source] : [step.source, step.connector];
    case 'prove-dead':
      return [step.source, step.known, ...connectorsProbed(step.at)];
    case 'unlock':
    case 'unplug':
    case 'plug':
      return [step.connector];
    case 'fit':
      return [step.load, step.at.connector];
    case 'move':
      return [step.load, step.to.connector];
    case 'remove':
      return [step.load];
    case 'measure':
      return connectorsAcross(step);
    case 'wiggle':
      return [...step.moved.map(({ id }) => id), ...(step.by === 'hand' ? connectorsAcross(step) : [])];
    case 'inspect':
    case 'do':
      return thingsAt(step.at).flatMap(({ id, members }) => [id, ...members]);
    case 'replace':
      return step.what.flatMap(({ id, members }) => [id, ...members]);
    case 'ignition':
    case 'wait':
    case 'read':
    case 'read-codes':
    case 'clear-codes':
    case 'conclude':
    case 'go':
    case 'stop':
    case 'run':
    case 'broken':
      return [];
  }
}
