import type { Finding } from './finding.ts';
import type { Problem, Spot } from './problem.ts';
import { lineAt, linesOf } from './lines.ts';
import type { Lines } from './lines.ts';
import { oneLine, rangeOf } from './range.ts';
import { numbering, verbsIn } from './read-steps.ts';
import { severityOf } from './rules.ts';
import { child, entryOf, nodeAt, textOf } from './tree.ts';
import type { Node } from './tree.ts';
import type { FileId, Path, Range, StepRef, Where } from './where.ts';

interface Written {
  readonly file: FileId;
  readonly text: string;
  readonly root: Node | null;
}

interface Source extends Written {
  readonly lines: Lines;
  readonly numbers: readonly (number | null)[];
}

/** From problems to findings: with their step, and a key that survives when lines move. */
export function findingsFrom(problems: readonly Problem[], written: Written): readonly Finding[] {
  const items = itemsOf(written.root);
  const source = { ...written, lines: linesOf(written.text), numbers: numbering(items) };
  const content = stepContents(source.root);
  const used = new Map<string, number>();
  return sorted(afterSyntax(problems, source), source).map((problem): Finding => {
    const { rule, message, subject, at } = problem;
    const step = stepRef(at, source);
    const place = 'range' in at ? placeOfText(at.range, source.text) : placeOf(at.path, source.root, content);
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
      related: (problem.related ?? []).map((one) => ({ at: whereOf(one.at, source), message: one.message })),
      key: count === 1 ? base : `${base} ${count}`,
    };
  });
}

/**
 * Where the text itself is broken, part of it may have been swallowed: what seems to be missing or unknown then is
 * most likely there, and what else stands on the line of the break is the same mistake.
 */
function afterSyntax(problems: readonly Problem[], source: Source): readonly Problem[] {
  const breaks = problems.filter(({ rule, at }) => rule === 'yaml' && 'range' in at);
  if (breaks.length === 0) return problems;
  const lost = breaks.some(({ misplaces, loses }) => misplaces === true || loses === true);
  const lines = source.text.split('\n');
  const silent = new Set<number>();
  for (const one of breaks) addLinesConcerned(one, lines, source, silent);
  return problems.filter((problem) => {
    if (breaks.includes(problem)) return true;
    if (lost && (problem.rule === 'missing-key' || problem.rule === 'unknown-id')) return false;
    return !silent.has(lineOf(problem.at, source));
  });
}

/** The line of a break; where the parser lost its place also the one above, and those below until it finds out again. */
function addLinesConcerned(broken: Problem, lines: readonly string[], source: Source, to: Set<number>): void {
  const own = lineOf(broken.at, source);
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

function lineOf(at: Spot, source: Source): number {
  return lineAt(source.lines, rangeOfSpot(at, source).from);
}

function sorted(problems: readonly Problem[], source: Source): readonly Problem[] {
  const placed = problems.map((problem) => ({ problem, range: rangeOfSpot(problem.at, source) }));
  placed.sort((a, b) => a.range.from - b.range.from || a.range.to - b.range.to);
  return placed.map(({ problem }) => problem);
}

function rangeOfSpot(at: Spot, { root, text }: Source): Range {
  return 'range' in at ? oneLine(text, at.range) : rangeOf(root, text, at);
}

function whereOf(at: Spot, { file }: Source): Where {
  if ('range' in at) return { file, path: [], part: 'value', within: [at.range.from, at.range.to] };
  return { file, ...at };
}

function placeOfText(range: Range, text: string): string {
  const { from, to } = oneLine(text, range);
  return text.slice(from, to);
}

/** A path with what stands in a list instead of its index. */
function placeOf(path: Path, root: Node | null, content: readonly string[]): string {
  let node = root ?? undefined;
  const words: string[] = [];
  for (const [depth, step] of path.entries()) {
    const inside = child(node, step);
    const named = depth === 1 && path[0] === 'steps' ? content[Number(step)] : textOf(inside);
    words.push(typeof step === 'number' ? (named ?? String(step)) : step);
    node = inside;
  }
  return words.join('/');
}

/**
 * For each item of the written list its id, or its verb and what follows; a count tells apart those that are alike.
 */
export function stepContents(root: Node | null): readonly string[] {
  const used = new Map<string, number>();
  return itemsOf(root).map((item) => {
    const id = textOf(entryOf(item, 'id')?.value);
    if (id !== undefined && id !== '') return id;
    const verb = verbsIn(item)[0] ?? (item.kind === 'map' ? item.entries[0]?.key : undefined) ?? '';
    const base = `${verb} ${writtenBehind(nodeAt(item, [verb]))}`.trim();
    const count = (used.get(base) ?? 0) + 1;
    used.set(base, count);
    return count === 1 ? base : `${base} (${count})`;
  });
}

function writtenBehind(node: Node | undefined): string {
  if (node?.kind === 'list') return node.items.map((item) => textOf(item) ?? '').join(' ');
  return textOf(node) ?? '';
}

function stepRef(at: Spot, { file, root, numbers }: Source): StepRef | null {
  if ('range' in at) return null;
  const [first, index] = at.path;
  if (first !== 'steps' || typeof index !== 'number') return null;
  const number = numbers[index] ?? null;
  if (number === null) return null;
  const id = textOf(entryOf(itemsOf(root)[index], 'id')?.value);
  return {
    file,
    path: ['steps', index],
    number: number + 1,
    ...(id === undefined || id === '' ? {} : { id }),
    calls: [],
  };
}

function itemsOf(root: Node | null): readonly Node[] {
  const list = entryOf(root, 'steps')?.value;
  return list?.kind === 'list' ? list.items : [];
}
