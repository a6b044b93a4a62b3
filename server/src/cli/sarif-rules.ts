import { helpInMarkdown } from '../rules/handbook.ts';
import { rules as orderRules } from '../rules/rules.ts';
import type { Rule } from '../rules/rule.ts';
import type { Severity } from '../model/finding.ts';
import { textRules } from '../text/rules.ts';

export type Level = 'error' | 'warning' | 'note';

const levels: Readonly<Record<Severity, Level>> = { error: 'error', warning: 'warning', information: 'note' };

export function levelOf(severity: Severity): Level {
  return levels[severity];
}

type AnyRule = Rule | (typeof textRules)[number];

const all: readonly AnyRule[] = [...orderRules, ...textRules];

const indices: ReadonlyMap<string, number> = new Map(all.map(({ name }, index) => [name, index]));

/** Where a rule stands in the list; -1 for one that is not in it. */
export function ruleIndex(name: string): number {
  return indices.get(name) ?? -1;
}

/** Every rule as a reporting descriptor (3.49); the examples stand in the Markdown form of the help only. */
export function descriptors(): readonly unknown[] {
  return all.map((rule) => ({
    id: rule.name,
    ...nameOf(rule.name),
    shortDescription: { text: rule.meaning },
    fullDescription: { text: rule.why },
    help: { text: helpText(rule), markdown: helpInMarkdown(rule) },
    defaultConfiguration: { level: levelOf(rule.severity) },
    properties: { tags: ['stage' in rule ? rule.stage : 'text'] },
  }));
}

/** `live-touch` as `LiveTouch`. A name has to differ from the id (3.49.7), so an id of one word has none beside it. */
function nameOf(id: string): { readonly name?: string } {
  if (!id.includes('-')) return {};
  return { name: id.replace(/(?:^|-)(.)/g, (_, letter: string) => letter.toUpperCase()) };
}

function helpText(rule: AnyRule): string {
  const why = `Why: ${rule.why}`;
  if (!('examples' in rule)) return why;
  return `${why}\nSource: ${rule.source}\nAn example of each kind: ohmwright rules ${rule.name}`;
}
