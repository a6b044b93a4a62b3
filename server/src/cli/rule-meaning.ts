import { rules } from '../rules/rules.ts';
import { textRules } from '../text/rules.ts';

/** The one line that says what a rule means. */
export function ruleMeaning(name: string): string {
  const rule = [...rules, ...textRules].find((one) => one.name === name);
  return rule?.meaning ?? '';
}
