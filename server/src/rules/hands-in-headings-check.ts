import type { Procedure, Step } from '../text/procedure.ts';
import type { Path } from '../text/where.ts';
import { adviceTo, namedBy } from './hands-in-notes-check.ts';
import type { CommandsIn } from './hands-in-notes-check.ts';
import type { Seen } from './rule.ts';

/* Commands in the headings of sections: a heading may say what its steps do, and nothing that none of them does. */

interface Heading {
  readonly text: string;
  /** Of the first step below it. */
  readonly index: number;
  readonly path: Path;
  readonly steps: Step[];
}

export function handsInHeadings(
  procedure: Procedure,
  steps: readonly Step[],
  commandsIn: CommandsIn,
): readonly Seen[] {
  return headingsOf(steps).flatMap(({ text, index, path, steps: below }) => {
    const acted = new Set(below.flatMap(namedBy));
    return commandsIn(text)
      .filter(({ name, to }) => !acted.has(name) && to.some((kind) => procedure[kind].has(name)))
      .map((command): Seen => {
        const message = `This heading says to ${command.word} ${command.name}, and no step below it does: ${adviceTo(procedure, command)}, or leave the name out.`;
        const place = { path, part: 'value' } as const;
        return { index, issue: { rule: 'hands-in-text', subject: command.name, place, message } };
      });
  });
}

/** With all the steps below each. A heading stands right before its first step. */
function headingsOf(steps: readonly Step[]): readonly Heading[] {
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
