import type { Documents } from './documents.ts';
import type { Finding } from '../model/finding.ts';
import { valueAt } from './problem.ts';
import type { Problem, Spot } from './problem.ts';
import { lineAt, linesOf } from './lines.ts';
import type { Lines } from './lines.ts';
import { oneLine, rangeOf } from './range.ts';
import type { Document } from './read-document.ts';
import { numbering } from './read-steps.ts';
import { severityOf } from './rules.ts';
import { contentsOf, listHolding } from './step-content.ts';
import type { ContentOf } from './step-content.ts';
import { child, entryOf, nodeAt, textOf } from './tree.ts';
import type { ListNode, Node } from './tree.ts';
import type { Path, Range, StepRef, Where } from '../model/where.ts';

/** From problems to findings: with their step, and a key that survives when lines move. */
export function findingsFrom(problems: readonly Problem[], documents: Documents): readonly Finding[] {
  const source = {
    ...documents.own,
    ownerOf: documents.ownerOf,
    content: contentsOf(documents.root),
    tree: documents.root,
    numbersIn: rememberNumbers(),
  };
  const own = problems.filter((problem) => !isElsewhere(problem, source));
  const found = [...own, ...fromPartsFiles(problems, documents)];
  const lines = linesOf(source.text);
  const used = new Map<string, number>();
  return sorted(afterSyntax(found, source, lines), source).map((problem): Finding => {
    const { rule, message, subject, suggestion, at } = problem;
    const step = stepRef(at, source);
    const place = 'range' in at ? placeOfText(at.range, source.text) : placeOf(at.path, source);
    const base = [rule, place, ...(subject === undefined ? [] : [subject])].join(' ');
    const count = (used.get(base) ?? 0) + 1;
    used.set(base, count);
    return {
      rule,
      severity: severityOf(rule),
      stage: 'text',
      message,
      at: whereOf(at, source),
      ...(step === null ? {} : { step }),
      ...(subject === undefined ? {} : { subject }),
      ...(suggestion === undefined ? {} : { suggestion }),
      related: (problem.related ?? []).map((one) => ({ at: whereOf(one.at, source), message: one.message })),
      key: count === 1 ? base : `${base} ${count}`,
    };
  });
}

/** The own file, and what tells of a path in which file it stands. */
interface Source extends Document {
  readonly ownerOf: Documents['ownerOf'];
  readonly content: ContentOf;
  /** With the parts files. */
  readonly tree: Node;
  /** By item its number from 1; null for a heading. */
  readonly numbersIn: (list: ListNode) => readonly (number | null)[];
}

function isElsewhere({ at }: Problem, { id, ownerOf }: Source): boolean {
  return 'path' in at && ownerOf(at.path).id !== id;
}

/**
 * What is wrong in a parts file is told where that is checked; here one finding says that something is, with the first
 * that is told there.
 */
function fromPartsFiles(problems: readonly Problem[], { used, ownerOf }: Documents): readonly Problem[] {
  if (used.length === 0) return [];
  const found = new Map(used.map(({ document }) => [document, [...document.problems]]));
  for (const problem of problems)
    if ('path' in problem.at) found.get(ownerOf(problem.at.path))?.push(problem);
  return used.flatMap(({ document, by }): Problem[] => {
    const errors = (found.get(document) ?? []).filter(({ rule }) => severityOf(rule) === 'error');
    if (errors.length === 0) return [];
    const lines = linesOf(document.text);
    const told = sorted(afterSyntax(errors, document, lines), document);
    const [first] = told;
    if (first === undefined) return [];
    const line = lineOf(first.at, document, lines) + 1;
    const more = told.length === 1 ? '' : ` It has ${told.length} errors in all.`;
    return [
      {
        rule: 'parts-file',
        at: valueAt(by),
        message: `\`${document.id}\`, line ${line}: ${first.message}${more}`,
        subject: document.id,
      },
    ];
  });
}

/**
 * Where the text itself is broken, part of it may have been swallowed: what seems to be missing or unknown then is
 * most likely there, and what else stands on the line of the break is the same mistake.
 */
