import type { Finding } from './finding.ts';
import type { Problem, Spot } from './problem.ts';
import { oneLine, rangeOf } from './range.ts';
import { numbering, verbsIn } from './read-steps.ts';
import { severityOf } from './rules.ts';
import { child, entryOf, nodeAt, textOf } from './tree.ts';
import type { Node } from './tree.ts';
import type { FileId, Path, Range, StepRef, Where } from './where.ts';

interface Source {
  readonly file: FileId;
  readonly text: string;
  readonly root: Node | null;
}

/** From problems to findings: with their step, and a key that survives when lines move. */
export function findingsFrom(problems: readonly Problem[], source: Source): readonly Finding[] {
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
  const lines = new Set(breaks.map(({ at }) => lineOf(at, source)));
  return problems.filter((problem) => {
    if (breaks.includes(problem)) return true;
    if (problem.rule === 'missing-key' || problem.rule === 'unknown-id') return false;
    return !lines.has(lineOf(problem.at, source));
  });
}

function lineOf(at: Spot, source: Source): number {
  return source.text.slice(0, rangeOfSpot(at, source).from).split(/\r\n|\n|\r/).length;
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
  const list = entryOf(root, 'steps')?.value;
  if (list?.kind !== 'list') return [];
  const used = new Map<string, number>();
  return list.items.map((item) => {
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

function stepRef(at: Spot, { file, root }: Source): StepRef | null {
  if ('range' in at) return null;
  const [first, index] = at.path;
  const list = entryOf(root, 'steps')?.value;
  if (first !== 'steps' || typeof index !== 'number' || list?.kind !== 'list') return null;
  const number = numbering(list.items)[index] ?? null;
  if (number === null) return null;
  const id = textOf(entryOf(list.items[index], 'id')?.value);
  return {
    file,
    path: ['steps', index],
    number: number + 1,
    ...(id === undefined || id === '' ? {} : { id }),
    calls: [],
  };
}
