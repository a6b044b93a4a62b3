import type { Severity } from '../model/finding.ts';

/** The rules of the text: what can be said before anything is computed. */
export const textRules = [
  {
    name: 'not-checked',
    severity: 'error',
    meaning: 'Ohmwright itself failed, and part of the file is not checked.',
    why: 'What is not checked must not pass as checked.',
  },
  {
    name: 'file',
    severity: 'error',
    meaning:
      'The file is empty, too large, not text, not the JSON that its name says, or of another format version.',
    why: 'Nothing in it can be relied on.',
  },
  {
    name: 'yaml',
    severity: 'error',
    meaning: 'The text is not YAML as procedures use it.',
    why: 'An unclosed quote or a tab can swallow steps without a trace.',
  },
  {
    name: 'turned-text',
    severity: 'error',
    meaning:
      'A character that turns the direction of writing round. Marks of direction (U+061C, U+200E, U+200F) may stand in a text with letters from right to left, but in no key.',
    why: 'A title, a warning or a value can read otherwise than it is checked.',
  },
  {
    name: 'hidden-character',
    severity: 'warning',
    meaning: 'A character that cannot be seen.',
    why: 'Two names that look the same can differ, and text can stand where nobody sees it.',
  },
  {
    name: 'comment-swallows',
    severity: 'warning',
    meaning: 'Text after ` #` is a comment.',
    why: 'Half a title or a warning disappears from the card and nobody sees it.',
  },
  {
    name: 'unknown-key',
    severity: 'error',
    meaning: 'A key or a verb that the format does not know.',
    why: 'A mistyped key would silently have no effect.',
  },
  {
    name: 'missing-key',
    severity: 'error',
    meaning: 'A key that is needed is not there, or nothing stands after it.',
    why: 'Without it the rest cannot be checked.',
  },
  {
    name: 'wrong-value',
    severity: 'error',
    meaning: 'A value that its key does not take.',
    why: 'A guess at what was meant could hurt somebody.',
  },
  {
    name: 'quantity',
    severity: 'error',
    meaning: 'A quantity that cannot be read: its number, its unit or its range.',
    why: 'A wrong unit is wrong by a thousand.',
  },
  {
    name: 'unknown-id',
    severity: 'error',
    meaning: 'A name that nothing in the file carries.',
    why: 'What the step acts on is not known.',
  },
  {
    name: 'wrong-id',
    severity: 'error',
    meaning: 'A name of something that cannot stand here.',
    why: 'A part cannot be unplugged, nor a connector fitted.',
  },
  {
    name: 'duplicate-id',
    severity: 'error',
    meaning: 'A name that is given twice.',
    why: 'It would not be known which of the two is meant.',
  },
  {
    name: 'wrong-call',
    severity: 'error',
    meaning: 'A call of a routine that does not give what it needs, or leads back into the routine itself.',
    why: 'What the steps of the routine act on is not known.',
  },
  {
    name: 'parts-file',
    severity: 'error',
    meaning: 'A parts file that cannot be found or read, uses itself, or has errors of its own.',
    why: 'What it defines cannot be relied on.',
  },
  {
    name: 'wrong-loop',
    severity: 'error',
    meaning: 'A loop that does not run from a monitor to one end part, or shares what cannot be shared.',
    why: 'Its resistance would not be that of the circuit on the vehicle.',
  },
  {
    name: 'not-yet',
    severity: 'error',
    meaning: 'Something that a later version of Ohmwright will read.',
    why: 'Leaving it out silently would check another procedure than the one that is written.',
  },
] as const satisfies readonly {
  readonly name: string;
  readonly severity: Severity;
  readonly meaning: string;
  readonly why: string;
}[];

export type TextRule = (typeof textRules)[number]['name'];

const severities: ReadonlyMap<string, Severity> = new Map(
  textRules.map(({ name, severity }) => [name, severity]),
);

export function severityOf(rule: TextRule): Severity {
  return severities.get(rule) ?? 'error';
}
