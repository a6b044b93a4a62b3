import { textRules } from '../text/rules.ts';
import type { Example } from './rule.ts';
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
  for (const rule of rules) {
    lineOf.set(rule.name, lines.length);
    lines.push(`## ${rule.name} (${rule.severity})`, '', rule.meaning, '', `Why: ${rule.why}`, '');
    lines.push(`Source: ${rule.source}`, '');
    lines.push(
      ...example('Found here', rule.examples.triggers),
      ...example('Not here', rule.examples.passes),
    );
  }
  for (const rule of textRules) {
    lineOf.set(rule.name, lines.length);
    lines.push(`## ${rule.name} (${rule.severity})`, '', rule.meaning, '', `Why: ${rule.why}`, '');
  }
  return { text: `${lines.join('\n').trimEnd()}\n`, lineOf };
}

function example(title: string, { shows, text }: Example): readonly string[] {
  return [`${title}: ${shows}`, '', '```yaml', ...text.trimEnd().split('\n'), '```', ''];
}