function afterSyntax(problems: readonly Problem[], source: Document, at: Lines): readonly Problem[] {
  const breaks = problems.filter(({ rule, at }) => rule === 'yaml' && 'range' in at);
  if (breaks.length === 0) return problems;
  const lost = breaks.some(({ misplaces, loses }) => misplaces === true || loses === true);
  const lines = source.text.split('\n');
  const silent = new Set<number>();
  for (const one of breaks) addLinesConcerned(one, lines, source, at, silent);
  const isBreak = new Set(breaks);
  return problems.filter((problem) => {
    if (isBreak.has(problem)) return true;
    if (lost && (problem.rule === 'missing-key' || problem.rule === 'unknown-id')) return false;
    return !silent.has(lineOf(problem.at, source, at));
  });
}

/** The line of a break; where the parser lost its place also the one above, and those below until it finds out again. */
function addLinesConcerned(
  broken: Problem,
  lines: readonly string[],
  source: Document,
  at: Lines,
  to: Set<number>,
): void {
  const own = lineOf(broken.at, source, at);
  to.add(own);
  if (broken.misplaces !== true) return;
  to.add(own - 1);
  const depth = indentation(lines[own] ?? '');
  for (let line = own + 1; line < lines.length && !to.has(line); line += 1) {
    const text = lines[line] ?? '';
    if (text.trim() !== '' && indentation(text) < depth) break;
    to.add(line);
  }
}

function indentation(line: string): number {
  return line.length - line.trimStart().length;
}

function lineOf(at: Spot, source: Document, lines: Lines): number {
  return lineAt(lines, rangeOfSpot(at, source).from);
}

function sorted(problems: readonly Problem[], source: Document): readonly Problem[] {
  const placed = problems.map((problem) => ({ problem, range: rangeOfSpot(problem.at, source) }));
  placed.sort((a, b) => a.range.from - b.range.from || a.range.to - b.range.to);
  return placed.map(({ problem }) => problem);
}

function rangeOfSpot(at: Spot, { root, text }: Document): Range {
  return 'range' in at ? oneLine(text, at.range) : rangeOf(root, text, at);
}

function whereOf(at: Spot, { id, ownerOf }: Source): Where {
  if ('range' in at) return { file: id, path: [], part: 'value', within: [at.range.from, at.range.to] };
  return { file: ownerOf(at.path).id, ...at };
}

function placeOfText(range: Range, text: string): string {
  const { from, to } = oneLine(text, range);
  return text.slice(from, to);
}

/** A path with what stands in a list instead of its index. */
function placeOf(path: Path, { tree, content }: Source): string {
  const list = listHolding(path);
  let node: Node | undefined = tree;
  const words: string[] = [];
  for (const [depth, step] of path.entries()) {
    const inside = child(node, step);
    const isItem = list !== null && depth === list.length;
    const named = isItem ? content(path) : textOf(inside);
    words.push(typeof step === 'number' ? (named ?? String(step)) : step);
    node = inside;
  }
  return words.join('/');
}

function stepRef(at: Spot, { id: file, tree, numbersIn }: Source): StepRef | null {
  if ('range' in at) return null;
  const list = listHolding(at.path);
  if (list === null) return null;
  const node = nodeAt(tree, list);
  if (node?.kind !== 'list') return null;
  const index = Number(at.path[list.length]);
  const number = numbersIn(node)[index] ?? null;
  if (number === null) return null;
  const id = textOf(entryOf(node.items[index], 'id')?.value);
  return {
    file,
    path: [...list, index],
    number,
    ...(id === undefined || id === '' ? {} : { id }),
    ...(list.length === 1 ? {} : { routine: String(list[1]) }),
    calls: [],
  };
}

function rememberNumbers(): Source['numbersIn'] {
  const known = new Map<ListNode, readonly (number | null)[]>();
  return (list) => {
    const numbers =
      known.get(list) ?? numbering(list.items).map((index) => (index === null ? null : index + 1));
    known.set(list, numbers);
    return numbers;
  };
}
