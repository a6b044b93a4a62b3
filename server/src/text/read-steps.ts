import { measureForm } from '../format/words.ts';
import { isVerb, verbs } from '../format/words.ts';
import type { DefinitionName } from '../format/definitions.ts';
import type { Verb } from '../format/words.ts';
import { laterStepKeys } from '../format/later.ts';
import { checkEntry } from './check-entry.ts';
import { didYouMean, nearest, suggestion } from './nearest.ts';
import { keyAt, valueAt } from './problem.ts';
import type { Action, Written } from '../model/procedure.ts';
import { readAction } from './read-action.ts';
import type { Bench, Circuit } from './action-reader.ts';
import { wiggleFormOf } from './read-wiggle.ts';
import type { Reader } from './reader.ts';
import { entryOf, isEmpty, nodeAt, textOf } from './tree.ts';
import type { MapNode, Node } from './tree.ts';
import type { Path } from '../model/where.ts';

const common = ['id', 'note', 'why', 'notice', 'caution', 'warning', 'danger', 'minutes', 'see'] as const;
const commonKeys: ReadonlySet<string> = new Set(common);
const broken: Action = { verb: 'broken' };

/** Sections are headings: they have no number. */
export function isSection(node: Node): boolean {
  return entryOf(node, 'section') !== undefined && verbsIn(node).length === 0;
}

/** The keys of a step that are verbs, in written order. */
export function verbsIn(node: Node): readonly Verb[] {
  if (node.kind !== 'map') return [];
  return node.entries.map(({ key }) => key).filter(isVerb);
}

/** For each item of the written list the index of its step; null for a section. */
export function numbering(items: readonly Node[]): readonly (number | null)[] {
  let next = 0;
  return items.map((item) => (isSection(item) ? null : next++));
}

/** A list of steps: those of the file, or those of a routine. */
export interface StepList {
  readonly path: Path;
  readonly items: readonly Node[];
}

/** A step by itself: where an outcome leads is an index into its own list. */
export type ListedStep = Written & Action;

/** The list at a path; null where there is none. */
export function stepListAt(root: Node | null, path: Path): StepList | null {
  const list = nodeAt(root, path);
  return list?.kind === 'list' ? { path, items: list.items } : null;
}

/** Reads the steps of a list; `names.steps` of the reader are those of this list. */
export function readSteps(
  { path: listPath, items }: StepList,
  reader: Reader,
  circuit: Circuit,
): readonly ListedStep[] {
  const numbers = numbering(items);
  const bench: Bench = {
    ...circuit,
    stepCount: numbers.filter((number) => number !== null).length,
    stepAt: (item) => numbers[item] ?? null,
  };
  if (bench.stepCount === 0 && items.length > 0)
    reader.report({
      rule: 'missing-key',
      at: keyAt(listPath),
      message: 'There are headings here and no step, such as `- unplug: K30`.',
    });
  else reportIdleHeadings(numbers, listPath, reader);
  const steps: ListedStep[] = [];
  let section: string | undefined;
  for (const [index, item] of items.entries()) {
    const path = [...listPath, index];
    const number = numbers[index] ?? null;
    if (number === null) section = readSection(item, path, reader) ?? section;
    else steps.push(readStep(item, path, number, section, reader, bench));
  }
  return steps;
}

/** A heading stands above steps: without one it would be nowhere on the card. */
function reportIdleHeadings(numbers: readonly (number | null)[], listPath: Path, { report }: Reader): void {
  for (const [index, number] of numbers.entries()) {
    if (number !== null || (numbers[index + 1] ?? null) !== null) continue;
    const message = 'No step follows this heading. Write its steps below it, or remove it.';
    report({ rule: 'missing-key', at: valueAt([...listPath, index, 'section']), message });
  }
}

function readSection(item: Node, path: Path, { report }: Reader): string | undefined {
  if (item.kind !== 'map') return undefined;
  return checkEntry('section', item, path, { named: 'A section' }, report).values.section;
}

