import { isMap, isScalar, isSeq, parse, parseDocument, visit } from 'yaml';
import { finish } from '../../server/src/model/work.ts';
import type { Finding } from '../../server/src/model/finding.ts';
import { fileSchema } from '../../server/src/text/schema.ts';
import { stepNumber } from '../../server/src/model/where.ts';
import type { Chance } from '../oracle/chance.ts';
import { opened } from './input.ts';
import type { Input } from './input.ts';
import { written } from './structure-inputs.ts';
import type { Tree } from './structure-inputs.ts';

/*
 * Changes of a text that say the same: comments, other names, another order, another form. What is found and what is read
 * must be the same after them.
 */

/** How a change of the text shows in what is found; null where it cannot be made. */
interface Changed {
  readonly text: string;
  /** What is found in the changed text, as it would be said of the text before. */
  readonly said?: (message: string) => string;
}

interface Sameness {
  readonly name: string;
  readonly change: (input: Input, chance: Chance) => Changed | null;
  /** Nothing is compared where errors stand in the text: of two wrong entries the first is told. */
  readonly needsWhole?: boolean;
}

export const samenesses: readonly Sameness[] = [
  { name: 'comments and blank lines', change: withComments },
  { name: 'carriage returns', change: ({ text }) => ({ text: text.replaceAll('\n', '\r\n') }) },
  { name: 'another form', change: ({ text }) => inBrackets(text) },
  { name: 'another name', change: renamed },
  { name: 'another order of the sections', change: reordered, needsWhole: true },
];

/** What differs after a change that changes nothing. */
export function differences(
  input: Input,
  chance: Chance,
  { name, change, needsWhole }: Sameness,
): readonly string[] {
  const changed = change(input, chance);
  if (changed === null) return [];
  const { said = (message: string): string => message } = changed;
  const before = answer(input, needsWhole === true ? said : (message) => message);
  if (needsWhole === true && before.errorsOfText > 0) return [];
  const after = answer({ ...input, text: changed.text }, said);
  const difference = firstDifference(before.lines, after.lines);
  return difference === null ? [] : [`${name}: ${difference}`];
}

/** The text after the change, for whoever looks into a difference. */
export function changedText(input: Input, chance: Chance, { change }: Sameness): string | null {
  return change(input, chance)?.text ?? null;
}

interface Answer {
  readonly lines: readonly string[];
  readonly errorsOfText: number;
}

function answer(input: Input, said: (message: string) => string): Answer {
  const { analysis } = opened(input);
  const findings = finish(analysis.findings('order'));
  const { value: readings } = finish(analysis.windows());
  const lines = [
    ...findings.map((finding) => said(inWords(finding))),
    ...readings.readings.map(({ index, of, printed }) => said(`step ${index} ${of} reads ${printed}`)),
  ];
  // What stands at one place is sorted by its words, which may be other words after the change.
  return {
    lines: lines.sort(),
    errorsOfText: findings.filter(({ stage, severity }) => stage === 'text' && severity === 'error').length,
  };
}

function inWords({ rule, severity, message, step, subject = '', trace, waived }: Finding): string {
  const where = step === undefined ? '-' : stepNumber(step);
  const path = trace?.length ?? 0;
  // A guess takes the nearest name, and a name that is changed may be nearer or further.
  const sure = message.replace(/ Did you mean [^?]*\?/, '');
  return [severity, where, rule, subject, sure, path, waived === undefined ? '' : 'waived'].join(' | ');
}

function firstDifference(before: readonly string[], after: readonly string[]): string | null {
  const at = before.findIndex((line, index) => line !== after[index]);
  if (at === -1 && before.length === after.length) return null;
  const index = at === -1 ? before.length : at;
  return `${before[index] ?? 'nothing'} became ${after[index] ?? 'nothing'}`;
}

