import type { Issue } from '../../paths/issue.ts';
import type { Procedure, Step } from '../../model/procedure.ts';
import type { Path } from '../../model/where.ts';
import { example, readOnly } from '../examples.ts';
import { textsBeside } from '../hands/hands-in-notes-check.ts';
import type { Context, Example, Rule, Seen } from '../rule.ts';

/* Values that are invented, and texts that nobody has written yet: what a new procedure begins with. */

function headed(shows: string, head: string): Example {
  const { text } = example(shows, readOnly);
  return { shows, text: text.replace('title: Example\n', `title: Example\n${head}`) };
}

export const exampleValues: Rule = {
  name: 'example-values',
  severity: 'error',
  stage: 'order',
  immune: true,
  meaning: 'A file says that its values are examples (`example: true`), or a text of it still says TODO.',
  why: 'A new procedure begins with invented values. A wait or a resistance that is left of them is checked and printed as if it were that of the vehicle, and somebody works by it.',
  source: 'a guard of this program',
  finder: { check: findExamples },
  examples: {
    triggers: headed('the values are those of the template', 'example: true\n'),
    passes: headed("all values are the manufacturer's", 'applies-to: Halden V4\n'),
  },
};

function findExamples({ procedure }: Context): readonly Seen[] {
  return [...marked(procedure), ...unwrittenHead(procedure), ...procedure.steps.flatMap(unwrittenIn)];
}

function marked({ isExample }: Procedure): readonly Seen[] {
  if (!isExample) return [];
  const place: Issue['place'] = { path: ['example'], part: 'key' };
  const message =
    'The values of this file are invented, so a card of it is a draft. ' +
    'Replace every value, text and step with what the manufacturer gives, then delete `example: true`.';
  return [{ issue: { rule: 'example-values', subject: 'example', place, message } }];
}

/** The word as it is left for the writer; in other letters it may be a word of a text. */
const unwritten = /\bTODO\b/;

function unwrittenHead({ title, appliesTo, revision, purpose, requires }: Procedure): readonly Seen[] {
  const texts: readonly (readonly [path: Path, text: string | null])[] = [
    [['title'], title],
    [['applies-to'], appliesTo],
    [['revision'], revision],
    [['purpose'], purpose],
    ...(['training', 'protective', 'information'] as const).flatMap((key) =>
      requires[key].map((text, index): [Path, string] => [['requires', key, index], text]),
    ),
  ];
  return texts
    .filter(([, text]) => text !== null && unwritten.test(text))
    .map(([path]) => {
      const key = path.slice(0, 2).join('/');
      const place: Issue['place'] = { path, part: 'value' };
      return { issue: { rule: 'example-values', subject: key, place, message: stillUnwritten(key) } };
    });
}

function unwrittenIn(step: Step, index: number): readonly Seen[] {
  const own: readonly (readonly [string, string])[] =
    step.verb === 'do' || step.verb === 'inspect' ? [[step.verb, step.text]] : [];
  return [...own, ...textsBeside(step)]
    .filter(([, text]) => unwritten.test(text))
    .map(([key]) => ({
      index,
      issue: { rule: 'example-values', subject: key, underline: [key], message: stillUnwritten(key) },
    }));
}

function stillUnwritten(key: string): string {
  return `\`${key}\` still says TODO. Write it as the manufacturer's service information and the vehicle ask for.`;
}
