import { textRules } from '../text/rules.ts';
import type { Example, Rule } from './rule.ts';
import { rules } from './rules.ts';

/** All rules as one Markdown text, and the line (from 0) at which each begins. */
export interface Handbook {
  readonly text: string;
  readonly lineOf: ReadonlyMap<string, number>;
}

/** The page that a finding in the editor links to. */
export function handbook(): Handbook {
  const lines: string[] = [
    '# The rules of Ohmwright',
    '',
    'What is looked for in a procedure, why, and an example of each. Rules of order and of the windows come first, then those of the text itself.',
    '',
  ];
  const lineOf = new Map<string, number>();
  for (const rule of [...rules, ...textRules]) {
    lineOf.set(rule.name, lines.length);
    for (const line of [`## ${rule.name} (${rule.severity})`, '', rule.meaning, '', ...helpLines(rule)])
      lines.push(line);
  }
  return { text: `${lines.join('\n').trimEnd()}\n`, lineOf };
}

type AnyRule = Rule | (typeof textRules)[number];

/** What there is to say of a rule beside its meaning, with an example of each kind where it has them. */
export function helpInMarkdown(rule: AnyRule): string {
  return `${helpLines(rule).join('\n').trimEnd()}\n`;
}

function helpLines(rule: AnyRule): readonly string[] {
  const why = [`Why: ${rule.why}`, ''];
  if (!('examples' in rule)) return why;
  const { triggers, passes } = rule.examples;
  return [
    ...why,
    `Source: ${rule.source}`,
    '',
    ...example('Found here', triggers),
    ...example('Not here', passes),
  ];
}

function example(title: string, { shows, text }: Example): readonly string[] {
  return [`${title}: ${shows}`, '', '```yaml', ...text.trimEnd().split('\n'), '```', ''];
}
