import { greatestOf } from '../quantity/extremes.ts';
import { rules as orderRules } from '../rules/rules.ts';
import type { Example, Rule } from '../rules/rule.ts';
import { textRules } from '../text/rules.ts';
import { cannotRun, paintFor } from './terminal.ts';
import type { Exit, Terminal } from './terminal.ts';

/** Without a name a line for each rule; with one all there is to say of it, and an example of each kind. */
export function rules(terminal: Terminal, name: string | undefined): Exit {
  const paint = paintFor(terminal);
  if (name === undefined) {
    terminal.out(list(terminal, 'Reading the file', textRules));
    terminal.out(list(terminal, 'Windows and order', orderRules));
    return 0;
  }
  const rule = orderRules.find((one) => one.name === name);
  if (rule !== undefined) {
    terminal.out(inFull(terminal, rule));
    return 0;
  }
  const textRule = textRules.find((one) => one.name === name);
  if (textRule === undefined)
    return cannotRun(terminal, `there is no rule ${name}; \`ohmwright rules\` lists them`);
  terminal.out(
    `${paint.bold(textRule.name)} (${textRule.severity})\n${textRule.meaning}\n\nWhy: ${textRule.why}\n`,
  );
  return 0;
}

function list(
  terminal: Terminal,
  title: string,
  listed: readonly { readonly name: string; readonly severity: string; readonly meaning: string }[],
): string {
  const paint = paintFor(terminal);
  const width = greatestOf(listed.map(({ name }) => name.length));
  const lines = listed.map(
    ({ name, severity, meaning }) =>
      `  ${paint.bold(name.padEnd(width))}  ${severity.padEnd(11)}  ${meaning}`,
  );
  return `${title}\n${lines.join('\n')}\n\n`;
}

function inFull(terminal: Terminal, rule: Rule): string {
  const paint = paintFor(terminal);
  const { triggers, passes } = rule.examples;
  return [
    `${paint.bold(rule.name)} (${rule.severity})`,
    rule.meaning,
    '',
    `Why: ${rule.why}`,
    `Source: ${rule.source}`,
    '',
    ...shown(`Found here: ${triggers.shows}`, triggers),
    ...shown(`Not here: ${passes.shows}`, passes),
  ].join('\n');
}

function shown(title: string, example: Example): readonly string[] {
  return [title, '', ...example.text.split('\n').map((line) => (line === '' ? '' : `    ${line}`))];
}