/** Between lines that are a whole entry each: where no text runs over lines. */
function withComments({ text }: Input, chance: Chance): Changed | null {
  const document = parseDocument(text, { prettyErrors: false });
  if (document.errors.length > 0) return null;
  const taken = new Set<number>();
  visit(document, (_, node) => {
    if (!isScalar(node) && !isMap(node) && !isSeq(node)) return;
    const [from, to] = node.range ?? [0, 0];
    if (isScalar(node)) for (let at = from; at < to; at += 1) taken.add(at);
  });
  const lines = text.split('\n');
  let at = 0;
  const out: string[] = [];
  for (const line of lines) {
    const isInside = taken.has(at) && taken.has(at - 1);
    if (!isInside && chance.happens(0.3)) {
      const indent = /^ */.exec(line)?.[0] ?? '';
      out.push(chance.pick(['', `${indent}# a comment`]));
    }
    out.push(line);
    at += line.length + 1;
  }
  return { text: out.join('\n') };
}

/** All in brackets. Comments go, and what they hide comes to be nothing. */
function inBrackets(text: string): Changed | null {
  const document = parseDocument(text, { prettyErrors: false });
  if (document.errors.length > 0 || document.warnings.length > 0) return null;
  if (/#|[&*!][A-Za-z]|^[%.]|\t|---/m.test(text)) return null;
  // An empty value in brackets is another text.
  const empty: unknown[] = [];
  visit(document, (_, node) => {
    if (isMap(node) || isSeq(node)) node.flow = true;
    if (isScalar(node) && (node.value === null || node.source === '')) empty.push(node);
  });
  return empty.length === 0 ? { text: document.toString({ lineWidth: 0 }) } : null;
}

const section = /^(?:sources|entries|instruments|loads|parts|connectors|assemblies|loops|routines)$/;

function treeOf(text: string): Record<string, Tree> | null {
  if (parseDocument(text, { prettyErrors: false }).errors.length > 0) return null;
  if (/[*&<]/.test(text)) return null;
  const tree = parse(text) as Tree;
  return typeof tree === 'object' && tree !== null && !Array.isArray(tree) ? tree : null;
}

/** One id of the file, wherever it stands as a word. */
function renamed({ text, parts }: Input, chance: Chance): Changed | null {
  const tree = treeOf(text);
  if (tree === null) return null;
  const ids = Object.entries(tree).flatMap(([key, value]) =>
    section.test(key) && typeof value === 'object' && value !== null ? Object.keys(value) : [],
  );
  const usable = ids.filter((id) => /^[A-Za-z][A-Za-z0-9-]*$/.test(id) && !isUsedOtherwise(id, text, parts));
  if (usable.length === 0) return null;
  const id = chance.pick(usable);
  // As long, since messages cut what is long, and of a letter that no word of the format starts with.
  const other = `Q${'q'.repeat(Math.max(2, id.length - 1))}`;
  if (text.includes(other)) return null;
  const word = new RegExp(`(?<![A-Za-z0-9-])${id}(?![A-Za-z0-9-])`, 'g');
  return {
    text: text.replace(word, other),
    said: (message) => message.replaceAll(other, id),
  };
}

/** A word that also is a key, a side, a kind or a piece of another name means something else there. */
function isUsedOtherwise(id: string, text: string, parts: string): boolean {
  const inKeys = new RegExp(`(?<![A-Za-z0-9-])${id}(?![A-Za-z0-9-])`);
  return (
    schemaWords.has(id) ||
    inKeys.test(parts) ||
    new RegExp(`[A-Za-z0-9]-?${id}|${id}-?[A-Za-z0-9]`).test(text) ||
    id.length < 2
  );
}

const schemaWords: ReadonlySet<string> = new Set(
  JSON.stringify(fileSchema).match(/[A-Za-z][A-Za-z0-9-]*/g) ?? [],
);

/** The entries of each section in another order. */
function reordered({ text }: Input, chance: Chance): Changed | null {
  const tree = treeOf(text);
  if (tree === null) return null;
  for (const [key, value] of Object.entries(tree)) {
    if (!section.test(key) || typeof value !== 'object' || value === null || Array.isArray(value)) continue;
    const entries = Object.entries(value).map((entry) => ({ entry, at: chance.draw() }));
    tree[key] = Object.fromEntries(entries.sort((a, b) => a.at - b.at).map(({ entry }) => entry));
  }
  // Of several things a message tells them in the order of the file.
  const said = (line: string): string => line.split(' | ').toSpliced(4, 1).join(' | ');
  return { text: written(tree, chance), said };
}
