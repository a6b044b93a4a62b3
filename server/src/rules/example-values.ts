import { exampleValuesFinder } from './example-values-check.ts';
import { example, readOnly } from './examples.ts';
import type { Example, Rule } from './rule.ts';

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
  finder: exampleValuesFinder,
  examples: {
    triggers: headed('the values are those of the template', 'example: true\n'),
    passes: headed("all values are the manufacturer's", 'applies-to: Halden V4\n'),
  },
};