function readStep(
  item: Node,
  path: Path,
  index: number,
  section: string | undefined,
  reader: Reader,
  bench: Bench,
): ListedStep {
  const written = { number: index + 1, path, ...(section === undefined ? {} : { section }) };
  const verb = chooseVerb(item, path, reader);
  if (verb === null || item.kind !== 'map') return { ...written, ...idOf(item), ...broken };
  const rules = {
    named: `\`${verb}\``,
    later: laterStepKeys,
    alsoKnown: verbs,
    missingAt: [...path, verb],
  };
  const definition = definitionFor(verb, item, path, reader);
  if (definition === null) return { ...written, ...idOf(item), ...broken };
  const { values, bad } = checkEntry(definition, item, path, rules, reader.report);
  const unreadable = [...bad].some((key) => !commonKeys.has(key));
  const action = unreadable ? null : readAction(verb, values, item, path, index, reader, bench);
  return Object.assign(written, spokenOf(values), action ?? broken);
}

type Spoken = Pick<Written, (typeof common)[number]>;

/** Of the values of a step what any step can have. */
function spokenOf(values: { readonly [K in keyof Spoken]: Spoken[K] | undefined }): Spoken {
  const spoken: Record<string, unknown> = {};
  for (const key of common) if (values[key] !== undefined) spoken[key] = values[key];
  return spoken;
}

/** Other steps still reach a step that cannot be read. */
function idOf(item: Node): { readonly id?: string } {
  const id = entryOf(item, 'id')?.value;
  return id?.kind === 'scalar' && id.text !== '' && !isEmpty(id) ? { id: id.text } : {};
}

/** null: what stands in the step fits none of those of its verb, and that has been reported. */
function definitionFor(
  verb: Verb,
  item: MapNode,
  path: Path,
  { report }: Reader,
): (DefinitionName & `step-${string}`) | null {
  if (verb === 'wiggle') return wiggleFormOf(item, path, report);
  if (verb === 'measure') return measureForm(textOf(entryOf(item, 'measure')?.value));
  if (verb !== 'read') return `step-${verb}`;
  return entryOf(item, 'read')?.value.kind === 'list' ? 'step-read-several' : 'step-read';
}

/** The verb of a step decides what else may stand in it, so it is looked for before anything else. */
function chooseVerb(item: Node, path: Path, { report }: Reader): Verb | null {
  if (item.kind === 'unreadable') return null;
  if (item.kind !== 'map') {
    const example = 'such as `unplug: K30`';
    if (isEmpty(item)) {
      report({
        rule: 'missing-key',
        at: valueAt(path),
        message: `This step is empty; expected a verb, ${example}.`,
      });
      return null;
    }
    const text = item.kind === 'scalar' ? item.text : '';
    const word = /^[a-z-]+/.exec(text)?.[0] ?? '';
    const known = verbs.find((verb) => verb === word);
    const found = known === undefined ? '' : ` Write \`${known}: …\`.`;
    report({
      rule: 'wrong-value',
      at: valueAt(path),
      message: `A step is a verb with what it acts on, ${example}.${found}`,
    });
    return null;
  }
  const [verb, second] = verbsIn(item);
  if (verb !== undefined && second !== undefined) {
    const message = `A step has one verb. \`${verb}\` stands here already; start a new item with \`- ${second}:\`.`;
    report({ rule: 'wrong-value', at: keyAt([...path, second]), message, subject: second });
    return null;
  }
  if (verb !== undefined && entryOf(item, 'section') !== undefined) {
    const message = `A \`section\` is an item of its own. Start a new one with \`- ${verb}:\`.`;
    report({ rule: 'wrong-value', at: keyAt([...path, 'section']), message, subject: 'section' });
    return null;
  }
  if (verb !== undefined) return verb;
  const unknown = item.entries.filter(({ key }) => !commonKeys.has(key));
  const meant = unknown.find(({ key }) => nearest(key, [...verbs, 'section']) !== null) ?? unknown[0];
  if (meant !== undefined) {
    const known = [...verbs, 'section'];
    const guess = didYouMean(meant.key, known);
    const listed =
      guess === '' ? ` A step starts with one of ${verbs.map((one) => `\`${one}\``).join(', ')}.` : guess;
    const message = `\`${meant.key}\` is not a verb that is known here.${listed}`;
    report({
      rule: 'unknown-key',
      at: keyAt([...path, meant.key]),
      message,
      subject: meant.key,
      ...suggestion(meant.key, known),
    });
    return null;
  }
  report({ rule: 'missing-key', at: keyAt(path), message: 'This step has no verb, such as `unplug: K30`.' });
  return null;
}
