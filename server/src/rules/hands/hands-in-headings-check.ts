import type { Procedure, Step } from '../../model/procedure.ts';
import type { Path } from '../../model/where.ts';
import { adviceTo, isDoneTo, onlyOne, subjectOf } from './hands-advice.ts';
import { isOwn } from './hands-in-notes-check.ts';
import type { Seen } from '../rule.ts';
import type { Said } from './sentences.ts';

/* Commands in the headings of sections: a heading may say what its steps do, and nothing that none of them does. */

export interface Heading {
  readonly text: string;
  /** Of the first step below it. */
  readonly index: number;
  readonly path: Path;
  readonly steps: Step[];
}

export function handsInHeadings(
  procedure: Procedure,
  steps: readonly Step[],
  said: (text: string) => Said,
): readonly Seen[] {
  return headingsOf(steps).flatMap(({ text, index, path, steps: below }) =>
    said(text)
      .commands.filter(
        (command) =>
          isDoneTo(procedure, command) && !below.some((step) => isOwn(procedure, step, command.meaning)),
      )
      .map((command): Seen => {
        const message = `This heading says to ${command.doing.base} ${command.name}, and no step below it does: ${adviceTo(procedure, command.doing, onlyOne(command.meaning))}.`;
        const place = { path, part: 'value' } as const;
        return { index, issue: { rule: 'hands-in-text', subject: subjectOf(command), place, message } };
      }),
  );
}

/** With all the steps below each. A heading stands right before its first step. */
export function headingsOf(steps: readonly Step[]): readonly Heading[] {
  const headings = new Map<string, Heading>();
  for (const [index, step] of steps.entries()) {
    if (step.section === undefined) continue;
    const list = step.path.slice(0, -1);
    const key = JSON.stringify([list, step.section]);
    const path = [...list, Number(step.path.at(-1)) - 1, 'section'];
    const heading = headings.get(key) ?? { text: step.section, index, path, steps: [] };
    headings.set(key, heading);
    heading.steps.push(step);
  }
  return [...headings.values()];
}
