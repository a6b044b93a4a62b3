import { formsOf } from '../format/words.ts';
import type { Form, FormName, Kind, KindSection } from '../format/words.ts';
import { exampleIn, schemaAt } from '../format/walker.ts';
import { keyAt } from './problem.ts';
import type { RawEntry } from './read-entries.ts';
import type { Reader } from './reader.ts';
import { definitionSchema, fileSchema } from './schema.ts';
import { entryOf } from './tree.ts';

/**
 * In which of its forms an entry states its resistance. One that mixes two, or has nothing but its kind, is reported and
 * null; one that has neither form's keys but others is left to the check of the first form.
 */
export function formOf<S extends KindSection, K extends Kind<S>>(
  section: S,
  kind: K,
  { id, path, node }: RawEntry,
  report: Reader['report'],
): FormName<S, K> | null {
  const forms = formsOf(section, kind);
  const written = ({ keys }: Form) => keys.filter((key) => entryOf(node, key) !== undefined);
  const [first, second] = forms.filter((form) => written(form).length > 0);
  if (first !== undefined && second !== undefined) {
    const [key = ''] = written(second);
    const message = `A ${kind} has either ${named(first)}, or ${named(second)}. Both are written here; remove one of them.`;
    report({ rule: 'wrong-value', at: keyAt([...path, key]), message, subject: id });
    return null;
  }
  const [usual] = forms;
  if (first === undefined && forms.length > 1 && node.entries.every(({ key }) => key === 'kind')) {
    const ways = forms.map((form, index) =>
      index === 0 ? `${named(form)}, such as ${examples(form)},` : named(form),
    );
    const message = `The ${kind} \`${id}\` needs ${ways.join(' or ')}.`;
    report({ rule: 'missing-key', at: keyAt(path), message, subject: id });
    return null;
  }
  return ((first ?? usual)?.definition ?? null) as FormName<S, K> | null;
}

function named({ keys }: Form): string {
  return keys.map((key) => `\`${key}\``).join(' and ');
}

function examples({ definition, keys }: Form): string {
  const shown = keys.flatMap((key) => {
    const schema = schemaAt(definitionSchema(definition), [key], fileSchema);
    return schema === null ? [] : (exampleIn(schema) ?? []);
  });
  return shown.map((one) => `\`${one}\``).join(' and ');
}
