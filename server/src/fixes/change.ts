import { formatWait } from '../quantity/quantity.ts';
import type { Id } from '../model/procedure.ts';
import type { Addition } from '../text/additions.ts';
import type { StepLines } from '../text/step-lines.ts';
import type { Path } from '../model/where.ts';
import type { Analysis } from '../project/analysis.ts';
import type { Edit } from '../project/edit.ts';
import { textOf } from './trial.ts';

/** A step to be written: its verb with what follows, and the keys below it. */
export interface NewStep {
  readonly line: string;
  readonly below?: readonly string[];
}

/** A change of the steps, by index. */
export type Change =
  | {
      readonly kind: 'before';
      readonly index: number;
      readonly steps: readonly NewStep[];
      /** Whether jumps to the step lead to the new ones too: its id moves to the first of them. */
      readonly takesId: boolean;
    }
  | {
      readonly kind: 'after';
      readonly index: number;
      readonly steps: readonly NewStep[];
      /** Of the first of them. */
      readonly id?: Id;
    }
  | { readonly kind: 'wait'; readonly index: number; readonly seconds: number }
  /** Leads an outcome or a `go` to another id. */
  | { readonly kind: 'lead'; readonly index: number; readonly path: Path; readonly to: Id }
  /** Adds a line with a key below the verb. */
  | { readonly kind: 'key'; readonly index: number; readonly line: string }
  /** Adds an outcome to those that the step has. */
  | { readonly kind: 'outcome'; readonly index: number; readonly outcome: string }
  /** Names at a `stop` what stays as it is, or takes a name out. */
  | { readonly kind: 'leave' | 'not-left'; readonly index: number; readonly name: string }
  | { readonly kind: 'take-out'; readonly index: number };

/** The edits that make the changes; null where the steps are not written so that they can be made. */
export function editsFor(analysis: Analysis, changes: readonly Change[]): readonly Edit[] | null {
  const edits: Edit[] = [];
  for (const change of changes) {
    const made = editsForOne(analysis, change);
    if (made === null) return null;
    for (const edit of made) edits.push(edit);
  }
  return edits;
}

function editsForOne(analysis: Analysis, change: Change): readonly Edit[] | null {
  const step = analysis.procedure().value.steps[change.index];
  // What stands in a parts file is for other procedures too.
  if (step?.file !== analysis.file) return null;
  const lines = analysis.stepLines(step);
  if (lines === null) return null;
  const text = textOf(analysis);
  const lineBreak = text.includes('\r\n') ? '\r\n' : '\n';
  switch (change.kind) {
    case 'wait':
      return lines.wait === null ? null : [{ range: lines.wait, text: formatWait(change.seconds) }];
    case 'before': {
      const id = change.takesId ? (step.id ?? null) : null;
      if (change.takesId && (id === null || lines.idLine === null)) return null;
      const written = change.steps.map((one, at) =>
        linesOf(one, lines.indent, at === 0 ? id : null, lineBreak),
      );
      const inserted = { range: { from: lines.from, to: lines.from }, text: written.join('') };
      return change.takesId && lines.idLine !== null
        ? [inserted, { range: lines.idLine, text: '' }]
        : [inserted];
    }
    case 'lead':
      return [
        { range: analysis.range({ file: analysis.file, path: change.path, part: 'value' }), text: change.to },
      ];
    case 'key':
      return keyBelow(lines, change.line, text, lineBreak);
    case 'outcome':
      return lines.outcomes === null ? null : [added(lines.outcomes, change.outcome)];
    case 'leave':
      return lines.leaves === null
        ? keyBelow(lines, `leaves: [${change.name}]`, text, lineBreak)
        : [added(lines.leaves, change.name)];
    case 'not-left': {
      const range = step.verb === 'stop' ? lines.left[step.leaves.indexOf(change.name)] : undefined;
      return range === undefined ? null : [{ range, text: '' }];
    }
    case 'take-out':
      return [{ range: { from: lines.from, to: lines.to }, text: '' }];
    case 'after': {
      const id = change.id ?? null;
      const written = change.steps
        .map((one, at) => linesOf(one, lines.indent, at === 0 ? id : null, lineBreak))
        .join('');
      const endsOpen = !text.slice(0, lines.to).endsWith('\n');
      return [{ range: { from: lines.to, to: lines.to }, text: endsOpen ? lineBreak + written : written }];
    }
  }
}

function added({ at, before, after }: Addition, entry: string): Edit {
  return { range: { from: at, to: at }, text: before + entry + after };
}

/** null where the keys of the step stand in braces. */
function keyBelow(
  { to, keysIndent }: StepLines,
  line: string,
  text: string,
  lineBreak: string,
): readonly Edit[] | null {
  if (keysIndent === null) return null;
  const isOpen = !text.slice(0, to).endsWith('\n');
  const written = isOpen ? lineBreak + keysIndent + line : keysIndent + line + lineBreak;
  return [{ range: { from: to, to }, text: written }];
}

function linesOf(step: NewStep, indent: string, id: string | null, lineBreak: string): string {
  const below = [...(id === null ? [] : [`id: ${id}`]), ...(step.below ?? [])];
  return [`${indent}- ${step.line}`, ...below.map((line) => `${indent}  ${line}`)]
    .map((line) => line + lineBreak)
    .join('');
}
